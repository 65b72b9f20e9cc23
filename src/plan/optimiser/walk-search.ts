import type { JudgedBest } from "./judged-best.ts";
import { beyond, priced, type Prices } from "./prices.ts";
import { sizeLimits } from "./problem.ts";
import { goesWith, type Item, type Order } from "./selection.ts";
import { nodeOf, type Task } from "./task.ts";

/** Bounds are sums of fractions, worths are whole: what lies this near below is looked at. */
export const NEAR = 1e-6;
const { mostItems, fewestItems, itemsInPosition } = sizeLimits;
/** Units of a purpose kept in tables; more are worth no more. */
const UNITS = 40;

const NO_VALUES = new Float64Array(0);

/** Prices with what units of every purpose are worth, and what the prices give back, by units done. */
export interface PricedUnits {
  readonly prices: Prices;
  readonly gains: readonly Float64Array[];
  readonly refunds: readonly Float64Array[];
}

export function priceUnits(task: Task, prices: Prices): PricedUnits {
  return {
    prices,
    gains: task.gains.map((gain) =>
      Float64Array.from({ length: UNITS }, (_, units) => gain[Math.min(units, gain.length - 1)] ?? 0),
    ),
    refunds: task.gains.map((gain, k) =>
      Float64Array.from({ length: UNITS }, (_, units) => beyond(gain, prices.purposes[k] ?? 0, units)),
    ),
  };
}

/**
 * What can be done in an order of positions: what must come first can be there in time. The most priced worth first, save
 * that what must come first stands before what needs it.
 */
function rankedOf(task: Task, set: readonly number[], prices: Prices): Ranked[] {
  const found: Ranked[] = [];
  let ordered = false;
  set.forEach((p, late) => {
    for (const item of task.byPosition[p] ?? []) {
      const value = priced(item, prices) - late * item.option.freshnessCost;
      found.push({ item, late, value, key: value, rank: 2 });
      ordered ||= item.option.prerequisite !== null;
    }
  });
  const possible = ordered ? inTime(found) : found;
  return possible.sort((a, b) => b.key - a.key || a.rank - b.rank || (a.item.option.id < b.item.option.id ? -1 : 1));
}

interface Ranked {
  readonly item: Item;
  /** Number of its position in the order. */
  readonly late: number;
  readonly value: number;
  /** Its own value, or that of the best that needs it; and who comes first among equals. */
  key: number;
  rank: number;
}

/** Leaves out what needs something that cannot be there in time, and lifts what is needed to what needs it. */
function inTime(all: readonly Ranked[]): Ranked[] {
  let found = [...all];
  for (let before = -1; before !== found.length; ) {
    before = found.length;
    const since = new Map<string, number>();
    for (const { item, late } of found)
      since.set(item.option.rung, Math.min(late, since.get(item.option.rung) ?? late));
    found = found.filter(({ item, late }) => {
      const first = item.option.prerequisite;
      return first === null || (since.get(first) ?? Number.POSITIVE_INFINITY) <= late;
    });
  }
  const keys = new Map<string, number>();
  // Twice, so that a chain of three is in order too.
  for (let round = 0; round < 2; round++)
    for (const { item, value } of found) {
      const { rung, prerequisite } = item.option;
      if (prerequisite === null) continue;
      const own = Math.max(value, keys.get(rung) ?? value);
      keys.set(prerequisite, Math.max(own, keys.get(prerequisite) ?? own));
    }
  for (const each of found) {
    const key = keys.get(each.item.option.rung);
    if (key === undefined) continue;
    each.key = Math.max(each.value, key);
    each.rank = each.item.option.prerequisite === null ? 0 : 1;
  }
  return found;
}

/** One order of a set of positions, with every way to go it, cheapest first. */
export interface Walk {
  readonly positions: readonly number[];
  readonly orders: readonly Order[];
}

/** The ways of a set's orders put together by order. */
export function walksOf(orders: readonly Order[]): Walk[] {
  const walks = new Map<string, { readonly positions: readonly number[]; readonly orders: Order[] }>();
  for (const order of orders) {
    const key = order.positions.join();
    const known = walks.get(key);
    if (known === undefined) walks.set(key, { positions: order.positions, orders: [order] });
    else known.orders.push(order);
  }
  return [...walks.values()];
}

/** What the moves of an order cost at least at these prices. */
export function movingOf(task: Task, { positions, orders }: Walk, prices: Prices): number {
  const back = nodeOf(task, positions[positions.length - 1] ?? 0).wayBack.strength;
  let least = Number.POSITIVE_INFINITY;
  for (const order of orders)
    least = Math.min(least, order.cost + prices.minute * order.halfMinutes + prices.strength * (order.strength + back));
  return least;
}

/**
 * All selections in one order of positions that could be worth as much as the plan in hand: depth first over items, the most
 * priced worth first. The bound of a selection: its priced worth, the best that can still come, and of what the prices give
 * back only what can still be had: a purpose already past its price gives back less.
 */
