import { ProgrammingError } from "../../quantity/programming-error.ts";
import { type Gains, gainsOf } from "./prices.ts";
import type { Option, PositionNode, SessionProblem } from "./problem.ts";
import type { Item } from "./selection.ts";
import { type Way, waysFrom } from "./ways.ts";

/** A session problem read once: what may be chosen, by number, and the ways between positions. */
export interface Task {
  readonly problem: SessionProblem;
  readonly nodes: readonly PositionNode[];
  /** Unbeaten ways from one position to another. */
  readonly ways: readonly (readonly (readonly Way[])[])[];
  readonly items: readonly Item[];
  readonly byPosition: readonly (readonly Item[])[];
  /** The same in groups of which one is done. */
  readonly groupsAt: readonly (readonly (readonly Item[])[])[];
  /** By position: others of which one has to be there too; null where none has to. */
  readonly companions: readonly (ReadonlySet<number> | null)[];
  readonly gains: Gains;
  /** Points of a plan with nothing in it. */
  readonly baseline: number;
  readonly must: ReadonlySet<string>;
}

/** Reads a problem: positions that are open and have something to do, and what is not to be left out. */
export function readTask(problem: SessionProblem): Task {
  const { locks } = problem;
  const offered = new Set(problem.options.map((option) => option.position));
  const nodes = problem.positions.filter(({ id }) => offered.has(id) && !locks.barPositions.includes(id));
  const ids = nodes.map(({ id }) => id);
  const numbers = new Map(ids.map((id, number) => [id, number]));
  const purposes = new Map(problem.purposes.map(({ id }, number) => [id, number]));
  const names = new Map<string, number>();
  const drop = new Map(problem.lastTime.map((each) => [each.rung, each.dropCost]));
  const items = openOptions(problem, (option) => numbers.has(option.position)).map(({ option, at }): Item => {
    const position = numbers.get(option.position) ?? 0;
    const units = new Int32Array(problem.purposes.length);
    for (const each of option.units) {
      const purpose = purposes.get(each.purpose);
      if (purpose !== undefined) units[purpose] = (units[purpose] ?? 0) + each.units;
    }
    const called = option.substitutes ?? option.rung;
    const name = names.get(called) ?? names.size;
    names.set(called, name);
    const trains = [...units].flatMap((each, purpose) => (each === 0 ? [] : [{ purpose, units: each }]));
    return {
      option,
      position,
      at,
      name,
      units,
      trains,
      own: option.worth - option.change.cost + (drop.get(option.rung) ?? 0),
    };
  });
  const byPosition: Item[][] = nodes.map(() => []);
  for (const item of items) byPosition[item.position]?.push(item);
  return {
    problem,
    nodes,
    ways: ids.map((from) => waysFrom(problem, from, ids)),
    items,
    byPosition,
    groupsAt: byPosition.map(groupsOf),
    companions: companionsOf(byPosition),
    gains: gainsOf(problem),
    baseline: -problem.lastTime.reduce((sum, each) => sum + each.dropCost, 0),
    must: new Set(locks.mustHave),
  };
}

/** Options that are not to be left out, and whose prerequisite can be done as well. */
function openOptions(
  problem: SessionProblem,
  reached: (option: Option) => boolean,
): { readonly option: Option; readonly at: number }[] {
  const out = new Set(problem.locks.leaveOut);
  let open = problem.options
    .map((option, at) => ({ option, at }))
    .filter(({ option }) => reached(option) && !out.has(option.rung));
  for (let before = -1; before !== open.length; ) {
    before = open.length;
    const rungs = new Set(open.map(({ option }) => option.rung));
    open = open.filter(({ option }) => option.prerequisite === null || rungs.has(option.prerequisite));
  }
  return open;
}

export function nodeOf(task: Task, position: number): PositionNode {
  const found = task.nodes[position];
  if (found === undefined) throw new ProgrammingError("no such position");
  return found;
}

/** Items in groups of which one is done. */
export function groupsOf(items: readonly Item[]): Item[][] {
  const groups = new Map<number, Item[]>();
  for (const item of items) {
    const group = groups.get(item.name);
    if (group === undefined) groups.set(item.name, [item]);
    else group.push(item);
  }
  return [...groups.values()];
}

/** Whether everything asked for can be done in these positions. */
export function coversMusts(task: Task, set: readonly number[]): boolean {
  for (const rung of task.must)
    if (!set.some((p) => task.byPosition[p]?.some((item) => item.option.rung === rung) === true)) return false;
  return true;
}

/** Whether every position of a set has something that can be done: what must come before it can be done in the set too. */
export function bringsFirsts(task: Task, set: readonly number[]): boolean {
  for (const p of set) {
    const companions = task.companions[p];
    if (companions !== null && companions !== undefined && !set.some((q) => companions.has(q))) return false;
  }
  return true;
}

/** Positions of which one has to be there too, where everything in a position needs something done first; else null. */
function companionsOf(byPosition: readonly (readonly Item[])[]): (ReadonlySet<number> | null)[] {
  const places = new Map<string, Set<number>>();
  for (const item of byPosition.flat()) {
    const known = places.get(item.option.rung) ?? new Set<number>();
    places.set(item.option.rung, known.add(item.position));
  }
  return byPosition.map((items) => {
    const found = new Set<number>();
    for (const { option } of items) {
      if (option.prerequisite === null) return null;
      for (const place of places.get(option.prerequisite) ?? []) found.add(place);
    }
    return found;
  });
}
