import type { PositionId, PurposeId } from "../../practice/codes.ts";
import {
  KNEELING_POSITIONS,
  SESSION_DAYS,
  type SessionDays,
  WEEK_BY_PURPOSE,
  WEEK_FIGURES,
  WEEK_KNEELING,
  WEEK_OTHERWISE,
  WEEK_STRENGTHENING,
  type WeekDose,
} from "../../practice/dosing/week.data.ts";
import type { Findings } from "../findings.ts";

/** A ladder of today's plan as it goes into the week. */
export interface WeekLadder {
  readonly activity: string;
  readonly purpose: PurposeId;
  readonly position: PositionId;
  /** Share of the weakest joint's strength, cautiously [1 = all there is]; null where nothing is weighed. */
  readonly effort: number | null;
  /** Another activity with the same purpose, for the days this one rests; null where there is none. */
  readonly partner: string | null;
}

/** What of the findings the week rests on. */
export type WeekFindings = Pick<Findings, "daysSinceOnset" | "stroke" | "previous">;

export interface LadderWeek {
  readonly activity: string;
  readonly hard: boolean;
  readonly dose: WeekDose;
  readonly days: readonly number[];
  /** Days on which the partner is done instead. */
  readonly partnerDays: readonly number[];
}

export interface Week {
  readonly sessions: SessionDays;
  readonly ladders: readonly LadderWeek[];
}

/**
 * The week from today's plan: which days have a session, and on which of them each ladder is done. Today's plan is day 1.
 * A ladder near the person's limit is not done two days running, and no more days than strengthening is printed for.
 */
export function planWeek(findings: WeekFindings, ladders: readonly WeekLadder[]): Week {
  const sessions = sessionDaysOf(findings);
  return {
    sessions,
    ladders: ladders.map((ladder): LadderWeek => {
      const hard = ladder.effort !== null && ladder.effort >= WEEK_FIGURES.hardFrom;
      const dose = hard ? WEEK_STRENGTHENING : doseOf(ladder);
      const days = hard ? apart(sessions.days, dose.daysPerWeek[1]) : spread(sessions.days, dose.daysPerWeek[1]);
      const free = sessions.days.filter((day) => !days.includes(day));
      return { activity: ladder.activity, hard, dose, days, partnerDays: ladder.partner === null ? [] : free };
    }),
  };
}

function sessionDaysOf({ daysSinceOnset, stroke, previous }: WeekFindings): SessionDays {
  if (stroke && daysSinceOnset !== null && daysSinceOnset < WEEK_FIGURES.firstWeekDays) return SESSION_DAYS.firstWeek;
  const last = previous[previous.length - 1];
  return last?.nextDay?.tired === "stillThere" ? SESSION_DAYS.tired : SESSION_DAYS.usual;
}

function doseOf({ purpose, position }: WeekLadder): WeekDose {
  if (KNEELING_POSITIONS.includes(position)) return WEEK_KNEELING;
  return WEEK_BY_PURPOSE[purpose] ?? WEEK_OTHERWISE;
}

/** As many of the days as asked, evenly over them, the first always. */
function spread(days: readonly number[], most: number): number[] {
  if (days.length <= most) return [...days];
  return Array.from({ length: most }, (_, k) => days[Math.floor((k * days.length) / most)] ?? 1);
}

/** The first day and every further one far enough from the last, no more than asked. */
function apart(days: readonly number[], most: number): number[] {
  const taken: number[] = [];
  for (const day of days) {
    const last = taken[taken.length - 1];
    if (taken.length < most && (last === undefined || day - last >= WEEK_FIGURES.daysBetween)) taken.push(day);
  }
  return taken;
}
