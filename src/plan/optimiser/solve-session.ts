import { JudgedBest } from "./judged-best.ts";
import { leastTaken, ordersOf } from "./orders.ts";
import { price, type Prices } from "./prices.ts";
import { type Plan, type SessionProblem, sizeLimits } from "./problem.ts";
import { type Bounding, boundingAt, boundOf } from "./set-bounds.ts";

import { bringsFirsts, coversMusts, groupsOf, readTask, type Task } from "./task.ts";
import { NEAR, movingOf, priceUnits, WalkSearch, walksOf } from "./walk-search.ts";
import { subsets } from "./ways.ts";

/** What was found and how sure it is: `proven` the best there is, `limit` when the counted work ran out, `empty` when nothing fits. */
export interface SolvedPlan {
  readonly plan: Plan | null;
  readonly status: "proven" | "limit" | "empty";
  /** Worth of the plan, and how much more a plan not looked at could be worth at most. */
  readonly worth: number;
  readonly gap: number;
  readonly nodes: number;
}

/** Steps of the search before it gives up proving; counted, never timed. */
const NODE_LIMIT = 1_500_000;
const FIRST_LOOK = 300;
const DEEPER = 8;
const PRICE_STEPS = 60;
const SET_PRICE_STEPS = 24;
/** What moving usually takes, before the positions are known. */
const USUAL_MOVING = { halfMinutes: 6, strength: 12 };
/** Prices of so many sets are tried on all the others. */
const TRIED_ON_ALL = 12;

/** A set of positions that is still open, with the lowest bound found and the prices that gave it. */
interface OpenSet {
  readonly set: readonly number[];
  bound: number;
  prices: Prices;
  /** Its orders that may reach the plan in hand; null before they are looked for. */
  walks: readonly WalkSearch[] | null;
}

/**
 * The best session there is: prices on purposes, minutes and strength bound every set of positions from above; sets are
 * searched in the order of their bounds, items by priced worth, and every order of the positions is judged at each
 * selection. Ends when no bound is left above the plan in hand.
 */
export function solveSession(problem: SessionProblem): SolvedPlan {
  const task = readTask(problem);
  const best = new JudgedBest(task);
  let nodes = 0;
  let open = boundSets(task);
  // First short looks at every promising set, so that there is a plan in hand; then deeper ones at what is still open.
  for (let cap = FIRST_LOOK; open.length > 0 && nodes <= NODE_LIMIT; cap *= DEEPER) {
    const unfinished: OpenSet[] = [];
    for (const each of open) {
      if (each.bound < best.worth - NEAR) continue;
      if (nodes > NODE_LIMIT) {
        unfinished.push(each);
        continue;
      }
      const walks: WalkSearch[] = [];
      for (const walk of each.walks ?? openWalks(task, each, best)) {
        if (walk.bound < best.worth - NEAR) continue;
        const looked = walk.look(cap);
        nodes += looked.nodes;
        if (!looked.whole) walks.push(walk);
      }
      if (walks.length === 0) continue;
      each.walks = walks;
      each.bound = Math.min(each.bound, Math.max(...walks.map(({ bound }) => bound)));
      unfinished.push(each);
    }
    open = unfinished.sort((a, b) => b.bound - a.bound);
  }
  if (best.plan === null) return { plan: null, status: "empty", worth: 0, gap: 0, nodes };
  const bound = open.reduce((most, each) => Math.max(most, each.bound), best.worth);
  const gap = Math.floor(bound + NEAR) - best.worth;
  return { plan: best.plan, status: gap > 0 ? "limit" : "proven", worth: best.worth, gap, nodes };
}

/** Prices a set for itself. @returns its orders that may reach the plan in hand, the most promising first */
function openWalks(task: Task, each: OpenSet, best: JudgedBest): WalkSearch[] {
  const prices = priceFor(task, each);
  lower(task, each, prices, boundingAt(task, prices, each.set));
  if (each.bound < best.worth - NEAR) return [];
  const at = priceUnits(task, prices);
  const walks = walksOf(ordersOf(task, each.set)).map((walk) => ({ walk, moving: movingOf(task, walk, at.prices) }));
  const least = Math.min(...walks.map(({ moving }) => moving));
  // An order that costs more in moves than the cheapest one is worth so much less; only then is it looked at by itself.
  return walks
    .filter(({ moving }) => each.bound - (moving - least) >= best.worth - NEAR)
    .map(({ walk, moving }) => new WalkSearch(task, walk, moving, at, best))
    .filter(({ bound }) => bound > Number.NEGATIVE_INFINITY && bound >= best.worth - NEAR)
    .sort((a, b) => b.bound - a.bound);
}

function priceFor(task: Task, { set, prices }: OpenSet): Prices {
  const items = set.flatMap((p) => task.byPosition[p] ?? []);
  return price(task.problem, task.gains, groupsOf(items), leastTaken(task, set), SET_PRICE_STEPS, prices);
}

function lower(task: Task, each: OpenSet, prices: Prices, at: Bounding): void {
  const bound = boundOf(task, each.set, at);
  if (bound >= each.bound) return;
  each.bound = bound;
  each.prices = prices;
}

/** Every set of positions with an order and all that was asked for, the highest bound first. */
function boundSets(task: Task): OpenSet[] {
  const prices = price(task.problem, task.gains, groupsOf(task.items), USUAL_MOVING, PRICE_STEPS, null);
  const at = boundingAt(task, prices);
  const open = subsets(task.nodes.length, sizeLimits.positions).flatMap((set): OpenSet[] => {
    if (!coversMusts(task, set) || !bringsFirsts(task, set)) return [];
    const bound = boundOf(task, set, at);
    return bound === Number.NEGATIVE_INFINITY ? [] : [{ set, bound, prices, walks: null }];
  });
  const tried = new Set<OpenSet>();
  for (let round = 0; round < TRIED_ON_ALL && round < open.length; round++) {
    const top = open.reduce((most, each) => (each.bound > most.bound ? each : most));
    if (tried.has(top)) break;
    tried.add(top);
    const own = priceFor(task, top);
    const at = boundingAt(task, own);
    for (const each of open) lower(task, each, own, at);
  }
  return open.sort((a, b) => b.bound - a.bound);
}
