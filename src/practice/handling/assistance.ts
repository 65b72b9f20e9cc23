import { requireFinite } from "../../quantity/finite.ts";
import { ASSISTANCE } from "./assistance.data.ts";

export type AssistanceWord = keyof typeof ASSISTANCE;
/** The words a plan can ask for; set-up and alone are only ever logged. */
export type PlannedAssistance = Exclude<AssistanceWord, "alone" | "setUp">;

export interface Help {
  /** Share of the work the helper does [0-1]. */
  readonly share: number;
  /** A hand is on the person. */
  readonly touches: boolean;
  readonly helpers: number;
}

const BY_SHARE = ["touching", "minimal", "moderate", "maximal"] as const;

/**
 * The trade's word for this much help. Two helpers are dependent, whatever their share; exactly half is still moderate.
 * @source cms-section-gg, assistance-words; the share that still counts as a touch is a proposal of this project.
 */
export function nameHelp({ share, touches, helpers }: Help): PlannedAssistance {
  const part = requireFinite(share, "share of help");
  if (helpers >= 2) return "dependent";
  if (part <= 0 && !touches) return "standBy";
  return BY_SHARE.find((word) => part <= ASSISTANCE[word].shareMax) ?? "dependent";
}

/** The level of the public six-level code for a word of help. */
export function codeOfHelp(word: AssistanceWord): 1 | 2 | 3 | 4 | 5 | 6 {
  return ASSISTANCE[word].code;
}
