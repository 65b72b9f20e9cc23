import { moveCost } from "./evaluate.ts";
import type { Link, SessionProblem } from "./problem.ts";

/** A way from one position to another over the links. */
export interface Way {
  readonly links: readonly string[];
  readonly cost: number;
  readonly halfMinutes: number;
  readonly strength: number;
  /** At each position reached: strength spent on the way before and after the move, and what the way back from there takes. */
  /** Most strength it needs at any point, the way back from there included; and the most that may be spent before it starts. */
  readonly highest: number;
  readonly entry: number;
  readonly points: readonly {
    readonly before: number;
    readonly after: number;
    readonly wayBack: number;
    readonly threshold: number | null;
  }[];
}
/**
 * All unbeaten ways from a position to the others: none of them is at once no dearer, no longer, no more tiring and no
 * harder to enter than another. Barred positions are not passed through.
 */
export function waysFrom(problem: SessionProblem, from: string, to: readonly string[]): Way[][] {
  const kept = new Map<string, Way[]>();
  const visit = (at: string, links: readonly Link[], been: ReadonlySet<string>): void => {
    for (const link of problem.links) {
      if (link.from !== at || been.has(link.to) || problem.locks.barPositions.includes(link.to)) continue;
      const path = [...links, link];
      const way = wayOf(problem, path);
      if (way.halfMinutes >= problem.workingHalfMinutes || way.strength > problem.strength) continue;
      const known = kept.get(link.to) ?? [];
      if (known.some((other) => beats(other, way))) continue;
      kept.set(link.to, [...known.filter((other) => !beats(way, other)), way]);
      visit(link.to, path, new Set([...been, link.to]));
    }
  };
  visit(from, [], new Set([from]));
  return to.map((id) => (id === from ? [] : (kept.get(id) ?? [])));
}

/** Whether one way is at least as good as another in everything that can matter. */
function beats(one: Way, other: Way): boolean {
  return (
    one.cost <= other.cost &&
    one.halfMinutes <= other.halfMinutes &&
    one.strength <= other.strength &&
    one.highest <= other.highest &&
    one.entry >= other.entry
  );
}

function wayOf(problem: SessionProblem, links: readonly Link[]): Way {
  let strength = 0;
  const points = links.map((link) => {
    const before = strength;
    strength += link.strength;
    return {
      before,
      after: strength,
      wayBack: problem.positions.find((position) => position.id === link.to)?.wayBack.strength ?? 0,
      threshold: link.threshold,
    };
  });
  return {
    links: links.map((link) => link.id),
    cost: links.reduce((sum, link) => sum + moveCost(problem, link), 0),
    halfMinutes: links.reduce((sum, link) => sum + link.halfMinutes, 0),
    strength,
    points,
    highest: points.reduce((most, point) => Math.max(most, point.after + point.wayBack), 0),
    entry: points.reduce(
      (least, point) => (point.threshold === null ? least : Math.min(least, point.threshold - point.before)),
      Number.POSITIVE_INFINITY,
    ),
  };
}

/** Every set of up to `most` of some numbers, in one list that is written over: it is copied where it is kept. */
export function visitSets(numbers: readonly number[], most: number, visit: (set: readonly number[]) => void): void {
  const set: number[] = [];
  const grow = (from: number): void => {
    for (let i = from; i < numbers.length; i++) {
      set.push(numbers[i] ?? 0);
      visit(set);
      if (set.length < most) grow(i + 1);
      set.pop();
    }
  };
  grow(0);
}

/** Every order of a set. */
export function permutations(set: readonly number[]): number[][] {
  if (set.length <= 1) return [[...set]];
  return set.flatMap((first) => permutations(set.filter((each) => each !== first)).map((rest) => [first, ...rest]));
}
