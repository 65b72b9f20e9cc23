import { ProgrammingError } from "../../quantity/programming-error.ts";
import { coverageGain, type Plan, type PlanBlock, type SessionProblem, sizeLimits } from "./problem.ts";
import { compareTies, goesWith, inOrder, type Item, type Order, tieKey } from "./selection.ts";
import { bestTotal, nameOnce, price, priced, type Prices, refund, SURE } from "./prices.ts";
import { permutations, subsets, type Way, waysFrom } from "./ways.ts";

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
const SET_PRICE_STEPS = 14;

/**
 * The best session there is: prices on purposes and minutes bound every set of positions from above; sets are searched in
 * the order of their bounds, items by priced worth, and every order of the positions is judged at each selection. Ends
 * when no bound is left above the plan in hand.
 */
export function solveSession(problem: SessionProblem): SolvedPlan {
  return new Search(problem).run();
}

class Search {
  private readonly items: readonly Item[];
  private readonly ids: readonly string[];
  private readonly nodesOf: SessionProblem["positions"];
  private readonly ways: readonly (readonly (readonly Way[])[])[];
  private readonly byPosition: readonly (readonly Item[])[];
  private readonly baseline: number;
  private readonly must: ReadonlySet<string>;
  private nodes = 0;
  private best: { plan: Plan; worth: number; ties: readonly number[] } | null = null;
  private exhausted = false;
  /** The present look ends at this node, and whether it did. */
  private cap = 0;
  private capped = false;
  private openBound = 0;
  private readonly problem: SessionProblem;

  constructor(problem: SessionProblem) {
    this.problem = problem;
    const { locks } = problem;
    const used = problem.positions.filter(
      (position) =>
        !locks.barPositions.includes(position.id) && problem.options.some((option) => option.position === position.id),
    );
    this.nodesOf = used;
    this.ids = used.map((position) => position.id);
    const drop = new Map(problem.lastTime.map((each) => [each.rung, each.dropCost]));
    this.baseline = -problem.lastTime.reduce((sum, each) => sum + each.dropCost, 0);
    this.must = new Set(locks.mustHave);
    this.items = problem.options
      .filter((option) => this.ids.includes(option.position) && !locks.leaveOut.includes(option.rung))
      .map((option) => ({
        option,
        position: this.ids.indexOf(option.position),
        at: problem.options.indexOf(option),
        units: Int32Array.from(problem.purposes, (purpose) =>
          option.units.reduce((sum, each) => sum + (each.purpose === purpose.id ? each.units : 0), 0),
        ),
        trains: problem.purposes.flatMap((purpose, k) => {
          const units = option.units.reduce((sum, each) => sum + (each.purpose === purpose.id ? each.units : 0), 0);
          return units === 0 ? [] : [{ purpose: k, units }];
        }),
        own: option.worth - option.change.cost + (drop.get(option.rung) ?? 0),
      }));
    this.byPosition = this.ids.map((_, p) => this.items.filter((item) => item.position === p));
    this.ways = this.ids.map((from) => waysFrom(problem, from, this.ids));
  }

  run(): SolvedPlan {
    const sets = subsets(this.ids.length, sizeLimits.positions).flatMap((set) => {
      const orders = this.ordersOf(set);
      return orders.length === 0 || !this.coversMusts(set) ? [] : [{ set, orders }];
    });
    const prices = price(this.problem, this.items, PRICE_STEPS, null);
    const tops = this.ids.map((_, position) => this.topOf(position, prices));
    const bounded = sets
      .map((each) => ({
        ...each,
        bound: this.boundOf(
          each.set,
          each.orders,
          prices,
          each.set.map((p) => tops[p] ?? []),
        ),
      }))
      .sort((a, b) => b.bound - a.bound);
    let open = bounded.map((each) => ({ ...each, tight: null as Prices | null }));
    // First short looks at every promising set, so that there is a plan in hand; then deeper ones at what is still open.
    for (let cap = FIRST_LOOK; open.length > 0; cap *= DEEPER) {
      const unfinished: typeof open = [];
      for (const each of open) {
        if (this.best !== null && each.bound <= this.best.worth - 1e-9) continue;
        const tight = each.tight ?? price(this.problem, this.itemsOf(each.set), SET_PRICE_STEPS, prices);
        const tops = each.set.map((p) => this.topOf(p, tight));
        const bound = Math.min(each.bound, this.boundOf(each.set, each.orders, tight, tops));
        if (this.best !== null && bound <= this.best.worth - 1e-9) continue;
        this.capped = false;
        this.cap = this.nodes + cap;
        if (this.nodes <= NODE_LIMIT) this.searchSet(each.set, each.orders, this.itemsOf(each.set), tight);
        else this.capped = true;
        if (this.capped) unfinished.push({ ...each, bound, tight });
      }
      open = unfinished.sort((x, y) => y.bound - x.bound);
      if (this.nodes > NODE_LIMIT) {
        this.exhausted = true;
        this.openBound = open.reduce((most, each) => Math.max(most, each.bound), 0);
        break;
      }
    }
    if (this.best === null) return { plan: null, status: "empty", worth: 0, gap: 0, nodes: this.nodes };
    const gap = this.exhausted ? Math.max(0, Math.floor(this.openBound) - this.best.worth) : 0;
    return {
      plan: this.best.plan,
      status: this.exhausted && gap > 0 ? "limit" : "proven",
      worth: this.best.worth,
      gap,
      nodes: this.nodes,
    };
  }

