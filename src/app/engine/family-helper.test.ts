import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { CaseFile } from "../contract/case-file.ts";
import { parseCase } from "../contract/parse-case.ts";
import { cautionsOfFamily, notASecondHelper } from "./family-helper.ts";
import { readFindings } from "./read-findings.ts";

const parsed = parseCase(readFileSync("examples/case-p.json", "utf8"));
if (!parsed.ok) throw new Error("case-p");
const file: CaseFile = parsed.value;
const withFamily = (count: number, family: NonNullable<NonNullable<CaseFile["helpers"]>["family"]>): CaseFile => ({
  ...file,
  helpers: { count, canKneel: true, family },
});

describe("a helper from the family at the mat", () => {
  it("counts as a second pair of hands unless the back is troubled or it is a child", () => {
    const counts = (family: Parameters<typeof withFamily>[1]) =>
      readFindings(withFamily(2, family)).findings.helpers.count;
    expect(counts({ ageYears: 40 })).toBe(2);
    expect(counts({ ageYears: 40, backTrouble: true })).toBe(1);
    expect(counts({ ageYears: 12 })).toBe(1);
    expect(readFindings(withFamily(1, { backTrouble: true })).findings.helpers.count).toBe(1);
  });

  it("is said at the head of the plan where it does not count", () => {
    expect(cautionsOfFamily(withFamily(2, { backTrouble: true })).map(({ text }) => text)).toEqual([
      "The helper from the family has a troubled back and is not counted as a second pair of hands today.",
    ]);
    expect(cautionsOfFamily(withFamily(2, {}))).toEqual([]);
    expect(notASecondHelper(withFamily(1, { ageYears: 10 }))).toBeNull();
  });
});
