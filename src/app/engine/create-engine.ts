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
import { answerPlan } from "./answer-plan.ts";
import type { Engine, RungName, Wishes } from "./engine.ts";
import { keepPeople, type PersonToday } from "./person-today.ts";
import { drawPose, drawRung } from "./pictures.ts";
import { planSession } from "./plan-session.ts";
import { rungSheet } from "./rung-sheet.ts";
import { costOfForcing } from "./forcing.ts";
import { VERSION } from "./version.ts";

/** Loads the solver and makes the computing side ready: the same for the command, the server and the page's worker. */
export async function createEngine(): Promise<Engine> {
  const solver = steadySolver(await loadLinearSolver());
  const people = keepPeople(solver);
  const find = (person: PersonToday, name: RungName): RungToday => {
    const today = person.rungs.find((each) => each.activity.id === name.activity && each.rung.id === name.rung);
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
      const person = people.today(file);
      const { session, ...solved } = planSession(person, minutes, wishes);
      return answerPlan(person, session, solved);
    },
    effort(file, activity, rung) {
      const person = people.today(file);
      return person.rungs
        .filter((each) => each.activity.id === activity && (rung === undefined || each.rung.id === rung))
        .map((today) => answerEffort(person, today, solver));
    },
    catalogue: answerCatalogue,
    absence(file, minutes, wishes, of) {
      const person = people.today(file);
      const today = find(person, of);
      const solved = planSession(person, minutes, wishes);
      const inPlan = solved.session?.items.some((item) => item.today === today) ?? false;
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
    lookPicture(file: CaseFile, task: string, width: number) {
      const person = people.today(file);
      const known = LOOK_TASKS.find((each) => each === task);
      if (known === undefined) throw new ProgrammingError(`no task ${task}`);
      const place = LOOK_PLACES[known];
      return drawPose(person, poseOf(find(person, place).rung), `The person ${place.words}.`, width, "screen");
    },
  };
}
