import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import type { CaseFile } from "../contract/case-file.ts";
import { parseCase } from "../contract/parse-case.ts";
import { createEngine } from "./create-engine.ts";
import type { Engine } from "./engine.ts";

const read = (name: string): CaseFile => {
  const parsed = parseCase(readFileSync(`examples/${name}.json`, "utf8"));
  if (!parsed.ok) throw new Error(name);
  return parsed.value;
};
let engine: Engine;
beforeAll(async () => {
  engine = await createEngine();
}, 30_000);

describe("what the day taught", () => {
  const before = read("look-only");

  it("says nothing moved where nothing was seen", () => {
    expect(engine.learned(before, before)).toEqual({ strengths: [], from: [] });
  });

  it("names the day's evidence and says for each strength which way it moved, as its ranges do", () => {
    const item = { activity: "bridge", rung: "full-lift", done: "changed" } as const;
    const { strengths, from } = engine.learned(before, {
      ...before,
      previous: [{ date: "2026-03-16", items: [{ ...item, gaveWay: { joint: "hip", side: "weak" } }] }],
    });
    expect(from.some((words) => /weak hip gave way/.test(words))).toBe(true);
    expect(strengths.length).toBeGreaterThan(0);
    expect(strengths.length).toBeLessThanOrEqual(5);
    for (const { sentence, figure, before: old, after: now } of strengths) {
      expect(figure).toMatch(/^Now .* tenths of normal strength, before .* tenths\.$/);
      if (/is stronger/.test(sentence)) expect(now.middle).toBeGreaterThan(old.middle);
      else if (/is weaker/.test(sentence)) expect(now.middle).toBeLessThan(old.middle);
      else expect(now.high - now.low).toBeLessThan(old.high - old.low);
    }
  });

  it("follows a full grade of the weak knee, and says where a grade is set aside for what was seen", () => {
    // Grade 5 holds against full resistance, grade 1 moves nothing: the usual manual grades.
    const graded = (grade: "5" | "1") =>
      engine.learned(before, { ...before, strength: { left: { kneeExtension: grade } } });
    const knee = graded("5").strengths.find(({ name }) => name === "weak knee, straightening");
    expect(knee?.sentence).toBe("The weak knee is stronger in straightening than believed.");
    // She was seen to stand up: a knee that moves nothing cannot be believed.
    expect(graded("1").from[0]).toMatch(/graded 1 \(set aside/);
  });
});
