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

/** The word for the effort a plan goes by: that of a draw from the weaker end of what is believed. */
export function wordOfEffort(cautious: number): EffortWord {
  return EFFORT_WORDS.find(({ upTo }) => cautious <= upTo + 1e-9)?.word ?? "folds";
}

/**
 * Effort at the middle strength from which a rung is out without more ado: to bring twice what there is down to all there
 * is takes half of the work, and the plan goes by a weaker draw than the middle one.
 */
export const FAR_OVER = 2.5;

/**
 * Where a verdict is called close: a figure this near the border that decided it. Wide enough that a twentieth more or less
 * strength turns no verdict that is not called so (counted over the catalogue in `test/steadiness.test.ts`).
 */
export const CLOSE = {
  /** Effort a plan goes by, about the border where help begins. */
  effort: [0.9, 1.15],
  /** Help as a share, about the half where a lower rung trains more. */
  share: [0.35, 0.66],
  /** Push over the most a helper may give. */
  push: [0.75, 1.4],
} as const;
