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
const BRIDGE = { activity: "bridge", rung: "strong-foot-up" };
const HIP = "grade.weak.hipExtension";
let engine: Engine;
beforeAll(async () => {
  engine = await createEngine();
}, 30_000);

describe("a finding moved to see what follows", () => {
  const file = read("case-p");

  it("offers the muscles that work in the rung and the tasks of its ladder, each with what was found", () => {
    const choices = engine.whatIfChoices(file, BRIDGE);
    expect(choices.map(({ id }) => id)).toEqual(expect.arrayContaining([HIP, "look.bridge"]));
    for (const { values, found, foundWords } of choices) {
      expect(values.length).toBeGreaterThanOrEqual(5);
      if (found !== null) {
        expect(values.map(({ id }) => id)).toContain(found);
        expect(foundWords).toMatch(/^(found|seen): /);
      }
    }
  });

  it("leaves the findings as they were", () => {
    const before = JSON.stringify(file);
    for (const value of ["0", "3", "5"]) engine.weigh(file, BRIDGE, { finding: HIP, value });
    expect(JSON.stringify(file)).toBe(before);
    expect(engine.moveFinding(file, { finding: HIP, value: "6" })).toBe(file);
    expect(engine.moveFinding(file, { finding: "grade.weak.toes", value: "3" })).toBe(file);
  });

  it("says what the whole engine says of a person found so", () => {
    for (const value of ["1", "4"]) {
      const moved = engine.moveFinding(file, { finding: HIP, value });
      const weighed = engine.weigh(file, BRIDGE, { finding: HIP, value });
      expect(weighed).toEqual(engine.weigh(moved, BRIDGE, null));
      const asks = engine.sheet(moved, BRIDGE).asks.map(({ sentence }) => sentence);
      expect(asks).toContain(weighed.effort?.sentence);
      const plan = engine.plan(moved, 45);
      const out = plan.excluded.find(({ activity, rung }) => activity === "bridge" && rung === BRIDGE.rung);
      expect(weighed.eligible).toBe(out === undefined);
    }
  });

  it("says where a moved grade stands against what was seen and is set aside", () => {
    // She was seen to lift the seat: a hip that moves nothing (grade 0 or 1) cannot be believed.
    const seen = { ...read("look-only"), look: [{ task: "bridge" as const, result: "aloneWell" as const }] };
    const weigh = (value: string) => engine.weigh(seen, BRIDGE, { finding: HIP, value });
    expect(weigh("0").setAside).toMatch(/stands against what was seen/);
    expect(weigh("4").setAside).toBeNull();
    expect(engine.weigh(seen, BRIDGE, null).setAside).toBeNull();
  });

  it("asks less of a stronger hip: the effort falls from grade to grade", () => {
    // What a joint is asked does not depend on its strength, so its share falls as it grows: common practice, no source.
    const { look: _look, strength: _strength, ...bare } = file;
    const middles = ["2", "3", "4", "5"].map(
      (value) => engine.weigh(bare, BRIDGE, { finding: HIP, value }).effort?.peak.middle ?? 9,
    );
    for (const [index, middle] of middles.entries())
      expect(middle).toBeLessThanOrEqual((middles[index - 1] ?? 9) + 0.02);
    expect(middles.at(-1)).toBeLessThan(middles[0] ?? 0);
  });

  it("puts a task of the look in its order and forgets where it gave way once it goes well", () => {
    const bare: CaseFile = {
      ...file,
      look: [
        { task: "standUp", result: "withHelp", gaveWay: { joint: "knee", side: "weak" } },
        { task: "step", result: "cannot" },
      ],
    };
    expect(engine.moveFinding(bare, { finding: "look.bridge", value: "alone" }).look?.map(({ task }) => task)).toEqual([
      "bridge",
      "standUp",
      "step",
    ]);
    expect(engine.moveFinding(bare, { finding: "look.standUp", value: "aloneWell" }).look?.[0]).toEqual({
      task: "standUp",
      result: "aloneWell",
    });
  });
});
