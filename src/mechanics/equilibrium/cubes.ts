import { solveBox } from "../linear-program/box-quadratic.ts";
import { gripPull } from "../contact/columns.ts";
import type { Capacities } from "../body/strength-capacities.ts";
import { FAR_BOW, jointEfforts, type Measure, measureEfforts, NEAR_BOW } from "./effort-measure.ts";
import { type Allowed, allowedMoments, ratios } from "./efforts.ts";
import { BALANCE, buildMatrix, buildPull, buildSide, momentsOf, NEAR, workOf } from "./sharing-matrix.ts";
import type { Statics } from "./statics.ts";

/** An answer in numbers: the pushes, the moments, how hard each angle works. */
export interface Sharing {
  readonly x: Float64Array;
  readonly moments: Float64Array;
  readonly ratios: Float64Array;
  readonly allowed: Allowed;
  /** Largest error of the whole body's balance [N, N.m]. */
  readonly residual: number;
  readonly rounds: number;
  /** Largest effort of any counted joint. */
  readonly most: number;
  /** Where each unknown stood at the end: -1 at nothing, 0 between, 1 at its most. */
  readonly state: Int8Array;
  /** The share the weak side took where it is the person's own: the given one, or the nearest that balance allows. */
  readonly sharingHeld: boolean;
}

/** Settled when no angle's effort moves by more than this part of the largest. */
const SETTLED = 3e-3;
/** ... and the largest effort by no more than this part of itself. */
const SAME = 3e-4;
/** Near the answer below this: the corners may then be taken as they are. */
const CLOSE = 0.03;
const MOST_PUSHES = 60;
/** After so many rounds only steps that never overstep. */
const PATIENT = 12;

export interface CubeOptions {
  /** Power of the effort that is summed; 3 is the habitual sharing, higher powers come near the least possible largest effort. */
  readonly power?: number;
  readonly mostRounds?: number;
  /** `near`: as close to the given sharing between the sides as balance allows. Default `held`. */
  readonly keepSharing?: "held" | "near";
  /** Answer of a neighbouring solve: other strengths, or another pose with the same contacts. */
  readonly start?: Sharing;
}

/**
 * Shares the load so that the sum of cubed efforts is least: in each round the sum is bent to a square about the last
 * moments and made least with pushes never negative. The whole body's balance is held by multipliers. Deterministic; the
 * answer is the same from any start up to its own tolerance.
 */
