/**
 * What the plan allows a body to be asked, as shares of what it has. Proposals of this project ("judgement"), to be set by
 * the site: below 0.4 easy, to 0.6 steady work, to 0.85 hard, to 1 at the edge, above: would fold.
 */
export const EFFORT_WORDS = [
  { upTo: 0.4, word: "easy" },
  { upTo: 0.6, word: "steady" },
  { upTo: 0.85, word: "hard" },
  { upTo: 1, word: "edge" },
] as const;
export type EffortWord = (typeof EFFORT_WORDS)[number]["word"] | "folds";

/** The most a joint may be asked in a planned rung without help: the border of "hard". */
export const ALLOWED_EFFORT = 0.85;
/** Below this the upper end of the range does not train anybody. */
export const TOO_EASY = 0.12;

/** A range that crosses a border takes the harder word; ranges are long-tailed, so the upper end counts half. */
export function wordOfEffort(range: { readonly middle: number; readonly high: number }): EffortWord {
  const share = cautious(range);
  return EFFORT_WORDS.find(({ upTo }) => share <= upTo + 1e-9)?.word ?? "folds";
}

/** The figure a plan goes by: the middle, or half way to the upper end where that is worse known. */
export function cautious(range: { readonly middle: number; readonly high: number }): number {
  return Math.min((range.middle + range.high) / 2, range.middle * 1.6);
}

/** Efforts are shown and compared in steps of a twentieth, so that noise in the last digit decides nothing. */
export const roundEffort = (effort: number): number => Math.round(effort * 20) / 20;
