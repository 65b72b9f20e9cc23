import { cumulative, density, quantile } from "./normal.ts";
import { groupOf, jointOf, type LimbGroup, SLOT_COUNT } from "./slots.ts";

/** Strength runs from near nothing to a quarter above normal: s = 1.25 Phi(z). */
const CEILING = 1.25;

/** Fraction of normal strength behind a latent value. */
export const strengthOf = (z: number): number => CEILING * cumulative(z);
/** How fast ln s moves with z. */
export const logSlope = (z: number): number => (CEILING * density(z)) / Math.max(strengthOf(z), 1e-12);
/** The latent value of a fraction of normal. */
export const latentOf = (s: number): number => quantile(Math.min(Math.max(s / CEILING, 1e-6), 1 - 1e-6));

/** A normal belief about the 46 latent strengths: mean, and covariance row by row. */
export interface Belief {
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
}

/** Which limbs are weakened, for the first guess before any finding. */
export type Pattern = "oneSide" | "both" | "neither";

/**
 * Median strength as a share of normal, and spread of z. Medians near published weakness after stroke ("dorsch2016"
 * from memory, "watanabe2015", "quintino2018"); spreads are judgement, kept wide on purpose.
 */
const GUESS: Readonly<Record<LimbGroup, { readonly median: number; readonly spread: number }>> = {
  weakArm: { median: 0.42, spread: 1.2 },
  weakLeg: { median: 0.5, spread: 0.9 },
  strongArm: { median: 0.85, spread: 0.45 },
  strongLeg: { median: 0.75, spread: 0.5 },
  trunk: { median: 0.6, spread: 0.55 },
};

/** Shares of variance held in common: by everyone, by a side, by a limb, by a joint; the rest is a slot's own. Judgement; within a limb 0.8 after "aguiar2019". */
const COMMON = { all: 0.3, side: 0.25, limb: 0.25, joint: 0.1 } as const;

/** What is believed of the strengths before any finding: weak, scattered, and correlated within a limb. */
export function priorBelief(pattern: Pattern): Belief {
  const groups = Array.from({ length: SLOT_COUNT }, (_, i) => guessed(groupOf(i), pattern));
  const mean = Float64Array.from(groups, (group) => latentOf(GUESS[group].median));
  const covariance = new Float64Array(SLOT_COUNT * SLOT_COUNT);
  for (let i = 0; i < SLOT_COUNT; i++) {
    for (let j = 0; j < SLOT_COUNT; j++) {
      const spread = GUESS[groups[i] ?? "trunk"].spread * GUESS[groups[j] ?? "trunk"].spread;
      covariance[i * SLOT_COUNT + j] = spread * correlation(i, j);
    }
  }
  return { mean, covariance };
}

function guessed(group: LimbGroup, pattern: Pattern): LimbGroup {
  if (pattern === "both") return group === "strongArm" ? "weakArm" : group === "strongLeg" ? "weakLeg" : group;
  if (pattern === "neither") return group === "weakArm" ? "strongArm" : group === "weakLeg" ? "strongLeg" : group;
  return group;
}

function correlation(i: number, j: number): number {
  if (i === j) return 1;
  const a = groupOf(i);
  const b = groupOf(j);
  let shared: number = COMMON.all;
  const sideOfGroup = (group: LimbGroup) =>
    group.startsWith("weak") ? "weak" : group.startsWith("strong") ? "strong" : "trunk";
  if (sideOfGroup(a) === sideOfGroup(b)) shared += COMMON.side;
  if (a === b) shared += COMMON.limb;
  if (jointOf(i) === jointOf(j)) shared += COMMON.joint;
  return shared;
}
