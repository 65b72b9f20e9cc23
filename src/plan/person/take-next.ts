import { quadratic } from "./approximation.ts";
import type { Belief } from "./prior.ts";
import { SLOT_COUNT } from "./slots.ts";

/** A finding that could still be taken: what it looks at, how noisy it is, how long it takes. */
export interface Candidate {
  readonly id: string;
  /** Gradient of the quantity in the latent strengths. */
  readonly direction: Float64Array;
  readonly noiseVariance: number;
  readonly minutes: number;
}

/** How much a candidate would narrow the log efforts that matter, per minute spent on it. */
export interface Worth {
  readonly id: string;
  readonly narrowing: number;
  readonly perMinute: number;
  /** The target it narrows most. */
  readonly mostFor: number;
}

/**
 * Which finding is worth taking next: the expected fall of the variance of the log efforts of the rungs in question,
 * for each minute it takes. Linear in the belief, so it is a ranking, not a promise.
 * @param targets gradients of the log efforts in the latent strengths
 */
export function rankCandidates(
  belief: Belief,
  candidates: readonly Candidate[],
  targets: readonly Float64Array[],
): Worth[] {
  const worths = candidates.map((candidate): Worth => {
    const own = quadratic(belief.covariance, candidate.direction) + candidate.noiseVariance;
    let narrowing = 0;
    let best = 0;
    let mostFor = 0;
    targets.forEach((target, k) => {
      const fall = cross(belief.covariance, target, candidate.direction) ** 2 / Math.max(own, 1e-12);
      narrowing += fall;
      if (fall > best) {
        best = fall;
        mostFor = k;
      }
    });
    return { id: candidate.id, narrowing, perMinute: narrowing / candidate.minutes, mostFor };
  });
  return worths.sort((a, b) => b.perMinute - a.perMinute || (a.id < b.id ? -1 : 1));
}

function cross(covariance: Float64Array, a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < SLOT_COUNT; i++) {
    const along = a[i] ?? 0;
    if (along === 0) continue;
    for (let j = 0; j < SLOT_COUNT; j++) sum += along * (covariance[i * SLOT_COUNT + j] ?? 0) * (b[j] ?? 0);
  }
  return sum;
}
