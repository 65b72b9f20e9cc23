const SWAPPED: Readonly<Record<string, string>> = { left: "right", right: "left", Left: "Right", Right: "Left" };

/** The same file of the mirrored person: every left and right exchanged, in names, codes and free words. */
export function mirrorCase<T>(value: T): T;
export function mirrorCase(value: unknown): unknown {
  if (typeof value === "string") return value.replace(/\b(left|right)\b/gi, (word) => SWAPPED[word] ?? word);
  if (Array.isArray(value)) return value.map((entry) => mirrorCase(entry));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, entry]) => [SWAPPED[key] ?? key, mirrorCase(entry)]));
}
