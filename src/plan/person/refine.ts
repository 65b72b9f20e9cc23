import { seededStream } from "../../quantity/random.ts";
import type { EffortModel, Evidence, Quantity } from "./evidence.ts";
import { quantile } from "./normal.ts";
import { type Belief, strengthOf } from "./prior.ts";
import { lowerRoot, placed } from "./samples.ts";
import { SLOT_COUNT } from "./slots.ts";

/** Strengths at which every task is solved again, besides the middle of the belief. */
const NEAR = 10;
const SEED = 4711;

/**
 * The same findings with every task solved again where this person is believed to be. Solutions kept for everybody are
 * far from most people: read off from them alone, ln effort is out by some 0.3.
 */
export function refineTasks(evidence: readonly Evidence[], belief: Belief): readonly Evidence[] {
  const near = anchorsNear(belief);
  const known = new Map<EffortModel, EffortModel>();
  const refined = (task: EffortModel): EffortModel => {
    const own = known.get(task) ?? task.refined?.(near) ?? task;
    known.set(task, own);
    return own;
  };
  return evidence.map((item): Evidence => {
    const { quantity } = item;
    if (quantity.of === "strength") return item;
    const closer: Quantity = { ...quantity, task: refined(quantity.task) };
    return { ...item, quantity: closer };
  });
}

/** The middle of the belief and a few draws from it, in opposite pairs; the same for the same belief. */
function anchorsNear({ mean, covariance }: Belief): Float64Array[] {
  const root = lowerRoot(covariance, 1);
  const stream = seededStream(SEED);
  const anchors = [Float64Array.from(mean, strengthOf)];
  for (let k = 0; k < NEAR; k += 2) {
    const noise = Float64Array.from({ length: SLOT_COUNT }, () =>
      quantile(Math.min(Math.max(stream(), 1e-9), 1 - 1e-9)),
    );
    for (const sign of [1, -1] as const) anchors.push(Float64Array.from(placed(mean, root, noise, sign), strengthOf));
  }
  return anchors;
}
