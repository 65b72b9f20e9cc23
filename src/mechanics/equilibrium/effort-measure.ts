import type { Allowed } from "./efforts.ts";
import type { Joint } from "./joints.ts";

/** Joints in series count as their norm of this power: hardly more than the larger of them. */
export const SERIES_POWER = 5;
/** An axis of a three-axis joint counts from about this part of the largest effort on; below, its corner is rounded. */
const ROUNDING = 0.04;
/** Every axis also counts a little by its square, so that what hardly works is settled too. */
const SMALL = 0.02;
/** How far a rounded corner is taken as its outer bow (1), which never oversteps, rather than its own bend (0): at the start, and near the end. */
export const FAR_BOW = 0.4;
export const NEAR_BOW = 0.0;

/** Slope and bend of the summed efforts by the moments: diag(bend), and per joint and for the joints in series one row squared. */
export interface Measure {
  /** By angle [1/N.m]. */
  readonly slope: Float64Array;
  /** By angle [1/N.m^2]. */
  readonly bend: Float64Array;
  /** By angle: how a joint's one effort grows with the angle's moment; its square counts with `alongWeight`, by segment. */
  readonly along: Float64Array;
  readonly alongWeight: Float64Array;
  /** The same for the joints in series together. */
  readonly chain: Float64Array;
  chainWeight: number;
  readonly efforts: Float64Array;
}

/** Room for the slopes and bends of one body's joints. */
export function measureRoom(joints: readonly Joint[], angles: number, segments: number): Measure {
  return {
    slope: new Float64Array(angles),
    bend: new Float64Array(angles),
    along: new Float64Array(angles),
    alongWeight: new Float64Array(segments),
    chain: new Float64Array(angles),
    chainWeight: 0,
    efforts: new Float64Array(joints.length),
  };
}

/** Effort of every joint for given moments: one number for three axes; returns the largest. */
export function jointEfforts(joints: readonly Joint[], ratio: Float64Array, into: Float64Array): number {
  let most = 0;
  for (let k = 0; k < joints.length; k++) {
    const joint = joints[k];
    if (joint === undefined) continue;
    let effort = 0;
    for (const i of joint.angles) effort = joint.ball ? effort + (ratio[i] ?? 0) : Math.max(effort, ratio[i] ?? 0);
    into[k] = effort;
    if (effort > most) most = effort;
  }
  return most;
}

/**
 * Slope and bend, at given moments, of what the habitual sharing makes least: the sum over joints of effort^power. The
 * three axes of a ball joint are added before the power; joints in series enter as their norm.
 * @param scale largest effort: keeps the numbers of one size for light and heavy tasks
 */
export function measureEfforts(
  joints: readonly Joint[],
  allowed: Allowed,
  moments: Float64Array,
  ratio: Float64Array,
  scale: number,
  power: number,
  outerBow: number,
  room: Measure,
): void {
  const { slope, bend, along, alongWeight, chain, efforts } = room;
  jointEfforts(joints, ratio, efforts);
  let series = 0;
  joints.forEach((joint, k) => {
    if (joint.series !== null) series += ((efforts[k] ?? 0) / scale) ** SERIES_POWER;
  });
  series = scale * series ** (1 / SERIES_POWER);
  chain.fill(0);
  room.chainWeight = 0;
  joints.forEach((joint, k) => {
    const effort = efforts[k] ?? 0;
    // By effort: slope and bend of effort^power / power, over scale^(power-2).
    let first = effort * (effort / scale) ** (power - 2);
    let second = (power - 1) * (effort / scale) ** (power - 2);
    let inChain = 0;
    if (joint.series !== null && series > 0) {
      const part = effort / series;
      const whole = series * (series / scale) ** (power - 2);
      const bendOfWhole = (power - 1) * (series / scale) ** (power - 2);
      first = whole * part ** (SERIES_POWER - 1);
      second = ((SERIES_POWER - 1) * whole * part ** (SERIES_POWER - 2)) / series;
      room.chainWeight = bendOfWhole - ((SERIES_POWER - 1) * whole) / series;
      inChain = part ** (SERIES_POWER - 1);
    }
    const joined = joint.ball || joint.series !== null;
    alongWeight[joint.segment] = joined ? second : 0;
    const rounding = ROUNDING * scale;
    for (const i of joint.angles) {
      const a = ratio[i] ?? 0;
      const sign = (moments[i] ?? 0) >= 0 ? 1 : -1;
      const up = allowed.up[i] ?? 1;
      const down = allowed.down[i] ?? 1;
      const c = sign > 0 ? up : down;
      // Close to where the moment turns round, the stiffer of the two ways, so that a step does not swing across.
      const stiff = a * c < rounding * Math.min(up, down) ? Math.min(up, down) : c;
      if (!joined) {
        // Axes that are no ball joint's count each by itself.
        along[i] = 0;
        slope[i] = (sign * a * ((a / scale) ** (power - 2) + SMALL)) / c;
        bend[i] = ((power - 1) * (a / scale) ** (power - 2) + SMALL) / (stiff * stiff);
        continue;
      }
      const long = joint.ball ? Math.sqrt(a * a + rounding * rounding) : 1;
      const share = joint.ball ? a / long : 1;
      const bow = joint.ball ? (outerBow + (1 - outerBow) * (rounding / long) ** 2) / long : 0;
      slope[i] = (sign * (first * share + SMALL * a)) / c;
      bend[i] = (first * bow + SMALL) / (stiff * stiff);
      along[i] = (sign * share) / c;
      chain[i] = (inChain * sign * share) / c;
    }
  });
}
