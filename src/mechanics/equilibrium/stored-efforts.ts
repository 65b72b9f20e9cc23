import type { StrengthId, Strengths } from "../body/strength-keys.ts";
import { STRENGTH_IDS } from "../body/strength-keys.ts";
import { type NormalCapacities, scaleCapacities } from "../body/strength-capacities.ts";
import { BALANCED_WITHIN, shareHabitually } from "./habitual.ts";
import type { Statics } from "./statics.ts";

/** Joint directions of a pose and habitual solutions kept at a few strengths, from which others are answered at once. */
export interface StoredEfforts {
  /** The verdict's units: joints, three axes as one, the trunk's parts as one. */
  readonly joints: readonly { readonly joint: string; readonly side: "weak" | "strong" | null }[];
  readonly solutions: readonly Solution[];
}
interface Solution {
  /** Efforts by joint, and how each joint's cubed effort divides over the muscle groups that make it. */
  readonly efforts: Float64Array;
  /** For each joint: number of the leading muscle group in STRENGTH_IDS, -1 for the neck, and the strength it was solved at. */
  readonly group: Int32Array;
  readonly at: Float64Array;
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

const LEAST_STRENGTH = 0.005;

/**
 * Keeps habitual solutions of a pose at the given strengths.
 * @returns null where the pose cannot be in balance
 */
export function storeEfforts(statics: Statics, normal: NormalCapacities, at: readonly Strengths[]): StoredEfforts | null {
  const names = namesOf(statics);
  const solutions: Solution[] = [];
  let start: Float64Array | undefined;
  for (const strengths of at) {
    const sharing = shareHabitually(statics, scaleCapacities(normal, strengths), start);
    if (sharing.residual > BALANCED_WITHIN) return null;
    start = sharing.weights;
    const efforts = new Float64Array(names.length);
    const group = new Int32Array(names.length).fill(-1);
    const strength = new Float64Array(names.length).fill(1);
    statics.joints.forEach((joint) => {
      // Joints that do not count have no say here.
      if (joint.angles.every((i) => sharing.allowed.counted[i] === 0)) return;
      const k = indexOf(statics, names, joint.name, joint.segment);
      let sum = 0;
      let lead = -1;
      let most = -1;
      for (const i of joint.angles) {
        if (sharing.allowed.counted[i] === 0) continue;
        const ratio = sharing.ratios[i] ?? 0;
        sum = joint.ball ? sum + ratio : Math.max(sum, ratio);
        if (ratio > most) {
          most = ratio;
          lead = 2 * i + ((sharing.moments[i] ?? 0) >= 0 ? 0 : 1);
        }
      }
      if (sum <= (efforts[k] ?? 0)) return;
      efforts[k] = sum;
      const id = normal.directions[lead]?.strength ?? null;
      group[k] = id === null ? -1 : STRENGTH_IDS.indexOf(id);
      strength[k] = id === null ? 1 : Math.max(LEAST_STRENGTH, strengths[id]);
    });
    let total = 0;
    for (const e of efforts) total += e ** 3;
    solutions.push({ efforts, group, at: strength, sum: total });
  }
  return { joints: names, solutions };
}

/**
 * The cube norm at any strengths without solving: with r the strengths over those of a stored solution and e its efforts,
 * (sum e^3)^3 / (sum r^1.5 e^3)^2 <= E^3 <= sum e^3 / r^3. The best bound each way over all stored ones; the shares come
 * from the one whose upper bound is least. The gap says where one more solution would help. Exact where the muscle groups
 * behind a joint scale together; two-joint muscles and joints that stop counting make it an estimate (the tests say of what
 * size).
 * @param strengths fractions of normal in the order of STRENGTH_IDS
 */
export function estimateEfforts(stored: StoredEfforts, strengths: Float64Array): EffortEstimate {
  let low = 0;
  let high = Number.MAX_VALUE;
  let best: Solution | undefined;
  for (const solution of stored.solutions) {
    const { efforts, group, at, sum } = solution;
    let up = 0;
    let down = 0;
    for (let k = 0; k < efforts.length; k++) {
      const e = efforts[k] ?? 0;
      if (e === 0) continue;
      const g = group[k] ?? -1;
      const r = g < 0 ? 1 : Math.max(LEAST_STRENGTH, strengths[g] ?? 1) / (at[k] ?? 1);
      const cube = e * e * e;
      up += cube / (r * r * r);
      down += cube * r * Math.sqrt(r);
    }
    if (up < high) {
      high = up;
      best = solution;
    }
    if (down > 0) low = Math.max(low, (sum * sum * sum) / (down * down));
  }
  const shares = new Float64Array(stored.joints.length);
  const efforts = new Float64Array(stored.joints.length);
  const slope = new Float64Array(STRENGTH_IDS.length);
  const top = Math.cbrt(high);
  const bottom = Math.cbrt(Math.min(low, high));
  const value = Math.sqrt(top * bottom);
  if (best !== undefined && high > 0) {
    for (let k = 0; k < shares.length; k++) {
      const g = best.group[k] ?? -1;
      const r = g < 0 ? 1 : Math.max(LEAST_STRENGTH, strengths[g] ?? 1) / (best.at[k] ?? 1);
      const e = (best.efforts[k] ?? 0) / r;
      const share = e ** 3 / high;
      shares[k] = share;
      efforts[k] = value * Math.cbrt(share);
      if (g >= 0) slope[g] = (slope[g] ?? 0) - share;
    }
  }
  return { value, low: bottom, high: top, shares, efforts, slope };
}

/** Strengths as the numbers estimateEfforts takes. */
export function strengthVector(strengths: Strengths): Float64Array {
  return Float64Array.from(STRENGTH_IDS, (id: StrengthId) => strengths[id]);
}

function namesOf(statics: Statics): { joint: string; side: "weak" | "strong" | null }[] {
  const names: { joint: string; side: "weak" | "strong" | null }[] = [];
  for (const joint of statics.joints) {
    const side = statics.body.segments[joint.segment]?.side ?? null;
    if (!names.some((each) => each.joint === joint.name && each.side === side)) names.push({ joint: joint.name, side });
  }
  return names;
}

function indexOf(statics: Statics, names: readonly { readonly joint: string; readonly side: "weak" | "strong" | null }[], joint: string, segment: number): number {
  const side = statics.body.segments[segment]?.side ?? null;
  return names.findIndex((each) => each.joint === joint && each.side === side);
}
