import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";

interface AssistanceRow {
  /** Said to a therapist. */
  readonly words: string;
  /** What it means, as a sentence. */
  readonly sentence: string;
  /** Level of the public six-level code. */
  readonly code: 1 | 2 | 3 | 4 | 5 | 6;
  /** The largest share of the work the helper does [0-1]; null where it is not told by a share. */
  readonly shareMax: number | null;
  readonly source: SourceId;
  readonly seen: Seen;
}

/** The trade's words for help, least first, each with the public code it falls under. */
export const ASSISTANCE = {
  alone: { words: "alone", sentence: "Nobody needed.", code: 6, shareMax: null, source: "cms-section-gg", seen: "quoted" },
  setUp: { words: "set up", sentence: "Someone sets things ready or clears up; not there for the move.", code: 5, shareMax: null, source: "cms-section-gg", seen: "quoted" },
  standBy: { words: "stand by", sentence: "The helper is within reach and does not touch.", code: 4, shareMax: null, source: "cms-section-gg", seen: "quoted" },
  touching: { words: "touching", sentence: "A hand steadies or cues and takes no weight.", code: 4, shareMax: 0.05, source: "cms-section-gg", seen: "quoted" },
  minimal: { words: "minimal help", sentence: "The helper does up to a quarter of the work.", code: 3, shareMax: 0.25, source: "assistance-words", seen: "quoted" },
  moderate: { words: "moderate help", sentence: "The helper does up to half of the work.", code: 3, shareMax: 0.5, source: "assistance-words", seen: "quoted" },
  maximal: { words: "maximal help", sentence: "The helper does up to three quarters of the work.", code: 2, shareMax: 0.75, source: "assistance-words", seen: "quoted" },
  dependent: { words: "dependent", sentence: "The helper does nearly all of it, or two helpers are needed.", code: 1, shareMax: 1, source: "cms-section-gg", seen: "quoted" },
} as const satisfies Record<string, AssistanceRow>;
