import { scaleCapacities } from "../../mechanics/body/strength-capacities.ts";
import { leastHelp } from "../../mechanics/help/least-help.ts";
import type { SiteId } from "../../mechanics/help/sites.ts";
import type { LinearSolver } from "../../mechanics/linear-program/linear-program.ts";
import type { Rung } from "../../practice/activities/activity.ts";
import { nameHelp, codeOfHelp, type PlannedAssistance } from "../../practice/handling/assistance.ts";
import { limitHelper } from "../../practice/handling/helper-limit.ts";
import { judgeSite } from "../../practice/precautions/effects.ts";
import type { PrecautionFinding } from "../../practice/precautions/precaution.ts";
import type { Side } from "../../quantity/sides.ts";
import type { Findings } from "../findings.ts";
import type { Reason } from "../eligibility/reason.ts";
import type { PoseAsks } from "./efforts.ts";
import type { PreparedPose } from "./prepared.ts";
import { ALLOWED_EFFORT } from "./settings.ts";

/** Help as a plan says it. */
export interface HelpToday {
  readonly words: PlannedAssistance;
  readonly code: number;
  readonly share: number;
  readonly newtons: number;
  readonly site: SiteId | null;
  readonly siteWords: string | null;
  readonly side: Side | null;
  readonly direction: string | null;
  /** Limit of one helper in this posture [N], and why. */
  readonly limit: number;
  readonly limitBecause: string;
}

/** No helper may give enough. */
export interface NotEnough extends Reason {
  /** What it would take, as a multiple of what may be given; null where no push would do. */
  readonly overLimit: number | null;
}

/** Which way a helper pushes, in words. */
export const DIRECTION_WORDS: Readonly<Record<string, string>> = {
  roomUp: "up",
  segmentFront: "forward",
  segmentBack: "back",
  segmentUp: "toward the head",
  segmentDown: "toward the foot",
  inward: "inward",
  outward: "outward",
};

/** Sites that may be used for this person on this rung, and why others may not. */
export function openSites(rung: Rung, precautions: readonly PrecautionFinding[]): readonly SiteId[] {
  return rung.helper.mayHelpAt.filter((site) =>
    judgeSite(precautions, site).every(({ verdict }) => verdict !== "bar" && verdict !== "clearFirst"),
  );
}

/**
 * The help that makes a rung possible today: none but standing by, a touch, or the least push that brings every joint
 * under what it may be asked, at strengths from the weaker end of what is believed.
 * @returns the help, or a reason where no helper may give enough
 */
export function findHelp(
  findings: Findings,
  precautions: readonly PrecautionFinding[],
  rung: Rung,
  prepared: PreparedPose,
  asks: PoseAsks,
  helpers: number,
  solver: LinearSolver,
): HelpToday | NotEnough {
  const limit = limitHelper({ pose: rung.helper.pose, backTrouble: findings.helpers.backTrouble });
  const touches = rung.helper.always === true || rung.helper.hands.some((hand) => hand.does !== "ready");
  const none = {
    site: null,
    siteWords: null,
    side: null,
    direction: null,
    limit: limit.newtons,
    limitBecause: limit.because,
  };
  if (asks.cautious <= ALLOWED_EFFORT) {
    const words = nameHelp({ share: 0, touches, helpers: 1 });
    return { ...none, words, code: codeOfHelp(words), share: 0, newtons: 0 };
  }
  const sites = openSites(rung, precautions);
  const capacities = scaleCapacities(prepared.normal, asks.cautiousStrengths);
  const help = leastHelp(
    prepared.statics,
    capacities,
    { allowedShare: 1, sites, ceiling: limit.newtons * Math.max(1, helpers), without: asks.cautiousSharing },
    solver,
  );
  if (!help.enough) {
    return {
      rule: "help",
      detail: `${folding(asks)} ${sentence(help.because)}`,
      source: "waters-2007",
      overLimit: help.wouldNeed === null ? null : help.wouldNeed / (limit.newtons * Math.max(1, helpers)),
    };
  }
  const first = [...help.pushes].sort((a, b) => b.newtons - a.newtons || (a.site < b.site ? -1 : 1))[0];
  const two = help.newtons > limit.newtons;
  const words = nameHelp({ share: Math.min(1, help.share), touches: true, helpers: two ? 2 : 1 });
  return {
    words,
    code: codeOfHelp(words),
    share: Math.min(1, help.share),
    newtons: help.newtons,
    site: first?.site ?? null,
    siteWords: first?.words ?? null,
    side: first?.side ?? null,
    direction: first === undefined ? null : (DIRECTION_WORDS[first.direction] ?? first.direction),
    limit: limit.newtons,
    limitBecause: limit.because,
  };
}

/** "The weak elbow would fold." with the side in weak and strong words. */
export function folding(asks: Pick<PoseAsks, "limiting">): string {
  const { joint, side } = asks.limiting;
  return joint === "trunk" || side === null ? "The trunk would give." : `The ${side} ${joint} would fold.`;
}

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
