import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";

/** What held a logged set back, and how much it then still says about strength. */
export interface LogReadingRow {
  /** For the trail, after the result. */
  readonly words: string;
  /** Mean of what other causes than strength added to ln effort, as a multiple of the usual. */
  readonly delayTimes: number;
  /** Spread of ln effort that this way of reading adds to the day's [ln]. */
  readonly spread: number;
  readonly source: SourceId;
  readonly seen: Seen;
}

/** What other causes than strength add to ln effort of a logged set on an ordinary day: the mean. Judgement. */
export const LOG_DELAY = 0.3;
/** What each session since adds to it, for a body that recovers meanwhile [ln]. Judgement. */
export const AGE_SPREAD = 0.05;
/** Sessions looked back at. */
export const SESSIONS_READ = 10;

/** Figures that tell what held a set back. Judgement; pain and exertion 0 to 10 as in the ladder's rules. */
export const READING_FIGURES = {
  painHolds: 4,
  /** Felt this hard, the set was near all there is. */
  hardFrom: 7,
  /** Faults at no more than this are faults of control. */
  easyUpTo: 4,
  /** From this part of the session on a set is late. */
  lateFrom: 0.66,
  lateItemsAtLeast: 4,
} as const;

/**
 * Strength, quality and tiredness told apart. A joint that gives way names strength; a set that got worse, or was
 * shortened late in a session, names tiredness; faults at little effort name control; pain hides strength.
 */
export const LOG_READINGS = {
  strength: { words: "held back by strength", delayTimes: 0.4, spread: 0, source: "judgement", seen: "judgement" },
  hard: { words: "done, and near all there is", delayTimes: 1, spread: 0.1, source: "judgement", seen: "judgement" },
  tired: { words: "got worse as it went on: tiredness, which says little of fresh strength", delayTimes: 2.5, spread: 0.15, source: "judgement", seen: "judgement" },
  quality: { words: "faults at little effort: control, not strength", delayTimes: 2.5, spread: 0.25, source: "judgement", seen: "judgement" },
  pain: { words: "held back by pain, which says little of strength", delayTimes: 2.5, spread: 0.15, source: "judgement", seen: "judgement" },
  plain: { words: "", delayTimes: 1, spread: 0, source: "judgement", seen: "judgement" },
} as const satisfies Record<string, LogReadingRow>;
export type LogReadingId = keyof typeof LOG_READINGS;
