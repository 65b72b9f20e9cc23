import { quadratic, type Site, withoutSite } from "./approximation.ts";
import { type Evidence, evaluateQuantity } from "./evidence.ts";
import { density } from "./normal.ts";
import type { Belief } from "./prior.ts";
import { SLOT_COUNT } from "./slots.ts";

/** Two or more findings that do not go together. */
export interface Disagreement {
  readonly finding: string;
  /** Chance of this finding or an even less likely one, given all the others. */
  readonly chance: number;
  /** The finding that was set aside: a grade against something seen in function; null where both are kept. */
  readonly setAside: string | null;
}

/** A finding less likely than this, given all else, is named. */
const NAMED_BELOW = 0.02;
const POINTS = 31;

/** Names the findings that the others make hardly possible. */
export function findDisagreements(
  belief: Belief,
  evidence: readonly Evidence[],
  sites: readonly Site[],
): Disagreement[] {
  const anySeen = evidence.some((item) => item.seenInFunction);
  return evidence.flatMap((item, k): Disagreement[] => {
    const site = sites[k];
    if (site === undefined || item.outcomes === null || evidence.length < 2) return [];
    const chance = chanceOf(item, withoutSite(belief, site));
    if (chance >= NAMED_BELOW) return [];
    return [{ finding: item.id, chance, setAside: !item.seenInFunction && anySeen ? item.id : null }];
  });
}

/** Probability, given everything else, of results no likelier than the one found. */
function chanceOf(item: Evidence, others: Belief): number {
  if (item.outcomes === null) return 1;
  const direction = new Float64Array(SLOT_COUNT);
  const centre = evaluateQuantity(item.quantity, others.mean, direction);
  const spread = Math.sqrt(quadratic(others.covariance, direction));
  let total = 0;
  const predicted: number[] = [];
  for (let k = 0; k < POINTS; k++) {
    const u = -4 + (8 * k) / (POINTS - 1);
    const weight = density(u);
    total += weight;
    item.outcomes.probabilities(centre + spread * u).forEach((p, j) => {
      predicted[j] = (predicted[j] ?? 0) + weight * p;
    });
  }
  const found = predicted[item.outcomes.found] ?? 0;
  return predicted.reduce((sum, p) => sum + (p <= found * (1 + 1e-9) ? p : 0), 0) / total;
}
