import { scaleCapacities } from "../../mechanics/body/strength-capacities.ts";
import { evenStrengths } from "../../mechanics/body/strength-keys.ts";
import { type Help, type HelpPush, leastHelp } from "../../mechanics/help/least-help.ts";
import type { SiteId } from "../../mechanics/help/sites.ts";
import type { PoseSpecification } from "../../mechanics/pose/specification.ts";
import { codeOfHelp, nameHelp, type PlannedAssistance } from "../../practice/handling/assistance.ts";
import { limitHelper } from "../../practice/handling/helper-limit.ts";
import { HELPER_LIMITS } from "../../practice/handling/limits.data.ts";
import { judgeSite } from "../../practice/precautions/effects.ts";
import type { KeyPose, Transition } from "../../practice/transitions/transition.ts";
import type { Side } from "../../quantity/sides.ts";
import { askPose, type PoseAsks } from "./efforts.ts";
import { spareWeakArm, weakArmPresses } from "./prepared.ts";
import type { AssessContext } from "./rung-today.ts";
import { ALLOWED_EFFORT } from "./settings.ts";
import { tryPushes } from "./try-pushes.ts";

/** Who the way is worked out for. */
export type WayContext = Pick<AssessContext, "keeper" | "draws" | "precautions" | "solver"> & {
  readonly findings: { readonly helpers: { readonly backTrouble: boolean } };
};

/** What the helper does at one moment. */
export interface MomentHelp {
  readonly words: PlannedAssistance;
  readonly code: number;
  /** Part of the work the helper takes, 0 to 1. */
  readonly share: number;
  /** All pushes together [N]; what lies on the helper's thigh is counted in it. */
  readonly newtons: number;
  readonly onThighNewtons: number;
  readonly pushes: readonly HelpPush[];
  /** Helpers it takes at the limit of one in this posture. */
  readonly helpers: number;
  /** What one helper may take with the hands in this posture [N]. */
  readonly limit: number;
}

/** One moment on the way for this person. */
export interface KeyMoment {
  readonly key: KeyPose;
  /** Its place in the list, from 1. */
  readonly number: number;
  /** By the person alone, with the help it states, or not at all today. */
  readonly held: "alone" | "withHelp" | "no";
  /** The weight stays over what bears it without a helper, whatever the effort. */
  readonly balances: boolean;
  /** What it asks without help; null where it cannot be held still without. */
  readonly asks: PoseAsks | null;
  /** Largest effort without help at strengths from the weaker end of what is believed; null as above. */
  readonly effort: number | null;
  /** The same with the help given. */
  readonly effortWith: number | null;
  readonly givesWay: { readonly joint: string; readonly direction: string; readonly side: Side | null } | null;
  readonly help: MomentHelp | null;
  /** Why it is not held; null where it is. */
  readonly because: string | null;
}

/** A way from one position to another for this person. */
export interface TransitionToday {
  readonly transition: Transition;
  readonly moments: readonly KeyMoment[];
  /** The moment that needs most help, or asks most where none needs any; null where no moments are set. */
  readonly hardest: KeyMoment | null;
  /** Helpers for the whole way, never fewer than it states; null where a moment cannot be held with two. */
  readonly helpers: number | null;
}

/** Helpers counted on at most. */
const MOST_HELPERS = 2;
/** What the thigh of a half-kneeling helper carries besides the hands [N]: no more than one helper lifts ("judgement"). */
const THIGH_CARRIES = HELPER_LIMITS.lift.value;
/** Above this share of what a joint has, no push of a hand is looked for by trying. */
const WORTH_TRYING = 4;
/** A draw with four in five stronger, in draws ordered from the weakest. */
const CAUTIOUS = 0.2;

/** The pose of a key moment as it is computed and drawn: a weak arm that is spared, or lent without pushing, sets no verdict. */
export function poseOfMoment(key: KeyPose): PoseSpecification {
  if (key.weakArm === "train") return key.pose;
  if (key.weakArm === "lend" && weakArmPresses(key.pose)) return key.pose;
  return spareWeakArm(key.pose);
}

/**
 * Works out every key moment of a way for one person: the effort at the habitual sharing, whether it balances, the least
 * help over its sites with the body on the helper's thigh where it is said to lie there, and what gives way without it.
 * @returns the moments in order, the hardest of them, and how many helpers the way takes
 */
