import { describe, expect, it } from "vitest";
import { BIBLIOGRAPHY } from "../src/sources/bibliography.ts";

const HOW_SEEN = ["read", "quoted", "memory", "common-practice", "derived", "judgement"];

const modules = import.meta.glob<Record<string, unknown>>(
  ["../src/**/*.data.ts", "!../src/sources/**", "!../src/app/**"],
  { eager: true },
);

interface Row {
  readonly place: string;
  readonly row: Readonly<Record<string, unknown>>;
}

/** Every object inside a table that names a source or says how it was seen. */
function rowsIn(value: unknown, place: string): Row[] {
  if (Array.isArray(value)) return value.flatMap((item, index) => rowsIn(item, `${place}[${index}]`));
  if (typeof value !== "object" || value === null) return [];
  const row: Record<string, unknown> = { ...value };
  const here = "source" in row || "sources" in row || "seen" in row ? [{ place, row }] : [];
  return [...here, ...Object.entries(row).flatMap(([key, item]) => rowsIn(item, `${place}.${key}`))];
}

const rows = Object.entries(modules).flatMap(([file, module]) => rowsIn(module, file.replace("../", "")));

function sourcesNamed({ row }: Row): string[] {
  const list = Array.isArray(row.sources) ? row.sources : [];
  return [row.source, ...list].filter((source) => typeof source === "string");
}

/** Tables whose figures hold somebody back from harm. */
const SAFETY = [
  "src/practice/vital-signs/start-limits.data.ts",
  "src/practice/vital-signs/stop-limits.data.ts",
  "src/practice/handling/limits.data.ts",
  "src/practice/precautions/",
];

const isFigure = ({ row }: Row): boolean => typeof row.value === "number" || typeof row.most === "number";

describe("the bibliography", () => {
  it("finds tables and rows to judge", () => {
    console.log(`${Object.keys(modules).length} tables, ${rows.length} rows with a source or a flag`);
    expect(rows.length).toBeGreaterThan(200);
  });

  it("holds every source a table names", () => {
    const unknown = rows.flatMap((row) => sourcesNamed(row).map((source) => ({ source, place: row.place })));
    expect(unknown.filter(({ source }) => !(source in BIBLIOGRAPHY))).toEqual([]);
  });

  it("says of every work how it was seen, and where it is to be found", () => {
    for (const [id, work] of Object.entries(BIBLIOGRAPHY)) {
      expect(HOW_SEEN, id).toContain(work.seen);
      expect(work.title.length, id).toBeGreaterThan(5);
      expect(work.where.length, id).toBeGreaterThan(2);
    }
  });

  it("gives identifiers in lower case with hyphens", () => {
    expect(Object.keys(BIBLIOGRAPHY).filter((id) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id))).toEqual([]);
  });
});

describe("published rows", () => {
  it("use the six words for how a value was seen, and no other", () => {
    const flags = rows.flatMap(({ place, row }) => (typeof row.seen === "string" ? [{ place, seen: row.seen }] : []));
    expect(flags.filter(({ seen }) => !HOW_SEEN.includes(seen))).toEqual([]);
  });

  it("carry unit and place beside a value with a source", () => {
    const bare = rows.filter(({ row }) => typeof row.value === "number" && "seen" in row && !("unit" in row));
    expect(bare.map(({ place }) => place)).toEqual([]);
  });
});

describe("safety limits", () => {
  const safety = rows.filter(({ place }) => SAFETY.some((table) => place.startsWith(table)));

  it("are there", () => {
    expect(safety.filter(isFigure).length).toBeGreaterThan(10);
  });

  it("never rest on memory, neither of the row nor of its source", () => {
    const works: Readonly<Record<string, { readonly seen: string }>> = BIBLIOGRAPHY;
    const fromMemory = safety.filter(
      (row) =>
        isFigure(row) && (row.row.seen === "memory" || sourcesNamed(row).some((id) => works[id]?.seen === "memory")),
    );
    expect(fromMemory.map(({ place }) => place)).toEqual([]);
  });
});
