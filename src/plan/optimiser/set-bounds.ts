import { leastMoving, type PricedMoves, priceMoves } from "./orders.ts";
import { priced, type Prices, refund } from "./prices.ts";
import { sizeLimits } from "./problem.ts";
import type { Item } from "./selection.ts";
import type { Task } from "./task.ts";

/** What bounds every set of positions at the same prices. */
export interface Bounding {
  readonly moves: PricedMoves;
  /** The best priced worths of every position, one a name: more than can be done there are of no use. */
  readonly tops: readonly Float64Array[];
  /** Points that do not hang on the set. */
  readonly fixed: number;
}

/** @param set positions that are asked about; all where none are named */
export function boundingAt(task: Task, prices: Prices, set: readonly number[] = [...task.nodes.keys()]): Bounding {
  const tops: Float64Array[] = task.nodes.map(() => NOTHING);
  for (const p of set) tops[p] = topsOf(task.groupsAt[p] ?? [], prices);
  return {
    moves: priceMoves(task, { cost: 1, ...prices }, set),
    tops,
    fixed: task.baseline + refund(task.problem, task.gains, prices),
  };
}
const NOTHING = new Float64Array(0);

function topsOf(groups: readonly (readonly Item[])[], prices: Prices): Float64Array {
  const values = new Float64Array(groups.length);
  groups.forEach((group, k) => {
    let best = Number.NEGATIVE_INFINITY;
    for (const item of group) best = Math.max(best, priced(item, prices));
    values[k] = best;
  });
  return values.sort().reverse().subarray(0, sizeLimits.itemsInPosition);
}

/** No session in exactly these positions is worth more than this. @param enough below it the exact bound does not matter */
export function boundOf(
  task: Task,
  set: readonly number[],
  at: Bounding,
  enough: number = Number.NEGATIVE_INFINITY,
): number {
  const { itemShort, helperPlace } = task.problem.prices;
  // One item at least is done in every position of the set; then the best of what is there, up to the most items.
  let sum = 0;
  for (const p of set) {
    const first = at.tops[p]?.[0];
    if (first === undefined) return Number.NEGATIVE_INFINITY;
    sum += first;
  }
  let count = set.length;
  let best = sum - itemShort * Math.max(0, sizeLimits.fewestItems - count);
  next.fill(1);
  while (count < sizeLimits.mostItems) {
    let value = Number.NEGATIVE_INFINITY;
    let from = -1;
    for (let k = 0; k < set.length; k++) {
      const offer = at.tops[set[k] ?? 0]?.[next[k] ?? 0];
      if (offer !== undefined && offer > value) {
        value = offer;
        from = k;
      }
    }
    if (from < 0) break;
    next[from] = (next[from] ?? 0) + 1;
    sum += value;
    count++;
    best = Math.max(best, sum - itemShort * Math.max(0, sizeLimits.fewestItems - count));
  }
  const still = at.fixed - set.length * helperPlace + best;
  // Moving costs nothing or more.
  if (still < enough) return still;
  return still - leastMoving(set, at.moves);
}
const next = new Int8Array(sizeLimits.positions);
