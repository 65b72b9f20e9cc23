import { loadLinearSolver } from "../../mechanics/linear-program/linear-program.ts";
import { steadySolver } from "../../mechanics/linear-program/steady-solver.ts";
import { LOOK_PLACES } from "../../plan/eligibility/look-places.data.ts";
import { LOOK_TASKS } from "../../plan/findings.ts";
import { poseOf } from "../../plan/assess/posed.ts";
import type { RungToday } from "../../plan/assess/rung-today.ts";
import { ProgrammingError } from "../../quantity/programming-error.ts";
import type { CaseFile } from "../contract/case-file.ts";
import { answerAbsence } from "./answer-absence.ts";
import { answerCatalogue } from "./answer-catalogue.ts";
import { answerEffort } from "./answer-effort.ts";
import { answerArgument, answerSolved } from "./answer-argument.ts";
import { answerPlan } from "./answer-plan.ts";
import { answerWeek } from "./answer-week.ts";
import { comparePlans } from "./compare-plans.ts";
import type { Engine, RungName, Wishes } from "./engine.ts";
import { learnedBetween } from "./learned.ts";
import { keepPeople, type PersonToday } from "./person-today.ts";
import { drawPose, drawRung } from "./pictures.ts";
import { planSession } from "./plan-session.ts";
import { rungSheet } from "./rung-sheet.ts";
import { costOfForcing } from "./forcing.ts";
import { ownStart, tryOwnRung } from "./own-rung.ts";
import { moveFinding, weighRung, whatIfChoices } from "./what-if.ts";
import { VERSION } from "./version.ts";

/** Loads the solver and makes the computing side ready: the same for the command, the server and the page's worker. */
export async function createEngine(): Promise<Engine> {
  const solver = steadySolver(await loadLinearSolver());
  const people = keepPeople(solver);
  const find = (person: PersonToday, name: RungName): RungToday => {
    const today = person.rung(name);
    if (today === undefined) throw new ProgrammingError(`no rung ${name.activity}/${name.rung}`);
    return today;
  };
  return {
    version: VERSION,
    check(file) {
      const person = people.today(file);
      const answer = answerPlan(person, null, { status: "not asked", gap: 0 });
      return {
        version: VERSION,
        ok: true,
        faults: [],
        warnings: [],
        contradictions: answer.contradictions,
        assumed: answer.assumed,
      };
    },
    plan(file, minutes, wishes: Wishes = {}) {
      return answerSolved(planSession(people.today(file), minutes, wishes), minutes, wishes);
    },
    week: (file, minutes, wishes = {}) => answerWeek(planSession(people.today(file), minutes, wishes)),
    effort(file, activity, rung) {
      const person = people.today(file);
      return person.rungs
        .filter((each) => each.activity.id === activity && (rung === undefined || each.rung.id === rung))
        .map((today) => answerEffort(person, today, solver));
    },
    catalogue: answerCatalogue,
    argue: (file, minutes, wishes, argument) => answerArgument(people.today(file), minutes, wishes, argument),
    compare: (first, second) =>
      comparePlans(
        planSession(people.today(first.case), first.minutes, first.wishes ?? {}),
        planSession(people.today(second.case), second.minutes, second.wishes ?? {}),
      ),
    absence(file, minutes, wishes, of) {
      const person = people.today(file);
      const today = find(person, of);
      const solved = planSession(person, minutes, wishes);
      const inPlan = solved.session?.items.some((item) => item.today.rung === today.rung) ?? false;
      return answerAbsence(person, today, costOfForcing(person, today, solved, minutes, wishes), inPlan);
    },
    sheet: (file, of) => {
      const person = people.today(file);
      return rungSheet(person, find(person, of));
    },
    picture: (file, request) => {
      const person = people.today(file);
      return drawRung(person, find(person, request), request);
    },
    whatIfChoices(file, of) {
      const person = people.today(file);
      return whatIfChoices(find(person, of), file);
    },
    weigh(file, of, moved) {
      const person = people.today(moved === null ? file : moveFinding(file, moved));
      return weighRung(person, find(person, of), moved);
    },
    moveFinding,
    ownStart: (file, of) => ownStart(people.today(file), of),
    tryOwnRung(file, own, width) {
      const others = (file.ownRungs ?? []).filter(({ id }) => id !== own.id);
      return tryOwnRung(people.today({ ...file, ownRungs: [...others, own] }), own, width);
    },
    learned: (before, after) => learnedBetween(people.today(before), people.today(after)),
    lookPicture(file: CaseFile, task: string, width: number) {
      const person = people.today(file);
      const known = LOOK_TASKS.find((each) => each === task);
      if (known === undefined) throw new ProgrammingError(`no task ${task}`);
      const place = LOOK_PLACES[known];
      return drawPose(person, poseOf(find(person, place).rung), `The person ${place.words}.`, width, "screen");
    },
  };
}