export class WalkSearch {
  private readonly task: Task;
  private readonly walk: Walk;
  private readonly best: JudgedBest;
  private readonly size: number;
  private readonly items: readonly Item[];
  private readonly values: Float64Array;
  /** The same without what its units are priced at. */
  private readonly plain: Float64Array;
  private readonly names: Int32Array;
  /** What units of a purpose are really worth: gains[purpose][units]. */
  private readonly gains: readonly Float64Array[];
  /** By rank of the next item and number chosen: the most that can still come, too few items charged. */
  private coming: Float64Array = NO_VALUES;
  private readonly at: Int8Array;
  /** What a purpose gives back by units done: refunds[purpose][units]. */
  private readonly refunds: readonly Float64Array[];
  private readonly fixed: number;
  private readonly refund: number;
  /** Nothing in this order is worth more than this. */
  readonly bound: number;
  private readonly roomMinutes: number;
  private readonly roomStrength: number;
  private readonly chosen: Item[] = [];
  private readonly inPosition: Int8Array;
  private readonly units: Int32Array;
  private nodes = 0;
  private cap = 0;
  private capped = false;

  /** @param moving what its moves cost at least at these prices */
  constructor(task: Task, walk: Walk, moving: number, at: PricedUnits, best: JudgedBest) {
    const { problem } = task;
    const { prices } = at;
    const set = walk.positions;
    this.task = task;
    this.walk = walk;
    this.best = best;
    this.size = set.length;
    const ranked = rankedOf(task, set, prices);
    this.items = ranked.map(({ item }) => item);
    const size = ranked.length;
    this.values = new Float64Array(size);
    this.plain = new Float64Array(size);
    this.names = new Int32Array(size);
    this.at = new Int8Array(size);
    for (let i = 0; i < size; i++) {
      const each = ranked[i];
      if (each === undefined) break;
      const { option, own, name } = each.item;
      this.values[i] = each.value;
      this.plain[i] =
        own - each.late * option.freshnessCost - prices.minute * option.halfMinutes - prices.strength * option.strength;
      this.names[i] = name;
      this.at[i] = each.late;
    }
    this.gains = at.gains;
    this.refunds = at.refunds;
    this.refund = at.refunds.reduce((sum, row) => sum + (row[0] ?? 0), 0);
    this.fixed = task.baseline - set.length * problem.prices.helperPlace;
    this.fixed += prices.minute * problem.workingHalfMinutes + prices.strength * problem.strength;
    let leastMinutes = Number.POSITIVE_INFINITY;
    let leastStrength = Number.POSITIVE_INFINITY;
    const back = nodeOf(task, set[set.length - 1] ?? 0).wayBack.strength;
    for (const order of walk.orders) {
      leastMinutes = Math.min(leastMinutes, order.halfMinutes);
      leastStrength = Math.min(leastStrength, order.strength + back);
    }
    this.fixed -= moving;
    this.roomMinutes = problem.workingHalfMinutes - leastMinutes;
    this.roomStrength = problem.strength - leastStrength;
    this.bound = this.fixed + this.refund + this.mostOfAll();
    this.inPosition = new Int8Array(set.length);
    this.units = new Int32Array(problem.purposes.length);
  }

  /** Looks at up to so many selections. @returns how many, and whether that was all of them */
  look(cap: number): { readonly nodes: number; readonly whole: boolean } {
    if (this.coming.length === 0) this.coming = this.tableOfComing();
    this.nodes = 0;
    this.cap = cap;
    this.capped = false;
    this.visit(0, this.fixed + this.refund, this.fixed, 0, 0, this.size);
    return { nodes: this.nodes, whole: !this.capped };
  }

