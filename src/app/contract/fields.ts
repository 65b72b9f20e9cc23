import { z } from "zod";
import { findNearest } from "./nearest.ts";

/** Codes listed in full in a fault; longer lists name the nearest one and where the list is. */
const LISTED_AT_MOST = 24;

/** One of a list of codes. A fault lists them and names the nearest. */
export function codes<const T extends readonly [string, ...string[]]>(what: string, known: T) {
  return z.enum(known, { error: ({ input }) => sayCodes(what, known, input) }).meta({ description: what });
}

export function sayCodes(what: string, known: readonly string[], input: unknown): string {
  const nearest = typeof input === "string" ? findNearest(input, known) : null;
  const hint = nearest === null ? "" : `; nearest: "${nearest}"`;
  if (known.length > LISTED_AT_MOST)
    return `${what}: one of the ${known.length} codes of schema/case.schema.json${hint}`;
  return `${what}: one of ${known.map((code) => `"${code}"`).join(", ")}${hint}`;
}

export interface NumberWords {
  readonly what: string;
  readonly min: number;
  readonly max: number;
  readonly unit?: string;
  /** A sentence for a value that betrays another unit. */
  readonly hint?: (value: number) => string | null;
}

/** A number between two bounds that no real finding passes. */
export function measured(words: NumberWords) {
  const error = ({ input }: { input?: unknown }) => sayNumber("a number", words, input);
  return z
    .number({ error })
    .min(words.min, { error })
    .max(words.max, { error })
    .meta({ description: describe(words) });
}

/** A whole number between two bounds. */
export function counted(words: NumberWords) {
  const error = ({ input }: { input?: unknown }) => sayNumber("a whole number", words, input);
  const whole = z.number({ error }).int({ error }).min(words.min, { error }).max(words.max, { error });
  return whole.meta({ description: describe(words) });
}

function describe({ what, unit }: NumberWords): string {
  return unit === undefined ? what : `${what} [${unit.replace(/[()]/g, "")}]`;
}

function sayNumber(kind: string, { what, min, max, unit, hint }: NumberWords, input: unknown): string {
  const tail = typeof input === "number" ? (hint?.(input) ?? null) : null;
  return `${what}: ${kind} from ${min} to ${max}${unit === undefined ? "" : ` ${unit}`}${tail === null ? "" : `; ${tail}`}`;
}

export function yesOrNo(what: string) {
  return z.boolean({ error: `${what}: true or false` });
}

/** Free words, not empty. */
export function words(what: string, longest: number) {
  const error = `${what}: text of 1 to ${longest} characters`;
  return z.string({ error }).min(1, { error }).max(longest, { error });
}

/** A list, with the most entries it may have. */
export function listOf<T extends z.ZodType>(what: string, entry: T, most: number) {
  const error = `${what}: a list of at most ${most}`;
  return z.array(entry, { error }).max(most, { error });
}

/** A group of named fields; an unknown name is refused, and the message carries the known names for the fault. */
export function group<T extends z.core.$ZodLooseShape>(what: string, shape: T) {
  const known = Object.keys(shape);
  return z.strictObject(shape, {
    error: ({ code }) =>
      code === "unrecognized_keys"
        ? known.join(" ")
        : `${what}: an object with ${known.slice(0, 8).join(", ")}${known.length > 8 ? " …" : ""}`,
  });
}

/** One optional field of the same kind for every name of a list. */
export function eachOptional<const K extends readonly string[], T extends z.ZodType>(names: K, field: T) {
  const shape = Object.fromEntries(names.map((name) => [name, z.exactOptional(field)]));
  return shape as { [P in K[number]]: z.ZodExactOptional<T> };
}

/** Where a field may be absent: never null, never undefined. */
export const maybe = z.exactOptional;

export const ISO_DATE = z.iso.date({ error: "date: year-month-day, such as 2026-03-16" });
