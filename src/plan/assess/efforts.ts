import { evenStrengths, type Strengths, STRENGTH_IDS } from "../../mechanics/body/strength-keys.ts";
import { scaleCapacities } from "../../mechanics/body/strength-capacities.ts";
import {
  type Balance,
  BALANCED_WITHIN,
  type ContactLoad,
  describeBalance,
  effortFigures,
  type EffortFigures,
  type JointEffort,
  shareHabitually,
  solveHabitual,
} from "../../mechanics/equilibrium/habitual.ts";
import type { Sharing } from "../../mechanics/equilibrium/cubes.ts";
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
  /** How the load is shared at that draw. */
  readonly cautiousSharing: Sharing;
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
 * @param known the answer at the middle draw, where it is worked out already
 */
export function askPose(
  prepared: PreparedPose,
  draws: readonly Strengths[],
  known?: Sharing,
): PoseAsks | CannotBalance {
  const { statics, normal } = prepared;
  const first = middleOf(draws);
  const solved: Sharing[] = [];
  /** Draws lie in order of strength: each starts from the answer of its neighbour. */
  const solve = (k: number, start: Sharing | undefined): Sharing | CannotBalance => {
    const capacities = scaleCapacities(normal, draws[k] ?? evenStrengths(1));
    const sharing = start === undefined && known !== undefined ? known : shareHabitually(statics, capacities, start);
    if (sharing.residual <= BALANCED_WITHIN) return sharing;
    const balance = solveHabitual(statics, capacities);
    return balance.balanced ? balance.sharing : { because: balance.because };
  };
  for (const k of [first, ...inOrder(first - 1, 0), ...inOrder(first + 1, draws.length - 1)]) {
    const sharing = solve(k, k === first ? undefined : (solved[k + 1] ?? solved[k - 1]));
    if ("because" in sharing) return sharing;
    solved[k] = sharing;
  }
  const figures = solved.map((sharing) => effortFigures(statics, sharing));
  const even = new Float64Array(solved.length).fill(1 / solved.length);
  const peaks = figures.map(({ effort, hardest }) => effort[hardest] ?? 0);
  const order = peaks.map((_, k) => k).sort((a, b) => (peaks[a] ?? 0) - (peaks[b] ?? 0) || a - b);
  const middleIndex = order[Math.floor(order.length / 2)] ?? 0;
  const cautiousIndex = order[Math.min(order.length - 1, Math.floor(order.length * 0.8))] ?? 0;
  const middleSharing = solved[middleIndex];
  const cautiousSharing = solved[cautiousIndex];
  const cautiousStrengths = draws[cautiousIndex];
  const middleStrengths = draws[middleIndex];
  if (
    middleSharing === undefined ||
    cautiousSharing === undefined ||
    cautiousStrengths === undefined ||
    middleStrengths === undefined
  )
    return { because: "nothing is known of this person's strength" };
  const middle = describeBalance(statics, middleSharing);
  return {
    peak: widened(weightedRange(peaks, even)),
    cautious: Math.round((peaks[cautiousIndex] ?? 0) * 20) / 20,
    limiting: limitingOf(figures, middle),
    efforts: middle.efforts.map((effort, i) => describeEffort(effort, i, figures, even)),
    loads: middle.loads,
    middle,
    middleStrengths,
    cautiousStrengths,
    cautiousSharing,
  };
}

/** The middle one of the draws. */
export const middleOf = (draws: readonly Strengths[]): number => Math.floor(draws.length / 2);

/** Whole numbers from one to another, up or down; none where the second is past the ends of the draws. */
function inOrder(from: number, to: number): number[] {
  const numbers: number[] = [];
  if (from < 0) return numbers;
  for (let k = from; from <= to ? k <= to : k >= to; k += from <= to ? 1 : -1) numbers.push(k);
  return numbers;
}

/** The joint that is hardest worked in most draws; the one of the middle draw where two tie. */
function limitingOf(figures: readonly EffortFigures[], middle: Balance): PoseAsks["limiting"] {
  const nameAt = (i: number): string => {
    const effort = middle.efforts[i];
    return effort === undefined ? "" : `${effort.joint}|${effort.side ?? ""}`;
  };
  const counts = new Map<string, number>();
  for (const { hardest } of figures)
    if (hardest >= 0) counts.set(nameAt(hardest), (counts.get(nameAt(hardest)) ?? 0) + 1);
  const most = Math.max(0, ...counts.values());
  const own = middle.hardest;
  if (own !== null && counts.get(`${own.joint}|${own.side ?? ""}`) === most)
    return { joint: own.joint, direction: own.direction, side: own.side };
  const usual = figures.find(({ hardest }) => hardest >= 0 && counts.get(nameAt(hardest)) === most);
  const effort = usual === undefined ? undefined : middle.efforts[usual.hardest];
  return effort === undefined
    ? { joint: "none", direction: "none", side: null }
    : { joint: effort.joint, direction: effort.direction, side: effort.side };
}

function describeEffort(
  effort: JointEffort,
  i: number,
  figures: readonly EffortFigures[],
  even: Float64Array,
): EffortRange {
  return {
    joint: effort.joint,
    angle: effort.angle,
    direction: effort.direction,
    side: effort.side,
    capacity: weightedRange(
      figures.map(({ capacity }) => capacity[i] ?? 0),
      even,
    ),
    moment: effort.muscleMoment,
    effort: widened(
      weightedRange(
        figures.map((each) => each.effort[i] ?? 0),
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
