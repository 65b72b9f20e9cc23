import type { PurposeId } from "../../practice/codes.ts";
import { ProgrammingError } from "../../quantity/programming-error.ts";
import { evaluate } from "../optimiser/evaluate.ts";
import type { Plan, SessionProblem } from "../optimiser/problem.ts";
import { PURPOSE_WORDS } from "./needs.ts";

/**
 * What a session gained and what was given up for it, in the points of the session problem, and what is wanted and not
 * reached. The points are the planner's own weights and order sessions of one day; they measure nothing in the person.
 * The words left and right stand for sides only in an answer, so neither is used here.
 */
export function tradedIn(problem: SessionProblem, plan: Plan): string[] {
  const { worth, broken, halfMinutes, helperMoves, changes } = evaluate(problem, plan);
  const first = broken[0];
  if (first !== undefined) throw new ProgrammingError(`a plan breaks ${first.rule}: ${first.detail}`);
  const lines = [
    `Gained: ${points(worth.coverage)} for what the session is for, ${points(worth.own)} for the activities themselves.`,
  ];
  const given: readonly (readonly [number, string])[] = [
    [worth.moves, `for getting from position to position (${count(plan.blocks.length, "position")})`],
    [worth.helperPlaces, `for the helper's changes of place (${helperMoves})`],
    [worth.freshness, "for what would be learned better fresh and comes later"],
    [worth.change, `for changes since last time (${changes})`],
    [worth.dropped, "for what was done last time and is not in today"],
    [worth.short, "for having fewer items than a full session"],
  ];
  for (const [value, what] of given) if (value < 0) lines.push(`Given up: ${points(-value)} ${what}.`);
  const options = new Map(problem.options.map((option) => [option.id, option]));
  const reached = new Set(
    plan.blocks.flatMap((block) =>
      block.options.flatMap((id) =>
        (options.get(id)?.units ?? []).filter(({ units }) => units > 0).map(({ purpose }) => purpose),
      ),
    ),
  );
  const missed = problem.purposes
    .filter(({ id, need }) => need > 0 && !reached.has(id))
    .sort((a, b) => b.need - a.need || (a.id < b.id ? -1 : 1))
    .map(({ id }) => PURPOSE_WORDS[id as PurposeId]);
  if (missed.length > 0) lines.push(`Wanted and not reached today: ${missed.join(", ")}.`);
  const free = (problem.workingHalfMinutes - halfMinutes) / 2;
  lines.push(free > 0 ? `Still free: ${count(free, "minute")}.` : "Every minute is used.");
  return lines;
}

const points = (value: number): string => count(value, "point");
const count = (value: number, what: string): string => `${value} ${what}${value === 1 ? "" : "s"}`;
