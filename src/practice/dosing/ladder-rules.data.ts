import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";

/** One rule of the ladder over days: what decides, in words, and what is done then. */
export interface LadderRule {
  readonly step: "up" | "stay" | "down";
  readonly rule: string;
  readonly whatToDo: string;
  readonly source: SourceId;
  readonly seen: Seen;
  readonly editable: boolean;
}

/** In the order they are asked: the first that fits decides. Stop signs, holds and precautions come before all of them. */
export const LADDER_RULES = {
  downGaveWay: { step: "down", rule: "A joint gave way.", whatToDo: "One rung down; look where it gave way before going up again.", source: "common-practice", seen: "common-practice", editable: true },
  downPain: { step: "down", rule: "Pain with the rung.", whatToDo: "One rung down; find out what hurts.", source: "common-practice", seen: "common-practice", editable: true },
  downPoorInARow: { step: "down", rule: "Two poor ones in a row, or the same stepping-down fault twice.", whatToDo: "One rung down; change one thing only.", source: "common-practice", seen: "common-practice", editable: true },
  downTooHard: { step: "down", rule: "It felt very hard, or recovery was slow.", whatToDo: "One rung down, or fewer and longer rests.", source: "judgement", seen: "judgement", editable: true },
  downNextDay: { step: "down", rule: "Pain the day after, or a tiredness that sleep did not take away.", whatToDo: "One rung down and one set fewer; ask again the next day.", source: "common-practice", seen: "common-practice", editable: true },
  downMoreHelp: { step: "down", rule: "More help was needed two days running than on this rung before.", whatToDo: "One rung down, at the help of before.", source: "judgement", seen: "judgement", editable: true },
  backAfterAbsence: { step: "down", rule: "Three sessions missed.", whatToDo: "One rung back; judge by the first tries without a cue, and look again before going up.", source: "judgement", seen: "judgement", editable: true },
  stayLessHelp: { step: "stay", rule: "Two good days, still with a hand that helps: help goes before the rung.", whatToDo: "The same rung with one step less help.", source: "judgement", seen: "judgement", editable: true },
  upTwoForTwo: { step: "up", rule: "Two repetitions more than asked, two sessions running.", whatToDo: "One rung up; nothing else changes.", source: "two-for-two", seen: "quoted", editable: true },
  upTwoDays: { step: "up", rule: "Two sets of about eight with at most one fault, talking throughout, two days running.", whatToDo: "One rung up; nothing else changes.", source: "common-practice", seen: "common-practice", editable: true },
  stayOneGood: { step: "stay", rule: "One good day; one more before the next rung.", whatToDo: "The same rung.", source: "common-practice", seen: "common-practice", editable: true },
  stayNotYet: { step: "stay", rule: "Not yet two sets of about eight with at most one fault.", whatToDo: "The same rung.", source: "common-practice", seen: "common-practice", editable: true },
  stayNew: { step: "stay", rule: "Not done before.", whatToDo: "As it is placed today.", source: "common-practice", seen: "common-practice", editable: true },
} as const satisfies Record<string, LadderRule>;
export type LadderRuleId = keyof typeof LADDER_RULES;

/** The figures of those rules that the older table does not hold. Proposals of this project unless the rule has a source. */
export const LADDER_FIGURES = {
  /** Pain asked the next day, 0 to 10. */
  nextDayPainAtLeast: 4,
  /** Days running with more help than before. */
  moreHelpDays: 2,
  /** The most help that does not help: touch is the last. */
  handsOnFrom: "minimal",
  missedSessions: 3,
  /** Days without any session that count as three missed, at three sessions a week. */
  daysAway: 8,
  /** Repetitions above the goal ("two-for-two"). */
  repetitionsAbove: 2,
} as const;

/** What keeps a ladder on its rung, and what to try. Each is judgement or common practice; a site may change it. */
export interface PlateauRow {
  readonly keeps: string;
  readonly tryThis: string;
  readonly source: SourceId;
  readonly seen: Seen;
}

export const PLATEAU = {
  /** Days on one rung without a step that make a plateau (judgement). */
  days: 4,
  /** Share of those days on which one thing is seen, to be called what keeps it (judgement). */
  share: 0.5,
} as const;

export const PLATEAU_KEPT_BY = {
  pain: { keeps: "pain", tryThis: "Find out what hurts before anything else; the same purpose in another position meanwhile.", source: "common-practice", seen: "common-practice" },
  fault: { keeps: "the same fault", tryThis: "Split the rung: smaller range or slower, cue that one thing, fade the cue; then the whole.", source: "common-practice", seen: "common-practice" },
  help: { keeps: "the same help", tryThis: "Take away one step of help for the first two tries of each set, and give it back for the rest.", source: "judgement", seen: "judgement" },
  tired: { keeps: "tiredness", tryThis: "Put it first while fresh, halve the set, double the rest; ask about sleep, mood, pain and medicines.", source: "common-practice", seen: "common-practice" },
  short: { keeps: "too few repetitions", tryThis: "Same total in more and shorter sets before asking for more in one.", source: "judgement", seen: "judgement" },
  nothing: { keeps: "nothing that was logged", tryThis: "Look again at the weak part it asks for; another ladder with the same purpose, or mix it with two known tasks.", source: "judgement", seen: "judgement" },
} as const satisfies Record<string, PlateauRow>;
export type PlateauKeptBy = keyof typeof PLATEAU_KEPT_BY;

/** A setback: rungs lost that were held before. */
export const SETBACK = {
  rungsLost: 2,
  downsRunning: 2,
  rule: "Two rungs below the best of before, or down two days running.",
  tryThis:
    "Ask what changed: sleep, mood, pain, infection, medicines, shoes or splint. Look again before the next rung; tell the physician if nothing explains it.",
  source: "common-practice",
  seen: "common-practice",
} as const;
