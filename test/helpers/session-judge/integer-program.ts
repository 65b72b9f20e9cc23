import { type Plan, type SessionProblem, sizeLimits } from "../../../src/plan/optimiser/problem.ts";
import { LinearRows } from "./linear-rows.ts";
import { at, type Path, type Prepared, prepare } from "./prepare.ts";

const NONE = Number.NEGATIVE_INFINITY;
const MANY = Number.POSITIVE_INFINITY;

/** The session problem as an integer program, and where each part of a plan stands in it. */
export interface IntegerProgram {
  readonly prepared: Prepared;
  readonly rows: LinearRows;
  /** Points of a plan with nothing in it. */
  readonly base: number;
}

/**
 * The written definition of the session problem. Whole unknowns, for blocks b = 1..4, places p, ways w, options o, helper
 * places h: y(b,p) place taken, z(b,w) way taken after block b, e(b,p) last place, x(o) option done, u(p,h) helper place
 * used. Continuous: c(k,j) j-th unit of purpose k, short items missing, in(b) strength spent on entering block b, on(b)
 * strength of its items, late(o) places before a thing that should be done fresh.
 */
export function writeIntegerProgram(problem: SessionProblem): IntegerProgram | null {
  const prepared = prepare(problem);
  if (prepared.impossible || prepared.rungs.length === 0) return null;
  const rows = new LinearRows();
  const blocks = Math.min(sizeLimits.positions, prepared.positions.length);
  const minutes: Term[] = [];
  writeItems(rows, prepared, minutes);
  writeWalk(rows, prepared, blocks, minutes);
  writePlaces(rows, prepared, blocks);
  writeSelection(rows, prepared);
  writeCoverage(rows, prepared);
  rows.row("working minutes", NONE, problem.workingHalfMinutes, minutes);
  return { prepared, rows, base: prepared.base };
}

type Term = readonly [unknown: number, factor: number];
type Choice = Prepared["rungs"][number]["choices"][number];

function writeItems(rows: LinearRows, { rungs }: Prepared, minutes: Term[]): void {
  for (const { choices } of rungs)
    for (const { option, net } of choices) minutes.push([rows.add(`x ${option.id}`, net), option.halfMinutes]);
}

