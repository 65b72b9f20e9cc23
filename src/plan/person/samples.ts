import { seededStream } from "../../quantity/random.ts";
import type { Evidence } from "./evidence.ts";
import { evaluateQuantity } from "./evidence.ts";
import { quantile } from "./normal.ts";
import { type Belief, strengthOf } from "./prior.ts";
import { SLOT_COUNT } from "./slots.ts";

/** Weighted draws of the person's 46 strengths, as fractions of normal. Weights sum to one. */
export interface StrengthSamples {
  readonly draws: readonly Float64Array[];
  readonly weights: Float64Array;
  /** How many equal draws these are worth. */
  readonly effective: number;
}

const N = SLOT_COUNT;
const WIDEN = 1.08;
const SEED = 20260317;
/** Below this share of effective draws the draws are moved toward the target. */
const ENOUGH = 0.2;
const MOVES = 4;
/** As many draws are moved where draws have to be; each move costs several looks at every finding. */
const MOVED_DRAWS = 200;

/**
 * Draws from the normal belief, a little widened, then weighs each draw by what the findings really say of it.
 * The seed is fixed: it depends on neither label nor side, so the same findings always give the same answer.
 */
export function drawStrengths(
  prior: Belief,
  belief: Belief,
  evidence: readonly Evidence[],
  count: number,
): StrengthSamples {
  const root = lowerRoot(belief.covariance, WIDEN);
  const priorRoot = lowerRoot(prior.covariance, 1);
  const stream = seededStream(SEED);
  const latents: Float64Array[] = [];
  for (let k = 0; k < count; k += 2) {
    const noise = Float64Array.from({ length: N }, () => quantile(Math.min(Math.max(stream(), 1e-9), 1 - 1e-9)));
    // Drawn in opposite pairs: the mean of the draws is then exact.
    latents.push(placed(belief.mean, root, noise, 1), placed(belief.mean, root, noise, -1));
  }
  const logTarget = (z: Float64Array): number => {
    let sum = -0.5 * squaredDistance(z, prior.mean, priorRoot);
    const strengths = Float64Array.from(z, strengthOf);
    for (const item of evidence) sum += item.logLikelihood(evaluateQuantity(item.quantity, z, null, strengths));
    return sum;
  };
  const logProposal = (z: Float64Array): number => -0.5 * squaredDistance(z, belief.mean, root);
  const ratio = (z: Float64Array): number => logTarget(z) - logProposal(z);
  const logs = latents.map(ratio);
  const weights = normalised(logs);
  const effective = effectiveCount(weights);
  if (evidence.length === 0 || effective >= ENOUGH * latents.length) {
    return { draws: latents.map((z) => Float64Array.from(z, strengthOf)), weights, effective };
  }
  const chosen = resampled(latents, weights);
  const moved = chosen.map((z) => {
    let at = z;
    for (let m = 0; m < MOVES; m++) at = sliceMove(at, belief.mean, root, ratio, stream);
    return at;
  });
  return {
    draws: moved.map((z) => Float64Array.from(z, strengthOf)),
    weights: new Float64Array(moved.length).fill(1 / moved.length),
    effective: Math.max(effective, moved.length / 2),
  };
}

/** One move along an ellipse through the draw that leaves the target unchanged (Murray, Adams and MacKay 2010). */
function sliceMove(
  z: Float64Array,
  mean: Float64Array,
  root: Float64Array,
  ratio: (z: Float64Array) => number,
  stream: () => number,
): Float64Array {
  const noise = Float64Array.from({ length: N }, () => quantile(Math.min(Math.max(stream(), 1e-9), 1 - 1e-9)));
  const other = placed(mean, root, noise, 1);
  const level = ratio(z) + Math.log(Math.max(stream(), 1e-300));
  let angle = stream() * 2 * Math.PI;
  let low = angle - 2 * Math.PI;
  let high = angle;
  for (let tries = 0; tries < 30; tries++) {
    const c = Math.cos(angle);
    const s = Math.sin(angle);
    const candidate = Float64Array.from(z, (value, i) => {
      const m = mean[i] ?? 0;
      return m + (value - m) * c + ((other[i] ?? 0) - m) * s;
    });
    if (ratio(candidate) > level) return candidate;
    if (angle < 0) low = angle;
    else high = angle;
    angle = low + stream() * (high - low);
  }
  return z;
}