  /**
   * @param worth bound of what is chosen, too few items aside; @param exact what it is worth if nothing more comes;
   * @param empty positions of the set without an item
   */
  private visit(from: number, worth: number, exact: number, minutes: number, strength: number, empty: number): void {
    this.nodes++;
    const { chosen, items, best } = this;
    const { itemShort, helperPlace } = this.task.problem.prices;
    const count = chosen.length;
    if (empty === 0 && exact - itemShort * Math.max(0, fewestItems - count) >= best.worth - NEAR)
      best.offer(chosen, this.walk.orders);
    if (count >= mostItems) return;
    if (this.nodes > this.cap) {
      this.capped = true;
      return;
    }
    for (let i = from; i < items.length; i++) {
      if (worth + (this.coming[i * (mostItems + 1) + count] ?? 0) < best.worth - NEAR) break;
      const item = items[i];
      if (item === undefined) break;
      const { option } = item;
      const p = this.at[i] ?? 0;
      const here = this.inPosition[p] ?? 0;
      if (here >= itemsInPosition) continue;
      const stillEmpty = here === 0 ? empty - 1 : empty;
      if (count + 1 + stillEmpty > mostItems) continue;
      if (minutes + option.halfMinutes > this.roomMinutes || strength + option.strength > this.roomStrength) continue;
      let next = worth + (this.values[i] ?? 0);
      let nextExact = exact + (this.plain[i] ?? 0);
      for (const { purpose, units } of item.trains) {
        const before = Math.min(this.units[purpose] ?? 0, UNITS - 1);
        const after = Math.min(before + units, UNITS - 1);
        const row = this.refunds[purpose];
        const gain = this.gains[purpose];
        next += (row?.[after] ?? 0) - (row?.[before] ?? 0);
        nextExact += (gain?.[after] ?? 0) - (gain?.[before] ?? 0);
      }
      if (here > 0 && !this.helperIsAt(item)) {
        next -= helperPlace;
        nextExact -= helperPlace;
      }
      // What may still come after it, or nothing more: the table knows the charge for too few.
      const rest = this.coming[(i + 1) * (mostItems + 1) + count + 1] ?? 0;
      if (next + rest < best.worth - NEAR) continue;
      if (!goesWith(option, chosen) || !this.firstIsDone(option)) continue;
      chosen.push(item);
      this.inPosition[p] = here + 1;
      for (const { purpose, units } of item.trains) this.units[purpose] = (this.units[purpose] ?? 0) + units;
      this.visit(i + 1, next, nextExact, minutes + option.halfMinutes, strength + option.strength, stillEmpty);
      for (const { purpose, units } of item.trains) this.units[purpose] = (this.units[purpose] ?? 0) - units;
      this.inPosition[p] = here;
      chosen.pop();
    }
  }

  /** The most that items can bring: one in every position, then the best of all; too few charged. */
  private mostOfAll(): number {
    const short = this.task.problem.prices.itemShort;
    const taken = new Set<number>();
    // One of a name in a position; the same name in two positions is let pass, which bounds truly.
    const key = (i: number) => (this.names[i] ?? 0) * this.size + (this.at[i] ?? 0);
    const room = new Int8Array(this.size).fill(itemsInPosition);
    let sum = 0;
    const byValue = [...this.items.keys()].sort((a, b) => (this.values[b] ?? 0) - (this.values[a] ?? 0));
    for (const i of byValue) {
      const p = this.at[i] ?? 0;
      if (room[p] !== itemsInPosition) continue;
      room[p] = itemsInPosition - 1;
      sum += this.values[i] ?? 0;
      taken.add(i);
    }
    if (taken.size < this.size) return Number.NEGATIVE_INFINITY;
    const names = new Set<number>();
    for (const i of taken) names.add(key(i));
    let count = this.size;
    let best = sum - short * Math.max(0, fewestItems - count);
    for (const i of byValue) {
      const p = this.at[i] ?? 0;
      if (count >= mostItems) break;
      if (taken.has(i) || (room[p] ?? 0) === 0 || names.has(key(i))) continue;
      names.add(key(i));
      room[p] = (room[p] ?? 0) - 1;
      sum += this.values[i] ?? 0;
      count++;
      best = Math.max(best, sum - short * Math.max(0, fewestItems - count));
    }
    return best;
  }

  /** What must come first stands before it in the ranking: it is chosen by now or never. */
  private firstIsDone(option: Item["option"]): boolean {
    if (option.prerequisite === null) return true;
    for (const other of this.chosen) if (other.option.rung === option.prerequisite) return true;
    return false;
  }

  private helperIsAt(item: Item): boolean {
    for (const other of this.chosen)
      if (other.position === item.position && other.option.helperPlace === item.option.helperPlace) return true;
    return false;
  }

  private tableOfComing(): Float64Array {
    const { items, values } = this;
    const width = mostItems + 1;
    const table = new Float64Array((items.length + 1) * width);
    const short = this.task.problem.prices.itemShort;
    // From the last on: the best of each name so far, the best first.
    const tops: { name: number; value: number }[] = [];
    for (let from = items.length; from >= 0; from--) {
      if (from < items.length) keepBest(tops, this.names[from] ?? 0, values[from] ?? 0);
      const row = from * width;
      for (let count = 0; count < width; count++) {
        let sum = 0;
        let best = -short * Math.max(0, fewestItems - count);
        for (let more = 1; more <= tops.length && count + more < width; more++) {
          sum += tops[more - 1]?.value ?? 0;
          best = Math.max(best, sum - short * Math.max(0, fewestItems - count - more));
        }
        table[row + count] = best;
      }
    }
    return table;
  }
}

/** Keeps the best of each name, the best first, as many as there can be items. */
function keepBest(tops: { name: number; value: number }[], name: number, value: number): void {
  const known = tops.findIndex((top) => top.name === name);
  if (known >= 0) {
    if ((tops[known]?.value ?? value) >= value) return;
    tops.splice(known, 1);
  }
  const place = tops.findIndex((top) => top.value < value);
  if (place < 0) tops.push({ name, value });
  else tops.splice(place, 0, { name, value });
  if (tops.length > mostItems) tops.pop();
}