/** Which places in which order, by which ways, and the strength spent at every point. */
function writeWalk(rows: LinearRows, prepared: Prepared, blocks: number, minutes: Term[]): void {
  const { problem, positions } = prepared;
  const { strength } = problem;
  for (let b = 0; b < blocks; b++) {
    rows.add(`in ${b}`, 0, { whole: false, high: strength });
    rows.add(`on ${b}`, 0, { whole: false, high: strength });
    positions.forEach((position, p) => {
      const entry = at(prepared.entry, p);
      if (b === 0 && entry === null) return;
      const y = rows.add(`y ${b} ${p}`, b === 0 && entry !== null ? -entry.cost : 0);
      if (b === 0 && entry !== null) minutes.push([y, entry.halfMinutes]);
      if (position.canEnd) minutes.push([rows.add(`e ${b} ${p}`, 0), position.wayBack.halfMinutes]);
    });
  }
  const waysAfter = Array.from({ length: blocks }, (_, b) => {
    const ways: { readonly z: number; readonly from: number; readonly to: number; readonly path: Path }[] = [];
    if (b + 1 < blocks)
      prepared.paths.forEach((row, from) => {
        if (rows.find(`y ${b} ${from}`) === null) return;
        row.forEach((paths, to) => {
          paths.forEach((path, w) => {
            const z = rows.add(`z ${b} ${from} ${to} ${w}`, -path.cost);
            minutes.push([z, path.halfMinutes]);
            ways.push({ z, from, to, path });
          });
        });
      });
    return ways;
  });
  const placeTerms = (b: number, factor: (p: number) => number): Term[] =>
    positions.flatMap((_, p) => termOf(rows, `y ${b} ${p}`, factor(p)));
  rows.row(
    "one place is first",
    1,
    1,
    placeTerms(0, () => 1),
  );
  for (let b = 0; b < blocks; b++) {
    const ways = waysAfter[b] ?? [];
    const entered: Term = [rows.find(`in ${b}`) ?? 0, 1];
    const done: Term = [rows.find(`on ${b}`) ?? 0, 1];
    positions.forEach((_, p) => {
      const out = ways.filter((way) => way.from === p).map((way): Term => [way.z, -1]);
      const into = ways.filter((way) => way.to === p).map((way): Term => [way.z, -1]);
      const place = termOf(rows, `y ${b} ${p}`, 1);
      rows.row(`out of ${p} after ${b}`, 0, 0, [...place, ...out, ...termOf(rows, `e ${b} ${p}`, -1)]);
      if (b + 1 < blocks) rows.row(`into ${p} after ${b}`, 0, 0, [...termOf(rows, `y ${b + 1} ${p}`, 1), ...into]);
    });
    // The way back stays affordable on entering and when the items are done; every way also limits what is spent before it.
    const back = placeTerms(b, (p) => at(positions, p).wayBack.strength);
    rows.row(`back on entering ${b}`, NONE, strength, [entered, ...back]);
    rows.row(`back after ${b}`, NONE, strength, [entered, done, ...back]);
    const limits = ways.map((way): Term => [way.z, strength - Math.min(strength, way.path.cap)]);
    rows.row(`moves after ${b}`, NONE, strength, [entered, done, ...limits]);
    const beginning = placeTerms(0, (p) => -(at(prepared.entry, p)?.strength ?? 0));
    if (b === 0) rows.row("strength of the beginning", 0, 0, [entered, ...beginning]);
    const following = rows.find(`in ${b + 1}`);
    if (following !== null)
      rows.row(`strength spent before ${b + 1}`, 0, 0, [
        [following, 1],
        [entered[0], -1],
        [done[0], -1],
        ...ways.map((way): Term => [way.z, -way.path.strength]),
      ]);
  }
}

const termOf = (rows: LinearRows, name: string, factor: number): Term[] => {
  const found = rows.find(name);
  return found === null ? [] : [[found, factor]];
};

