import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";

interface ProgressionRule {
  readonly step: "up" | "down";
  readonly rule: string;
  readonly source: SourceId;
  readonly seen: Seen;
  readonly editable: boolean;
}

/** When a rung is exchanged for the one above or below. Safety comes before every rule here. */
export const PROGRESSION_RULES = {
  upTwoDays: { step: "up", rule: "Two sets of about eight with at most one fault, talking throughout, two days running.", source: "common-practice", seen: "common-practice", editable: true },
  downGaveWay: { step: "down", rule: "A joint gave way.", source: "common-practice", seen: "common-practice", editable: true },
  downPoorInARow: { step: "down", rule: "Two poor ones in a row, or the same stepping-down fault twice.", source: "common-practice", seen: "common-practice", editable: true },
  downPain: { step: "down", rule: "Pain with the rung.", source: "common-practice", seen: "common-practice", editable: true },
  downTooHard: { step: "down", rule: "It felt very hard, or recovery was slow.", source: "judgement", seen: "judgement", editable: true },
} as const satisfies Record<string, ProgressionRule>;

/** The figures of those rules. */
export const PROGRESSION_FIGURES = {
  sets: 2,
  aboutRepetitions: 8,
  faultsAtMost: 1,
  daysRunning: 2,
  poorInARow: 2,
  painAtLeast: 4,
  exertionTooHard: 7,
  exertionForUp: 5,
} as const;

/** Published teaching the rules lean on, kept for the sheets. */
export const PROGRESSION_EVIDENCE = {
  twoForTwo: { text: "Two repetitions more than the goal in the last set, two sessions running, then more load.", source: "two-for-two", seen: "quoted", population: "healthy strength training" },
  successBand: { text: "Practice is reported useful where 60 to 80 of 100 tries succeed.", source: "challenge-zone-review-2026", seen: "read", population: "stroke, 12 studies, preliminary" },
  laterDay: { text: "Learning shows on a later day, in the first tries without a cue.", source: "winstein-1991", seen: "read", population: "healthy adults" },
  twiceOnTwoDays: { text: "Sit to stand counted as alone when done twice without arms on two days running.", source: "barreca-2004", seen: "read", population: "adults about 30 days after a stroke" },
} as const satisfies Record<string, { readonly text: string; readonly source: SourceId; readonly seen: Seen; readonly population: string }>;