  private itemsOf(set: readonly number[]): Item[] {
    return this.items.filter((item) => set.includes(item.position));
  }

  private coversMusts(set: readonly number[]): boolean {
    for (const rung of this.must)
      if (!this.items.some((item) => item.option.rung === rung && set.includes(item.position))) return false;
    return true;
  }

  /** Every order of the positions that the ways, the beginning, the end and the minutes allow. */
  private ordersOf(set: readonly number[]): Order[] {
    const { problem } = this;
    return permutations(set).flatMap((positions): Order[] => {
      const first = this.node(positions[0] ?? 0);
      const last = this.node(positions[positions.length - 1] ?? 0);
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
      for (let k = 1; k < positions.length; k++) {
        const ways = this.ways[positions[k - 1] ?? 0]?.[positions[k] ?? 0] ?? [];
        found = found.flatMap((order) =>
          ways.map((way) => ({
            positions,
            ways: [...order.ways, way],
            cost: order.cost + way.cost,
            halfMinutes: order.halfMinutes + way.halfMinutes,
            strength: order.strength + way.strength,
          })),
        );
      }
      return found.filter(
        (order) =>
          order.halfMinutes < problem.workingHalfMinutes && order.strength + last.wayBack.strength <= problem.strength,
      );
    });
  }

  private node(position: number): SessionProblem["positions"][number] {
    const found = this.nodesOf[position];
    if (found === undefined) throw new ProgrammingError("no such position");
    return found;
  }

  /** The best priced worths of a position, one a rung: more than can be done there are of no use. */
  private topOf(position: number, prices: Prices): number[] {
    const best = new Map<string, number>();
    for (const item of this.byPosition[position] ?? [])
      best.set(nameOnce(item), Math.max(best.get(nameOnce(item)) ?? Number.NEGATIVE_INFINITY, priced(item, prices)));
    return [...best.values()].sort((a, b) => b - a).slice(0, sizeLimits.itemsInPosition);
  }

  /** No session in these positions is worth more than this. @param tops the best priced worths of every position of the set */
  private boundOf(
    set: readonly number[],
    orders: readonly Order[],
    prices: Prices,
    tops: readonly (readonly number[])[],
  ): number {
    let moving = Number.NEGATIVE_INFINITY;
    for (const order of orders) moving = Math.max(moving, -order.cost - prices.minute * order.halfMinutes);
    // One item at least is done in every position of the set.
    const values = tops.flatMap((top) => top.map((value, k) => (k === 0 ? value + SURE : value)));
    values.sort((a, b) => b - a);
    return (
      this.baseline +
      refund(this.problem, prices) +
      moving -
      set.length * this.problem.prices.helperPlace +
      bestTotal(values, set.length, this.problem.prices.itemShort)
    );
  }

  /** Depth first over the items of a set, the most priced worth first; every selection that uses all its positions is judged. */
  private searchSet(set: readonly number[], orders: readonly Order[], own: readonly Item[], prices: Prices): void {
    const { problem } = this;
    const ranked = own
      .map((item) => ({ item, value: priced(item, prices) }))
      .sort((a, b) => b.value - a.value || (a.item.option.id < b.item.option.id ? -1 : 1));
    const sums = ranked.map((_, i) => sumsFrom(ranked, i));
    const leastMinutes = Math.min(...orders.map((order) => order.halfMinutes));
    const leastStrength = Math.min(
      ...orders.map(
        (order) => order.strength + this.node(order.positions[order.positions.length - 1] ?? 0).wayBack.strength,
      ),
    );
    let moving = Number.NEGATIVE_INFINITY;
    for (const order of orders) moving = Math.max(moving, -order.cost - prices.minute * order.halfMinutes);
    const fixed = this.baseline + refund(this.problem, prices) + moving - set.length * problem.prices.helperPlace;
    const short = problem.prices.itemShort;
    const chosen: Item[] = [];
    const inPosition = new Map<number, number>();
    const visit = (from: number, value: number, minutes: number, strength: number): void => {
      this.nodes++;
      const here = fixed + value - short * Math.max(0, sizeLimits.fewestItems - chosen.length);
      if (
        chosen.length >= set.length &&
        (this.best === null || here >= this.best.worth) &&
        set.every((p) => (inPosition.get(p) ?? 0) > 0)
      )
        this.judge(chosen, orders);
      if (chosen.length >= sizeLimits.mostItems) return;
      if (this.nodes > this.cap) {
        this.capped = true;
        return;
      }
      for (let i = from; i < ranked.length; i++) {
        const candidate = ranked[i];
        if (candidate === undefined) break;
        // Bound: the best that can still come, from here on, up to the most items; short sessions cost.
        const rest = sums[i] ?? [];
        let top = Number.NEGATIVE_INFINITY;
        for (let n = chosen.length + 1; n <= sizeLimits.mostItems && n - chosen.length < rest.length; n++)
          top = Math.max(top, (rest[n - chosen.length] ?? 0) - short * Math.max(0, sizeLimits.fewestItems - n));
        if (this.best !== null && fixed + value + top < this.best.worth) break;
        const { item } = candidate;
        if ((inPosition.get(item.position) ?? 0) >= sizeLimits.itemsInPosition) continue;
        if (minutes + item.option.halfMinutes > problem.workingHalfMinutes - leastMinutes) continue;
        if (strength + item.option.strength > problem.strength - leastStrength) continue;
        if (!goesWith(item.option, chosen)) continue;
        chosen.push(item);
        inPosition.set(item.position, (inPosition.get(item.position) ?? 0) + 1);
        visit(i + 1, value + candidate.value, minutes + item.option.halfMinutes, strength + item.option.strength);
        inPosition.set(item.position, (inPosition.get(item.position) ?? 1) - 1);
        chosen.pop();
      }
    };
    visit(0, 0, 0, 0);
  }

