import type { CaseFile } from "../../contract/case-file.ts";

const kept = new Map<string, CaseFile>();

/** The case reduced to the body itself, the same object for the same body: a tap on a result draws no figure anew. */
export function bodyOnly({ person, weakSide, daysSinceOnset }: CaseFile): CaseFile {
  const key = JSON.stringify([person, weakSide]);
  const there = kept.get(key);
  if (there !== undefined) return there;
  const body: CaseFile = { person, weakSide, daysSinceOnset };
  kept.set(key, body);
  return body;
}
