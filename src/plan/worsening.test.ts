import { describe, expect, it } from "vitest";
import { BIBLIOGRAPHY } from "../sources/bibliography.ts";
import { WORSENING_CALL, WORSENING_RULES } from "../practice/dosing/worsening.data.ts";
import type { PreviousItem, PreviousSession } from "./findings.ts";
import { judgeWorsening } from "./worsening.ts";

const item = (activity: string, rung: string, more: Partial<PreviousItem> = {}): PreviousItem => ({
  activity,
  rung,
  done: "asPlanned",
  sets: null,
  repetitions: null,
  help: "alone",
  faults: [],
  pain: null,
  exertion: null,
  gaveWay: null,
  ...more,
});
const session = (...items: PreviousItem[]): PreviousSession => ({ date: null, items, stopped: null });
const BRIDGE = ["bridge", "full-lift"] as const;
const STAND = ["sit-to-stand", "middle-seat"] as const;
const before = session(item(...BRIDGE), item(...STAND, { help: "touching" }));
const helped = { help: "moderate", done: "changed" } as const;
const gave = { gaveWay: { joint: "knee", side: "weak", how: "folds" } } as const;
const judge = (...previous: PreviousSession[]) => judgeWorsening({ previous });

// Common practice, no source: worse on one thing is a bad day, on several it is a worse person until somebody has looked.
describe("sudden worsening between sessions", () => {
  it("stops where two ladders that stood by themselves now need two steps more help, or give way", () => {
    const hold = judge(before, session(item(...BRIDGE, helped), item(...STAND, gave)));
    expect(hold?.because).toHaveLength(1);
    expect(hold?.because[0]?.measured).toMatch(/bridge: moderate help, before alone; .*: the weak knee gave way/);
    expect(hold?.whatToDo).toBe(WORSENING_CALL);
  });

  it.each([
    ["one ladder is a bad day", [before, session(item(...BRIDGE, helped), item(...STAND))]],
    ["a touch more is no worsening", [before, session(item(...BRIDGE, { help: "touching" }), item(...STAND))]],
    ["a first session has nothing before it", [session(item(...BRIDGE, helped), item(...STAND, gave))]],
    ["help that was there before is no news", [session(item(...BRIDGE, helped)), session(item(...BRIDGE, helped))]],
    ["what was not done says nothing", [before, session(item(...BRIDGE, { done: "notDone" }), item(...STAND))]],
    [
      "help on a higher rung is no worsening",
      [
        session(item("bridge", "half-lift"), item("sit-to-stand", "high-seat-hands-on-knees")),
        session(item("bridge", "weak-foot-up", helped), item("sit-to-stand", "low-seat", helped)),
      ],
    ],
  ])("goes on: %s", (_why, previous) => {
    expect(judge(...previous)).toBeNull();
  });

  // Signs of a new stroke, stop at once: public teaching (be-fast).
  it("stops after a session stopped for a new sign, and after no other stop", () => {
    expect(judge({ ...before, stopped: { because: "newSign" } })?.because[0]?.source).toBe("be-fast");
    expect(judge({ ...before, stopped: { because: "tired" } })).toBeNull();
  });

  it("goes on once somebody has looked, until it happens again", () => {
    const worse = session(item(...BRIDGE, helped), item(...STAND, gave));
    expect(judge(before, { ...worse, checkedBy: "the physician on the ward" })).toBeNull();
    expect(judge(before, { ...worse, checkedBy: "the physician on the ward" }, before, worse)).not.toBeNull();
  });

  it("says whom to call, with its sources", () => {
    expect(WORSENING_CALL).toMatch(/stroke call.*emergency number.*physician.*therapist/);
    for (const { source } of Object.values(WORSENING_RULES)) expect(Object.keys(BIBLIOGRAPHY)).toContain(source);
  });
});
