import { LOOK_TASKS } from "../../plan/findings.ts";
import type { ASSISTANCE } from "../../practice/handling/assistance.data.ts";
import { STOP_REASONS } from "../../session/codes.ts";
import { GAVE_WAY_HOW, GAVE_WAY_JOINTS, LOOK_RESULTS, TASK_STOPPED_BY } from "./case-codes.ts";
import { codes, counted, group, ISO_DATE, listOf, maybe, measured, words } from "./fields.ts";

export const GAVE_WAY = group("where it gave way", {
  joint: codes("joint", GAVE_WAY_JOINTS),
  side: maybe(codes("side", ["weak", "strong"])),
  how: maybe(codes("how", GAVE_WAY_HOW)),
});

/** A seat given in metres is recognised. */
const metresForSeat = (v: number) =>
  v > 0.2 && v < 1.1 ? `this looks like metres: write ${Math.round(v * 100)}` : null;

export const LOOK_ENTRY = group("one task of the look", {
  task: codes("task", LOOK_TASKS),
  result: codes("result", LOOK_RESULTS),
  gaveWay: maybe(GAVE_WAY),
  stoppedBy: maybe(codes("what stopped it", TASK_STOPPED_BY)),
  seatHeightCm: maybe(
    measured({ what: "height of the seat", min: 20, max: 110, unit: "centimetres", hint: metresForSeat }),
  ),
});

/** How much help, in the words of the log. */
export const HELP_WORDS = [
  "alone",
  "setUp",
  "standBy",
  "touching",
  "minimal",
  "moderate",
  "maximal",
  "dependent",
] as const satisfies readonly (keyof typeof ASSISTANCE)[];

const tenth = (what: string) => measured({ what, min: 0, max: 10, unit: "(0 none, 10 the most)" });

export const PREVIOUS_ITEM = group("one item of an earlier session", {
  activity: words("activity", 80),
  rung: words("rung", 80),
  done: codes("how it was done", ["asPlanned", "changed", "notDone"]),
  sets: maybe(counted({ what: "sets", min: 0, max: 50 })),
  repetitions: maybe(counted({ what: "repetitions", min: 0, max: 500 })),
  help: maybe(codes("help", HELP_WORDS)),
  faults: maybe(listOf("faults", words("fault", 80), 30)),
  pain: maybe(tenth("pain")),
  exertion: maybe(tenth("exertion")),
  gaveWay: maybe(GAVE_WAY),
  /** It got worse within a set, or from one set to a later one: tiredness rather than strength. */
  worse: maybe(codes("where it got worse", ["withinSet", "laterSets"])),
});

export const NEXT_DAY = group("report of the day after", {
  activity: maybe(words("activity", 80)),
  pain: maybe(tenth("pain")),
  tired: maybe(codes("tired the day after", ["no", "sleptOff", "stillThere"])),
});

export const PREVIOUS_SESSION = group("one earlier session", {
  date: maybe(ISO_DATE),
  items: maybe(listOf("items", PREVIOUS_ITEM, 60)),
  stopped: maybe(group("why it was stopped", { because: codes("why it was stopped", STOP_REASONS) })),
  nextDay: maybe(NEXT_DAY),
  /** Who looked at what had got worse since, and let it go on. */
  checkedBy: maybe(words("who looked at it", 200)),
});
