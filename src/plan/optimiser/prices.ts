import { coverageGain, type SessionProblem, sizeLimits } from "./problem.ts";
import type { Item } from "./selection.ts";

/** What a unit of each purpose and a half-minute are taken to be worth while bounding. */
export interface Prices {
  readonly purposes: Float64Array;
  readonly minute: number;
}
/** Worth of an item at these prices. */
export function priced(item: Item, prices: Prices): number {
  let worth = item.own - prices.minute * item.option.halfMinutes;
  for (const { purpose, units } of item.trains) worth += (prices.purposes[purpose] ?? 0) * units;
  return worth;
}

/** Of items with the same name only one is done: a rung at two doses, or a pair of substitutes. */
export const nameOnce = (item: Item): string => item.option.substitutes ?? item.option.rung;

/** What the prices give back: minutes of the day at their price, and the best each purpose could be worth beyond it. */
export function refund(problem: SessionProblem, prices: Prices): number {
  let sum = prices.minute * problem.workingHalfMinutes;
  problem.purposes.forEach((purpose, k) => {
    let best = 0;
    for (let units = 1; units <= 4; units++)
      best = Math.max(best, coverageGain(purpose.need, units) - (prices.purposes[k] ?? 0) * units);
    sum += best;
  });
  return sum;
}

/** Prices that push the bound down, by subgradient steps on the relaxation without moves. Any prices bound truly. */
export function price(problem: SessionProblem, items: readonly Item[], steps: number, from: Prices | null): Prices {
  const purposes =
    from === null
      ? Float64Array.from(problem.purposes, (purpose) => purpose.need * 0.4)
      : Float64Array.from(from.purposes);
  let minute = from === null ? 2 : from.minute;
  let best: Prices = { purposes: Float64Array.from(purposes), minute };
  let least = Number.POSITIVE_INFINITY;
  for (let step = 0; step < steps; step++) {
    const now: Prices = { purposes, minute };
    const byName = new Map<string, { item: Item; value: number }>();
    for (const item of items) {
      const value = priced(item, now);
      const name = nameOnce(item);
      const known = byName.get(name);
      if (known === undefined || value > known.value) byName.set(name, { item, value });
    }
    const chosen = [...byName.values()]
      .sort((a, b) => b.value - a.value)
      .slice(0, sizeLimits.mostItems)
      .filter((each, k) => each.value > 0 || k < sizeLimits.fewestItems);
    const bound = refund(problem, now) + chosen.reduce((sum, each) => sum + each.value, 0);
    if (bound < least) {
      least = bound;
      best = { purposes: Float64Array.from(purposes), minute };
    }
    const size = 12 / (1 + step * 0.25);
    const slack = problem.workingHalfMinutes - chosen.reduce((sum, each) => sum + each.item.option.halfMinutes, 0);
    minute = Math.max(0, minute - (size * slack) / 150);
    problem.purposes.forEach((purpose, k) => {
      const price = purposes[k] ?? 0;
      let wanted = 0;
      let gain = 0;
      for (let units = 1; units <= 4; units++) {
        const value = coverageGain(purpose.need, units) - price * units;
        if (value > gain) {
          gain = value;
          wanted = units;
        }
      }
      const got = chosen.reduce((sum, each) => sum + (each.item.units[k] ?? 0), 0);
      purposes[k] = Math.max(0, price + (size * (wanted - got)) / 2);
    });
  }
  return best;
}

/** Lifts the values that are sure to be taken above all others while they are sorted. */
export const SURE = 1e6;
/** The best sum of the first values for 5 to 7 items (fewer cost), the first of each position being sure. */
export function bestTotal(values: readonly number[], sure: number, short: number): number {
  let sum = 0;
  let best = Number.NEGATIVE_INFINITY;
  values.slice(0, sizeLimits.mostItems).forEach((raw, k) => {
    sum += raw > SURE / 2 ? raw - SURE : raw;
    const count = k + 1;
    if (count >= sure) best = Math.max(best, sum - short * Math.max(0, sizeLimits.fewestItems - count));
  });
  return best;
}
