import { CASE_FILE, type CaseFile } from "./case-file.ts";
import { type Fault, listFaults, sayFound } from "./faults.ts";
import { listWarnings } from "./warnings.ts";

/** Largest case file that is read [characters]. */
export const LARGEST_CASE = 5_000_000;

export type ParsedCase =
  | { readonly ok: true; readonly value: CaseFile; readonly warnings: readonly Fault[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Reads one person's findings from the text of a case file.
 *
 * @returns the case with what is worth a second look, or every fault of the file at once.
 */
export function parseCase(text: string): ParsedCase {
  if (text.length > LARGEST_CASE)
    return refuse(
      `${Math.ceil(text.length / 1_000_000)} million characters`,
      `at most ${LARGEST_CASE / 1_000_000} million`,
    );
  const json = text.startsWith("\uFEFF") ? text.slice(1) : text;
  if (json.trim() === "") return refuse("nothing", "one case as a JSON object; start from examples/case-p.json");
  const parsed = readJson(json);
  return parsed.ok ? validateCase(parsed.value) : refuse(parsed.found, "text in JSON form");
}

/** The same for a value that is already read from JSON. */
export function validateCase(value: unknown): ParsedCase {
  if (typeof value !== "object" || value === null || Array.isArray(value))
    return refuse(sayFound(value), "one case as a JSON object");
  const result = CASE_FILE.safeParse(value);
  if (!result.success) return { ok: false, faults: listFaults(result.error.issues, value) };
  return { ok: true, value: result.data, warnings: listWarnings(result.data) };
}

function refuse(found: string, expected: string): ParsedCase {
  return { ok: false, faults: [{ path: "the file", found, expected }] };
}

type ReadJson = { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly found: string };

/** Reads JSON; where it is broken, says in which line, without the parser's own words. */
export function readJson(text: string): ReadJson {
  try {
    return { ok: true, value: JSON.parse(text) };
  } catch (error) {
    return { ok: false, found: `broken JSON${sayPlace(text, error)}` };
  }
}

function sayPlace(text: string, error: unknown): string {
  const position = error instanceof Error ? /position (\d+)/.exec(error.message)?.[1] : undefined;
  if (position === undefined)
    return error instanceof Error && /end of|Unterminated/i.test(error.message) ? ", which ends too early" : "";
  if (Number(position) >= text.trimEnd().length) return ", which ends too early";
  const before = text.slice(0, Number(position)).split("\n");
  return ` in line ${before.length}, at character ${(before[before.length - 1] ?? "").length + 1}`;
}
