import { approximateBelief, type Site } from "./approximation.ts";
import { type Disagreement, findDisagreements } from "./disagreement.ts";
import type { Evidence } from "./evidence.ts";
import { type Belief, type Pattern, priorBelief, strengthOf } from "./prior.ts";
import { refineTasks } from "./refine.ts";
import { drawStrengths, type StrengthSamples, weightedRange } from "./samples.ts";
import { SLOT_COUNT } from "./slots.ts";

/** Fractions of normal strength: 5th, 50th and 95th percentile. */
export interface Range {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** What one finding did to the belief: which strength it moved most, from where to where, and how much it narrowed it. */
export interface TrailEntry {
  readonly id: string;
  readonly words: string;
  readonly seenInFunction: boolean;
  /** False where it contradicts what was seen in function and was set aside. */
  readonly believed: boolean;
  readonly mostMoved: { readonly slot: number; readonly from: number; readonly to: number } | null;
  /** Share of the spread of the most narrowed strength that it took away. */
  readonly narrowed: number;
}

/** What is believed of this body's strength, and from what. */
export interface PersonModel {
  readonly prior: Belief;
  readonly belief: Belief;
  readonly samples: StrengthSamples;
  readonly ranges: readonly Range[];
  readonly trail: readonly TrailEntry[];
  readonly disagreements: readonly Disagreement[];
}

const DRAWS = 600;

/**
 * Puts all that is known of this body's strength into one belief: grades, readings, tasks seen and sets logged are
 * evidence about the same 46 strengths. What was seen in function is believed over a grade that contradicts it.
 * The same findings give the same answer, in any order.
 */
export function buildPersonModel(pattern: Pattern, findings: readonly Evidence[], draws = DRAWS): PersonModel {
  const prior = priorBelief(pattern);
  const sorted = [...findings].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  const evidence = refineTasks(sorted, approximateBelief(prior, sorted).belief);
  const first = approximateBelief(prior, evidence);
  const disagreements = findDisagreements(first.belief, evidence, first.sites);
  const setAside = new Set(disagreements.flatMap((each) => (each.setAside === null ? [] : [each.setAside])));
  const believed = evidence.filter((item) => !setAside.has(item.id));
  const { belief, sites } = setAside.size === 0 ? first : approximateBelief(prior, believed);
  const samples = drawStrengths(prior, belief, believed, draws);
  const ranges = Array.from({ length: SLOT_COUNT }, (_, i) =>
    weightedRange(
      samples.draws.map((draw) => draw[i] ?? 0),
      samples.weights,
    ),
  );
  const trail = evidence.map((item): TrailEntry => {
    const k = believed.indexOf(item);
    const site = k < 0 ? undefined : sites[k];
    return describeSite(item, site, belief);
  });
  return { prior, belief, samples, ranges, trail, disagreements };
}

function describeSite(item: Evidence, site: Site | undefined, belief: Belief): TrailEntry {
  const entry = { id: item.id, words: item.words, seenInFunction: item.seenInFunction };
  if (site === undefined) return { ...entry, believed: false, mostMoved: null, narrowed: 0 };
  const along = new Float64Array(SLOT_COUNT);
  let variance = 0;
  let at = 0;
  for (let i = 0; i < SLOT_COUNT; i++) {
    for (let j = 0; j < SLOT_COUNT; j++)
      along[i] = (along[i] ?? 0) + (belief.covariance[i * SLOT_COUNT + j] ?? 0) * (site.direction[j] ?? 0);
    at += (site.direction[i] ?? 0) * (belief.mean[i] ?? 0);
  }
  for (let i = 0; i < SLOT_COUNT; i++) variance += (site.direction[i] ?? 0) * (along[i] ?? 0);
  const scale = 1 / Math.max(1 - site.precision * variance, 1e-6);
  const shift = (-site.pull + site.precision * at) * scale;
  let mostMoved: TrailEntry["mostMoved"] = null;
  let narrowed = 0;
  for (let i = 0; i < SLOT_COUNT; i++) {
    const now = belief.mean[i] ?? 0;
    const before = now + (along[i] ?? 0) * shift;
    const from = strengthOf(before);
    const to = strengthOf(now);
    if (mostMoved === null || Math.abs(to - from) > Math.abs(mostMoved.to - mostMoved.from))
      mostMoved = { slot: i, from, to };
    const own = belief.covariance[i * SLOT_COUNT + i] ?? 1;
    const wide = own + site.precision * scale * (along[i] ?? 0) ** 2;
    narrowed = Math.max(narrowed, 1 - Math.sqrt(own / wide));
  }
  return { ...entry, believed: true, mostMoved, narrowed };
}
