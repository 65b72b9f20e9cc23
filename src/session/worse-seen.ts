import { HELP_WORDS, type HelpWord } from "./events.ts";
import type { ItemRecord } from "./state.ts";

/** Where one item got worse while it was done, as far as its sets say. */
export type WorseSeen = "withinSet" | "laterSets";

/** Repetitions fewer, or points of exertion more, from one set to a later one that count as worse (judgement). */
const FEWER = 2;
const HARDER = 2;
/** A set broken off after this share of its repetitions got worse on the way; before it, it was not begun well. */
const HALF = 0.5;

/**
 * Whether an item got worse from an earlier set to a later one, or within a set that was begun well and not finished.
 * Nothing is concluded: the record says where it got worse, the person model what that means.
 * @returns null where the sets do not say so, or a joint gave way (which is said by itself)
 */
export function worseSeen({ planned, sets, exceptions }: ItemRecord): WorseSeen | null {
  if (exceptions.some(({ gaveWay }) => gaveWay !== null)) return null;
  const asked = planned?.repetitions ?? null;
  const repetitions = sets.map((set) => set.repetitions ?? (set.asPlanned ? asked : null));
  const later = sets.some((set, k) =>
    sets.slice(0, k).some((before, j) => {
      const fewer = (repetitions[j] ?? 0) - (repetitions[k] ?? Number.POSITIVE_INFINITY) >= FEWER;
      const harder = set.exertion !== null && before.exertion !== null && set.exertion - before.exertion >= HARDER;
      const helped = set.help !== null && before.help !== null && rank(set.help) > rank(before.help);
      return fewer || harder || helped;
    }),
  );
  if (later) return "laterSets";
  if (asked === null) return null;
  const brokenOff = [
    ...repetitions,
    ...exceptions.flatMap(({ what, value }) => (what === "fewer" && value !== null ? [value] : [])),
  ].some((done) => done !== null && asked - done >= FEWER && done >= HALF * asked);
  return brokenOff ? "withinSet" : null;
}

const rank = (word: HelpWord): number => HELP_WORDS.indexOf(word);
