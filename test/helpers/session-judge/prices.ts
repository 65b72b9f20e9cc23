import { at, POINT, type Choice, type Prepared } from "./prepare.ts";
import { sizeLimits } from "../../../src/plan/optimiser/problem.ts";

/** What a unit of each purpose, a half-minute and a hundredth of strength are charged [hundredths of a point]; whole, never negative. */
export interface PriceList {
  readonly units: readonly number[];
  readonly halfMinute: number;
  readonly strength: number;
}
interface Picked {
  /** worth[j]: best priced worth of j things done here. */
  readonly worth: readonly number[];
  readonly choices: readonly Choice[];
}
/** Everything priced once, ready to bound any walk: no plan can be worth more than its bound, whatever the prices. */
export interface Priced {
  readonly prices: PriceList;
  readonly choice: ReadonlyMap<Choice, number>;
  readonly constant: number;
  /** open[k][u]: most that purpose k can still bring beyond its price, once u units are in. */
  readonly open: readonly (readonly number[])[];
  readonly picked: readonly (readonly Picked[])[];
  readonly enter: readonly number[];
  readonly move: readonly (readonly number[])[];
  readonly end: readonly number[];
}
export interface Relaxed {
  readonly bound: number;
  readonly order: readonly number[];
  readonly counts: readonly number[];
}

const NEVER = Number.NEGATIVE_INFINITY;
export const shortCost = (p: Prepared, items: number): number =>
  POINT * p.problem.prices.itemShort * Math.max(0, sizeLimits.fewestItems - items);

export function price(p: Prepared, prices: PriceList): Priced {
  const { problem } = p;
  const choice = new Map<Choice, number>();
  for (const rung of p.rungs)
    for (const c of rung.choices) {
      let value = POINT * c.net - prices.halfMinute * c.option.halfMinutes - prices.strength * c.option.strength;
      for (const [purpose, units] of c.units) value += at(prices.units, purpose) * units;
      choice.set(c, value);
    }
  const open = p.gains.map((gain, k) => {
    const each = at(prices.units, k);
    return gain.map((_, used) =>
      Math.max(...gain.slice(used).map((points, more) => POINT * points - each * (used + more))),
    );
  });
  const picked = p.positions.map((_, place) => {
    const steady = at(p.rungsAt, place).every((r) => r.choices.every((c) => c.option.freshnessCost === 0));
    const first = pick(p, choice, place, 0);
    return [0, 1, 2, 3].map((block) => (steady || block === 0 ? first : pick(p, choice, place, block)));
  });
  const priceWay = (way: { halfMinutes: number; strength: number; cost: number }) =>
    -POINT * way.cost - prices.halfMinute * way.halfMinutes - prices.strength * way.strength;
  return {
    prices,
    choice,
    open,
    picked,
    constant:
      prices.halfMinute * problem.workingHalfMinutes +
      prices.strength * problem.strength +
      POINT * p.base +
      open.reduce((sum, k) => sum + at(k, 0), 0),
    enter: p.entry.map((way) => (way === null || way.cap < 0 ? NEVER : priceWay(way))),
    move: p.paths.map((row) => row.map((ways) => ways.reduce((best, way) => Math.max(best, priceWay(way)), NEVER))),
    end: p.positions.map((q) => (q.canEnd ? priceWay({ ...q.wayBack, cost: 0 }) : NEVER)),
  };
}

