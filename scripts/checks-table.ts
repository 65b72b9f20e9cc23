import { existsSync, readdirSync, readFileSync } from "node:fs";

export interface OutsideCheck {
  readonly folder: string;
  readonly title: string;
  readonly source: string;
  readonly rows: number;
}

const START = "<!-- checks:start -->";
const END = "<!-- checks:end -->";

/** Rows of expected.json: the file itself where it is a list, else all lists it holds. */
function countRows(expected: unknown): number {
  if (Array.isArray(expected)) return expected.length;
  if (typeof expected !== "object" || expected === null) return 0;
  return Object.values(expected).reduce((sum: number, value) => sum + (Array.isArray(value) ? value.length : 0), 0);
}

/** The first heading of source.md is the check's title, the first paragraph names the source. */
function readCheck(checksFolder: string, folder: string): OutsideCheck {
  const text = readFileSync(`${checksFolder}${folder}/source.md`, "utf8");
  const title = /^# (.+)$/m.exec(text)?.[1] ?? folder;
  const paragraph = text.split(/\n\s*\n/).find((part) => part.trim() !== "" && !part.startsWith("#")) ?? "";
  const expectedFile = `${checksFolder}${folder}/expected.json`;
  const expected: unknown = existsSync(expectedFile) ? JSON.parse(readFileSync(expectedFile, "utf8")) : [];
  return { folder, title, source: paragraph.replace(/\s+/g, " ").trim(), rows: countRows(expected) };
}

/** Every folder of checks/ that names its source. */
export function readChecks(root: string): OutsideCheck[] {
  const checksFolder = `${root}checks/`;
  if (!existsSync(checksFolder)) return [];
  return readdirSync(checksFolder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && existsSync(`${checksFolder}${entry.name}/source.md`))
    .map((entry) => readCheck(checksFolder, entry.name))
    .sort((a, b) => a.folder.localeCompare(b.folder));
}

export function checksTable(checks: readonly OutsideCheck[], linkPrefix: string): string {
  const cell = (text: string) => text.replaceAll("|", "\\|");
  return [
    "| check | outside source | rows |",
    "|---|---|---|",
    ...checks.map(
      ({ folder, title, source, rows }) =>
        `| [${cell(title)}](${linkPrefix}${folder}/source.md) | ${cell(source)} | ${rows > 0 ? rows : "by count"} |`,
    ),
  ].join("\n");
}

/** The text with the part between the markers replaced. */
export function withTable(text: string, table: string): string {
  const start = text.indexOf(START);
  const end = text.indexOf(END);
  if (start < 0 || end < start) return text;
  return `${text.slice(0, start + START.length)}\n${table}\n${text.slice(end)}`;
}

export function checksReadme(checks: readonly OutsideCheck[]): string {
  return [
    "# Checks against the outside",
    "",
    "Each folder holds one outside source: `source.md` says what it is, where it was found and what the allowance rests",
    "on; `expected.json` holds what the source prints; `check.test.ts` compares, and prints how close and how many even",
    "when it passes. This page is written by `npm run tables`.",
    "",
    checksTable(checks, ""),
    "",
  ].join("\n");
}
