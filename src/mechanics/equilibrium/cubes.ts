import { type BoxWork, boxWork, solveBox } from "../linear-program/box-quadratic.ts";
import { gripPull } from "../contact/columns.ts";
import type { Capacities } from "../body/strength-capacities.ts";
import { type Allowed, allowedMoments, muscleMoments, ratios } from "./efforts.ts";
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
  /** Weights of the last round, to start a neighbouring pose from. */
  readonly weights: Float64Array;
  /** The share the weak side took where it is the person's own: the given one, or the nearest that balance allows. */
  readonly sharingHeld: boolean;
}

interface Work {
  readonly box: BoxWork;
  readonly matrix: Float64Array;
  readonly h: Float64Array;
  readonly upper: Float64Array;
  readonly target: Float64Array;
  readonly weights: Float64Array;
  /** The part of the matrix that is the same for all weights (lower half): the whole body's balance. */
  readonly balance: Float64Array;
  /** Unknowns that reach each angle's row. */
  readonly reach: readonly Int32Array[];
  readonly packed: Float64Array;
}
const works = new WeakMap<Statics, Work>();

function workOf(statics: Statics): Work {
  let work = works.get(statics);
  if (work === undefined) {
    const { unknowns: n, angles, muscle } = statics;
    const reach = Array.from({ length: angles }, (_, i) => {
      const found: number[] = [];
      for (let j = 0; j < n; j++) if (muscle[i * n + j] !== 0) found.push(j);
      return Int32Array.from(found);
    });
    const balance = new Float64Array(n * n);
    for (let r = 0; r < 6; r++) addOuter(statics.whole, r * n, n, BALANCE, balance);
    work = {
      balance,
      box: boxWork(n),
      matrix: new Float64Array(n * n),
      h: new Float64Array(n),
      upper: new Float64Array(n),
      target: new Float64Array(angles),
      weights: new Float64Array(angles),
      packed: new Float64Array(n),
      reach,
    };
    works.set(statics, work);
  }
  return work;
}

/** Keeps the answer one where joints leave it open, and spreads it; far below what any joint asks. */
const RIDGE = 1e-9;
/** Weight of the whole body's balance against the joints' efforts; the multipliers do the rest. */
const BALANCE = 20;
/** Weight of a sharing that balance does not allow in full: over the efforts, under the balance. */
const NEAR = 0.05;
/** Weight of a joint's end against its most [1/N.m^2]: it is used where muscle would have to work, not for nothing. */
const STOP_WEIGHT = 0.02;
const FLOOR = 0.02;
/** Joints in series count as their norm of this power: hardly more than the larger of them. */
export const SERIES_POWER = 5;

export interface CubeOptions {
  /** Power of the effort that is summed; 3 is the habitual sharing, higher powers come near the least possible largest effort. */
  readonly power?: number;
  readonly mostRounds?: number;
  /** `near`: as close to the given sharing between the sides as balance allows. Default `held`. */
  readonly keepSharing?: "held" | "near";
  /** Weights of a neighbouring solve. */
  readonly start?: Float64Array;
}

/**
 * Shares the load so that the sum of cubed efforts is least, by reweighted least squares with pushes never negative.
 * The whole body's balance is held by multipliers. Deterministic; the answer is the same from any start up to its own
 * tolerance, and each call starts afresh.
 */
export function shareByCubes(statics: Statics, capacities: Capacities, options: CubeOptions = {}): Sharing {
  const power = options.power ?? 3;
  const mostRounds = options.mostRounds ?? 30;
  const { unknowns: n, angles, columns, wholeSide, whole } = statics;
  const work = workOf(statics);
  const { box, matrix, h, upper, weights, target, reach } = work;
  const allowed = allowedMoments(statics, capacities);
  columns.forEach((column, j) => {
    upper[j] = typeof column.most === "number" ? column.most : gripPull(capacities.grip[column.most.grip]);
  });
  statics.stops.forEach((stop, k) => {
    upper[columns.length + k] = stop.most;
  });
  box.state.fill(0);
  const sharing = statics.sharing;
  const held = sharing !== null && options.keepSharing !== "near";
  const rows = held ? 7 : 6;
  const multipliers = new Float64Array(rows);
  const moments = new Float64Array(angles);
  const ratio = new Float64Array(angles);
  for (let i = 0; i < angles; i++) {
    const c = ((allowed.up[i] ?? 1) + (allowed.down[i] ?? 1)) / 2;
    weights[i] = options.start?.[i] ?? 1 / (c * c);
  }
  const leastRounds = options.start === undefined ? 6 : 2;
  let residual = Number.MAX_VALUE;
  let before = Number.MAX_VALUE;
  let round = 0;
  let settled = false;
  for (; round < mostRounds; round++) {
    buildMatrix(statics, weights, work, sharing?.row ?? null, held ? BALANCE : NEAR);
    const polish = settled || round === mostRounds - 1 ? 60 : 1;
    for (let p = 0; p < polish; p++) {
      buildSide(statics, weights, reach, h, multipliers, sharing?.row ?? null);
      solveBox(matrix, h, upper, box);
      residual = updateMultipliers(n, whole, wholeSide, box.x, multipliers, held ? sharing.row : null);
      if (residual < 1e-8 * statics.weight) break;
    }
    muscleMoments(statics, box.x, moments);
    ratios(moments, allowed, ratio);
    if (settled) break;
    const most = targetWeights(statics, allowed, moments, ratio, target, power);
    for (let i = 0; i < angles; i++) weights[i] = Math.sqrt((weights[i] ?? 0) * (target[i] ?? 0));
    const change = Math.abs(most - before) / Math.max(most, 0.2);
    before = most;
    if (
      round >= leastRounds &&
      change < (options.start === undefined ? 2e-3 : 8e-3) &&
      residual < 1e-4 * statics.weight
    )
      settled = true;
  }
  return {
    x: Float64Array.from(box.x),
    moments,
    ratios: ratio,
    allowed,
    residual,
    rounds: round,
    most: mostEffort(statics, allowed, ratio),
    weights: Float64Array.from(weights),
    sharingHeld: held,
  };
}