function pick(p: Prepared, value: ReadonlyMap<Choice, number>, place: number, block: number): Picked {
  const ranked = at(p.rungsAt, place).map((rung) => {
    let best = at(rung.choices, 0);
    let worth = NEVER;
    for (const c of rung.choices) {
      const v = (value.get(c) ?? 0) - POINT * c.option.freshnessCost * block;
      if (v > worth) {
        worth = v;
        best = c;
      }
    }
    return { worth, best, activity: rung.activity };
  });
  ranked.sort((a, b) => b.worth - a.worth || a.best.rung - b.best.rung);
  const worth = [NEVER];
  const choices: Choice[] = [];
  const ofActivity = new Map<string, number>();
  let sum = -POINT * p.problem.prices.helperPlace;
  for (const each of ranked) {
    const before = ofActivity.get(each.activity) ?? 0;
    if (before === sizeLimits.rungsOfActivity) continue;
    ofActivity.set(each.activity, before + 1);
    sum += each.worth;
    worth.push(sum);
    choices.push(each.best);
    if (choices.length === sizeLimits.itemsInPosition) break;
  }
  return { worth, choices };
}

/** completion[block][place][items]: most that can follow on entering `place` as that block with so many items done. */
export type Completion = readonly (readonly (readonly number[])[])[];
export function completions(p: Prepared, t: Priced): Completion {
  const size = p.positions.length;
  const table: number[][][] = [];
  for (let block = sizeLimits.positions - 1; block >= 0; block -= 1) {
    const next = table[0];
    // Best onward value from each place for each count, found once per place rather than per number of things done there.
    const onward = p.positions.map((_, place) =>
      Array.from({ length: sizeLimits.mostItems + 1 }, (_, items) => {
        let best = at(t.end, place) - shortCost(p, items);
        if (next && items < sizeLimits.mostItems) {
          const row = at(t.move, place);
          for (let to = 0; to < size; to += 1)
            if (to !== place) best = Math.max(best, at(row, to) + at(at(next, to), items));
        }
        return best;
      }),
    );
    table.unshift(
      p.positions.map((_, place) =>
        Array.from({ length: sizeLimits.mostItems }, (_, items) => {
          const { worth } = at(at(t.picked, place), block);
          let best = NEVER;
          for (let n = 1; n < worth.length && items + n <= sizeLimits.mostItems; n += 1)
            best = Math.max(best, at(worth, n) + at(at(onward, place), items + n));
          return best;
        }),
      ),
    );
  }
  return table;
}

/** Bound and relaxed plan of the whole problem (a walk may come back to a position, each thing priced by itself). */
export function relaxAll(p: Prepared, t: Priced): Relaxed {
  const table = completions(p, t);
  const order: number[] = [];
  const counts: number[] = [];
  let bound = NEVER;
  let place = -1;
  p.positions.forEach((_, q) => {
    const value = at(t.enter, q) + at(at(at(table, 0), q), 0);
    if (value > bound) {
      bound = value;
      place = q;
    }
  });
  let items = 0;
  for (let block = 0; place >= 0 && block < sizeLimits.positions; block += 1) {
    const { worth } = at(at(t.picked, place), block);
    const next = table[block + 1];
    let best = NEVER,
      chosen = 1,
      to = -1;
    for (let n = 1; n < worth.length && items + n <= sizeLimits.mostItems; n += 1) {
      const here = at(worth, n);
      const stop = here + at(t.end, place) - shortCost(p, items + n);
      if (stop > best) {
        best = stop;
        chosen = n;
        to = -1;
      }
      if (next && items + n < sizeLimits.mostItems)
        for (let q = 0; q < p.positions.length; q += 1) {
          if (q === place) continue;
          const go = here + at(at(t.move, place), q) + at(at(next, q), items + n);
          if (go > best) {
            best = go;
            chosen = n;
            to = q;
          }
        }
    }
    order.push(place);
    counts.push(chosen);
    items += chosen;
    place = to;
  }
  return { bound: bound + t.constant, order, counts };
}

