import type { Locks } from "../../plan/optimiser/problem.ts";
import { buildProblem, type BuiltProblem } from "../../plan/session/build-problem.ts";
import { positionRow, type Session, unfoldSession } from "../../plan/session/session-plan.ts";
import { tradedIn } from "../../plan/session/traded.ts";
import { ACTIVITIES, POSITIONS } from "../../practice/catalogue.ts";
import type { PositionId } from "../../practice/codes.ts";
import { solveSession } from "../../plan/optimiser/solve-session.ts";
import type { RungName, Wishes } from "./engine.ts";
import type { PersonToday } from "./person-today.ts";
import { lowerFirst } from "./words.ts";

/** A session solved for one person, with the problem it answers. */
export interface SolvedSession {
  readonly session: Session | null;
  readonly built: BuiltProblem;
  readonly status: string;
  readonly gap: number;
  /** What the session gained and what was given up for it, in words. */
  readonly traded: readonly string[];
  /** Wishes that do not go together, in words; empty where all of them fit. */
  readonly clash: readonly string[];
}

const nameOf = ({ activity, rung }: RungName): string => `${activity}/${rung}`;

/** The wishes as locks of the session problem; "no floor" bars every position in which the helper has to kneel. */
export function locksOf(wishes: Wishes): Locks {
  const floor =
    wishes.noFloor === true ? POSITIONS.filter((position) => position.floorStance).map((position) => position.id) : [];
  return {
    mustHave: (wishes.mustHave ?? []).map(nameOf),
    leaveOut: (wishes.leaveOut ?? []).map(nameOf),
    barPositions: [...new Set([...(wishes.barPositions ?? []), ...floor])],
    startIn: wishes.startIn ?? null,
  };
}

/** Chooses and orders today's session inside the minutes that are really left. */
export function planSession(person: PersonToday, minutes: number, wishes: Wishes): SolvedSession {
  const locks = locksOf(wishes);
  const built = buildProblem(person.findings, person.precautions, person.rungs, person.ways, minutes, locks);
  if (person.hold !== null) return { session: null, built, status: "hold", gap: 0, traded: [], clash: [] };
  const solved = solveSession(built.problem);
  if (solved.plan === null)
    return { session: null, built, status: "empty", gap: 0, traded: [], clash: clashOf(built, locks) };
  const session = unfoldSession(person.findings, built, solved.plan, person.ways, person.keeper);
  const traded = tradedIn(built.problem, solved.plan);
  return { session, built, status: solved.status, gap: solved.gap, traded, clash: [] };
}

/**
 * A smallest set of wishes that do not go together: each is let go in turn, and stays let go where the rest still does not
 * fit. Bars, minutes and the way back are never let go.
 */
function clashOf(built: BuiltProblem, locks: Locks): string[] {
  type Wish = { readonly words: string; readonly without: (locks: Locks) => Locks };
  const wishes: Wish[] = [
    ...(locks.startIn === null
      ? []
      : [
          {
            words: `starting in ${positionRow(locks.startIn as PositionId).name.toLowerCase()}`,
            without: (each: Locks) => ({ ...each, startIn: null }),
          },
        ]),
    ...locks.mustHave.map((rung) => ({
      words: nameOfRung(rung),
      without: (each: Locks) => ({ ...each, mustHave: each.mustHave.filter((other) => other !== rung) }),
    })),
    ...locks.barPositions.map((id) => ({
      words: `leaving out ${positionRow(id as PositionId).name.toLowerCase()}`,
      without: (each: Locks) => ({ ...each, barPositions: each.barPositions.filter((other) => other !== id) }),
    })),
  ];
  const fits = (each: Locks): boolean => solveSession({ ...built.problem, locks: each }).plan !== null;
  let now = locks;
  const needed: string[] = [];
  for (const wish of wishes) {
    const without = wish.without(now);
    if (fits(without)) needed.push(wish.words);
    else now = without;
  }
  return needed;
}

function nameOfRung(name: string): string {
  const [activityId, rungId] = name.split("/");
  const activity = ACTIVITIES.find((each) => each.id === activityId);
  const rung = activity?.rungs.find((each) => each.id === rungId);
  return `${activity?.name ?? activityId}, ${lowerFirst(rung?.name ?? rungId ?? "")}`;
}