function buildMatrix(
  statics: Statics,
  weights: Float64Array,
  work: Work,
  share: Float64Array | null,
  shareWeight: number,
): void {
  const { unknowns: n, angles, muscle, columns, stops } = statics;
  const { matrix, reach, packed } = work;
  matrix.set(work.balance);
  if (share !== null) addOuter(share, 0, n, shareWeight, matrix);
  for (let i = 0; i < angles; i++) {
    const w = weights[i] ?? 0;
    const row = i * n;
    const list = reach[i];
    if (list === undefined) continue;
    const count = list.length;
    for (let a = 0; a < count; a++) packed[a] = muscle[row + (list[a] ?? 0)] ?? 0;
    for (let a = 0; a < count; a++) {
      const left = w * (packed[a] ?? 0);
      const out = (list[a] ?? 0) * n;
      for (let b = 0; b <= a; b++) {
        const k = out + (list[b] ?? 0);
        matrix[k] = (matrix[k] ?? 0) + left * (packed[b] ?? 0);
      }
    }
  }
  for (let j = 0; j < n; j++) {
    const most = stops[j - columns.length]?.most;
    matrix[j * n + j] = (matrix[j * n + j] ?? 0) + RIDGE + (most === undefined ? 0 : STOP_WEIGHT / (most * most));
    for (let k = 0; k < j; k++) matrix[k * n + j] = matrix[j * n + k] ?? 0;
  }
}

function addOuter(rows: Float64Array, from: number, n: number, weight: number, matrix: Float64Array): void {
  for (let a = 0; a < n; a++) {
    const left = weight * (rows[from + a] ?? 0);
    if (left === 0) continue;
    const out = a * n;
    for (let b = 0; b <= a; b++) matrix[out + b] = (matrix[out + b] ?? 0) + left * (rows[from + b] ?? 0);
  }
}

function buildSide(
  statics: Statics,
  weights: Float64Array,
  reach: readonly Int32Array[],
  h: Float64Array,
  multipliers: Float64Array,
  share: Float64Array | null,
): void {
  const { unknowns: n, angles, muscle, muscleOwn, whole, wholeSide } = statics;
  h.fill(0);
  for (let i = 0; i < angles; i++) {
    const by = (weights[i] ?? 0) * (muscleOwn[i] ?? 0);
    const list = reach[i];
    if (by === 0 || list === undefined) continue;
    for (let a = 0; a < list.length; a++) {
      const j = list[a] ?? 0;
      h[j] = (h[j] ?? 0) + by * (muscle[i * n + j] ?? 0);
    }
  }
  for (let r = 0; r < 6; r++) {
    const by = BALANCE * (wholeSide[r] ?? 0) + (multipliers[r] ?? 0);
    for (let j = 0; j < n; j++) h[j] = (h[j] ?? 0) + by * (whole[r * n + j] ?? 0);
  }
  if (share === null) return;
  const by = multipliers[6] ?? 0;
  for (let j = 0; j < n; j++) h[j] = (h[j] ?? 0) + by * (share[j] ?? 0);
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

/** Weights that make the squares' slope that of the wished power; returns the largest effort. */
function targetWeights(
  statics: Statics,
  allowed: Allowed,
  moments: Float64Array,
  ratio: Float64Array,
  target: Float64Array,
  power: number,
): number {
  const { joints } = statics;
  let most = 1e-9;
  let series = 0;
  for (const joint of joints) {
    let effort = 0;
    for (const i of joint.angles) effort = joint.ball ? effort + (ratio[i] ?? 0) : Math.max(effort, ratio[i] ?? 0);
    if (effort > most) most = effort;
    if (joint.series !== null) series += effort ** SERIES_POWER;
  }
  series = series ** (1 / SERIES_POWER);
  for (const joint of joints) {
    let sum = 0;
    if (joint.ball) for (const i of joint.angles) sum += ratio[i] ?? 0;
    for (const i of joint.angles) {
      const a = ratio[i] ?? 0;
      const effort = joint.ball ? sum : a;
      let weight = Math.max(effort / most, FLOOR) ** (power - 2);
      // One number for three axes: the sum of their ratios, shared out in proportion.
      if (joint.ball) weight *= effort / Math.max(a, 0.05 * effort, 1e-9 * most + 1e-12);
      // Parts of the trunk in series count once: the lesser one hardly at all.
      if (joint.series !== null && series > 0) weight *= Math.max(effort / series, 0.1) ** (SERIES_POWER - power);
      // The way the moment acts now decides which limit holds.
      const c = ((moments[i] ?? 0) >= 0 ? allowed.up[i] : allowed.down[i]) ?? 1;
      target[i] = weight / (c * c);
    }
  }
  return most;
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
