import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";
import { ASSISTANCE } from "../handling/assistance.data.ts";
import { LADDER_FIGURES, LADDER_RULES, type LadderRuleId } from "./ladder-rules.data.ts";
import { PROGRESSION_FIGURES } from "./progression.data.ts";
import { judgeLadderStep, type LoggedDay, type PlannedDose, reasonDown } from "./progression.ts";

export type HelpLevel = keyof typeof ASSISTANCE;
/** Words of help, least first. */
export const HELP_LEVELS = Object.keys(ASSISTANCE).filter((key): key is HelpLevel => key in ASSISTANCE);

/** One day of one rung with what only several days can tell. */
export interface LadderDay extends LoggedDay {
  readonly help?: HelpLevel;
  /** What was said the next day about this ladder. */
  readonly nextDay?: { readonly pain?: number; readonly stillTired?: boolean };
}

/** How the person was away before today. */
export interface Absence {
  /** Sessions running, up to today, in which this ladder was asked and not done, or nothing was done at all. */
  readonly missedInARow: number;
  /** Days since anything was done; null where no date says so. */
  readonly daysAway: number | null;
}

export interface LadderJudgement {
  readonly step: "up" | "stay" | "down";
  readonly rule: LadderRuleId;
  readonly because: string;
  /** What is done then, in one line. */
  readonly whatToDo: string;
  readonly source: SourceId;
  readonly seen: Seen;
}

/** Place of a word of help, least first. */
export const helpRank = (help: HelpLevel): number => HELP_LEVELS.indexOf(help);
/** Whether a help takes some of the work, more than a touch. */
export const helps = (help: HelpLevel): boolean => helpRank(help) >= helpRank(LADDER_FIGURES.handsOnFrom);

/**
 * Up, stay or down on one ladder, by the first rule that fits: what went wrong on the last day, the day after it, more
 * help than before, an absence, then what two good days allow.
 * @param days the days this rung was done, oldest first
 */
export function judgeLadder(days: readonly LadderDay[], planned: PlannedDose, absence: Absence): LadderJudgement {
  const last = days[days.length - 1];
  if (last === undefined) return decide("stayNew");
  const down = reasonDown(last);
  if (down !== null) return decide(down);
  const { nextDay } = last;
  if (nextDay?.stillTired === true || (nextDay?.pain ?? 0) >= LADDER_FIGURES.nextDayPainAtLeast)
    return decide("downNextDay");
  if (neededMoreHelp(days)) return decide("downMoreHelp");
  if (wasAway(absence)) return decide("backAfterAbsence", sayAbsence(absence));
  const usual = judgeLadderStep(days, planned);
  const aboveGoal = twoAboveGoal(days, planned);
  if (usual.step === "up" || aboveGoal) {
    if (days.slice(-PROGRESSION_FIGURES.daysRunning).some(({ help }) => help !== undefined && helps(help)))
      return decide("stayLessHelp");
    return decide(aboveGoal ? "upTwoForTwo" : "upTwoDays");
  }
  return decide(usual.because === LADDER_RULES.stayOneGood.rule ? "stayOneGood" : "stayNotYet");
}

function decide(rule: LadderRuleId, because?: string): LadderJudgement {
  const { step, whatToDo, source, seen, ...row } = LADDER_RULES[rule];
  return { step, rule, because: because ?? row.rule, whatToDo, source, seen };
}

/** Whether an absence is as long as three sessions missed. */
export function wasAway({ missedInARow, daysAway }: Absence): boolean {
  return missedInARow >= LADDER_FIGURES.missedSessions || (daysAway ?? 0) >= LADDER_FIGURES.daysAway;
}

function sayAbsence({ missedInARow, daysAway }: Absence): string {
  return missedInARow >= LADDER_FIGURES.missedSessions
    ? `${missedInARow} sessions missed in a row.`
    : `${daysAway ?? 0} days without a session, as long as three missed.`;
}

function neededMoreHelp(days: readonly LadderDay[]): boolean {
  const ranks = days.flatMap(({ help }) => (help === undefined ? [] : [helpRank(help)]));
  const latest = ranks.slice(-LADDER_FIGURES.moreHelpDays);
  const before = ranks.slice(0, -LADDER_FIGURES.moreHelpDays);
  if (latest.length < LADDER_FIGURES.moreHelpDays || before.length === 0) return false;
  const least = Math.min(...before);
  return latest.every((rank) => rank > least && rank >= helpRank(LADDER_FIGURES.handsOnFrom));
}

/** @source two-for-two, of healthy strength training: here the load is the next rung */
function twoAboveGoal(days: readonly LadderDay[], { repetitions }: PlannedDose): boolean {
  const latest = days.slice(-PROGRESSION_FIGURES.daysRunning);
  return (
    repetitions !== undefined &&
    latest.length === PROGRESSION_FIGURES.daysRunning &&
    latest.every(
      (day) =>
        (day.repetitions ?? 0) >= repetitions + LADDER_FIGURES.repetitionsAbove &&
        day.faults.length <= PROGRESSION_FIGURES.faultsAtMost &&
        (day.pain ?? 0) < PROGRESSION_FIGURES.painAtLeast &&
        (day.exertion ?? 0) <= PROGRESSION_FIGURES.exertionForUp,
    )
  );
}