/** Bound of walks over given orders of one set of positions. */
export function relaxOrders(p: Prepared, t: Priced, orders: readonly (readonly number[])[]): Relaxed {
  let result: Relaxed = { bound: NEVER, order: [], counts: [] };
  for (const order of orders) {
    let way = at(t.enter, at(order, 0)) + at(t.end, at(order, order.length - 1));
    for (let b = 1; b < order.length; b += 1) way += at(at(t.move, at(order, b - 1)), at(order, b));
    if (way === NEVER) continue;
    const counts: number[] = [];
    const extend = (block: number, items: number, value: number): void => {
      if (block === order.length) {
        const bound = value - shortCost(p, items);
        if (bound > result.bound) result = { bound, order, counts: [...counts] };
        return;
      }
      const { worth } = at(at(t.picked, at(order, block)), block);
      for (let n = 1; n < worth.length && items + n + (order.length - 1 - block) <= sizeLimits.mostItems; n += 1) {
        counts[block] = n;
        extend(block + 1, items + n, value + at(worth, n));
      }
    };
    extend(0, 0, way);
  }
  return { ...result, bound: result.bound + t.constant };
}

/** Walks the prices downhill: dearer where the relaxed plan overspends, cheaper where it has some over. */
export function findPrices(
  p: Prepared,
  start: PriceList,
  steps: number,
  target: number | null,
  relax: (t: Priced) => Relaxed,
): { readonly priced: Priced; readonly bound: number } {
  const SCALE = 16;
  let units = [...start.units],
    halfMinute = start.halfMinute,
    strength = start.strength;
  let best: { priced: Priced; bound: number } | null = null;
  let eager = 1,
    stale = 0;
  for (let step = 0; step <= steps; step += 1) {
    const priced = price(p, { units: units.map(whole), halfMinute: whole(halfMinute), strength: whole(strength) });
    const { bound, order, counts } = relax(priced);
    stale += 1;
    if (best === null || bound < best.bound) {
      best = { priced, bound };
      stale = 0;
    } else if (stale >= 6) {
      eager /= 2;
      stale = 0;
    }
    if (bound === NEVER || step === steps || (target !== null && bound < target)) break;
    const used = p.gains.map(() => 0);
    let minutes = -p.problem.workingHalfMinutes,
      spent = -p.problem.strength;
    order.forEach((place, block) => {
      for (const c of at(at(priced.picked, place), block).choices.slice(0, at(counts, block))) {
        minutes += c.option.halfMinutes;
        spent += c.option.strength;
        for (const [k, n] of c.units) used[k] = at(used, k) + n;
      }
      const ways = block === 0 ? [at(p.entry, place)] : at(at(p.paths, at(order, block - 1)), place);
      let chosen = NEVER,
        way = { halfMinutes: 0, strength: 0 };
      for (const w of ways) {
        if (w === null) continue;
        const value = -POINT * w.cost - priced.prices.halfMinute * w.halfMinutes - priced.prices.strength * w.strength;
        if (value > chosen) {
          chosen = value;
          way = w;
        }
      }
      minutes += way.halfMinutes;
      spent += way.strength;
    });
    const back = at(p.positions, order[order.length - 1] ?? 0).wayBack;
    minutes += back.halfMinutes;
    spent += back.strength;
    const wanted = p.gains.map((gain, k) =>
      gain.reduce(
        (top, points, n) =>
          POINT * points - at(priced.prices.units, k) * n > POINT * at(gain, top) - at(priced.prices.units, k) * top
            ? n
            : top,
        0,
      ),
    );
    const slope = used.map((n, k) => n - at(wanted, k));
    const length = slope.reduce((sum, g) => sum + g * g, 0) + (minutes * minutes + spent * spent) / (SCALE * SCALE);
    if (length === 0) break;
    const goal = target ?? best.bound - Math.abs(best.bound) * 0.1;
    const stride = (eager * Math.max(bound - goal, POINT)) / length;
    units = units.map((u, k) => Math.max(0, u - stride * at(slope, k)));
    halfMinute = Math.max(0, halfMinute + (stride * minutes) / (SCALE * SCALE));
    strength = Math.max(0, strength + (stride * spent) / (SCALE * SCALE));
  }
  return best ?? { priced: price(p, start), bound: NEVER };
}
const whole = (x: number): number => Math.max(0, Math.round(x));
