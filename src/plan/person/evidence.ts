import { cumulativeDelayed } from "./normal.ts";
import { logSlope, strengthOf } from "./prior.ts";

/** How hard a task is for given strengths, and what of the strengths decides it. */
export interface EffortModel {
  /** Natural logarithm of the task's effort at these strengths (fractions of normal, in slot order): 0 is all there is. */
  logEffort(strengths: Float64Array): number;
  /** Change of that logarithm with the logarithm of each strength; written into the given array. */
  logGradient(strengths: Float64Array, into: Float64Array): void;
  /** Share of the cubed effort that each named joint takes, for "where it gave way". */
  jointShare(strengths: Float64Array, joint: string): number;
  /** The same task, closer near these strengths; absent where it is exact everywhere. */
  refined?(near: readonly Float64Array[]): EffortModel;
}

/** A finding put as a statement about one quantity x: x = the latent strength itself, or the log effort of a task. */
export interface Evidence {
  readonly id: string;
  /** What was found, in words for the trail. */
  readonly words: string;
  readonly kind: "grade" | "dynamometer" | "look" | "gaveWay" | "log";
  /** For the trail and the rule that what is seen in function is believed over a grade. */
  readonly seenInFunction: boolean;
  readonly quantity: Quantity;
  /** Log likelihood of what was found, given x. */
  readonly logLikelihood: (x: number) => number;
  /** Probability of every result that could have been found, given x, and which was found; for disagreement. */
  readonly outcomes: { readonly found: number; readonly probabilities: (x: number) => readonly number[] } | null;
}
export type Quantity =
  | { readonly of: "strength"; readonly slot: number }
  | { readonly of: "effort"; readonly task: EffortModel }
  | { readonly of: "share"; readonly task: EffortModel; readonly joint: string };

/**
 * Value of the quantity at latent strengths z, with its gradient in z.
 * @param known the strengths at z, where the caller has them already
 */
export function evaluateQuantity(
  quantity: Quantity,
  z: Float64Array,
  gradient: Float64Array | null,
  known?: Float64Array,
): number {
  if (quantity.of === "strength") {
    if (gradient !== null) {
      gradient.fill(0);
      gradient[quantity.slot] = 1;
    }
    return z[quantity.slot] ?? 0;
  }
  const strengths = known ?? Float64Array.from(z, strengthOf);
  if (quantity.of === "effort") {
    if (gradient !== null) {
      quantity.task.logGradient(strengths, gradient);
      for (let i = 0; i < gradient.length; i++) gradient[i] = (gradient[i] ?? 0) * logSlope(z[i] ?? 0);
    }
    return quantity.task.logEffort(strengths);
  }
  const value = shareLogit(quantity.task, strengths, quantity.joint);
  if (gradient !== null) {
    gradient.fill(0);
    const reach = new Float64Array(gradient.length);
    quantity.task.logGradient(strengths, reach);
    const moved = Float64Array.from(strengths);
    for (let i = 0; i < gradient.length; i++) {
      if (reach[i] === 0) continue;
      const s = strengths[i] ?? 0;
      moved[i] = s * 1.01;
      gradient[i] = ((shareLogit(quantity.task, moved, quantity.joint) - value) / Math.log(1.01)) * logSlope(z[i] ?? 0);
      moved[i] = s;
    }
  }
  return value;
}

function shareLogit(task: EffortModel, strengths: Float64Array, joint: string): number {
  const share = Math.min(Math.max(task.jointShare(strengths, joint), 1e-4), 1 - 1e-4);
  return Math.log(share / (1 - share));
}

/** Spread of ln effort of one pose that the model of this body leaves open: mechanics (judgement) and reading it off (derived). */
export const MODEL_SPREAD = Math.hypot(0.28, 0.12);
/** Spread of ln effort from one day to the next (judgement). */
export const DAY_SPREAD = 0.2;
/** Spread of the log effort that the model and the day leave open. */
export const EFFORT_SPREAD = Math.hypot(MODEL_SPREAD, DAY_SPREAD);
/** Chance that a grade was simply taken or written wrong, and came out as any of fourteen grades (judgement). */
const LAPSE = 0.01;
const GRADE_COUNT = 14;

