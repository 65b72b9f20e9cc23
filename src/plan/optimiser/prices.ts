import { coverageGain, type SessionProblem, sizeLimits } from "./problem.ts";
import type { Item } from "./selection.ts";

/** What a unit of each purpose, a half-minute and a hundredth of strength are taken to be worth while bounding. */
export interface Prices {
  readonly purposes: Float64Array;
  readonly minute: number;
  readonly strength: number;
}

/** Worth of an item at these prices. */
export function priced(item: Item, prices: Prices): number {
  const { option } = item;
  let worth = item.own - prices.minute * option.halfMinutes - prices.strength * option.strength;
  for (const { purpose, units } of item.trains) worth += (prices.purposes[purpose] ?? 0) * units;
  return worth;
}

/** Units of a purpose beyond which nothing more is gained. */
const GAINING = 4;
/** A unit is first priced at this share of what the first one is worth. */
const START = 0.4;
/** Points by units of every purpose: none, one … four. */
export type Gains = readonly Float64Array[];
export function gainsOf(problem: SessionProblem): Gains {
  return problem.purposes.map((purpose) =>
    Float64Array.from({ length: GAINING + 1 }, (_, units) => coverageGain(purpose.need, units)),
  );
}

/** The most a purpose can be worth beyond the price of its units, if at least so many are done. */
export function beyond(gain: Float64Array, price: number, least: number): number {
  let best = (gain[Math.min(least, GAINING)] ?? 0) - price * least;
  for (let units = least + 1; units <= GAINING; units++) best = Math.max(best, (gain[units] ?? 0) - price * units);
  return best;
}

/** What the prices give back: the minutes and the strength of the day, and what each purpose could be worth beyond its price. */
export function refund(problem: SessionProblem, gains: Gains, prices: Prices): number {
  let sum = prices.minute * problem.workingHalfMinutes + prices.strength * problem.strength;
  gains.forEach((gain, k) => {
    sum += beyond(gain, prices.purposes[k] ?? 0, 0);
  });
  return sum;
}

/** What moving takes at least, whatever is done. */
export interface Moving {
  readonly halfMinutes: number;
  readonly strength: number;
}

/** Prices that push the bound down, by subgradient steps on the relaxation that forgets positions. Any prices bound truly. */
export function price(
  problem: SessionProblem,
  gains: Gains,
  groups: readonly (readonly Item[])[],
  moving: Moving,
  steps: number,
  from: Prices | null,
): Prices {
  const purposes =
    from === null
      ? Float64Array.from(problem.purposes, (purpose) => purpose.need * START)
      : Float64Array.from(from.purposes);
  let minute = from === null ? 2 : from.minute;
  let strength = from === null ? 0 : from.strength;
  let best: Prices = { purposes: Float64Array.from(purposes), minute, strength };
  let least = Number.POSITIVE_INFINITY;
  const got = new Float64Array(purposes.length);
  const top = new TopItems(sizeLimits.mostItems);
  for (let step = 0; step < steps; step++) {
    const now: Prices = { purposes, minute, strength };
    top.clear();
    for (const group of groups) {
      let value = Number.NEGATIVE_INFINITY;
      let best: Item | null = null;
      for (const item of group) {
        const worth = priced(item, now);
        if (worth > value) {
          value = worth;
          best = item;
        }
      }
      if (best !== null) top.offer(best, value);
    }
    got.fill(0);
    let bound = refund(problem, gains, now) - minute * moving.halfMinutes - strength * moving.strength;
    let halfMinutes = moving.halfMinutes;
    let tired = moving.strength;
    for (let k = 0; k < top.count; k++) {
      const item = top.items[k];
      const value = top.values[k] ?? 0;
      if (item === undefined || (value <= 0 && k >= sizeLimits.fewestItems)) continue;
      bound += value;
      halfMinutes += item.option.halfMinutes;
      tired += item.option.strength;
      for (const { purpose, units } of item.trains) got[purpose] = (got[purpose] ?? 0) + units;
    }
    if (bound < least) {
      least = bound;
      best = { purposes: Float64Array.from(purposes), minute, strength };
    }
    const size = 12 / (1 + step * 0.25);
    minute = Math.max(0, minute - (size * (problem.workingHalfMinutes - halfMinutes)) / 150);
    strength = Math.max(0, strength - (size * (problem.strength - tired)) / 300);
    gains.forEach((gain, k) => {
      const price = purposes[k] ?? 0;
      let wanted = 0;
      let most = 0;
      for (let units = 1; units <= GAINING; units++) {
        const value = (gain[units] ?? 0) - price * units;
        if (value > most) {
          most = value;
          wanted = units;
        }
      }
      purposes[k] = Math.max(0, price + (size * (wanted - (got[k] ?? 0))) / 2);
    });
  }
  return best;
}

/** The few items of most worth, best first. */
class TopItems {
  readonly items: Item[] = [];
  readonly values: Float64Array;
  count = 0;
  private readonly most: number;

  constructor(most: number) {
    this.most = most;
    this.values = new Float64Array(most + 1);
  }

  clear(): void {
    this.count = 0;
  }

  offer(item: Item, value: number): void {
    let k = this.count;
    while (k > 0 && (this.values[k - 1] ?? 0) < value) {
      const before = this.items[k - 1];
      if (before !== undefined) this.items[k] = before;
      this.values[k] = this.values[k - 1] ?? 0;
      k--;
    }
    if (k >= this.most) return;
    this.items[k] = item;
    this.values[k] = value;
    this.count = Math.min(this.count + 1, this.most);
  }
}
