import type { StrengthId, Strengths } from "../body/strength-keys.ts";
import { STRENGTH_IDS } from "../body/strength-keys.ts";
import { type NormalCapacities, scaleCapacities } from "../body/strength-capacities.ts";
import { leastMoment } from "./efforts.ts";
import { BALANCED_WITHIN, shareHabitually } from "./habitual.ts";
import type { Sharing } from "./cubes.ts";
import { SERIES_POWER } from "./effort-measure.ts";
import type { Joint } from "./joints.ts";
import type { Statics } from "./statics.ts";

/** Habitual solutions of one pose kept at a few strengths, from which efforts at others are answered at once. */
export interface StoredEfforts {
  /** The verdict's units: joints by name and side, three axes as one, the trunk's parts as one. */
  readonly joints: readonly JointName[];
  readonly solutions: readonly Solution[];
}
export interface JointName {
  readonly joint: string;
  readonly side: "weak" | "strong" | null;
}

/**
 * One kept solution. A unit is one term of the sum of cubes: an angle, a joint with three axes, or the trunk. Its parts
 * are the ratios that add up in it, each with the muscle group whose strength scales it.
 */
interface Solution {
  /** Effort of each unit, and the number of its joint in `joints`. */
  readonly efforts: Float64Array;
  readonly joint: Int32Array;
  /** Parts of unit k: from start[k] to start[k + 1]; from split[k] on they belong to a second joint in series. */
  readonly start: Int32Array;
  readonly split: Int32Array;
  readonly ratio: Float64Array;
  /** Number of the muscle group in STRENGTH_IDS; -1 where strength does not matter. */
  readonly group: Int32Array;
  readonly at: Float64Array;
  /** Fraction of normal below which a part is taken as this strong. */
  readonly floor: Float64Array;
  readonly sum: number;
}

/** The cube norm of a pose's efforts at some strengths, bounded from both sides. */
export interface EffortEstimate {
  /** Cube norm E: the cube root of the sum of cubed efforts. */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Share of each joint in the sum of cubes, adding to 1, in the order of `joints`. */
  readonly shares: Float64Array;
  /** Effort of each joint, estimated. */
  readonly efforts: Float64Array;
  /** How ln E changes with ln strength of each muscle group, in the order of STRENGTH_IDS. */
  readonly slope: Float64Array;
}

/**
 * Keeps habitual solutions of a pose at the given strengths.
 * @returns null where the pose cannot be in balance
 */
export function storeEfforts(
  statics: Statics,
  normal: NormalCapacities,
  at: readonly Strengths[],
): StoredEfforts | null {
  const joints = namesOf(statics);
  const solutions: Solution[] = [];
  for (const strengths of at) {
    const sharing = shareHabitually(statics, scaleCapacities(normal, strengths));
    if (sharing.residual > BALANCED_WITHIN) return null;
    solutions.push(keep(statics, normal, strengths, sharing, joints));
  }
  return { joints, solutions };
}

function keep(
  statics: Statics,
  normal: NormalCapacities,
  strengths: Strengths,
  sharing: Sharing,
  names: readonly JointName[],
): Solution {
  const start = [0];
  const split: number[] = [];
  const joint: number[] = [];
  const ratio: number[] = [];
  const group: number[] = [];
  const at: number[] = [];
  const floor: number[] = [];
  const addPart = (angle: number): void => {
    const way = 2 * angle + ((sharing.moments[angle] ?? 0) >= 0 ? 0 : 1);
    const least = leastMoment(statics, angle);
    // What hangs or is held keeps its own fixed strength; a moment too small to matter is taken as its least.
    const id = least === null ? null : (normal.directions[way]?.strength ?? null);
    const bottom = (least ?? 0) / (normal.moments[way] ?? 1);
    ratio.push(sharing.ratios[angle] ?? 0);
    group.push(id === null ? -1 : STRENGTH_IDS.indexOf(id));
    floor.push(bottom);
    at.push(id === null ? 1 : Math.max(bottom, strengths[id]));
  };
  const close = (of: number, splitAt: number): void => {
    start.push(ratio.length);
    split.push(splitAt);
    joint.push(of);
  };
  const series = statics.joints.filter((each) => each.series !== null);
  for (const each of statics.joints) {
    const name = indexOf(statics, names, each);
    if (each.series !== null) {
      if (each !== series[0]) continue;
      series[0].angles.forEach(addPart);
      const splitAt = ratio.length;
      for (const other of series.slice(1)) other.angles.forEach(addPart);
      close(name, splitAt);
    } else if (each.ball) {
      each.angles.forEach(addPart);
      close(name, ratio.length);
    } else {
      for (const angle of each.angles) {
        addPart(angle);
        close(name, ratio.length);
      }
    }
  }
  const solution = {
    start: Int32Array.from(start),
    split: Int32Array.from(split),
    joint: Int32Array.from(joint),
    ratio: Float64Array.from(ratio),
    group: Int32Array.from(group),
    at: Float64Array.from(at),
    floor: Float64Array.from(floor),
    efforts: new Float64Array(joint.length),
    sum: 0,
  };
  let sum = 0;
  for (let k = 0; k < joint.length; k++) {
    const effort = effortOf(solution, k, null);
    solution.efforts[k] = effort;
    sum += effort ** 3;
  }
  return { ...solution, sum };
}