/** A draw: the mean with noise laid out along the root. */
export function placed(mean: Float64Array, root: Float64Array, noise: Float64Array, sign: 1 | -1): Float64Array {
  const z = new Float64Array(N);
  for (let i = 0; i < N; i++) {
    let sum = 0;
    for (let j = 0; j <= i; j++) sum += (root[i * N + j] ?? 0) * (noise[j] ?? 0);
    z[i] = (mean[i] ?? 0) + sign * sum;
  }
  return z;
}

/** Lower triangular root of a covariance, row by row, its variances made larger by a factor. */
export function lowerRoot(covariance: Float64Array, widen: number): Float64Array {
  const root = new Float64Array(N * N);
  for (let j = 0; j < N; j++) {
    let diagonal = (covariance[j * N + j] ?? 0) * widen + 1e-9;
    for (let k = 0; k < j; k++) diagonal -= (root[j * N + k] ?? 0) ** 2;
    const pivot = Math.sqrt(Math.max(diagonal, 1e-9));
    root[j * N + j] = pivot;
    for (let i = j + 1; i < N; i++) {
      let sum = (covariance[i * N + j] ?? 0) * widen;
      for (let k = 0; k < j; k++) sum -= (root[i * N + k] ?? 0) * (root[j * N + k] ?? 0);
      root[i * N + j] = sum / pivot;
    }
  }
  return root;
}

function squaredDistance(z: Float64Array, mean: Float64Array, root: Float64Array): number {
  let total = 0;
  const y = new Float64Array(N);
  for (let i = 0; i < N; i++) {
    let sum = (z[i] ?? 0) - (mean[i] ?? 0);
    for (let j = 0; j < i; j++) sum -= (root[i * N + j] ?? 0) * (y[j] ?? 0);
    y[i] = sum / (root[i * N + i] ?? 1);
    total += (y[i] ?? 0) ** 2;
  }
  return total;
}

function normalised(logs: readonly number[]): Float64Array {
  const top = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const raw = Float64Array.from(logs, (log) => Math.exp(log - top));
  const total = raw.reduce((sum, w) => sum + w, 0);
  return raw.map((w) => w / total);
}

function effectiveCount(weights: Float64Array): number {
  return 1 / weights.reduce((sum, w) => sum + w * w, 0);
}

function resampled(latents: readonly Float64Array[], weights: Float64Array): Float64Array[] {
  const chosen: Float64Array[] = [];
  let cumulated = 0;
  let k = 0;
  const count = Math.min(latents.length, MOVED_DRAWS);
  for (let i = 0; i < count; i++) {
    const mark = (i + 0.5) / count;
    while (k < latents.length - 1 && cumulated + (weights[k] ?? 0) < mark) {
      cumulated += weights[k] ?? 0;
      k++;
    }
    chosen.push(latents[k] ?? new Float64Array(N));
  }
  return chosen;
}

/** The weighted 5th, 50th and 95th percentile of values that go with the draws. */
export function weightedRange(
  values: readonly number[],
  weights: Float64Array,
): { low: number; middle: number; high: number } {
  const order = values.map((_, i) => i).sort((a, b) => (values[a] ?? 0) - (values[b] ?? 0) || a - b);
  const at = (share: number): number => {
    let sum = 0;
    for (const i of order) {
      sum += weights[i] ?? 0;
      if (sum >= share - 1e-12) return values[i] ?? 0;
    }
    return values[order[order.length - 1] ?? 0] ?? 0;
  };
  return { low: at(0.05), middle: at(0.5), high: at(0.95) };
}