export function assessTransition(context: WayContext, transition: Transition): TransitionToday {
  const moments = (transition.keyPoses ?? []).map((key, i) => assessMoment(context, key, i + 1));
  const hardest = moments.reduce<KeyMoment | null>(
    (most, each) => (most === null || harder(each, most) ? each : most),
    null,
  );
  const helpers = moments.some(({ held }) => held === "no")
    ? null
    : Math.max(transition.helpersNeeded, ...moments.map(({ help }) => help?.helpers ?? 1));
  return { transition, moments, hardest, helpers };
}

function assessMoment(context: WayContext, key: KeyPose, number: number): KeyMoment {
  const { keeper, draws, findings, solver } = context;
  const prepared = keeper.prepare(poseOfMoment(key));
  const nothing = { key, number, asks: null, effort: null, effortWith: null, givesWay: null, help: null };
  if (!prepared.possible)
    return {
      ...nothing,
      held: "no",
      balances: false,
      because: `This body cannot take the position: ${prepared.because}.`,
    };
  const answer = askPose(prepared, draws);
  const asks = "because" in answer ? null : answer;
  const base = {
    key,
    number,
    balances: asks !== null,
    asks,
    effort: asks?.cautious ?? null,
    givesWay: asks === null || asks.cautious <= ALLOWED_EFFORT ? null : asks.limiting,
  };
  const limit = limitHelper({ pose: key.helper.pose, backTrouble: findings.helpers.backTrouble }).newtons;
  const touches = key.onThigh !== null || key.helper.hands.some(({ does }) => does !== "ready");
  if (asks !== null && asks.cautious <= ALLOWED_EFFORT) {
    const words = nameHelp({ share: 0, touches, helpers: 1 });
    return {
      ...base,
      held: "alone",
      effortWith: asks.cautious,
      help: { words, code: codeOfHelp(words), share: 0, newtons: 0, onThighNewtons: 0, pushes: [], helpers: 1, limit },
      because: null,
    };
  }
  const strengths =
    asks?.cautiousStrengths ??
    draws[Math.min(draws.length - 1, Math.floor(draws.length * CAUTIOUS))] ??
    evenStrengths(1);
  const thigh = key.onThigh === null ? 0 : THIGH_CARRIES;
  const capacities = scaleCapacities(prepared.normal, strengths);
  const request = { allowedShare: 1, sites: sitesOf(context, key), ceiling: MOST_HELPERS * limit + thigh };
  const least = leastHelp(prepared.statics, capacities, request, solver);
  const tried =
    least.enough || least.wouldNeed !== null || asks === null || asks.cautious > WORTH_TRYING
      ? null
      : tryPushes(prepared.statics, capacities, request.sites, request);
  const help = tried ?? least;
  if (!help.enough) return { ...base, held: "no", effortWith: null, help: null, because: sentence(help.because) };
  return {
    ...base,
    held: "withHelp",
    effortWith: help.effortWith,
    help: describeHelp(help, key, limit),
    because: null,
  };
}

/** The places a hand or thigh may go at this moment, without those the person's conditions bar. */
function sitesOf({ precautions }: WayContext, key: KeyPose): readonly SiteId[] {
  const stated = key.onThigh === null ? key.helper.mayHelpAt : [...key.helper.mayHelpAt, key.onThigh];
  return [...new Set(stated)].filter((site) =>
    judgeSite(precautions, site).every(({ verdict }) => verdict !== "bar" && verdict !== "clearFirst"),
  );
}

function describeHelp(help: Help, key: KeyPose, limit: number): MomentHelp {
  const lying = help.pushes.filter(({ site }) => site === key.onThigh).reduce((sum, { newtons }) => sum + newtons, 0);
  const onThighNewtons = Math.min(lying, THIGH_CARRIES);
  const helpers = Math.max(1, Math.ceil((help.newtons - onThighNewtons) / limit - 1e-9));
  const share = Math.min(1, help.share);
  const words = nameHelp({ share, touches: true, helpers });
  return {
    words,
    code: codeOfHelp(words),
    share,
    newtons: help.newtons,
    onThighNewtons,
    pushes: help.pushes,
    helpers,
    limit,
  };
}

/** Which of two moments is the harder one: not held, then more newtons of help, then more effort; the first where they tie. */
function harder(one: KeyMoment, other: KeyMoment): boolean {
  const rank = ({ held, help, effort }: KeyMoment): readonly number[] => [
    held === "no" ? 1 : 0,
    Math.round(help?.newtons ?? 0),
    effort ?? 0,
  ];
  const a = rank(one);
  const b = rank(other);
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return (a[i] ?? 0) > (b[i] ?? 0);
  return false;
}

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