/** Strength of a part's group over the one it was solved at. */
const scaleOf = (solution: Omit<Solution, "sum">, part: number, strengths: Float64Array): number => {
  const g = solution.group[part] ?? -1;
  return g < 0 ? 1 : Math.max(solution.floor[part] ?? 0, strengths[g] ?? 1) / (solution.at[part] ?? 1);
};

/** Effort of a unit with its moments as they are and strengths changed. */
function effortOf(solution: Omit<Solution, "sum">, unit: number, strengths: Float64Array | null): number {
  const { start, split, ratio } = solution;
  const end = start[unit + 1] ?? 0;
  const middle = split[unit] ?? end;
  let first = 0;
  let second = 0;
  for (let p = start[unit] ?? 0; p < end; p++) {
    const part = (ratio[p] ?? 0) / (strengths === null ? 1 : scaleOf(solution, p, strengths));
    if (p < middle) first += part;
    else second += part;
  }
  return second === 0 ? first : (first ** SERIES_POWER + second ** SERIES_POWER) ** (1 / SERIES_POWER);
}

/**
 * The cube norm at any strengths without solving. Keeping a stored solution's forces gives an upper bound; keeping its
 * duals gives a lower one: with r the largest scale of strength in a unit and e its effort, E^3 >= (sum e^3)^3 / (sum
 * r^1.5 e^3)^2. The best bound each way over all stored ones; shares come from the one whose upper bound is least. The gap
 * says where one more solution would help. Joint ends are not in the bounds: the
 * tests say how little that matters.
 * @param strengths fractions of normal in the order of STRENGTH_IDS
 */
export function estimateEfforts(stored: StoredEfforts, strengths: Float64Array): EffortEstimate {
  let low = 0;
  let high = Number.MAX_VALUE;
  let best: Solution | undefined;
  for (const solution of stored.solutions) {
    const { efforts, start, split, ratio, group, at, floor, sum } = solution;
    let up = 0;
    let down = 0;
    for (let k = 0; k < efforts.length; k++) {
      const e = efforts[k] ?? 0;
      if (e < 1e-4) continue;
      const end = start[k + 1] ?? 0;
      const middle = split[k] ?? end;
      let most = 0;
      let first = 0;
      let second = 0;
      for (let p = start[k] ?? 0; p < end; p++) {
        const g = group[p] ?? -1;
        let scale = 1;
        if (g >= 0) {
          const s = strengths[g] ?? 1;
          const bottom = floor[p] ?? 0;
          scale = Math.max(s, bottom) / (at[p] ?? 1);
        }
        if (scale > most) most = scale;
        if (p < middle) first += (ratio[p] ?? 0) / scale;
        else second += (ratio[p] ?? 0) / scale;
      }
      const effort = second === 0 ? first : (first ** SERIES_POWER + second ** SERIES_POWER) ** (1 / SERIES_POWER);
      up += effort * effort * effort;
      down += e * e * e * most * Math.sqrt(most);
    }
    if (up < high) {
      high = up;
      best = solution;
    }
    if (down > 0) low = Math.max(low, (sum * sum * sum) / (down * down));
  }
  const top = Math.cbrt(high);
  const bottom = Math.cbrt(Math.min(low, high));
  return describe(stored, best, strengths, high, bottom, top);
}

function describe(
  stored: StoredEfforts,
  best: Solution | undefined,
  strengths: Float64Array,
  cubes: number,
  low: number,
  high: number,
): EffortEstimate {
  const shares = new Float64Array(stored.joints.length);
  const efforts = new Float64Array(stored.joints.length);
  const slope = new Float64Array(STRENGTH_IDS.length);
  const value = Math.sqrt(low * high);
  if (best !== undefined && cubes > 0) {
    const times = high > 0 ? value / high : 1;
    for (let k = 0; k < best.efforts.length; k++) {
      const effort = effortOf(best, k, strengths);
      const share = effort ** 3 / cubes;
      const joint = best.joint[k] ?? 0;
      shares[joint] = (shares[joint] ?? 0) + share;
      efforts[joint] = Math.max(efforts[joint] ?? 0, effort * times);
      let sum = 0;
      for (let p = best.start[k] ?? 0; p < (best.start[k + 1] ?? 0); p++)
        sum += (best.ratio[p] ?? 0) / scaleOf(best, p, strengths);
      for (let p = best.start[k] ?? 0; p < (best.start[k + 1] ?? 0) && sum > 0; p++) {
        const g = best.group[p] ?? -1;
        if (g >= 0) slope[g] = (slope[g] ?? 0) - (share * (best.ratio[p] ?? 0)) / scaleOf(best, p, strengths) / sum;
      }
    }
  }
  return { value, low, high, shares, efforts, slope };
}

/** Strengths as the numbers estimateEfforts takes. */
export function strengthVector(strengths: Strengths): Float64Array {
  return Float64Array.from(STRENGTH_IDS, (id: StrengthId) => strengths[id]);
}

function namesOf(statics: Statics): JointName[] {
  const names: JointName[] = [];
  for (const joint of statics.joints) {
    const side = statics.body.segments[joint.segment]?.side ?? null;
    if (!names.some((each) => each.joint === joint.name && each.side === side)) names.push({ joint: joint.name, side });
  }
  return names;
}

function indexOf(statics: Statics, names: readonly JointName[], joint: Joint): number {
  const side = statics.body.segments[joint.segment]?.side ?? null;
  return names.findIndex((each) => each.joint === joint.name && each.side === side);
}
