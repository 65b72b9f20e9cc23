import type { RungToday } from "../../plan/assess/rung-today.ts";
import type { Reason } from "../../plan/eligibility/reason.ts";
import type { Guard } from "../../plan/guard.ts";
import { lookAgain } from "../../plan/person/look-again.ts";
import type { PlannedItem, Session } from "../../plan/session/session-plan.ts";
import { PURPOSE_WORDS } from "../../plan/session/needs.ts";
import { EMERGENCY } from "./standing-texts.ts";
import { BIBLIOGRAPHY, type SourceId } from "../../sources/bibliography.ts";
import type { PlanAnswer } from "../contract/plan-answer.ts";
import type { Override } from "./narrow-person.ts";
import type { PersonToday } from "./person-today.ts";
import { answerDirection, answerLimb, answerSide, jointSide, round2, round3 } from "./sides.ts";
import { changesSince } from "./since-last.ts";
import { takeNextOf } from "./take-next.ts";
import { VERSION } from "./version.ts";

/** The plan as the contract says it: the only place where weak and strong become left and right. */
export function answerPlan(
  person: PersonToday,
  session: Session | null,
  solved: {
    status: string;
    gap: number;
    traded?: readonly string[];
    clash?: readonly string[];
    overrides?: readonly Override[];
    whyShort?: PlanAnswer["whyShort"];
  },
): PlanAnswer {
  const items = session === null ? [] : session.items.map((item) => answerItem(person, item));
  const inPlan = new Set(items.map((item) => `${item.activity}/${item.rung}`));
  const nameOf = (today: RungToday) => ({ activity: today.activity.id, rung: today.rung.id });
  const { hold } = person;
  const holdReasons: Reason[] =
    hold === null
      ? []
      : hold.because.map((each) => ({
          rule: `hold:${each.rule}`,
          detail: `${each.measured}; limit ${each.limit}`,
          source: each.source,
        }));
  const excluded = person.rungs
    .filter((today) => hold !== null || (!today.eligible && !inPlan.has(`${today.activity.id}/${today.rung.id}`)))
    .map((today) => ({ ...nameOf(today), because: [...holdReasons, ...today.out].map((reason) => ({ ...reason })) }));
  const available =
    hold !== null
      ? []
      : person.rungs
          .filter((today) => today.eligible && !inPlan.has(`${today.activity.id}/${today.rung.id}`))
          .map(nameOf);
  return {
    version: VERSION,
    hold: hold === null ? null : { because: hold.because.map((each) => ({ ...each })), whatToDo: hold.whatToDo },
    items,
    transitions:
      session === null
        ? []
        : session.moves.map(({ transition }) => ({
            id: transition.id,
            from: transition.from,
            to: transition.to,
            minutes: Math.max(0.5, Math.round(transition.minutes * 2) / 2),
            steps: transition.steps.map((step) =>
              [
                step.moves,
                `You: ${step.helper}`,
                ...(step.onCount === null ? [] : [`On the count of ${step.onCount.replace(/^on /, "")}.`]),
                ...(step.words === null ? [] : [`Say: ${step.words}.`]),
              ].join(" "),
            ),
          })),
    wayBack:
      session?.wayBack === undefined || session.wayBack === null
        ? null
        : { ...session.wayBack, planned: [...session.wayBack.planned], hurry: [...session.wayBack.hurry] },
    helperMoves: session === null ? [] : session.helperMoves.map((move) => ({ ...move })),
    available,
    excluded,
    minutes: session?.minutes ?? 0,
    workingMinutes: session?.workingMinutes ?? 0,
    timeline:
      session === null
        ? []
        : session.timeline.map((each) => ({
            fromMinute: each.fromMinute,
            toMinute: each.toMinute,
            position: each.position,
            centreHeightMetres: round2(each.centreHeight),
          })),
    solver: { status: solved.status, gap: solved.gap, traded: [...(solved.traded ?? [])] },
    overrides: (solved.overrides ?? []).map((each) => ({
      ...each,
      against: each.against.map((reason) => ({ ...reason })),
    })),
    whyShort: solved.whyShort ?? null,
    changesSinceLast: session === null ? [] : changesSince(person, session),
    takeNext: [
      ...lookAgain(person.model).map(({ sentence, because }) => ({ finding: sentence, wouldChange: because })),
      ...takeNextOf(person, session),
    ],
    contradictions: person.model.disagreements.map((each) => {
      const entry = person.model.trail.find((trail) => trail.id === each.finding);
      const words = entry?.words ?? each.finding;
      const others = person.model.trail
        .filter((trail) => trail.seenInFunction && trail.believed && trail.id !== each.finding)
        .map((trail) => trail.words);
      return {
        findings: [words, ...others.slice(0, 3)],
        believed: each.setAside === null ? "both, with a wide range" : "what was seen in function",
        because:
          each.setAside === null
            ? `Given everything else this would be seen in about ${Math.max(1, Math.round(each.chance * 1000))} of 1000 people; it is kept and widens what is believed.`
            : `Given what was seen in function this finding would be met in about ${Math.max(1, Math.round(each.chance * 1000))} of 1000 people; function is believed over a grade.`,
      };
    }),
    assumed: [...person.findings.assumed],
    cautions: [
      ...clashCaution(solved.clash ?? []),
      ...person.cautions.map(({ text, source }) => ({ text, source })),
      ...EMERGENCY,
    ].map(({ text, source }) => ({ text, source })),
  };
}

