import type { Activity, Rung } from "../../practice/activities/activity.ts";
import type { DemandId, EquipmentId } from "../../practice/codes.ts";
import { helpersFor } from "../../practice/precautions/effects.ts";
import { judgeDemands } from "../../practice/precautions/judge-demands.ts";
import type { PrecautionFinding } from "../../practice/precautions/precaution.ts";
import type { RungFacts } from "../../practice/precautions/rung-facts.ts";
import type { BalanceGrade, Findings } from "../findings.ts";
import { closedByStops, type SeenOnLadder } from "./placed.ts";
import type { Reason } from "./reason.ts";

/** What the rules say of a rung before its effort is asked: what keeps it out, and what to mind. */
export interface RuleVerdict {
  readonly out: readonly Reason[];
  readonly mind: readonly Reason[];
  /** People needed besides the person. */
  readonly helpers: number;
}

/** Things that are fetched for one person; furniture of the room and pillows are taken to be there. */
const FETCHED: readonly EquipmentId[] = [
  "bolster",
  "wedge",
  "stool",
  "footBlock",
  "band",
  "cuff",
  "cane",
  "quadCane",
  "walker",
  "steps",
];
const SITTING = [
  "long-sitting",
  "short-sitting",
  "perch-sitting",
  "side-sitting-on-weak-hip",
  "side-sitting-on-strong-hip",
];
const STANDING = [
  "standing",
  "standing-in-bars",
  "walking-in-bars",
  "stride-standing-weak-forward",
  "stride-standing-strong-forward",
  "standing-at-wall",
  "walking-with-device",
  "standing-at-steps",
];
/** How much of a ladder a balance grade opens (judgement). */
const OPENS: Readonly<Record<BalanceGrade, number>> = { none: 0, poor: 0.5, fair: 0.8, good: 1, normal: 1 };

/** Judges a rung by all rules but effort. `facts` come from the computed pose; without it the rules are read on the safe side. */
export function judgeByRules(
  findings: Findings,
  precautions: readonly PrecautionFinding[],
  activity: Activity,
  rung: Rung,
  facts: RungFacts,
  seen: SeenOnLadder | null,
): RuleVerdict {
  const index = activity.rungs.indexOf(rung);
  const verdicts = judgeDemands(precautions, rung.demands, activity.position, facts);
  const out: Reason[] = verdicts
    .filter(({ verdict }) => verdict === "bar" || verdict === "clearFirst")
    .map(({ precaution, because, source, verdict }) => ({
      rule: `precaution:${precaution}`,
      detail: verdict === "clearFirst" ? `To be cleared first. ${because}` : because,
      source,
    }));
  const mind: Reason[] = verdicts
    .filter(({ verdict }) => verdict === "change" || verdict === "watch")
    .map(({ precaution, because, source }) => ({ rule: `precaution:${precaution}`, detail: because, source }));
  const more = helpersFor(precautions, rung.demands, activity.position);
  const helpers = Math.max(rung.helpersNeeded, more?.count ?? 0);
  out.push(
    ...byStops(findings, activity, rung),
    ...byApproach(findings, rung),
    ...byRoom(findings, activity, rung),
    ...byBalance(findings, activity, index, seen),
  );
  if (helpers > findings.helpers.count) {
    const because =
      more !== null && more.count > rung.helpersNeeded ? more.because : "This rung is done with a second person.";
    out.push({
      rule: "helpers",
      detail: `${because} ${findings.helpers.count === 1 ? "One person is" : `${findings.helpers.count} people are`} here today; ${helpers} are needed.`,
      source: more?.source ?? "common-practice",
    });
  }
  if (seen !== null && index >= seen.failed)
    out.push({
      rule: "seen",
      detail: `${seen.words} Kept out until it is tried again lower down.`,
      source: "common-practice",
    });
  if (rung.limbs.arm === "lend" && findings.approach.arm === "spare")
    mind.push({
      rule: "approach",
      detail: "The weak arm only serves as a post here: neither training nor rest for it.",
      source: "common-practice",
    });
  return { out, mind, helpers };
}

