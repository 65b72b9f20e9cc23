import { readFileSync } from "node:fs";
import { beforeAll, expect, it } from "vitest";
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
const item = { activity: "bridge", rung: "full-lift", done: "asPlanned", help: "alone" } as const;
const rise = { activity: "sit-to-stand", rung: "middle-seat", done: "asPlanned", help: "touching" } as const;
const worse = { done: "changed", help: "maximal" } as const;

it("plans nothing after a sudden worsening and says whom to call; goes on once somebody has looked", () => {
  const file = read("look-only");
  const last = {
    date: "2026-03-15",
    items: [
      { ...item, ...worse },
      { ...rise, ...worse },
    ],
  };
  const previous = [{ date: "2026-03-14", items: [item, rise] }, last];
  const held = engine.plan({ ...file, previous }, 45);
  expect(held.items).toEqual([]);
  expect(held.hold?.because.map(({ rule }) => rule)).toEqual(["suddenWorsening:severalLadders"]);
  expect(held.hold?.whatToDo).toMatch(/stroke call.*physician/);
  expect(
    engine.learned({ ...file, previous: previous.slice(0, 1) }, { ...file, previous }).from.length,
  ).toBeGreaterThan(0);
  const checked = engine.check({ ...file, previous: [previous[0] ?? last, { ...last, checkedBy: "ward physician" }] });
  expect(checked.ok).toBe(true);
  const again = engine.plan({ ...file, previous: [previous[0] ?? last, { ...last, checkedBy: "ward physician" }] }, 45);
  expect(again.hold).toBeNull();
  expect(again.items.length).toBeGreaterThan(0);
}, 60_000);

it("says first to look again at the weak hip where a grade of nothing stands against a bridge done alone and well", () => {
  const seen = read("look-only");
  const look = [
    { task: "bridge", result: "aloneWell" } as const,
    { task: "bridgeLiftWeakFoot", result: "alone" } as const,
  ];
  const side = seen.weakSide === "right" ? "right" : "left";
  const { takeNext, contradictions } = engine.plan({ ...seen, look, strength: { [side]: { hipExtension: "0" } } }, 45);
  expect(contradictions.length).toBeGreaterThan(0);
  expect(takeNext[0]?.finding).toBe("Your findings and the mat disagree: look again at the weak hip.");
  expect(takeNext[0]?.wouldChange).toMatch(/hip extension graded 0, against bridges: alone and well/);
  const agree = engine.plan({ ...seen, look, strength: { [side]: { hipExtension: "4" } } }, 45).takeNext;
  expect(agree.some(({ finding }) => /disagree/.test(finding))).toBe(false);
}, 60_000);
