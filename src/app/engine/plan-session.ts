import type { Locks } from "../../plan/optimiser/problem.ts";
import { buildProblem, type BuiltProblem } from "../../plan/session/build-problem.ts";
import { positionRow, type Session, unfoldSession } from "../../plan/session/session-plan.ts";
import { tradedIn } from "../../plan/session/traded.ts";
import { ACTIVITIES, POSITIONS } from "../../practice/catalogue.ts";
import type { PositionId } from "../../practice/codes.ts";
import { solveSession } from "../../plan/optimiser/solve-session.ts";
import type { RungName, Wishes } from "./engine.ts";
import { narrowPerson, type Override } from "./narrow-person.ts";
import type { PersonToday } from "./person-today.ts";
import { lowerFirst } from "./words.ts";

/** A session solved for one person, with the problem it answers. */
export interface SolvedSession {
  /** The person as they stand with today's wishes. */
  readonly person: PersonToday;
  readonly overrides: readonly Override[];
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

const solved = new WeakMap<PersonToday, Map<string, SolvedSession>>();
const KEPT = 12;

/** Chooses and orders today's session inside the minutes that are really left. The last answers are kept for what is asked next. */
export function planSession(person: PersonToday, minutes: number, wishes: Wishes): SolvedSession {
  const kept = solved.get(person) ?? new Map<string, SolvedSession>();
  solved.set(person, kept);
  const key = JSON.stringify([minutes, wishes]);
  const known = kept.get(key) ?? solve(person, minutes, wishes);
  const oldest = kept.keys().next();
  if (kept.size >= KEPT && oldest.done !== true) kept.delete(oldest.value);
  kept.set(key, known);
  return known;
}

function solve(given: PersonToday, minutes: number, wishes: Wishes): SolvedSession {
  const { person, overrides } = narrowPerson(given, wishes);
  const asked = locksOf(wishes);
  // What was put in against a reason has to be in; where it may not be, the record says so and the rest is planned.
  const refused = new Set(overrides.filter(({ allowed }) => !allowed).map(nameOf));
  const putIn = overrides.filter(({ allowed }) => allowed).map(nameOf);
  const locks = {
    ...asked,
    mustHave: [...new Set([...asked.mustHave, ...putIn])].filter((name) => !refused.has(name)),
  };
  const built = buildProblem(person.findings, person.precautions, person.rungs, person.ways, minutes, locks);
  const none = { person, overrides, session: null, built, gap: 0, traded: [] };
  if (person.hold !== null) return { ...none, status: "hold", clash: [] };
  const found = solveSession(built.problem);
  if (found.plan === null) return { ...none, status: "empty", clash: clashOf(built, locks) };
  return {
    person,
    overrides,
    session: unfoldSession(person.findings, built, found.plan, person.ways, person.keeper),
    built,
    status: found.status,
    gap: found.gap,
    traded: tradedIn(built.problem, found.plan),
    clash: [],
  };
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
  const nothing: Locks = { mustHave: [], leaveOut: locks.leaveOut, barPositions: [], startIn: null };
  const fits = (each: Locks): boolean => solveSession({ ...built.problem, locks: each }).plan !== null;
  // Where nothing fits whatever is let go, no wish is to blame.
  if (wishes.length === 0 || !fits(nothing)) return [];
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
