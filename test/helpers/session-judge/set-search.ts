import { evaluate, type Evaluation } from "../../../src/plan/optimiser/evaluate.ts";
import { ProgrammingError } from "../../../src/quantity/programming-error.ts";
import { at, byName, POINT, type Choice, type Path, type Prepared, type Rung } from "./prepare.ts";
import { shortCost, type Priced } from "./prices.ts";
import { type Plan, sizeLimits } from "../../../src/plan/optimiser/problem.ts";

export interface Held {
  readonly plan: Plan;
  readonly judged: Evaluation;
}
/** The plan in hand and the work done so far. */
export interface Search {
  held: Held | null;
  nodes: number;
  leaves: number;
}
const NEVER = Number.NEGATIVE_INFINITY;

/** Whether a bound [hundredths of a point] still reaches the plan in hand; equal ones are looked at too, for the order among equals. */
export const reaches = (search: Search, bound: number): boolean =>
  bound > NEVER && (search.held === null || bound >= POINT * search.held.judged.worth.total);

/** Looks through all plans over one set of positions, depth first; false where the cap on nodes ended it. */
export function searchSet(
  p: Prepared,
  t: Priced,
  orders: readonly (readonly number[])[],
  cap: number,
  search: Search,
): boolean {
  const places = [...at(orders, 0)].sort((a, b) => a - b);
  const earliest = new Map(places.map((q) => [q, Math.min(...orders.map((o) => o.indexOf(q)))]));
  const way = Math.max(
    ...orders.map((o) =>
      o.reduce(
        (sum, q, b) => sum + (b === 0 ? at(t.enter, q) : at(at(t.move, at(o, b - 1)), q)),
        at(t.end, at(o, o.length - 1)),
      ),
    ),
  );
  if (way === NEVER) return true;
  const leastOf = (part: (path: Path) => number) =>
    Math.min(
      ...orders.map((o) =>
        o.reduce(
          (sum, q, b) =>
            sum + (b === 0 ? part(entryOf(p, q)) : Math.min(...at(at(p.paths, at(o, b - 1)), q).map(part))),
          0,
        ),
      ),
    );
  const lastOf = (part: (q: number) => number) => Math.min(...orders.map((o) => part(at(o, o.length - 1))));
  const minutesLeft =
    p.problem.workingHalfMinutes -
    leastOf((w) => w.halfMinutes) -
    lastOf((q) => at(p.positions, q).wayBack.halfMinutes);
  const strengthLeft =
    p.problem.strength - leastOf((w) => w.strength) - lastOf((q) => at(p.positions, q).wayBack.strength);
  const leastCost = leastOf((w) => w.cost);

  const worthOf = (c: Choice) =>
    (t.choice.get(c) ?? 0) - POINT * c.option.freshnessCost * (earliest.get(at(p.rungs, c.rung).position) ?? 0);
  let pool: Rung[] = places.flatMap((q) => at(p.rungsAt, q));
  for (let before = -1; before !== pool.length; ) {
    before = pool.length;
    const known = new Set(pool.map((r) => r.id));
    pool = pool.filter((r) =>
      r.choices.some((c) => c.option.prerequisite === null || known.has(c.option.prerequisite)),
    );
  }
  const ranked = pool
    .map((rung) => ({
      rung,
      choices: rung.choices
        .map((c) => ({ c, value: worthOf(c) }))
        .sort((a, b) => b.value - a.value || byName(a.c.option.id, b.c.option.id)),
    }))
    .map((r) => ({ ...r, best: at(r.choices, 0).value }))
    .sort((a, b) => Number(b.rung.must) - Number(a.rung.must) || b.best - a.best || byName(a.rung.id, b.rung.id));
  const musts = ranked.filter((r) => r.rung.must).length;
  const lastAt = new Map<number, number>();
  for (const [i, r] of ranked.entries()) lastAt.set(r.rung.position, i);

  const chosen: Choice[] = [];
  const countAt = new Map<number, number>(places.map((q) => [q, 0]));
  const used = p.gains.map(() => 0);
  const fixed = way - POINT * p.problem.prices.helperPlace * places.length + t.constant;
  const limit = search.nodes + cap;

  /** Most that can be reached with the choices made and more from entry `from` on; falls as `from` grows (musts aside). */
  const bound = (from: number, value: number, open: number): number => {
    let missing = 0;
    for (const q of places) if (countAt.get(q) === 0) missing += 1;
    let sum = value,
      best = chosen.length > 0 && missing === 0 ? sum - shortCost(p, chosen.length) : NEVER;
    for (let k = 0; chosen.length + k < sizeLimits.mostItems && from + k < ranked.length; k += 1) {
      sum += at(ranked, from + k).best;
      if (k + 1 >= missing) best = Math.max(best, sum - shortCost(p, chosen.length + k + 1));
    }
    return best + fixed + open;
  };

  const descend = (from: number, value: number, minutes: number, strength: number, open: number): boolean => {
    if (from >= musts && chosen.length >= places.length && places.every((q) => (countAt.get(q) ?? 0) > 0)) leaf();
    if (chosen.length === sizeLimits.mostItems) return true;
    for (let i = from; i < ranked.length; i += 1) {
      if (i > from && i <= musts) return true;
      if (places.some((q) => countAt.get(q) === 0 && (lastAt.get(q) ?? -1) < i)) return true;
      if (!reaches(search, bound(i, value, open))) {
        if (i >= musts) return true;
        continue;
      }
      const { rung, choices } = at(ranked, i);
      const here = countAt.get(rung.position) ?? 0;
      if (here === sizeLimits.itemsInPosition) continue;
      for (const { c, value: worth } of choices) {
        if (search.nodes >= limit) return false;
        search.nodes += 1;
        const nextMinutes = minutes + c.option.halfMinutes,
          nextStrength = strength + c.option.strength;
        if (nextMinutes > minutesLeft || nextStrength > strengthLeft || clashes(p, chosen, c)) continue;
        const newPlace =
          here > 0 &&
          !chosen.some((o) => o.option.position === c.option.position && o.option.helperPlace === c.option.helperPlace);
        let nextOpen = open;
        for (const [k, n] of c.units) {
          const had = at(used, k);
          used[k] = had + n;
          nextOpen += openAt(t, k, had + n) - openAt(t, k, had);
        }
        chosen.push(c);
        countAt.set(rung.position, here + 1);
        const nextValue = value + worth - (newPlace ? POINT * p.problem.prices.helperPlace : 0);
        const done =
          !reaches(search, bound(i + 1, nextValue, nextOpen)) ||
          descend(i + 1, nextValue, nextMinutes, nextStrength, nextOpen);
        chosen.pop();
        countAt.set(rung.position, here);
        for (const [k, n] of c.units) used[k] = at(used, k) - n;
        if (!done) return false;
      }
    }
    return true;
  };

  /** Every order and way for the things chosen; the judge scores what comes near the plan in hand. */
  const leaf = (): void => {
    search.leaves += 1;
    let worth = p.base - shortCost(p, chosen.length) / POINT;
    let items = 0;
    for (const c of chosen) {
      worth += c.net;
      items += c.option.halfMinutes;
    }
    used.forEach((n, k) => {
      worth += at(at(p.gains, k), Math.min(n, 4));
    });
    const wantsBetter = () => (search.held === null ? NEVER : search.held.judged.worth.total);
    if (worth - leastCost < wantsBetter()) return;
    const byPlace = new Map(places.map((q) => [q, chosen.filter((c) => at(p.rungs, c.rung).position === q)]));
    const placesCost =
      p.problem.prices.helperPlace *
      [...byPlace.values()].reduce((n, cs) => n + new Set(cs.map((c) => c.option.helperPlace)).size, 0);
    for (const order of orders) {
      const blocks: Choice[][] = [];
      const done = new Set<string>();
      let fresh = 0;
      let last: string | null = null;
      let sorted = true;
      order.forEach((q, b) => {
        const block = orderBlock(byPlace.get(q) ?? [], done, last);
        if (block === null) {
          sorted = false;
          return;
        }
        last = block[block.length - 1]?.option.helperPlace ?? last;
        for (const c of block) fresh += c.option.freshnessCost * b;
        blocks.push(block);
      });
      if (!sorted) continue;
      const walk: Path[] = [];
      const go = (b: number, spent: number, minutes: number, points: number): void => {
        if (points < wantsBetter()) return;
        if (b === order.length) {
          const end = at(p.positions, at(order, b - 1));
          if (end.canEnd && minutes + end.wayBack.halfMinutes <= p.problem.workingHalfMinutes)
            offer(p, search, order, blocks, walk, points);
          return;
        }
        const q = at(order, b);
        const node = at(p.positions, q);
        for (const path of b === 0 ? [entryOf(p, q)] : at(at(p.paths, at(order, b - 1)), q)) {
          if (spent > path.cap || minutes + path.halfMinutes > p.problem.workingHalfMinutes) continue;
          const entering = spent + path.strength;
          if (at(blocks, b).some((c) => c.option.freshnessLimit !== null && entering > c.option.freshnessLimit))
            continue;
          const after = at(blocks, b).reduce((n, c) => n + c.option.strength, entering);
          if (after + node.wayBack.strength > p.problem.strength) continue;
          walk.push(path);
          go(b + 1, after, minutes + path.halfMinutes, points - path.cost);
          walk.pop();
        }
      };
      go(0, 0, items, worth - fresh - placesCost);
    }
  };
  return descend(0, 0, 0, 0, 0);
}

