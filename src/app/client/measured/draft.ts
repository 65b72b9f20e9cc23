/** A case file while it is typed: not yet known to be one. */
export type Draft = { readonly [key: string]: unknown };

export function isDraft(value: unknown): value is Draft {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

export function readAt(draft: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>((value, key) => (isDraft(value) ? value[key] : undefined), draft);
}

/** The draft with one value changed; undefined takes the field away, and groups left empty with it. */
export function writeAt(draft: Draft, path: readonly string[], value: unknown): Draft {
  const [key, ...rest] = path;
  if (key === undefined) return draft;
  const inner = draft[key];
  const next = rest.length === 0 ? value : writeAt(isDraft(inner) ? inner : {}, rest, value);
  const { [key]: _before, ...others } = draft;
  const empty = next === undefined || (rest.length > 0 && isDraft(next) && Object.keys(next).length === 0);
  return empty ? others : { ...others, [key]: next };
}

/** "3-", "38 Nm" or "120 N at 30 cm" as the case file has it; anything else stays as typed and is refused there. */
export function readStrength(text: string): unknown {
  const plain = text.trim().replace("−", "-").replace(",", ".");
  if (plain === "") return undefined;
  const moment = /^([\d.]+)\s*n\s*m$/i.exec(plain);
  if (moment !== null) return { newtonMetres: Number(moment[1]) };
  const force = /^([\d.]+)\s*n\s*(?:at\s*)?([\d.]+)\s*cm$/i.exec(plain);
  if (force !== null) return { newtons: Number(force[1]), leverCm: Number(force[2]) };
  return plain;
}

export function sayStrength(value: unknown): string {
  if (typeof value === "string") return value;
  if (!isDraft(value)) return "";
  if (typeof value.newtonMetres === "number") return `${value.newtonMetres} Nm`;
  return `${String(value.newtons)} N at ${String(value.leverCm)} cm`;
}

/** A number as typed; what is no number stays text and is refused by the case file. */
export function readNumber(text: string): unknown {
  const plain = text.trim().replace(",", ".").replace("−", "-");
  if (plain === "") return undefined;
  const value = Number(plain);
  return Number.isFinite(value) ? value : plain;
}