/** Spread of ln s from one examiner, and one day, to another for the same grade (judgement; two examiners agree with kappa 0.78). */
export const EXAMINER_SPREAD = 0.28;

/**
 * A grade or a reading, as a skewed bell over ln s.
 * @param quantiles the 5th, 50th and 95th percentile of the fraction of normal that goes with the finding
 * @param examiner spread of ln s that the examiner adds
 */
export function strengthLikelihood(quantiles: readonly [number, number, number], examiner = 0): (z: number) => number {
  const [low, middle, high] = quantiles.map((each) => Math.log(Math.max(each, 0.004))) as [number, number, number];
  const below = Math.hypot(Math.max((middle - low) / 1.645, 0.08), examiner);
  const above = Math.hypot(Math.max((high - middle) / 1.645, 0.08), examiner);
  return (z) => {
    const off = Math.log(Math.max(strengthOf(z), 0.002)) - middle;
    const spread = off < 0 ? below : above;
    const bell = Math.exp(-0.5 * (off / spread) ** 2);
    return Math.log((1 - LAPSE) * bell + LAPSE / GRADE_COUNT);
  };
}

export type TaskResult = "cannot" | "withHelp" | "withTouch" | "alone" | "aloneWell";
export const TASK_RESULTS: readonly TaskResult[] = ["cannot", "withHelp", "withTouch", "alone", "aloneWell"];
/** Log effort that separates the results, from the hardest: cannot above 1.6, help to 1.0, a touch to 0.8, alone, well below 0.5 (judgement). */
export const EFFORT_BORDERS = [Math.log(1.6), 0, Math.log(0.8), Math.log(0.5)] as const;

/**
 * A task seen: the result stands for a band of effort; other things than strength mostly make it worse.
 * @param delay mean of what other causes add to ln effort; 0.69 of it is taken off so that it does not flatter
 */
export const taskOutcomes = (delay: number): ((logEffort: number) => readonly number[]) =>
  outcomesWithin(EFFORT_SPREAD, delay);

/** The same with a spread of its own [ln]. */
export function outcomesWithin(spread: number, delay: number): (logEffort: number) => readonly number[] {
  const centre = 0.69 * delay;
  const below = (border: number, x: number) => cumulativeDelayed(border - x + centre, spread, delay);
  return (x) => {
    const [b0, b1, b2, b3] = EFFORT_BORDERS.map((border) => below(border, x)) as [number, number, number, number];
    return [1 - b0, b0 - b1, b1 - b2, b2 - b3, b3].map((p) => Math.max(p, 1e-9));
  };
}

/** "Alone" says at least alone: nothing is concluded from its not being called well. */
export function taskLikelihood(result: TaskResult, delay: number): (logEffort: number) => number {
  const centre = 0.69 * delay;
  const found = TASK_RESULTS.indexOf(result);
  // The band of the result, by the two borders that hold it.
  const harder = EFFORT_BORDERS[found - 1];
  const easier = result === "alone" ? undefined : EFFORT_BORDERS[found];
  return (x) => {
    const most = harder === undefined ? 1 : cumulativeDelayed(harder - x + centre, EFFORT_SPREAD, delay);
    const least = easier === undefined ? 0 : cumulativeDelayed(easier - x + centre, EFFORT_SPREAD, delay);
    return Math.log(Math.max(most - least, 1e-9));
  };
}

/** "It gave way there": the joint with the largest cubed effort goes first, one time in five it is another. */
export function gaveWayLikelihood(logit: number): number {
  return Math.log(0.8 / (1 + Math.exp(-logit)) + 0.2 / 7);
}