function byStops(findings: Findings, activity: Activity, rung: Rung): Reason[] {
  return closedByStops(findings)
    .filter(
      ({ positions, demands }) =>
        positions.includes(activity.position) || demands.some((demand) => rung.demands.includes(demand as DemandId)),
    )
    .map(({ words }) => ({ rule: "stoppedInLook", detail: words, source: "common-practice" as const }));
}

function byApproach(findings: Findings, rung: Rung): Reason[] {
  const reasons: Reason[] = [];
  for (const limb of ["arm", "leg"] as const) {
    if (findings.approach[limb] === "spare" && rung.limbs[limb] === "train")
      reasons.push({
        rule: "approach",
        detail: `The weak ${limb} is spared in this plan and this rung trains it. Guidelines favour using the weak side; change the approach to let it in.`,
        source: "common-practice",
      });
  }
  return reasons;
}

function byRoom(findings: Findings, activity: Activity, rung: Rung): Reason[] {
  const reasons: Reason[] = [];
  if (findings.equipment.length > 0) {
    for (const thing of rung.equipment) {
      if (FETCHED.includes(thing) && !findings.equipment.includes(thing))
        reasons.push({
          rule: "equipment",
          detail: `Needs a ${thingWords(thing)}, which is not on today's list.`,
          source: "common-practice",
        });
    }
  }
  const floorOnly = rung.places.length > 0 && rung.places.every((place) => place === "floorMat");
  if (findings.place === "bed" && rung.places.length > 0 && !rung.places.includes("bed"))
    reasons.push({ rule: "place", detail: "Not done in bed.", source: "common-practice" });
  if (findings.place !== "bed" && rung.places.length > 0 && rung.places.every((place) => place === "bed"))
    reasons.push({ rule: "place", detail: "Done in a bed, not on a mat.", source: "common-practice" });
  if (floorOnly && !findings.helpers.canKneel)
    reasons.push({
      rule: "helperKneels",
      detail: "Done on the floor, where the helper has to kneel and cannot.",
      source: "common-practice",
    });
  if (
    findings.place === "floorMat" &&
    !findings.helpers.canKneel &&
    activity.position !== "standing-in-bars" &&
    activity.position !== "walking-in-bars"
  )
    reasons.push({
      rule: "helperKneels",
      detail: "On a floor mat the helper has to kneel and cannot: take a raised mat.",
      source: "common-practice",
    });
  return reasons;
}

const thingWords = (thing: EquipmentId): string => thing.replace(/([A-Z])/g, " $1").toLowerCase();

function byBalance(findings: Findings, activity: Activity, index: number, seen: SeenOnLadder | null): Reason[] {
  const kind = SITTING.includes(activity.position)
    ? "sitting"
    : STANDING.includes(activity.position)
      ? "standing"
      : null;
  if (kind === null) return [];
  const grade = findings.balance[kind] ?? fromLook(findings, kind);
  if (grade === null || (seen !== null && seen.done >= index)) return [];
  const open = Math.max(1, Math.ceil(OPENS[grade] * activity.rungs.length));
  if (kind === "standing" && grade === "none")
    return [
      {
        rule: "balance",
        detail: "No standing balance yet: stand first with forearms on a table or from a high seat.",
        source: "common-practice",
      },
    ];
  if (index < open) return [];
  return [
    {
      rule: "balance",
      detail: `Balance in ${kind} is ${grade}: only the lower part of this ladder is open.`,
      source: "judgement",
    },
  ];
}

function fromLook(findings: Findings, kind: "sitting" | "standing"): BalanceGrade | null {
  const task = kind === "sitting" ? "sitThirtySeconds" : "standThirtySeconds";
  const entry = findings.look.find((each) => each.task === task);
  if (entry === undefined || entry.result === "notTried") return null;
  return ({ cannot: "none", withHelp: "poor", withTouch: "fair", alone: "good", aloneWell: "normal" } as const)[
    entry.result
  ];
}
