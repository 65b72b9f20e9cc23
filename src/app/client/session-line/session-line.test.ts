import { describe, expect, it } from "vitest";
import type { PlanAnswer } from "../../contract/plan-answer.ts";
import { MAT, PER_METRE, tracePath, xAt, yAt } from "./line-path.ts";
import { stretchesOf } from "./stretches.ts";

const item = (
  activity: string,
  position: string,
  minutes: number,
  dose: PlanAnswer["items"][number]["dose"],
): PlanAnswer["items"][number] => ({
  activity,
  rung: "first",
  position,
  limbFree: null,
  workingSide: "both",
  effort: { peak: { low: 0, middle: 0, high: 0 }, limiting: { joint: "hip", direction: "extension", side: null } },
  margin: { least: { metres: 0, towards: "back" } },
  guard: null,
  help: null,
  dose,
  minutes,
  purpose: "",
  because: [],
  sources: [],
});
const way = (from: string, to: string) => ({ id: `${from}-${to}`, from, to, minutes: 1, steps: [] });

const PLAN: Pick<PlanAnswer, "items" | "transitions" | "timeline"> = {
  items: [
    item("bridge", "hook-lying", 5, { sets: 2, repetitions: 8, restSeconds: 60 }),
    item("reach", "short-sitting", 4, { sets: 2, holdSeconds: 20, restSeconds: 60 }),
  ],
  transitions: [way("short-sitting", "hook-lying"), way("hook-lying", "short-sitting"), way("short-sitting", "supine")],
  timeline: [
    { fromMinute: 0, toMinute: 6, position: "short-sitting", centreHeightMetres: 0.2 },
    { fromMinute: 6, toMinute: 7, position: "hook-lying", centreHeightMetres: 0.1 },
    { fromMinute: 7, toMinute: 12, position: "hook-lying", centreHeightMetres: 0.3 },
    { fromMinute: 12, toMinute: 13, position: "short-sitting", centreHeightMetres: 0.2 },
    { fromMinute: 13, toMinute: 17, position: "short-sitting", centreHeightMetres: 0.25 },
    { fromMinute: 17, toMinute: 18, position: "supine", centreHeightMetres: 0.1 },
    { fromMinute: 18, toMinute: 22, position: "supine", centreHeightMetres: 0.1 },
  ],
};
const FULL: PlanAnswer = {
  version: { product: "0", knowledge: "k" },
  hold: null,
  wayBack: null,
  helperMoves: [],
  available: [],
  excluded: [],
  minutes: 22,
  workingMinutes: 9,
  solver: { status: "", gap: 0 },
  changesSinceLast: [],
  takeNext: [],
  contradictions: [],
  assumed: [],
  cautions: [],
  ...PLAN,
};
const SCALE = { width: 1000, minutes: 22, matTop: 110, inset: 0 };

describe("the session line", () => {
  it("takes the time line apart: arriving, every item with its ways, the way back, with no minute lost", () => {
    const stretches = stretchesOf(FULL);
    expect(stretches.map(({ kind, item: number }) => [kind, number])).toEqual([
      ["arrive", null],
      ["item", 0],
      ["item", 1],
      ["back", null],
    ]);
    expect(stretches.map(({ fromMinute, toMinute }) => [fromMinute, toMinute])).toEqual([
      [0, 6],
      [6, 12],
      [12, 17],
      [17, 22],
    ]);
    expect(stretches.map(({ ways }) => ways.map(({ id }) => id))).toEqual([
      [],
      ["short-sitting-hook-lying"],
      ["hook-lying-short-sitting"],
      ["short-sitting-supine"],
    ]);
    expect(stretchesOf({ ...FULL, items: [], timeline: [] })).toEqual([]);
  });

  it("draws a bump for every repetition and a flat for every hold", () => {
    const stretches = stretchesOf(FULL);
    const [, bridge, reach] = stretches;
    if (bridge === undefined || reach === undefined) throw new Error("two items were planned");
    const top = yAt(0.3, SCALE);
    const peaks = tracePath([bridge], SCALE, 0.1)
      .split("C")
      .filter((piece) => piece.trim().endsWith(` ${top}`));
    expect(peaks).toHaveLength(2 * 8);
    const holds = tracePath([reach], SCALE, 0.2)
      .split("L")
      .filter((piece) => piece.startsWith(`${""}`) && piece.includes(` ${yAt(0.25, SCALE)}C`));
    expect(holds).toHaveLength(2);
  });

  it("keeps one scale for height and body, and begins and ends low", () => {
    expect(yAt(0.2, SCALE) - yAt(0.7, SCALE)).toBeCloseTo(0.5 * PER_METRE, 1);
    expect(MAT * PER_METRE).toBe(46);
    expect(xAt(22, SCALE)).toBe(1000);
    const path = tracePath(stretchesOf(FULL), SCALE);
    expect(path).toMatch(new RegExp(`^M0 ${yAt(0.2, SCALE)}`));
    expect(path).toMatch(new RegExp(`L1000 ${yAt(0.1, SCALE)}$`));
    expect(path).not.toContain("NaN");
  });
});