function answerItem(person: PersonToday, item: PlannedItem): PlanAnswer["items"][number] {
  const { laterality } = person;
  const { today, dose } = item;
  const { asks } = today;
  return {
    activity: today.activity.id,
    rung: today.rung.id,
    position: today.activity.position,
    limbFree: answerLimb(today.rung.limbFree, laterality),
    workingSide: answerSide(today.rung.workingSide, laterality),
    effort: {
      peak:
        asks === null
          ? { low: 0, middle: 0, high: 0 }
          : { low: round2(asks.peak.low), middle: round2(asks.peak.middle), high: round2(asks.peak.high) },
      limiting:
        asks === null
          ? { joint: "none", direction: "none", side: null }
          : {
              joint: asks.limiting.joint,
              direction: asks.limiting.direction,
              side: jointSide(asks.limiting.side, laterality),
            },
    },
    margin: {
      least:
        item.outline === null
          ? { metres: 0, towards: answerDirection("weak", laterality) }
          : {
              metres: round3(item.outline.least.metres),
              towards: answerDirection(item.outline.least.towards, laterality),
            },
    },
    guard: answerGuard(person, item.guard),
    help: answerHelp(person, today),
    dose: {
      sets: dose.sets,
      ...(dose.repetitions === null ? {} : { repetitions: dose.repetitions }),
      ...(dose.holdSeconds === null ? {} : { holdSeconds: dose.holdSeconds }),
      restSeconds: dose.restSeconds,
    },
    minutes: item.minutes,
    purpose: PURPOSE_WORDS[item.purpose],
    because: [...item.because],
    sources: sourcesOf(today),
  };
}

export function answerGuard(person: PersonToday, guard: Guard | null): PlanAnswer["items"][number]["guard"] {
  if (guard === null) return null;
  const { laterality } = person;
  return {
    side: guard.side === "both" ? "both" : answerSide(guard.side, laterality),
    quadrant: answerDirection(guard.quadrant, laterality),
    helperPose: guard.helperPose,
    because: guard.because,
  };
}

export function answerHelp(person: PersonToday, today: RungToday): PlanAnswer["items"][number]["help"] {
  const { help } = today;
  if (help === null) return null;
  return {
    words: help.words,
    code: help.code,
    share: round2(help.share),
    newtons: Math.round(help.newtons),
    site: help.siteWords,
    side: help.side === null ? null : answerSide(help.side, person.laterality),
    direction: help.direction,
  };
}

function clashCaution(clash: readonly string[]): { text: string; source: SourceId }[] {
  if (clash.length === 0) return [];
  return [
    {
      text: `These wishes do not go together in today's minutes, strength and way back: ${clash.join("; ")}. Let one of them go.`,
      source: "judgement",
    },
  ];
}

function sourcesOf(today: RungToday): SourceId[] {
  const ids = new Set<SourceId>([
    ...today.activity.sources,
    ...today.rung.sources,
    ...today.mind.map((each) => each.source),
    "deleva1996",
  ]);
  return [...ids].filter((id) => id in BIBLIOGRAPHY).sort();
}