const openAt = (t: Priced, k: number, units: number): number =>
  at(at(t.open, k), Math.min(units, 4)) - at(t.prices.units, k) * Math.max(0, units - 4);

function entryOf(p: Prepared, place: number): Path {
  return at(p.entry, place) ?? { links: [], halfMinutes: 0, strength: 0, cost: 0, cap: -1 };
}

function clashes(p: Prepared, chosen: readonly Choice[], next: Choice): boolean {
  const rung = at(p.rungs, next.rung);
  let same = 0;
  for (const c of chosen) {
    if (next.option.substitutes !== null && next.option.substitutes === c.option.substitutes) return true;
    if (c.option.activity !== rung.activity) continue;
    same += 1;
    if (same === sizeLimits.rungsOfActivity || Math.abs(at(p.rungs, c.rung).ladderIndex - rung.ladderIndex) > 1)
      return true;
  }
  return false;
}

/** Order in a position: what comes first by rule, then hard or new things, then without moving the helper. Adds to `done`; null where the rule cannot be kept. */
export function orderBlock(choices: readonly Choice[], done: Set<string>, helperPlace: string | null): Choice[] | null {
  const waiting = [...choices];
  const block: Choice[] = [];
  let place = helperPlace;
  while (waiting.length > 0) {
    const ready = waiting.filter((c) => c.option.prerequisite === null || done.has(c.option.prerequisite));
    ready.sort(
      (a, b) =>
        b.option.freshnessCost - a.option.freshnessCost ||
        Number(b.option.change.kind === "new") - Number(a.option.change.kind === "new") ||
        Number(b.option.helperPlace === place) - Number(a.option.helperPlace === place) ||
        byName(a.option.id, b.option.id),
    );
    const next = ready[0];
    if (next === undefined) return null;
    waiting.splice(waiting.indexOf(next), 1);
    block.push(next);
    done.add(next.option.rung);
    place = next.option.helperPlace;
  }
  return block;
}

