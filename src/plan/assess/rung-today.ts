import type { Strengths } from "../../mechanics/body/strength-keys.ts";
import type { LinearSolver } from "../../mechanics/linear-program/linear-program.ts";
import type { Activity, Rung } from "../../practice/activities/activity.ts";
import type { PrecautionFinding } from "../../practice/precautions/precaution.ts";
import { judgeByRules } from "../eligibility/judge-rung.ts";
import { type SeenOnLadder, seenOn } from "../eligibility/placed.ts";
import { factsOf } from "../eligibility/rung-load.ts";
import type { Reason } from "../eligibility/reason.ts";
import type { Findings } from "../findings.ts";
import { askPose, type PoseAsks } from "./efforts.ts";
import { findHelp, folding, type HelpToday } from "./help.ts";
import { poseOf } from "./posed.ts";
import type { PoseKeeper, PreparedPose } from "./prepared.ts";
import { cautious, type EffortWord, wordOfEffort } from "./settings.ts";

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
  readonly asks: PoseAsks | null;
  readonly word: EffortWord | null;
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
    const out = [...rules.out, { rule: "range", detail: `This body cannot take the position: ${prepared.because}.`, source: "judgement" as const }];
    return { ...base, eligible: false, out, mind: rules.mind, helpers: rules.helpers, prepared: null, asks: null, word: null, help: null };
  }
  const asked = askPose(prepared, draws);
  if ("because" in asked) {
    const rules = judgeByRules(findings, precautions, activity, rung, {}, seen);
    const out = [...rules.out, { rule: "balance", detail: `The position cannot be held still: ${asked.because}.`, source: "judgement" as const }];
    return { ...base, eligible: false, out, mind: rules.mind, helpers: rules.helpers, prepared, asks: null, word: null, help: null };
  }
  const facts = factsOf(prepared.statics.body, prepared.pose, asked.loads);
  const rules = judgeByRules(findings, precautions, activity, rung, facts, seen);
  const word = wordOfEffort(asked.peak);
  const out = [...rules.out];
  const mind = [...rules.mind];
  let help: HelpToday | null = null;
  // What is out by a rule needs no helper worked out.
  if (out.length > 0) return { ...base, eligible: false, out, mind, helpers: rules.helpers, prepared, asks: asked, word, help };
  const found = findHelp(findings, precautions, rung, prepared, asked, rules.helpers, context.solver);
  if ("rule" in found) {
    if (seenDone) mind.push({ rule: "disagrees", detail: `${folding(asked)} That is computed; it was seen done, and what was seen counts.`, source: "common-practice" });
    else out.push({ rule: "effort", detail: `${found.detail} It would ask ${inTimes(cautious(asked.peak))} of what it has.`, source: found.source });
  } else help = found;
  return { ...base, eligible: out.length === 0, out, mind, helpers: rules.helpers, prepared, asks: asked, word, help };
}

function inTimes(share: number): string {
  return share >= 1.45 ? `${Math.round(share * 2) / 2} times` : `${Math.round(share * 10)} tenths`;
}
