import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";
import type { PositionId, PurposeId } from "../codes.ts";

/** How many days of a week one kind of work is done, as printed or as proposed. */
export interface WeekDose {
  readonly daysPerWeek: readonly [number, number];
  readonly what: string;
  readonly population: string;
  readonly source: SourceId;
  readonly seen: Seen;
}

/** By what a ladder is mainly for. The days are those of the trial or guideline named; none of them is a proven best number. */
export const WEEK_BY_PURPOSE: Readonly<Partial<Record<PurposeId, WeekDose>>> = {
  standUp: { daysPerWeek: [3, 5], what: "sit to stand three days a week; in another trial five", population: "about 30 days after a stroke", source: "barreca-2004", seen: "read" },
  liftSeat: { daysPerWeek: [5, 5], what: "bridging five days a week", population: "stroke, ten a group, low quality", source: "song-heo-2015", seen: "read" },
  sittingBalance: { daysPerWeek: [5, 5], what: "reaching in sitting, ten sessions in two weeks", population: "a year or more after a stroke", source: "dean-shepherd-1997", seen: "read" },
  trunkControl: { daysPerWeek: [4, 4], what: "trunk exercise four days a week", population: "acute inpatients", source: "karthikbabu-2011", seen: "read" },
  stanceOnWeak: { daysPerWeek: [5, 5], what: "standing balance five days a week", population: "subacute stroke", source: "goljar-2010", seen: "read" },
  stepping: { daysPerWeek: [5, 5], what: "standing balance five days a week; none was found for stepping before walking", population: "subacute stroke", source: "goljar-2010", seen: "read" },
};
/** Kneeling was trained by itself. */
export const WEEK_KNEELING: WeekDose = { daysPerWeek: [4, 6], what: "kneeling six days a week", population: "stroke", source: "kneeling-training-2024", seen: "read" };
export const KNEELING_POSITIONS: readonly PositionId[] = ["tall-kneeling", "tall-kneeling-at-bench", "half-kneeling-weak-forward", "half-kneeling-strong-forward", "heel-sitting"];
/** Everything else: balance and coordination as a complement. */
export const WEEK_OTHERWISE: WeekDose = { daysPerWeek: [2, 3], what: "balance and coordination two to three days a week", population: "stroke", source: "billinger-2014", seen: "read" };
/** Work near the person's limit counts as strengthening. */
export const WEEK_STRENGTHENING: WeekDose = { daysPerWeek: [2, 3], what: "strengthening two to three days a week", population: "stroke", source: "billinger-2014", seen: "read" };

export interface SessionDays {
  /** Days of the week with a session, today being day 1. */
  readonly days: readonly number[];
  readonly sessionsADay: 1 | 2;
  readonly rule: string;
  readonly source: SourceId;
  readonly seen: Seen;
}

/** Which days have a session, by how long ago the stroke was and how the person recovers from one. */
export const SESSION_DAYS = {
  firstWeek: { days: [1, 2, 3, 4, 5, 6, 7], sessionsADay: 2, rule: "In the first week short and often: more times out of bed went with better walking, more minutes a day with worse.", source: "bernhardt-2016", seen: "read" },
  usual: { days: [1, 2, 3, 5, 6], sessionsADay: 1, rule: "At least five days of seven; the two without are not side by side, so that nothing rests longer than a day.", source: "nice-ng236", seen: "read" },
  tired: { days: [1, 3, 5, 7], sessionsADay: 1, rule: "Tired still on the day after: a day between sessions until that is gone.", source: "common-practice", seen: "common-practice" },
} as const satisfies Record<string, SessionDays>;

/** Figures of the week that no publication gives. */
export const WEEK_FIGURES = {
  /** From this share of what the weakest joint has, a ladder counts as strengthening. */
  hardFrom: 0.6,
  /** Days between two of strengthening the same ladder. */
  daysBetween: 2,
  firstWeekDays: 7,
  lookAgainDay: 7,
  seen: "judgement",
  source: "judgement",
} as const;

/** What is rested, and how. */
export const WEEK_REST = [
  { text: "Between sets as today's plan says; the next set when breath and talk are back.", source: "common-practice", seen: "common-practice" },
  { text: "A ladder near its limit is not done two days running; another with the same purpose takes its place.", source: "judgement", seen: "judgement" },
  { text: "On a day without a session: up, dressed and moving as the ward or family does it, nothing from the mat.", source: "common-practice", seen: "common-practice" },
  { text: "Training is to feel light to somewhat hard, 11 to 14 of 20, and talk goes on throughout.", source: "billinger-2014", seen: "read" },
] as const satisfies readonly { readonly text: string; readonly source: SourceId; readonly seen: Seen }[];