/** What is done only where the person is: items, helper places, strength, things to be done fresh, what must come first. */
function writePlaces(rows: LinearRows, prepared: Prepared, blocks: number): void {
  const { problem, positions } = prepared;
  const numbers = Array.from({ length: blocks }, (_, b) => b);
  const taken = (p: number, factor: (b: number) => number): Term[] =>
    numbers.flatMap((b) => termOf(rows, `y ${b} ${p}`, factor(b)));
  const placeOf = new Map(prepared.rungs.map((rung) => [rung.id, rung.position]));
  positions.forEach((_, p) => {
    const options = at(prepared.rungsAt, p).flatMap((rung) => rung.choices.map((choice) => choice.option));
    const x = (id: string): number => rows.find(`x ${id}`) ?? 0;
    const done = options.map(({ id }): Term => [x(id), 1]);
    const here = (factor: number) => taken(p, () => factor);
    rows.row(`place ${p} once`, NONE, 1, here(1));
    rows.row(`something in ${p}`, 0, MANY, [...done, ...here(-1)]);
    rows.row(`not too much in ${p}`, NONE, 0, [...done, ...here(-sizeLimits.itemsInPosition)]);
    for (const place of new Set(options.map((option) => option.helperPlace))) {
      const u = rows.add(`u ${p} ${place}`, -problem.prices.helperPlace);
      rows.row(`helper in ${p} ${place}`, NONE, 0, [[u, 1], ...here(-1)]);
      for (const rung of new Set(options.map((option) => option.rung)))
        rows.row(`helper in ${p} ${place} for ${rung}`, NONE, 0, [
          ...options
            .filter((each) => each.rung === rung && each.helperPlace === place)
            .map(({ id }): Term => [x(id), 1]),
          [u, -1],
        ]);
    }
    const tired = options.map(({ id, strength }): Term => [x(id), strength]);
    for (const b of numbers) {
      if (rows.find(`y ${b} ${p}`) === null) continue;
      // Strength of block b is that of the place it takes.
      rows.row(`strength of ${p} in ${b}`, NONE, problem.strength, [
        ...tired,
        ...termOf(rows, `on ${b}`, -1),
        ...termOf(rows, `y ${b} ${p}`, problem.strength),
      ]);
    }
    for (const option of options) {
      if (option.freshnessCost > 0) {
        const late = rows.add(`late ${option.id}`, -option.freshnessCost, { whole: false, high: blocks - 1 });
        rows.row(`late ${option.id}`, NONE, blocks - 1, [
          ...taken(p, (b) => b),
          [late, -1],
          [x(option.id), blocks - 1],
        ]);
      }
      if (option.freshnessLimit !== null) {
        const room = problem.strength - Math.min(problem.strength, option.freshnessLimit);
        for (const b of numbers)
          rows.row(`fresh for ${option.id} in ${b}`, NONE, problem.strength + room, [
            ...termOf(rows, `in ${b}`, 1),
            ...termOf(rows, `y ${b} ${p}`, room),
            [x(option.id), room],
          ]);
      }
      if (option.prerequisite === null) continue;
      const first = placeOf.get(option.prerequisite) ?? p;
      const before = at(prepared.rungsAt, first)
        .filter((rung) => rung.id === option.prerequisite)
        .flatMap((rung) => rung.choices.map((choice): Term => [x(choice.option.id), -1]));
      rows.row(`first of ${option.id}`, NONE, 0, [[x(option.id), 1], ...before]);
      if (first !== p)
        rows.row(`place before ${option.id}`, NONE, blocks - 1, [
          ...taken(first, (b) => b),
          ...taken(p, (b) => -b),
          [x(option.id), blocks],
        ]);
    }
  });
}

/** At most seven items, a rung once, neighbours of a ladder, one of a pair of substitutes, what was asked for. */
function writeSelection(rows: LinearRows, { problem, rungs }: Prepared): void {
  const every = (which: (rung: Prepared["rungs"][number], choice: Choice) => boolean): Term[] =>
    rungs.flatMap((rung) =>
      rung.choices.filter((choice) => which(rung, choice)).flatMap(({ option }) => termOf(rows, `x ${option.id}`, 1)),
    );
  const all = every(() => true);
  rows.row("items at most", NONE, sizeLimits.mostItems, all);
  const short = rows.add("short", -problem.prices.itemShort, { whole: false, high: sizeLimits.fewestItems });
  rows.row("items short", sizeLimits.fewestItems, MANY, [...all, [short, 1]]);
  for (const rung of rungs)
    rows.row(
      `rung ${rung.id} once`,
      rung.must ? 1 : NONE,
      1,
      every((each) => each === rung),
    );
  for (const activity of new Set(rungs.map((rung) => rung.activity))) {
    const own = rungs.filter((rung) => rung.activity === activity);
    rows.row(
      `rungs of ${activity}`,
      NONE,
      sizeLimits.rungsOfActivity,
      every((each) => own.includes(each)),
    );
    for (const low of own)
      for (const high of own)
        if (high.ladderIndex > low.ladderIndex + 1)
          rows.row(
            `neighbours ${low.id} ${high.id}`,
            NONE,
            1,
            every((each) => each === low || each === high),
          );
  }
  const groups = new Set(rungs.flatMap((rung) => rung.choices.flatMap(({ option }) => option.substitutes ?? [])));
  for (const group of groups)
    rows.row(
      `one of ${group}`,
      NONE,
      1,
      every((_, { option }) => option.substitutes === group),
    );
}

