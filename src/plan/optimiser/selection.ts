import { type Option, type Plan, type SessionProblem, sizeLimits } from "./problem.ts";
import type { Way } from "./ways.ts";

/** An order of the positions of a set, with what its moves cost whatever is done in them. */
export interface Order {
  readonly positions: readonly number[];
  readonly ways: readonly (Way | null)[];
  readonly cost: number;
  readonly halfMinutes: number;
  readonly strength: number;
}
/** An option as the search sees it. */
export interface Item {
  readonly option: Option;
  readonly position: number;
  /** Place in the list of options. */
  readonly at: number;
  /** Items of the same name exclude each other: a rung at two doses, or a pair of substitutes. */
  readonly name: number;
  /** Units of each purpose by its number, and the same without the zeros. */
  readonly units: Int32Array;
  readonly trains: readonly { readonly purpose: number; readonly units: number }[];
  /** Worth by itself, with the cost of dropping it last time given back. */
  readonly own: number;
}

/** Prerequisites before what needs them, then the order of the catalogue, which leads from the simpler to the harder in a position. */
export function inOrder(items: readonly Item[]): Item[] {
  const needed = new Set(items.flatMap((item) => item.option.prerequisite ?? []));
  const rank = (item: Item) => (needed.has(item.option.rung) ? 0 : 1);
  return [...items].sort((a, b) => rank(a) - rank(b) || a.at - b.at);
}

/** Whether an option may be done beside those chosen: a rung once, one of a pair of substitutes, neighbours of a ladder. */
export function goesWith(option: Option, chosen: readonly Item[]): boolean {
  let same = 0;
  for (const { option: other } of chosen) {
    if (other.rung === option.rung) return false;
    if (option.substitutes !== null && other.substitutes === option.substitutes) return false;
    if (other.activity === option.activity) {
      same++;
      if (Math.abs(other.ladderIndex - option.ladderIndex) > 1) return false;
    }
  }
  return same < sizeLimits.rungsOfActivity;
}

/** Among equal worth: fewest changes, helper moves, minutes, then the order of the catalogue. */
export function tieKey(chosen: readonly Item[], order: Order, plan: Plan, problem: SessionProblem): readonly number[] {
  const changes = chosen.filter((item) => item.option.change.kind !== "kept").length;
  let moves = 0;
  let place: string | null = null;
  for (const block of plan.blocks) {
    for (const id of block.options) {
      const now = problem.options.find((option) => option.id === id)?.helperPlace ?? null;
      if (place !== null && now !== place) moves++;
      place = now;
    }
  }
  const minutes = order.halfMinutes + chosen.reduce((sum, item) => sum + item.option.halfMinutes, 0);
  return [
    changes,
    moves,
    minutes,
    ...plan.blocks.flatMap((block) =>
      block.options.map((id) => problem.options.findIndex((option) => option.id === id)),
    ),
  ];
}

/** Below zero where the first comes first. */
export function compareTies(a: readonly number[], b: readonly number[]): number {
  for (let k = 0; k < Math.max(a.length, b.length); k++) {
    const difference = (a[k] ?? -1) - (b[k] ?? -1);
    if (difference !== 0) return difference;
  }
  return 0;
}
