import type { Moving } from "./prices.ts";
import type { Order } from "./selection.ts";
import { nodeOf, type Task } from "./task.ts";
import { permutations } from "./ways.ts";

const NEVER = Number.POSITIVE_INFINITY;

/** What beginning, every move and the way back cost at some prices; endless where there is none. */
export interface PricedMoves {
  readonly begin: Float64Array;
  readonly end: Float64Array;
  readonly between: readonly Float64Array[];
}

/** What a point of ease, a half-minute and a hundredth of strength of moving weigh. */
export interface MoveWeights {
  readonly cost: number;
  readonly minute: number;
  readonly strength: number;
}

/** @param set positions that are asked about */
export function priceMoves(task: Task, weights: MoveWeights, set: readonly number[]): PricedMoves {
  const { startIn } = task.problem.locks;
  const size = task.nodes.length;
  const begin = new Float64Array(size).fill(NEVER);
  const end = new Float64Array(size).fill(NEVER);
  const between: Float64Array[] = task.nodes.map(() => begin);
  const taken = (each: { readonly halfMinutes: number; readonly strength: number }) =>
    weights.minute * each.halfMinutes + weights.strength * each.strength;
  for (const p of set) {
    const { entry, id, canEnd, wayBack } = nodeOf(task, p);
    if (entry !== null && (startIn === null || startIn === id)) begin[p] = weights.cost * entry.cost + taken(entry);
    if (canEnd) end[p] = taken(wayBack);
    const row = new Float64Array(size).fill(NEVER);
    for (const q of set)
      for (const way of task.ways[p]?.[q] ?? [])
        row[q] = Math.min(row[q] ?? NEVER, weights.cost * way.cost + taken(way));
    between[p] = row;
  }
  return { begin, end, between };
}

/** The least that being in all positions of a set costs in moves, in any order; endless where no order is possible. */
export function leastMoving(set: readonly number[], moves: PricedMoves): number {
  let least = NEVER;
  for (const first of set) least = goOn(set, moves, first, 1 << set.indexOf(first), moves.begin[first] ?? NEVER, least);
  return least;
}

/** The least so far, or less where going on from here costs less. @param used positions been in, as bits */
function goOn(
  set: readonly number[],
  moves: PricedMoves,
  last: number,
  used: number,
  sum: number,
  least: number,
): number {
  if (sum >= least) return least;
  if (used === (1 << set.length) - 1) return Math.min(least, sum + (moves.end[last] ?? NEVER));
  const row = moves.between[last];
  let found = least;
  for (let k = 0; k < set.length; k++) {
    if ((used >> k) & 1) continue;
    const next = set[k] ?? 0;
    found = goOn(set, moves, next, used | (1 << k), sum + (row?.[next] ?? NEVER), found);
  }
  return found;
}

/** The least minutes and the least strength that moving between all positions of a set can take. */
export function leastTaken(task: Task, set: readonly number[]): Moving {
  const least = (minute: number, strength: number) =>
    leastMoving(set, priceMoves(task, { cost: 0, minute, strength }, set));
  return { halfMinutes: least(1, 0), strength: least(0, 1) };
}

/** Every order of the positions that the ways, the beginning, the end, the minutes and the strength allow, cheapest first. */
export function ordersOf(task: Task, set: readonly number[]): Order[] {
  const { problem } = task;
  return permutations(set)
    .flatMap((positions): Order[] => {
      const first = nodeOf(task, positions[0] ?? 0);
      const last = nodeOf(task, positions[positions.length - 1] ?? 0);
      if (first.entry === null || !last.canEnd) return [];
      if (problem.locks.startIn !== null && problem.locks.startIn !== first.id) return [];
      let found: Order[] = [
        {
          positions,
          ways: [null],
          cost: first.entry.cost,
          halfMinutes: first.entry.halfMinutes + last.wayBack.halfMinutes,
          strength: first.entry.strength,
        },
      ];
      const fits = (order: Order) =>
        order.halfMinutes < problem.workingHalfMinutes && order.strength + last.wayBack.strength <= problem.strength;
      for (let k = 1; k < positions.length; k++) {
        const ways = task.ways[positions[k - 1] ?? 0]?.[positions[k] ?? 0] ?? [];
        found = found
          .flatMap((order) =>
            ways.map((way) => ({
              positions,
              ways: [...order.ways, way],
              cost: order.cost + way.cost,
              halfMinutes: order.halfMinutes + way.halfMinutes,
              strength: order.strength + way.strength,
            })),
          )
          .filter(fits);
      }
      return found.filter(fits);
    })
    .sort((a, b) => a.cost - b.cost);
}
