import { scaleCapacities } from "../../mechanics/body/strength-capacities.ts";
import { evenStrengths, type Strengths } from "../../mechanics/body/strength-keys.ts";
import { solveHabitual } from "../../mechanics/equilibrium/habitual.ts";
import type { LinearSolver } from "../../mechanics/linear-program/linear-program.ts";
import type { Activity, Rung } from "../../practice/activities/activity.ts";
import type { PrecautionFinding } from "../../practice/precautions/precaution.ts";
import { judgeByRules } from "../eligibility/judge-rung.ts";
import { type SeenOnLadder, seenOn } from "../eligibility/placed.ts";
import { factsOf, shortHamstrings } from "../eligibility/rung-load.ts";
import type { Reason } from "../eligibility/reason.ts";
import type { Findings } from "../findings.ts";
import { askPose, middleOf, type PoseAsks } from "./efforts.ts";
import { findHelp, folding, type HelpToday, type NotEnough } from "./help.ts";
import { poseOf } from "./posed.ts";
import type { PoseKeeper, PreparedPose } from "./prepared.ts";
import { CLOSE, FAR_OVER } from "./settings.ts";

/** A rung as it stands for this person today. */
export interface RungToday {
  readonly activity: Activity;
  readonly rung: Rung;
  readonly index: number;
  readonly eligible: boolean;
  /** Why it is out; empty where it is not. */
  readonly out: readonly Reason[];
  readonly mind: readonly Reason[];
  readonly helpers: number;
  readonly prepared: PreparedPose | null;
  /** What it asks; worked out when first asked for. Null where the position cannot be taken or held. */
  readonly asks: PoseAsks | null;
  readonly help: HelpToday | null;
  readonly seen: SeenOnLadder | null;
  /** It was done before: what was seen outranks what is computed. */
  readonly seenDone: boolean;
}

export interface AssessContext {
  readonly findings: Findings;
  readonly precautions: readonly PrecautionFinding[];
  readonly keeper: PoseKeeper;
  readonly draws: readonly Strengths[];
  readonly solver: LinearSolver;
}

