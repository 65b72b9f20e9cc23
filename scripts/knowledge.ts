import { ACTIVITIES, POSITIONS, TRANSITIONS } from "../src/practice/catalogue.ts";
import { PRECAUTIONS } from "../src/practice/precautions/table.ts";
import { BIBLIOGRAPHY } from "../src/sources/bibliography.ts";
import type { Seen } from "../src/sources/source.ts";
import { teachingSection } from "./knowledge-teaching.ts";

const SEEN: readonly Seen[] = ["read", "quoted", "derived", "common-practice", "judgement", "memory"];

const rowOf = (cells: readonly (string | number)[]): string => `| ${cells.join(" | ")} |`;

function table(heads: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  return [heads, heads.map(() => "---"), ...rows].map(rowOf).join("\n");
}

const countBy = (flags: readonly string[]): ((flag: string) => number) => {
  return (flag) => flags.filter((each) => each === flag).length;
};

/** Every "seen" inside a value, however deep. */
function flagsIn(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(flagsIn);
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, item]) =>
    key === "seen" && typeof item === "string" ? [item] : flagsIn(item),
  );
}

/** The page that says how much the product knows and what that rests on, counted from its tables. */
export function knowledgePage(): string {
  const rungs = ACTIVITIES.reduce((sum, activity) => sum + activity.rungs.length, 0);
  const works = countBy(Object.values(BIBLIOGRAPHY).map(({ seen }) => seen));
  const statements = countBy(flagsIn(PRECAUTIONS));
  const kept = POSITIONS.map((position) => {
    const own = ACTIVITIES.filter((activity) => activity.position === position.id);
    return [
      position.id,
      own.length,
      own.reduce((sum, activity) => sum + activity.rungs.length, 0),
      TRANSITIONS.filter(({ to }) => to === position.id).length,
      TRANSITIONS.filter(({ from }) => from === position.id).length,
    ];
  });
  return [
    "# What the product knows",
    "",
    "Counted from the tables by `npm run tables`; a test holds it current. How a value was seen is explained in",
    "[words.md](words.md).",
    "",
    table(
      ["what", "how many"],
      [
        ["positions", POSITIONS.length],
        ["activities", ACTIVITIES.length],
        ["rungs", rungs],
        ["transitions", TRANSITIONS.length],
        ["conditions with their precautions", Object.keys(PRECAUTIONS).length],
        ["works in the bibliography", Object.keys(BIBLIOGRAPHY).length],
      ],
    ),
    "",
    "## By position",
    "",
    table(["position", "activities", "rungs", "transitions into it", "transitions out of it"], kept),
    "",
    "## How it was seen",
    "",
    table(
      ["how seen", "works in the bibliography", "statements about precautions"],
      SEEN.map((flag) => [flag, works(flag), statements(flag)]),
    ),
    "",
    "## Activities",
    "",
    table(
      ["activity", "position", "rungs", "sources"],
      ACTIVITIES.map(({ id, position, rungs: own, sources }) => [id, position, own.length, sources.join(", ")]),
    ),
    "",
    teachingSection(ACTIVITIES),
  ].join("\n");
}
