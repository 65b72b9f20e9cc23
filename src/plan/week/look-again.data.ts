import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";

/** What is looked at again in any week. */
export const LOOK_AGAIN = {
  nextDay: { text: "Ask on the day after: pain, and tiredness that sleep did not take away.", source: "common-practice", seen: "common-practice" },
  firstTries: { text: "Before the first set: the first tries of each ladder without a cue; learning shows on a later day.", source: "winstein-1991", seen: "read" },
  wholeLook: { text: "The ten-minute look again, and the grades of what gave way.", source: "judgement", seen: "judgement" },
  absence: { text: "After the sessions missed: the look again before anything goes up.", source: "judgement", seen: "judgement" },
} as const satisfies Record<string, { readonly text: string; readonly source: SourceId; readonly seen: Seen }>;