/** Judges one rung for one person: the rules first, then the effort, then the help that would make it possible. */
export function assessRung(context: AssessContext, activity: Activity, rung: Rung): RungToday {
  const { findings, precautions, keeper, draws } = context;
  const index = activity.rungs.indexOf(rung);
  const seen = seenOn(findings, activity);
  const seenDone = seen !== null && index <= seen.done;
  const prepared = keeper.prepare(poseOf(rung));
  const base = { activity, rung, index, seen, seenDone };
  if (!prepared.possible) {
    const rules = judgeByRules(findings, precautions, activity, rung, {}, seen);
    const out = [
      ...rules.out,
      {
        rule: "range",
        detail: `This body cannot take the position: ${prepared.because}.`,
        source: "judgement" as const,
      },
    ];
    return {
      ...base,
      eligible: false,
      out,
      mind: rules.mind,
      helpers: rules.helpers,
      prepared: null,
      asks: null,
      help: null,
    };
  }
  const middle = solveHabitual(
    prepared.statics,
    scaleCapacities(prepared.normal, draws[middleOf(draws)] ?? evenStrengths(1)),
  );
  if (!middle.balanced) {
    const rules = judgeByRules(findings, precautions, activity, rung, {}, seen);
    const out = [
      ...rules.out,
      {
        rule: "holdStill",
        detail: `The position cannot be held still: ${middle.because}.`,
        source: "judgement" as const,
      },
    ];
    return {
      ...base,
      eligible: false,
      out,
      mind: rules.mind,
      helpers: rules.helpers,
      prepared,
      asks: null,
      help: null,
    };
  }
  const facts = factsOf(prepared.statics.body, prepared.pose, middle.loads);
  const rules = judgeByRules(findings, precautions, activity, rung, facts, seen);
  const out = [...rules.out];
  const mind = [...rules.mind];
  const short = shortHamstrings(prepared.statics.body, prepared.pose, {
    weak: findings.rangeDeg.weak.hamstrings,
    strong: findings.rangeDeg.strong.hamstrings,
  });
  if (short !== null)
    out.push({
      rule: "range",
      detail: `With straight knees the ${short.side} hip folds ${short.needs} degrees here and the straight leg goes to ${short.has}: bend the knees or sit on a wedge.`,
      source: "common-practice",
    });
  const asksLater = once(() => {
    const answer = askPose(prepared, draws, middle.sharing);
    return "because" in answer ? null : answer;
  });
  if (out.length > 0) {
    // What is out by a rule needs neither its range nor a helper worked out until somebody asks.
    return {
      ...base,
      eligible: false,
      out,
      mind,
      helpers: rules.helpers,
      prepared,
      get asks() {
        return asksLater();
      },
      help: null,
    };
  }
  const seenHelp = helpAsSeen(seen, index);
  const { hardest } = middle;
  if (seenHelp === null && hardest !== null && hardest.effort > FAR_OVER) {
    // Even on an ordinary day more than half would be the helper's: range and help wait until somebody asks.
    const helpLater = once(() => {
      const asks = asksLater();
      if (asks === null) return null;
      const found = findHelp(findings, precautions, rung, prepared, asks, rules.helpers, context.solver);
      return "rule" in found ? null : found;
    });
    out.push({
      rule: "effort",
      detail: `${folding({ limiting: hardest })} It would ask ${inTimes(hardest.effort)} of what it has even on an ordinary day: more than half of the work would be the helper's. A lower rung trains more.`,
      source: "common-practice",
    });
    return {
      ...base,
      eligible: false,
      out,
      mind,
      helpers: rules.helpers,
      prepared,
      get asks() {
        return asksLater();
      },
      get help() {
        return helpLater();
      },
    };
  }
  const asked = askPose(prepared, draws, middle.sharing);
  if ("because" in asked) {
    out.push({
      rule: "holdStill",
      detail: `The position cannot be held still: ${asked.because}.`,
      source: "judgement",
    });
    return { ...base, eligible: false, out, mind, helpers: rules.helpers, prepared, asks: null, help: null };
  }
  let help: HelpToday | null = null;
  const found = findHelp(findings, precautions, rung, prepared, asked, rules.helpers, context.solver);
  if (seenHelp !== null && ("rule" in found || found.code < seenHelp.code)) {
    if (asked.cautious > 1.15)
      mind.push({
        rule: "disagrees",
        detail: `${folding(asked)} That is computed; it was seen done ${seenHelp.words === "touching" ? "with a touch" : seenHelp.words === "standBy" ? "alone" : "with help"}, and what was seen counts.`,
        source: "common-practice",
      });
    help = seenHelp;
  } else if ("rule" in found) {
    out.push({
      rule: "effort",
      detail: `${found.detail} It would ask ${inTimes(asked.cautious)} of what it has.`,
      source: found.source,
    });
  } else if (found.code <= 2) {
    out.push({
      rule: "effort",
      detail: `${folding(asked)} ${found.words === "dependent" ? "It would take two helpers." : "More than half of the work would be the helper's."} A lower rung trains more.`,
      source: found.limit > 0 ? "waters-2007" : "common-practice",
    });
    help = found;
  } else help = found;
  if (isClose(asked, found) && seenHelp === null) {
    const turned = out.find((reason) => reason.rule === "effort");
    if (turned !== undefined)
      out[out.indexOf(turned)] = {
        ...turned,
        detail: `${turned.detail} It is close: a little more strength would turn it.`,
      };
    else
      mind.push({
        rule: "close",
        detail:
          "It is close: a little less strength than believed, or a hand or knee a little off its place, would turn it.",
        source: "judgement",
      });
  }
  return { ...base, eligible: out.length === 0, out, mind, helpers: rules.helpers, prepared, asks: asked, help };
}

/** Works something out when it is first asked for, once. */
function once<T>(work: () => T): () => T {
  let known: { readonly value: T } | null = null;
  return () => {
    known ??= { value: work() };
    return known.value;
  };
}

/** Whether a little more or less strength could turn the verdict. */
function isClose(asked: PoseAsks, found: HelpToday | NotEnough): boolean {
  const within = ([low, high]: readonly [number, number], figure: number | null): boolean =>
    figure !== null && figure >= low && figure <= high;
  if (within(CLOSE.effort, asked.cautious)) return true;
  if ("rule" in found) return within(CLOSE.push, found.overLimit);
  return found.newtons > 0 && (within(CLOSE.share, found.share) || within(CLOSE.push, found.newtons / found.limit));
}

/** Help as it was seen on this ladder: at or below the rung seen. */
function helpAsSeen(seen: SeenOnLadder | null, index: number): HelpToday | null {
  if (seen === null) return null;
  const none = {
    share: 0,
    newtons: 0,
    site: null,
    siteWords: null,
    side: null,
    direction: null,
    limit: 0,
    limitBecause: "As seen; how much was not measured.",
  };
  if (index <= seen.done)
    return seen.touched >= index ? { ...none, words: "touching", code: 4 } : { ...none, words: "standBy", code: 4 };
  if (seen.helped !== null && index <= seen.helped) return { ...none, words: "moderate", code: 3, share: 0.5 };
  return null;
}

function inTimes(share: number): string {
  return share >= 1.45 ? `${Math.round(share * 2) / 2} times` : `${Math.round(share * 10)} tenths`;
}
