import { readdirSync, readFileSync } from "node:fs";
import type { CaseFile } from "../../src/app/contract/case-file.ts";
import { parseCase } from "../../src/app/contract/parse-case.ts";

const folder = new URL("../../examples/", import.meta.url);

/** Names of the invented cases, without their ending. */
export const EXAMPLES: readonly string[] = readdirSync(folder)
  .filter((name) => name.endsWith(".json"))
  .map((name) => name.replace(/\.json$/, ""))
  .sort();

export function readExample(name: string): CaseFile {
  const read = parseCase(readFileSync(new URL(`${name}.json`, folder), "utf8"));
  if (!read.ok) throw new Error(`${name}: ${JSON.stringify(read.faults)}`);
  return read.value;
}
