import type { Evaluation } from "../../../src/plan/optimiser/evaluate.ts";
import { at, POINT, prepare, type Prepared } from "./prepare.ts";
import { completions, findPrices, type PriceList, type Priced, relaxAll, relaxOrders, shortCost } from "./prices.ts";
import { type Plan, type SessionProblem, sizeLimits } from "../../../src/plan/optimiser/problem.ts";
import { reaches, type Search, searchSet } from "./set-search.ts";

export interface Solution {
  /** Null where nothing fits, or where the work ended before a plan was found. */
  readonly plan: Plan | null;
  readonly judged: Evaluation | null;
  /** `proven`: none is worth more. `limit`: the work ended first, `gap` is the most that may be missed. `empty`: nothing fits. */
  readonly status: "proven" | "limit" | "empty";
  /** [points] */
  readonly gap: number;
  readonly bestBound: number;
  readonly work: { readonly nodes: number; readonly leaves: number; readonly sets: number; readonly walks: number };
}
/** The answer depends on neither setting, unless the work ends first. */
export interface SolveSettings {
  readonly mostNodes?: number;
  readonly startPrices?: (purposes: number) => PriceList;
}
interface PositionSet {
  readonly key: number;
  orders: (readonly number[])[];
  bound: number;
  priced: Priced;
}

const ROOT_STEPS = 120,
  SET_STEPS = 20,
  FIRST_SETS = 30,
  FIRST_CAP = 400,
  CAP = 2000,
  MOST_NODES = 400_000;

/**
 * Finds the session worth most and proves that none is worth more.
 *
 * Prices for units, half-minutes and strength give a bound on every walk; sets of positions whose bound reaches the plan in hand are
 * searched, the most promising first. Ends by counted work, never by the clock; the same input in any order gives the same plan.
 */
export function solvePlan(problem: SessionProblem, settings: SolveSettings = {}): Solution {
  const p = prepare(problem);
  const search: Search = { held: null, nodes: 0, leaves: 0 };
  const most = settings.mostNodes ?? MOST_NODES;
  const start = settings.startPrices?.(p.gains.length) ?? {
    units: p.gains.map((g) => 60 * at(g, 1)),
    halfMinute: 0,
    strength: 0,
  };
  const root = findPrices(p, start, ROOT_STEPS, null, (t) => relaxAll(p, t));
  if (p.impossible || root.bound === Number.NEGATIVE_INFINITY) return finish(search, [], 0, 0);

  // A plan in hand first: without one, nothing can be set aside.
  let listed = listSets(p, root.priced, root.bound - 0.15 * Math.abs(root.bound));
  const warmUp = (sets: readonly PositionSet[]) => {
    for (const set of sets.slice(0, FIRST_SETS))
      if (search.nodes < most) searchSet(p, set.priced, set.orders, Math.min(FIRST_CAP, most - search.nodes), search);
  };
  warmUp(listed.sets);
  listed = listSets(
    p,
    root.priced,
    search.held === null
      ? Number.NEGATIVE_INFINITY
      : POINT * (search.held as { judged: Evaluation }).judged.worth.total,
  );
  if (search.held === null) warmUp(listed.sets);
  const { walks } = listed;
  let open = listed.sets.filter((s) => reaches(search, s.bound));
  let searched = 0;
  for (let cap = CAP; open.length > 0 && search.nodes < most; cap *= 8) {
    const unfinished: PositionSet[] = [];
    for (let set = open.shift(); set !== undefined; set = open.shift()) {
      if (!reaches(search, set.bound)) continue;
      if (search.nodes >= most) {
        unfinished.push(set);
        continue;
      }
      const mine = set;
      const target = search.held === null ? null : POINT * (search.held as { judged: Evaluation }).judged.worth.total;
      const again = findPrices(p, mine.priced.prices, SET_STEPS, target, (t) => relaxOrders(p, t, mine.orders));
      for (const other of [mine, ...open]) tighten(p, other, again.priced, search);
      open = open.filter((s) => reaches(search, s.bound)).sort((a, b) => b.bound - a.bound || a.key - b.key);
      if (!reaches(search, mine.bound)) continue;
      searched += 1;
      if (!searchSet(p, mine.priced, mine.orders, Math.min(cap, most - search.nodes), search)) unfinished.push(mine);
    }
    open = unfinished.filter((s) => reaches(search, s.bound)).sort((a, b) => b.bound - a.bound || a.key - b.key);
  }
  return finish(search, open, searched, walks);
}

