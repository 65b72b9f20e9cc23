const SWAPPED: Readonly<Record<string, string>> = { left: "right", right: "left", Left: "Right", Right: "Left" };

/** Left and right of a body wherever they stand in a word: "left", "leg.left", "forwardLeft"; not in "upright" or "cleft". */
export const mirrorWords = (text: string): string =>
  text.replace(/\b(?:[Ll]eft|[Rr]ight)\b|(?<=[a-z])(?:Left|Right)(?![a-z])/g, (word) => SWAPPED[word] ?? word);

/**
 * The same answer about the mirrored person: every side word exchanged, and y, which grows to the left, negated. Of someone
 * with no weaker side y follows the rung, not the body: it stays.
 */
export function mirrorAnswer(value: unknown, hasWeakSide = true): unknown {
  if (typeof value === "string") return mirrorWords(value);
  if (Array.isArray(value)) return value.map((entry) => mirrorAnswer(entry, hasWeakSide));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, entry]) => [
      mirrorWords(key),
      key === "y" && typeof entry === "number" && hasWeakSide ? 0 - entry : mirrorAnswer(entry, hasWeakSide),
    ]),
  );
}

/** Every number in an answer that is not finite, by its path. */
export function numbersAstray(value: unknown, path = ""): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [path];
  if (typeof value === "string") return /\bNaN\b|\bInfinity\b|\bundefined\b/.test(value) ? [`${path}: ${value}`] : [];
  if (typeof value !== "object" || value === null) return value === undefined ? [] : [];
  return Object.entries(value).flatMap(([key, entry]) => numbersAstray(entry, `${path}.${key}`));
}
