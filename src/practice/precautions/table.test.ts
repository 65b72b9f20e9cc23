import { describe, expect, it } from "vitest";
import { BIBLIOGRAPHY } from "../../sources/bibliography.ts";
import { DEMAND_IDS, POSITION_IDS } from "../codes.ts";
import { cautionsFor } from "./cautions.ts";
import { PRECAUTION_IDS } from "./identifiers.data.ts";
import { judgeDemands } from "./judge-demands.ts";
import { MEDICINE_IDS, MEDICINES } from "./medicines.data.ts";
import type { PrecautionId, PrecautionRow } from "./precaution.ts";
import { PRECAUTIONS } from "./table.ts";

const rows: readonly (readonly [PrecautionId, PrecautionRow])[] = PRECAUTION_IDS.map((id) => [id, PRECAUTIONS[id]]);

/** Every object of a table, at any depth. */
function objectsIn(value: unknown): readonly object[] {
  if (typeof value !== "object" || value === null) return [];
  return [value, ...Object.values(value).flatMap(objectsIn)];
}
function textsIn(value: unknown): readonly string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

describe("the table of precautions", () => {
  it("accepts the 43 identifiers and has a row for each", () => {
    expect(PRECAUTION_IDS).toHaveLength(43);
    expect(new Set(PRECAUTION_IDS).size).toBe(43);
    expect(Object.keys(PRECAUTIONS).sort()).toEqual([...PRECAUTION_IDS].sort());
  });

  it.each(rows)("%s is judged in every position with every demand", (code, row) => {
    for (const position of POSITION_IDS) {
      const verdicts = judgeDemands([{ code }], DEMAND_IDS, position);
      for (const verdict of verdicts) expect(verdict.because.length).toBeGreaterThan(10);
    }
    expect(row.title.length).toBeGreaterThan(3);
  });

  it("holds at least twenty conditions in full depth, each named one acting by demand", () => {
    const named: readonly PrecautionId[] = [
      "hemi_shoulder_pain",
      "hemi_shoulder_subluxation_weight",
      "thr_posterior",
      "thr_anterior",
      "sternotomy",
      "weight_bearing_order",
      "osteoporosis",
      "uncontrolled_htn_isometric",
      "orthostatic_hypotension",
      "feeding_tube",
      "tracheostomy",
      "lines_catheters",
      "skin_breakdown",
      "seizure",
      "pusher",
      "neglect",
      "impulsivity",
      "aphasia",
      "pregnancy",
      "knee_arthritis_skin",
    ];
    for (const id of named) {
      expect(PRECAUTIONS[id].depth, id).toBe("full");
      expect(
        PRECAUTIONS[id].lines.some((line) => line.demands !== undefined),
        id,
      ).toBe(true);
    }
    expect(rows.filter(([, row]) => row.depth === "full").length).toBeGreaterThanOrEqual(20);
  });

  it("names a work of the bibliography in every row and line", () => {
    const sourced = objectsIn([PRECAUTIONS, MEDICINES]).filter(
      (row) => "because" in row || ("text" in row && "seen" in row),
    );
    expect(sourced.length).toBeGreaterThan(150);
    for (const row of sourced) {
      const source = "source" in row ? row.source : undefined;
      expect(Object.keys(BIBLIOGRAPHY), JSON.stringify(row)).toContain(source);
    }
  });

  it("rests no bar, hold or clearance on memory, and leaves every judgement for the site to change", () => {
    for (const [, row] of rows) {
      for (const line of [...row.lines, ...row.sites]) {
        expect(line.seen).not.toBe("memory");
        if (line.seen === "judgement" || line.seen === "common-practice") expect(line.editable).toBe(true);
      }
      if (row.hold !== null) expect(["read", "quoted"]).toContain(row.hold.seen);
    }
  });

  it("gives every line something to act on", () => {
    for (const [id, row] of rows)
      for (const line of row.lines)
        expect(
          (line.demands?.length ?? 0) + (line.positions?.length ?? 0) + (line.everywhere === true ? 1 : 0),
          `${id}: ${line.because}`,
        ).toBeGreaterThan(0);
  });

  it("speaks of weak and strong only, without capitals for a side", () => {
    for (const text of textsIn([PRECAUTIONS, MEDICINES])) {
      expect(text).not.toMatch(/\b(left|right)\b/i);
      expect(text).not.toMatch(/\b(WEAK|STRONG|optimal|capacity|margin|solver)\b/);
    }
  });

  it("says in the cautions which condition acts by position only", () => {
    for (const [code, row] of rows) {
      const texts = cautionsFor([{ code }]).map(({ text }) => text);
      expect(
        texts.some((text) => text.includes("acts by position only")),
        code,
      ).toBe(row.depth === "positions-only");
    }
  });

  it("knows ten medicines, and that a beta blocker hides the effort from the heart rate", () => {
    expect(MEDICINE_IDS).toHaveLength(10);
    expect(MEDICINE_IDS.filter((id) => !MEDICINES[id].heartRateGuides)).toEqual(["betaBlocker"]);
  });
});
