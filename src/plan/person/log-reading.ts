import type { PreviousItem, PreviousSession } from "../findings.ts";
import type { TaskResult } from "./evidence.ts";
import { LOG_READINGS, type LogReadingId, READING_FIGURES as FIGURES } from "./log-reading.data.ts";

/** A logged item as it bears on strength. */
export interface LogReading {
  readonly id: LogReadingId;
  readonly result: TaskResult;
  /** "alone: faults at little effort: control, not strength". */
  readonly words: string;
}

const FREE_OF_HELP: readonly string[] = ["alone", "setUp", "standBy", "touching"];

/**
 * What held one logged item back: strength, control, tiredness, pain or nothing that was said.
 * @param session the whole session, which tells whether it came late
 * @returns null where it was not done and no joint gave way: it says nothing
 */
export function readLoggedItem(session: PreviousSession, item: PreviousItem): LogReading | null {
  if (item.done === "notDone" && item.gaveWay === null) return null;
  const helped = item.help !== null && !FREE_OF_HELP.includes(item.help);
  const result: TaskResult =
    item.done === "notDone" ? "cannot" : helped ? "withHelp" : item.help === "touching" ? "withTouch" : "alone";
  const id = whatHeldBack(session, item, helped);
  const { words } = LOG_READINGS[id];
  return { id, result, words: `${RESULT_WORDS[result]}${words === "" ? "" : `, ${words}`}` };
}

function whatHeldBack(session: PreviousSession, item: PreviousItem, helped: boolean): LogReadingId {
  if (item.gaveWay !== null) return "strength";
  if ((item.pain ?? 0) >= FIGURES.painHolds) return "pain";
  const fellShort = helped || item.help === "touching" || item.done === "changed";
  if (item.worse !== undefined || (fellShort && cameLate(session, item))) return "tired";
  const faulty = item.faults.length > 0;
  if (faulty && item.exertion !== null && item.exertion <= FIGURES.easyUpTo) return "quality";
  if (item.exertion !== null && item.exertion >= FIGURES.hardFrom && !helped) return "hard";
  return "plain";
}

/** In the last third of a session in which enough was done, and what came first went as planned. */
function cameLate({ items }: PreviousSession, item: PreviousItem): boolean {
  const done = items.filter((each) => each.done !== "notDone");
  const at = done.indexOf(item);
  if (at < 0 || done.length < FIGURES.lateItemsAtLeast || at / (done.length - 1) < FIGURES.lateFrom) return false;
  return done.slice(0, Math.ceil(done.length / 2)).every((each) => each.done === "asPlanned" && each.gaveWay === null);
}

export const RESULT_WORDS: Readonly<Record<TaskResult, string>> = {
  cannot: "cannot",
  withHelp: "with help",
  withTouch: "with a touch",
  alone: "alone",
  aloneWell: "alone and well",
};