export function shareByCubes(statics: Statics, capacities: Capacities, options: CubeOptions = {}): Sharing {
  const power = options.power ?? 3;
  const mostRounds = options.mostRounds ?? 40;
  const { unknowns: n, angles, columns, wholeSide, whole, joints } = statics;
  const work = workOf(statics);
  const { box, matrix, h, upper, measure, from, ratio } = work;
  const allowed = allowedMoments(statics, capacities);
  columns.forEach((column, j) => {
    upper[j] = typeof column.most === "number" ? column.most : gripPull(capacities.grip[column.most.grip]);
  });
  statics.stops.forEach((stop, k) => {
    upper[columns.length + k] = stop.most;
  });
  const sharing = statics.sharing;
  const held = sharing !== null && options.keepSharing !== "near";
  const multipliers = new Float64Array(held ? 7 : 6);
  const moments = new Float64Array(angles);
  const start = options.start?.moments.length === angles ? options.start : undefined;
  if (start !== undefined && start.state.length === n) box.state.set(start.state);
  else box.state.fill(0);
  let scale = 1;
  if (start === undefined) measureEvenly(allowed, measure, from);
  else {
    from.set(start.moments);
    ratios(from, allowed, ratio);
    scale = Math.max(1e-9, jointEfforts(joints, ratio, measure.efforts));
    measureEfforts(joints, allowed, from, ratio, scale, power, FAR_BOW, measure);
  }
  let residual = Number.MAX_VALUE;
  let round = 0;
  const last = work.last.fill(0);
  let movedBefore = Number.MAX_VALUE;
  const shareRow = sharing?.row ?? null;
  /** Pushes for the present square, each time nearer to balance. */
  const push = (): void => {
    buildSide(statics, work, multipliers, shareRow);
    solveBox(matrix, h, upper, box);
    residual = updateMultipliers(n, whole, wholeSide, box.x, multipliers, held ? shareRow : null);
  };
  for (; round < mostRounds; round++) {
    buildMatrix(statics, work, shareRow, held ? BALANCE : NEAR);
    box.factored = false;
    buildPull(statics, work);
    push();
    momentsOf(statics, work, box.x, moments);
    let moved = 0;
    let along = 0;
    for (let i = 0; i < angles; i++) {
      const m = moments[i] ?? 0;
      const step = (m - (from[i] ?? 0)) / ((m >= 0 ? allowed.up[i] : allowed.down[i]) ?? 1);
      moved = Math.max(moved, Math.abs(step));
      along += step * (last[i] ?? 0);
      last[i] = step;
    }
    // Steps that turn round without getting much shorter swing about the answer: half a step then.
    const step = along < 0 && moved > 0.5 * movedBefore ? 0.5 : 1;
    movedBefore = moved;
    for (let i = 0; i < angles; i++) from[i] = (from[i] ?? 0) + step * ((moments[i] ?? 0) - (from[i] ?? 0));
    const before = scale;
    ratios(from, allowed, ratio);
    scale = Math.max(1e-9, jointEfforts(joints, ratio, measure.efforts));
    const size = Math.max(scale, 0.05);
    if (moved < SETTLED * size && Math.abs(scale - before) < SAME * size && residual < 1e-4 * statics.weight) break;
    const bow = round > PATIENT ? 1 : moved < CLOSE * scale ? NEAR_BOW : FAR_BOW;
    measureEfforts(joints, allowed, from, ratio, scale, power, bow, measure);
  }
  // The square stays as it is; only the balance is driven home.
  for (let p = 0; p < MOST_PUSHES && residual >= 1e-8 * statics.weight; p++) push();
  momentsOf(statics, work, box.x, moments);
  const answer = ratios(moments, allowed, new Float64Array(angles));
  return {
    x: Float64Array.from(box.x),
    moments,
    ratios: answer,
    allowed,
    residual,
    rounds: round,
    most: mostEffort(statics, allowed, answer),
    state: Int8Array.from(box.state),
    sharingHeld: held,
  };
}

/** The first round: plain least squares of the moments over what each angle may give. */
function measureEvenly(allowed: Allowed, measure: Measure, from: Float64Array): void {
  from.fill(0);
  measure.slope.fill(0);
  measure.alongWeight.fill(0);
  measure.chainWeight = 0;
  for (let i = 0; i < from.length; i++) {
    const c = ((allowed.up[i] ?? 1) + (allowed.down[i] ?? 1)) / 2;
    measure.bend[i] = 1 / (c * c);
  }
}

function updateMultipliers(
  n: number,
  whole: Float64Array,
  side: Float64Array,
  x: Float64Array,
  multipliers: Float64Array,
  share: Float64Array | null,
): number {
  let worst = 0;
  for (let r = 0; r < 6; r++) {
    let error = side[r] ?? 0;
    for (let j = 0; j < n; j++) error -= (whole[r * n + j] ?? 0) * (x[j] ?? 0);
    multipliers[r] = (multipliers[r] ?? 0) + BALANCE * error;
    worst = Math.max(worst, Math.abs(error));
  }
  if (share !== null) {
    let error = 0;
    for (let j = 0; j < n; j++) error -= (share[j] ?? 0) * (x[j] ?? 0);
    multipliers[6] = (multipliers[6] ?? 0) + BALANCE * error;
    worst = Math.max(worst, Math.abs(error));
  }
  return worst;
}

/** Largest effort of any counted joint; a joint with three axes counts as one. */
export function mostEffort(statics: Statics, allowed: Allowed, ratio: Float64Array): number {
  let most = 0;
  for (const joint of statics.joints) {
    let sum = 0;
    for (const i of joint.angles) {
      if (allowed.counted[i] === 0) continue;
      sum = joint.ball ? sum + (ratio[i] ?? 0) : Math.max(sum, ratio[i] ?? 0);
    }
    most = Math.max(most, sum);
  }
  return most;
}
