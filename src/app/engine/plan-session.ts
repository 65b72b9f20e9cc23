import type { Locks } from "../../plan/optimiser/problem.ts";
import { buildProblem, type BuiltProblem } from "../../plan/session/build-problem.ts";
import { type Session, unfoldSession } from "../../plan/session/session-plan.ts";
import { POSITIONS } from "../../practice/catalogue.ts";
import { solveSession } from "../../plan/optimiser/solve-session.ts";
import type { RungName, Wishes } from "./engine.ts";
import type { PersonToday } from "./person-today.ts";

/** A session solved for one person, with the problem it answers. */
export interface SolvedSession {
  readonly session: Session | null;
  readonly built: BuiltProblem;
  readonly status: string;
  readonly gap: number;
}

const nameOf = ({ activity, rung }: RungName): string => `${activity}/${rung}`;

/** The wishes as locks of the session problem; "no floor" bars every position in which the helper has to kneel. */
export function locksOf(wishes: Wishes): Locks {
  const floor = wishes.noFloor === true ? POSITIONS.filter((position) => position.floorStance).map((position) => position.id) : [];
  return {
    mustHave: (wishes.mustHave ?? []).map(nameOf),
    leaveOut: (wishes.leaveOut ?? []).map(nameOf),
    barPositions: [...new Set([...(wishes.barPositions ?? []), ...floor])],
    startIn: wishes.startIn ?? null,
  };
}

/** Chooses and orders today's session inside the minutes that are really left. */
export function planSession(person: PersonToday, minutes: number, wishes: Wishes): SolvedSession {
  const built = buildProblem(person.findings, person.precautions, person.rungs, person.ways, minutes, locksOf(wishes));
  if (person.hold !== null) return { session: null, built, status: "hold", gap: 0 };
  const solved = solveSession(built.problem);
  const session = solved.plan === null ? null : unfoldSession(person.findings, built, solved.plan, person.ways, person.keeper);
  return { session, built, status: solved.status, gap: solved.gap };
}
