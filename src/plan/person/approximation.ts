import type { Evidence } from "./evidence.ts";
import { evaluateQuantity } from "./evidence.ts";
import { density } from "./normal.ts";
import type { Belief } from "./prior.ts";
import { SLOT_COUNT } from "./slots.ts";

/** What one finding adds to the belief: a normal statement along one direction of the latent strengths. */
export interface Site {
  readonly direction: Float64Array;
  /** Precision and precision-weighted mean along the direction. */
  readonly precision: number;
  readonly pull: number;
  /** Belief about the quantity from everything else: mean and variance. */
  readonly cavity: { readonly mean: number; readonly variance: number };
}

const SWEEPS = 6;
const POINTS = 41;
const N = SLOT_COUNT;

/**
 * A normal belief that agrees with all findings in the mean and spread along each finding's own direction
 * (expectation propagation; nonlinear tasks are taken along their gradient, renewed in every sweep).
 * @source Minka 2001, the general method
 */
export function approximateBelief(
  prior: Belief,
  evidence: readonly Evidence[],
): { belief: Belief; sites: readonly Site[] } {
  const mean = Float64Array.from(prior.mean);
  const covariance = Float64Array.from(prior.covariance);
  const sites: Site[] = evidence.map(() => ({
    direction: new Float64Array(N),
    precision: 0,
    pull: 0,
    cavity: { mean: 0, variance: 1 },
  }));
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    evidence.forEach((item, k) => {
      const old = sites[k];
      if (old === undefined) return;
      addAlong(mean, covariance, old.direction, -old.precision, -old.pull);
      const direction = new Float64Array(N);
      const value = evaluateQuantity(item.quantity, mean, direction);
      const variance = quadratic(covariance, direction);
      if (variance < 1e-12) {
        sites[k] = { direction, precision: 0, pull: 0, cavity: { mean: value, variance: 1e-12 } };
        return;
      }
      // x = value + direction . (z - mean): the site speaks of direction . z.
      const offset = value - inner(direction, mean);
      const matched = matchMoments(item.logLikelihood, value, variance);
      // Half steps settle findings that pull against each other.
      const wanted = Math.max(1 / matched.variance - 1 / variance, 0);
      const damp = sweep < 1 ? 1 : 0.6;
      const precision = damp * wanted + (1 - damp) * old.precision;
      const wantedPull = (matched.mean - offset) / matched.variance - (value - offset) / variance;
      const pull = wanted === 0 ? 0 : damp * wantedPull + (1 - damp) * old.pull;
      addAlong(mean, covariance, direction, precision, pull);
      sites[k] = { direction, precision, pull, cavity: { mean: value, variance } };
    });
  }
  return { belief: { mean, covariance }, sites };
}

/** The belief without one finding. */
export function withoutSite(belief: Belief, site: Site): Belief {
  const mean = Float64Array.from(belief.mean);
  const covariance = Float64Array.from(belief.covariance);
  addAlong(mean, covariance, site.direction, -site.precision, -site.pull);
  return { mean, covariance };
}

/** Multiplies the belief by a normal statement along a direction: a rank-one change. */
function addAlong(
  mean: Float64Array,
  covariance: Float64Array,
  direction: Float64Array,
  precision: number,
  pull: number,
): void {
  if (precision === 0 && pull === 0) return;
  const along = new Float64Array(N);
  for (let i = 0; i < N; i++) {
    let sum = 0;
    for (let j = 0; j < N; j++) {
      const d = direction[j] ?? 0;
      if (d !== 0) sum += (covariance[i * N + j] ?? 0) * d;
    }
    along[i] = sum;
  }
  const variance = inner(direction, along);
  const scale = 1 / Math.max(1 + precision * variance, 1e-9);
  const at = inner(direction, mean);
  const shift = (pull - precision * at) * scale;
  for (let i = 0; i < N; i++) {
    mean[i] = (mean[i] ?? 0) + (along[i] ?? 0) * shift;
    for (let j = 0; j < N; j++) {
      covariance[i * N + j] = (covariance[i * N + j] ?? 0) - precision * scale * (along[i] ?? 0) * (along[j] ?? 0);
    }
  }
}

/** Mean and variance of a normal times a likelihood, on evenly spaced points over five spreads. */
function matchMoments(
  logLikelihood: (x: number) => number,
  mean: number,
  variance: number,
): { mean: number; variance: number } {
  const spread = Math.sqrt(variance);
  const xs: number[] = [];
  const logs: number[] = [];
  let top = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < POINTS; k++) {
    const u = -5 + (10 * k) / (POINTS - 1);
    const x = mean + spread * u;
    const log = logLikelihood(x) + Math.log(density(u));
    xs.push(x);
    logs.push(log);
    top = Math.max(top, log);
  }
  let total = 0;
  let first = 0;
  logs.forEach((log, k) => {
    const w = Math.exp(log - top);
    total += w;
    first += w * (xs[k] ?? 0);
  });
  const centre = first / total;
  let second = 0;
  logs.forEach((log, k) => {
    second += Math.exp(log - top) * ((xs[k] ?? 0) - centre) ** 2;
  });
  return { mean: centre, variance: Math.min(Math.max(second / total, variance * 1e-4), variance * 4) };
}

export function inner(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}

/** Variance of a direction under a covariance. */
export function quadratic(covariance: Float64Array, direction: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < N; i++) {
    const d = direction[i] ?? 0;
    if (d === 0) continue;
    for (let j = 0; j < N; j++) sum += d * (covariance[i * N + j] ?? 0) * (direction[j] ?? 0);
  }
  return Math.max(sum, 0);
}
