import { JudgedBest } from "./judged-best.ts";
import { leastTaken, ordersOf } from "./orders.ts";
import { price, type Prices } from "./prices.ts";
import { type Plan, type SessionProblem, sizeLimits } from "./problem.ts";
import { type Bounding, boundingAt, boundOf } from "./set-bounds.ts";

import { bringsFirsts, coversMusts, groupsOf, readTask, type Task } from "./task.ts";
import { NEAR, movingOf, priceUnits, WalkSearch, walksOf } from "./walk-search.ts";
import { visitSets } from "./ways.ts";

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
/** Fewer open sets than this are looked at one by one. */
const WORTH_TRYING = 40;
/** A plan in hand comes from so many sets of so many positions. */
const PROMISING = 8;
const LOOKED_AT_FIRST = 3;

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
  const found = boundSets(task, best);
  let { nodes, open } = found;
  // First short looks at every promising set, so that there is a plan in hand; then deeper ones at what is still open.
  for (let cap = FIRST_LOOK; open.length > 0 && nodes <= NODE_LIMIT; cap *= DEEPER) {
    const unfinished: OpenSet[] = [];
    for (const each of open) {
      if (each.bound < best.worth - NEAR) continue;
      if (nodes > NODE_LIMIT) {
        unfinished.push(each);
        continue;
      }
      if (each.walks === null) {
        const own = priceFor(task, each);
        lower(task, each, own, boundingAt(task, own, each.set), best.worth - NEAR);
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

/** The orders of a set that may reach the plan in hand, at its own prices, the most promising first. */
function openWalks(task: Task, each: OpenSet, best: JudgedBest): WalkSearch[] {
  if (each.bound < best.worth - NEAR) return [];
  const { prices } = each;
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

function lower(task: Task, each: OpenSet, prices: Prices, at: Bounding, enough: number): void {
  const bound = boundOf(task, each.set, at, enough);
  if (bound >= each.bound) return;
  each.bound = bound;
  each.prices = prices;
}

/**
 * Every set of positions that may reach a plan in hand, the highest bound first. The plan comes from short looks at the most
 * promising sets of a few promising positions; their prices, and those of the most promising sets after that, are tried on
 * all the others.
 */
function boundSets(task: Task, best: JudgedBest): { nodes: number; open: OpenSet[] } {
  const prices = price(task.problem, task.gains, groupsOf(task.items), USUAL_MOVING, PRICE_STEPS, null);
  const at = boundingAt(task, prices);
  const collect = (positions: readonly number[]): OpenSet[] => {
    const found: OpenSet[] = [];
    visitSets(positions, sizeLimits.positions, (set) => {
      if (!coversMusts(task, set) || !bringsFirsts(task, set)) return;
      const bound = boundOf(task, set, at, best.worth - NEAR);
      if (bound > Number.NEGATIVE_INFINITY && bound >= best.worth - NEAR)
        found.push({ set: [...set], bound, prices, walks: null });
    });
    return found.sort((a, b) => b.bound - a.bound);
  };
  let nodes = 0;
  const look = (each: OpenSet): Prices => {
    const own = priceFor(task, each);
    lower(task, each, own, boundingAt(task, own, each.set), best.worth - NEAR);
    for (const walk of openWalks(task, each, best)) {
      if (walk.bound < best.worth - NEAR) continue;
      nodes += walk.look(FIRST_LOOK).nodes;
    }
    return own;
  };
  const all = [...task.nodes.keys()];
  const promise = (p: number) => (at.tops[p]?.[0] ?? 0) + (at.tops[p]?.[1] ?? 0);
  const promising = [...all].sort((a, b) => promise(b) - promise(a)).slice(0, PROMISING);
  collect(promising).slice(0, LOOKED_AT_FIRST).forEach(look);
  let open = collect(all);
  const tried = new Set<OpenSet>();
  for (let round = 0; round < TRIED_ON_ALL && open.length > WORTH_TRYING; round++) {
    const top = open.reduce((most, each) => (each.bound > most.bound ? each : most));
    if (tried.has(top)) break;
    tried.add(top);
    const own = look(top);
    const everywhere = boundingAt(task, own);
    for (const each of open) lower(task, each, own, everywhere, best.worth - NEAR);
    open = open.filter((each) => each.bound >= best.worth - NEAR);
  }
  return { nodes, open: open.sort((a, b) => b.bound - a.bound) };
}
