import { ProgrammingError } from "../../../src/quantity/programming-error.ts";
import { moveCost } from "../../../src/plan/optimiser/evaluate.ts";
import { coverageGain } from "../../../src/plan/optimiser/problem.ts";
import type { Option, PositionNode, SessionProblem } from "../../../src/plan/optimiser/problem.ts";

/** Points are multiplied by this inside bounds, so that whole-numbered prices are fine enough. */
export const POINT = 100;

/** A way from one position to another unbeaten on minutes, strength, cost and the strength that may be spent before it. */
export interface Path {
  readonly links: readonly string[];
  readonly halfMinutes: number;
  readonly strength: number;
  readonly cost: number;
  /** Most strength spent before it: every threshold and every way back on it stays affordable. */
  readonly cap: number;
}
export interface Choice {
  readonly option: Option;
  readonly rung: number;
  /** Own worth, less the change, plus what not dropping it saves [points]. */
  readonly net: number;
  readonly units: readonly (readonly [purpose: number, units: number])[];
}
export interface Rung {
  readonly id: string;
  readonly position: number;
  readonly activity: string;
  readonly ladderIndex: number;
  readonly must: boolean;
  readonly choices: readonly Choice[];
}
export interface Prepared {
  readonly problem: SessionProblem;
  readonly positions: readonly PositionNode[];
  readonly rungsAt: readonly (readonly Rung[])[];
  readonly rungs: readonly Rung[];
  readonly entry: readonly (Path | null)[];
  readonly paths: readonly (readonly (readonly Path[])[])[];
  readonly gains: readonly (readonly number[])[];
  /** Points of a plan with nothing in it: everything of last time dropped. */
  readonly base: number;
  readonly mustPositions: readonly number[];
  /** A must-have is not among what can be done. */
  readonly impossible: boolean;
}

export const at = <T>(list: ArrayLike<T>, index: number): T => {
  const value = list[index];
  if (value === undefined) throw new ProgrammingError(`no entry ${index}`);
  return value;
};
export const byName = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Drops what can never be chosen, puts all in an order of names (so that input order is never seen), and finds the ways. */
export function prepare(problem: SessionProblem): Prepared {
  const { locks } = problem;
  const open = problem.positions.filter((p) => !locks.barPositions.includes(p.id)).sort((a, b) => byName(a.id, b.id));
  const names = new Map(open.map((p, index) => [p.id, index]));
  let options = problem.options
    .filter((o) => names.has(o.position) && !locks.leaveOut.includes(o.rung))
    .sort((a, b) => byName(a.id, b.id));
  for (let before = -1; before !== options.length; ) {
    before = options.length;
    const known = new Set(options.map((o) => o.rung));
    options = options.filter((o) => o.prerequisite === null || known.has(o.prerequisite));
  }
  const purposes = [...problem.purposes].sort((a, b) => byName(a.id, b.id));
  const purposeIndex = new Map(purposes.map((p, index) => [p.id, index]));
  const drop = new Map<string, number>();
  for (const last of problem.lastTime) drop.set(last.rung, (drop.get(last.rung) ?? 0) + last.dropCost);
  const rungNames = [...new Set(options.map((o) => o.rung))].sort(byName);
  const rungs = rungNames.map((id, index): Rung => {
    const mine = options.filter((o) => o.rung === id);
    const first = at(mine, 0);
    if (
      mine.some(
        (o) => o.position !== first.position || o.activity !== first.activity || o.ladderIndex !== first.ladderIndex,
      )
    )
      throw new ProgrammingError(`rung ${id} stands in two places`);
    const choices = mine.map((option): Choice => {
      const units = new Map<number, number>();
      for (const u of option.units) {
        const purpose = purposeIndex.get(u.purpose);
        if (purpose !== undefined && u.units > 0) units.set(purpose, (units.get(purpose) ?? 0) + u.units);
      }
      return { option, rung: index, net: option.worth - option.change.cost + (drop.get(id) ?? 0), units: [...units] };
    });
    return {
      id,
      position: names.get(first.position) ?? 0,
      activity: first.activity,
      ladderIndex: first.ladderIndex,
      must: locks.mustHave.includes(id),
      choices,
    };
  });
  return {
    problem,
    positions: open,
    rungs,
    rungsAt: open.map((_, p) => rungs.filter((r) => r.position === p)),
    entry: open.map((p) =>
      p.entry === null || (locks.startIn !== null && locks.startIn !== p.id)
        ? null
        : { ...p.entry, links: [], cap: problem.strength - p.wayBack.strength - p.entry.strength },
    ),
    paths: open.map((_, p) => findPaths(problem, open, names, p)),
    gains: purposes.map((p) => [0, 1, 2, 3, 4].map((units) => coverageGain(p.need, units))),
    base: -[...drop.values()].reduce((a, b) => a + b, 0),
    mustPositions: [...new Set(rungs.filter((r) => r.must).map((r) => r.position))],
    impossible: locks.mustHave.some((id) => !rungNames.includes(id)),
  };
}

/** All unbeaten ways out of one position; equal ones are told apart by the names of their moves. */
function findPaths(
  problem: SessionProblem,
  open: readonly PositionNode[],
  names: ReadonlyMap<string, number>,
  from: number,
): Path[][] {
  const found: Path[][] = open.map(() => []);
  const start: Path = { links: [], halfMinutes: 0, strength: 0, cost: 0, cap: problem.strength };
  const waiting: { readonly place: number; readonly path: Path }[] = [{ place: from, path: start }];
  const links = [...problem.links].sort((a, b) => byName(a.id, b.id));
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    const { place, path } = next;
    if (path !== start && !at(found, place).includes(path)) continue;
    for (const link of links) {
      const to = names.get(link.to);
      if (link.from !== at(open, place).id || to === undefined || to === from) continue;
      const strength = path.strength + link.strength;
      const cap = Math.min(
        path.cap,
        problem.strength - at(open, to).wayBack.strength - strength,
        link.threshold === null ? problem.strength : link.threshold - path.strength,
      );
      if (cap < 0) continue;
      const longer: Path = {
        links: [...path.links, link.id],
        halfMinutes: path.halfMinutes + link.halfMinutes,
        strength,
        cost: path.cost + moveCost(problem, link),
        cap,
      };
      const rivals = at(found, to);
      if (rivals.some((r) => beats(r, longer))) continue;
      found[to] = [...rivals.filter((r) => !beats(longer, r)), longer];
      waiting.push({ place: to, path: longer });
    }
  }
  return found;
}

function beats(a: Path, b: Path): boolean {
  if (a.halfMinutes > b.halfMinutes || a.strength > b.strength || a.cost > b.cost || a.cap < b.cap) return false;
  const same = a.halfMinutes === b.halfMinutes && a.strength === b.strength && a.cost === b.cost && a.cap === b.cap;
  return (
    !same ||
    a.links.length < b.links.length ||
    (a.links.length === b.links.length && a.links.join("\n") <= b.links.join("\n"))
  );
}