  /** Exact worth of a selection in its best order of positions. */
  private judge(chosen: readonly Item[], orders: readonly Order[]): void {
    const { problem } = this;
    for (const rung of this.must) if (!chosen.some((item) => item.option.rung === rung)) return;
    let coverage = 0;
    problem.purposes.forEach((purpose, k) => {
      coverage += coverageGain(
        purpose.need,
        chosen.reduce((sum, item) => sum + (item.units[k] ?? 0), 0),
      );
    });
    const places = new Set(chosen.map((item) => `${item.position}|${item.option.helperPlace}`));
    const base =
      this.baseline +
      coverage +
      chosen.reduce((sum, item) => sum + item.own, 0) -
      places.size * problem.prices.helperPlace -
      Math.max(0, sizeLimits.fewestItems - chosen.length) * problem.prices.itemShort;
    for (const order of orders) {
      let worth = base - order.cost;
      if (this.best !== null && worth < this.best.worth) continue;
      for (const item of chosen) worth -= item.option.freshnessCost * order.positions.indexOf(item.position);
      if (this.best !== null && worth < this.best.worth) continue;
      const blocks = this.fit(chosen, order);
      if (blocks === null) continue;
      const plan: Plan = { blocks };
      const ties = tieKey(chosen, order, plan, problem);
      if (this.best === null || worth > this.best.worth || compareTies(ties, this.best.ties) < 0)
        this.best = { plan, worth, ties };
    }
  }

  /** The blocks of an order, if minutes, strength for the way back at every point, freshness and prerequisites allow it. */
  private fit(chosen: readonly Item[], order: Order): PlanBlock[] | null {
    const { problem } = this;
    const minutes = order.halfMinutes + chosen.reduce((sum, item) => sum + item.option.halfMinutes, 0);
    if (minutes > problem.workingHalfMinutes) return null;
    const blocks: PlanBlock[] = [];
    const done = new Set<string>();
    let spent = 0;
    for (let k = 0; k < order.positions.length; k++) {
      const position = order.positions[k] ?? 0;
      const node = this.node(position);
      if (k === 0) spent += node.entry?.strength ?? 0;
      else {
        const way = order.ways[k];
        if (way === null || way === undefined) return null;
        for (const point of way.points) {
          if (point.threshold !== null && spent + point.before > point.threshold) return null;
          if (spent + point.after + point.wayBack > problem.strength) return null;
        }
        spent += way.strength;
      }
      if (spent + node.wayBack.strength > problem.strength) return null;
      const own = inOrder(chosen.filter((item) => item.position === position));
      for (const item of own) {
        if (item.option.freshnessLimit !== null && spent > item.option.freshnessLimit) return null;
      }
      for (const item of own) {
        if (item.option.prerequisite !== null && !done.has(item.option.prerequisite)) return null;
        done.add(item.option.rung);
      }
      spent += own.reduce((sum, item) => sum + item.option.strength, 0);
      if (spent + node.wayBack.strength > problem.strength) return null;
      blocks.push({
        position: node.id,
        links: [...(order.ways[k]?.links ?? [])],
        options: own.map((item) => item.option.id),
      });
    }
    return blocks;
  }
}

/** The best sums of none, one, two … items from a place in the ranking on, one of each name. */
function sumsFrom(ranked: readonly { readonly item: Item; readonly value: number }[], from: number): number[] {
  const sums = [0];
  const names = new Set<string>();
  for (let i = from; i < ranked.length && sums.length <= sizeLimits.mostItems; i++) {
    const each = ranked[i];
    if (each === undefined || names.has(nameOnce(each.item))) continue;
    names.add(nameOnce(each.item));
    sums.push((sums[sums.length - 1] ?? 0) + each.value);
  }
  return sums;
}