function finish(search: Search, open: readonly PositionSet[], sets: number, walks: number): Solution {
  const work = { nodes: search.nodes, leaves: search.leaves, sets, walks };
  const bound = open.reduce((most, s) => Math.max(most, Math.floor(s.bound / POINT)), Number.NEGATIVE_INFINITY);
  const { held } = search;
  if (held === null)
    return open.length === 0
      ? { plan: null, judged: null, status: "empty", gap: 0, bestBound: 0, work }
      : { plan: null, judged: null, status: "limit", gap: Math.max(0, bound), bestBound: bound, work };
  const bestBound = Math.max(bound, held.judged.worth.total);
  const gap = bestBound - held.judged.worth.total;
  return { plan: held.plan, judged: held.judged, status: gap === 0 ? "proven" : "limit", gap, bestBound, work };
}

/** Takes other prices for a set where they bound it lower; orders that fall behind the plan in hand are struck off. */
function tighten(p: Prepared, set: PositionSet, priced: Priced, search: Search): void {
  const { bound } = relaxOrders(p, priced, set.orders);
  if (bound >= set.bound) return;
  set.bound = bound;
  set.priced = priced;
  const orders = set.orders.filter((o) => reaches(search, relaxOrders(p, priced, [o]).bound));
  if (orders.length > 0) set.orders = orders;
}

/** All walks whose bound reaches `least`, grouped by the positions they visit; most promising first. */
function listSets(p: Prepared, t: Priced, least: number): { readonly sets: PositionSet[]; readonly walks: number } {
  const table = completions(p, t);
  const sets = new Map<number, PositionSet>();
  const order: number[] = [];
  let walks = 0;
  const extend = (place: number, done: readonly number[], way: number): void => {
    const block = order.length;
    order.push(place);
    const { worth } = at(at(t.picked, place), block);
    const reached = Array.from({ length: sizeLimits.mostItems + 1 }, () => Number.NEGATIVE_INFINITY);
    let ending = Number.NEGATIVE_INFINITY;
    for (let items = 0; items < sizeLimits.mostItems; items += 1)
      for (let n = 1; n < worth.length && items + n <= sizeLimits.mostItems; n += 1) {
        const value = at(done, items) + way + at(worth, n);
        if (value > at(reached, items + n)) reached[items + n] = value;
      }
    for (let items = 1; items <= sizeLimits.mostItems; items += 1)
      ending = Math.max(ending, at(reached, items) - shortCost(p, items));
    ending += at(t.end, place) + t.constant;
    if (ending > Number.NEGATIVE_INFINITY && ending >= least && p.mustPositions.every((q) => order.includes(q))) {
      walks += 1;
      const key = [...order].sort((a, b) => a - b).reduce((sum, q) => sum * 64 + q + 1, 0);
      const known = sets.get(key);
      if (known) {
        known.orders.push([...order]);
        known.bound = Math.max(known.bound, ending);
      } else sets.set(key, { key, orders: [[...order]], bound: ending, priced: t });
    }
    const next = table[block + 1];
    if (next)
      for (let q = 0; q < p.positions.length; q += 1) {
        if (order.includes(q)) continue;
        const move = at(at(t.move, place), q);
        let most = Number.NEGATIVE_INFINITY;
        for (let items = 1; items < sizeLimits.mostItems; items += 1)
          most = Math.max(most, at(reached, items) + at(at(next, q), items));
        if (most + move + t.constant >= least && most + move > Number.NEGATIVE_INFINITY) extend(q, reached, move);
      }
    order.pop();
  };
  const nothing = Array.from({ length: sizeLimits.mostItems + 1 }, (_, items) =>
    items === 0 ? 0 : Number.NEGATIVE_INFINITY,
  );
  p.positions.forEach((_, q) => {
    const way = at(t.enter, q);
    if (way > Number.NEGATIVE_INFINITY && way + at(at(at(table, 0), q), 0) + t.constant >= least)
      extend(q, nothing, way);
  });
  return { sets: [...sets.values()].sort((a, b) => b.bound - a.bound || a.key - b.key), walks };
}