function offer(
  p: Prepared,
  search: Search,
  order: readonly number[],
  blocks: readonly (readonly Choice[])[],
  walk: readonly Path[],
  points: number,
): void {
  const plan: Plan = {
    blocks: order.map((q, b) => ({
      position: at(p.positions, q).id,
      links: at(walk, b).links,
      options: at(blocks, b).map((c) => c.option.id),
    })),
  };
  const judged = evaluate(p.problem, plan);
  if (judged.broken.length > 0 || judged.worth.total !== points)
    throw new ProgrammingError(
      `search and judge disagree: ${points} and ${judged.worth.total}; ${judged.broken.map((b) => `${b.rule} ${b.detail}`).join("; ")}`,
    );
  if (search.held === null || compare({ plan, judged }, search.held) < 0) search.held = { plan, judged };
}

/** Negative where `a` is the better plan: worth, then fewest changes, fewest moves of the helper, fewest minutes, then names. */
export function compare(a: Held, b: Held): number {
  return (
    b.judged.worth.total - a.judged.worth.total ||
    a.judged.changes - b.judged.changes ||
    a.judged.helperMoves - b.judged.helperMoves ||
    a.judged.halfMinutes - b.judged.halfMinutes ||
    byName(JSON.stringify(a.plan), JSON.stringify(b.plan))
  );
}
