import { type Strengths, STRENGTH_IDS } from "../../mechanics/body/strength-keys.ts";
import { scaleCapacities } from "../../mechanics/body/strength-capacities.ts";
import {
  type Balance,
  BALANCED_WITHIN,
  type ContactLoad,
  describeBalance,
  type JointEffort,
  shareHabitually,
  solveHabitual,
} from "../../mechanics/equilibrium/habitual.ts";
import type { Side } from "../../quantity/sides.ts";
import type { Range } from "../person/model.ts";
import { type StrengthSamples, weightedRange } from "../person/samples.ts";
import type { PreparedPose } from "./prepared.ts";

/** How hard one joint works one way, as a range over what the person's strength may be. */
export interface EffortRange {
  readonly joint: string;
  readonly angle: string;
  readonly direction: string;
  readonly side: Side | null;
  /** [N.m] */
  readonly capacity: Range;
  /** [N.m] at the middle strength. */
  readonly moment: number;
  readonly effort: Range;
  readonly limitedBy: "muscle" | "jointEnd";
  readonly restsOn: string | null;
  readonly counted: boolean;
}

/** What a pose asks of this person. */
export interface PoseAsks {
  readonly peak: Range;
  /** The largest effort at a draw from the weaker end of what is believed (four in five are stronger): what the plan goes by, rounded to a twentieth so that noise decides nothing. */
  readonly cautious: number;
  readonly limiting: { readonly joint: string; readonly direction: string; readonly side: Side | null };
  readonly efforts: readonly EffortRange[];
  /** At the middle strength. */
  readonly loads: readonly ContactLoad[];
  readonly middle: Balance;
  /** The draw behind the middle, for what is said of an ordinary day. */
  readonly middleStrengths: Strengths;
  /** A draw from the weaker end of what is believed: what help is worked out for. */
  readonly cautiousStrengths: Strengths;
}
export interface CannotBalance {
  readonly because: string;
}

const DRAWS = 9;
/** Spread of ln effort that hands and knees a centimetre off and the model itself bring (judgement; checked on the catalogue). */
const PLACEMENT_SPREAD = 0.1;

/** Strengths in the order of the person model as the named record mechanics takes. */
export function namedStrengths(draw: Float64Array): Strengths {
  const named: Partial<Record<(typeof STRENGTH_IDS)[number], number>> = {};
  STRENGTH_IDS.forEach((id, i) => {
    named[id] = draw[i] ?? 0;
  });
  return named as Strengths;
}

/** A dozen equally likely strengths that stand for the whole belief, from the weakest to the strongest on the weak side. */
export function representatives(samples: StrengthSamples): readonly Strengths[] {
  const order = samples.draws
    .map((draw, k) => ({ k, sum: draw.reduce((total, s) => total + Math.log(Math.max(s, 1e-3)), 0) }))
    .sort((a, b) => a.sum - b.sum || a.k - b.k);
  const chosen: Strengths[] = [];
  let cumulated = 0;
  let at = 0;
  for (let i = 0; i < DRAWS; i++) {
    const mark = (i + 0.5) / DRAWS;
    while (at < order.length - 1 && cumulated + (samples.weights[order[at]?.k ?? 0] ?? 0) < mark) {
      cumulated += samples.weights[order[at]?.k ?? 0] ?? 0;
      at++;
    }
    chosen.push(namedStrengths(samples.draws[order[at]?.k ?? 0] ?? new Float64Array(STRENGTH_IDS.length)));
  }
  return chosen;
}

/**
 * Efforts of a pose as ranges over the believed strengths: solved afresh for each of a dozen draws, since the habitual
 * sharing is not monotone in strength and its corners bound nothing.
 */
export function askPose(prepared: PreparedPose, draws: readonly Strengths[]): PoseAsks | CannotBalance {
  const solved: Balance[] = [];
  // Each draw starts from the weights of the one before, which lies next to it.
  let start: Float64Array | undefined;
  for (const strengths of draws) {
    const capacities = scaleCapacities(prepared.normal, strengths);
    const sharing = shareHabitually(prepared.statics, capacities, start);
    if (sharing.residual > BALANCED_WITHIN) {
      const balance = solveHabitual(prepared.statics, capacities);
      if (!balance.balanced) return { because: balance.because };
      solved.push(balance);
      continue;
    }
    start = sharing.weights;
    solved.push(describeBalance(prepared.statics, sharing));
  }
  const even = new Float64Array(solved.length).fill(1 / solved.length);
  const peaks = solved.map((balance) => balance.hardest?.effort ?? 0);
  const order = peaks.map((_, k) => k).sort((a, b) => (peaks[a] ?? 0) - (peaks[b] ?? 0) || a - b);
  const middleIndex = order[Math.floor(order.length / 2)] ?? 0;
  const cautiousIndex = order[Math.min(order.length - 1, Math.floor(order.length * 0.8))] ?? 0;
  const middle = solved[middleIndex];
  const cautiousStrengths = draws[cautiousIndex];
  const middleStrengths = draws[middleIndex];
  if (middle === undefined || cautiousStrengths === undefined || middleStrengths === undefined)
    return { because: "nothing is known of this person's strength" };
  const efforts = middle.efforts.map((effort, i): EffortRange => describeEffort(effort, i, solved, even));
  return {
    peak: widened(weightedRange(peaks, even)),
    cautious: Math.round((peaks[cautiousIndex] ?? 0) * 20) / 20,
    limiting: limitingOf(solved, middle),
    efforts,
    loads: middle.loads,
    middle,
    middleStrengths,
    cautiousStrengths,
  };
}

/** The joint that is hardest worked in most draws; the one of the middle draw where two tie. */
function limitingOf(solved: readonly Balance[], middle: Balance): PoseAsks["limiting"] {
  const counts = new Map<string, number>();
  for (const { hardest } of solved) {
    if (hardest === null) continue;
    const key = `${hardest.joint}|${hardest.side ?? ""}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  const most = Math.max(0, ...counts.values());
  const own = middle.hardest;
  if (own !== null && counts.get(`${own.joint}|${own.side ?? ""}`) === most)
    return { joint: own.joint, direction: own.direction, side: own.side };
  const usual = solved.find(
    ({ hardest }) => hardest !== null && counts.get(`${hardest.joint}|${hardest.side ?? ""}`) === most,
  )?.hardest;
  return usual === null || usual === undefined
    ? { joint: "none", direction: "none", side: null }
    : { joint: usual.joint, direction: usual.direction, side: usual.side };
}

function describeEffort(effort: JointEffort, i: number, solved: readonly Balance[], even: Float64Array): EffortRange {
  const own = solved.map((balance) => balance.efforts[i]);
  return {
    joint: effort.joint,
    angle: effort.angle,
    direction: effort.direction,
    side: effort.side,
    capacity: weightedRange(
      own.map((each) => each?.capacity ?? 0),
      even,
    ),
    moment: effort.muscleMoment,
    effort: widened(
      weightedRange(
        own.map((each) => each?.effort ?? 0),
        even,
      ),
    ),
    limitedBy: effort.limitedBy,
    restsOn: effort.restsOn,
    counted: effort.counted,
  };
}

function widened(range: Range): Range {
  const factor = Math.exp(1.645 * PLACEMENT_SPREAD);
  return { low: range.low / factor, middle: range.middle, high: range.high * factor };
}