/** The j-th unit of a purpose, each worth no more than the one before: as many as the items bring. */
function writeCoverage(rows: LinearRows, prepared: Prepared): void {
  prepared.gains.forEach((gains, k) => {
    const brought: Term[] = prepared.rungs.flatMap((rung) =>
      rung.choices.flatMap(({ option, units }) => {
        const own = units.find(([purpose]) => purpose === k)?.[1] ?? 0;
        return own === 0 ? [] : termOf(rows, `x ${option.id}`, -own);
      }),
    );
    const units = gains
      .slice(1)
      .map((gain, j): Term => [rows.add(`c ${k} ${j}`, gain - at(gains, j), { whole: false }), 1]);
    rows.row(`units of ${k}`, NONE, 0, [...units, ...brought]);
  });
}

/** A plan as values of the unknowns; null where it uses what the program does not know. */
export function valuesOf(program: IntegerProgram, plan: Plan): Float64Array | null {
  const { rows, prepared } = program;
  const values = new Float64Array(rows.unknowns.length);
  const set = (name: string, value: number): boolean => {
    const number = rows.find(name);
    if (number !== null) values[number] = value;
    return number !== null;
  };
  const places = plan.blocks.map((block) => prepared.positions.findIndex(({ id }) => id === block.position));
  let spent = at(prepared.entry, at(places, 0))?.strength ?? 0;
  let items = 0;
  const units = prepared.gains.map(() => 0);
  for (const [b, block] of plan.blocks.entries()) {
    const p = at(places, b);
    if (b > 0) {
      const paths = at(at(prepared.paths, at(places, b - 1)), p);
      const links = plan.blocks[b]?.links ?? [];
      const w = paths.findIndex((path) => path.links.join() === links.join());
      // Of ways that cost the same one is known; another one of the same cost stands for it.
      const cost = (each: Path) => each.cost;
      const path = paths[w] ?? paths.find((each) => cost(each) === Math.min(...paths.map(cost)));
      if (path === undefined || !set(`z ${b - 1} ${at(places, b - 1)} ${p} ${paths.indexOf(path)}`, 1)) return null;
      spent += path.strength;
    }
    if (!set(`y ${b} ${p}`, 1)) return null;
    set(`in ${b}`, spent);
    let here = 0;
    for (const id of block.options) {
      const choice = prepared.rungs.flatMap((rung) => rung.choices).find(({ option }) => option.id === id);
      if (choice === undefined || !set(`x ${id}`, 1)) return null;
      set(`u ${p} ${choice.option.helperPlace}`, 1);
      set(`late ${id}`, b);
      here += choice.option.strength;
      items++;
      for (const [k, own] of choice.units) units[k] = (units[k] ?? 0) + own;
    }
    set(`on ${b}`, here);
    spent += here;
    if (b === plan.blocks.length - 1 && !set(`e ${b} ${p}`, 1)) return null;
  }
  for (let b = plan.blocks.length; rows.find(`in ${b}`) !== null; b++) set(`in ${b}`, spent);
  units.forEach((own, k) => {
    for (let j = 0; j < Math.min(4, own); j++) set(`c ${k} ${j}`, 1);
  });
  set("short", Math.max(0, sizeLimits.fewestItems - items));
  return values;
}

/** Points of a set of values, and the rows and bounds they break. */
export function judgeValues(program: IntegerProgram, values: Float64Array): { worth: number; broken: string[] } {
  const { rows, base } = program;
  let worth = base;
  const broken: string[] = [];
  rows.unknowns.forEach((unknown, k) => {
    const value = at(values, k);
    worth += unknown.worth * value;
    if (value < unknown.low - 1e-9 || value > unknown.high + 1e-9) broken.push(unknown.name);
  });
  for (const row of rows.rows) {
    let sum = 0;
    for (const [unknown, factor] of row.terms) sum += factor * at(values, unknown);
    if (sum < row.low - 1e-9 || sum > row.high + 1e-9) broken.push(`${row.name}: ${sum}`);
  }
  return { worth, broken };
}
