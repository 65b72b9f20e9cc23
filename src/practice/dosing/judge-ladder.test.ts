import { describe, expect, it } from "vitest";
import { BIBLIOGRAPHY } from "../../sources/bibliography.ts";
import { type Absence, judgeLadder, type LadderDay } from "./judge-ladder.ts";
import { LADDER_FIGURES, LADDER_RULES, PLATEAU, PLATEAU_KEPT_BY, SETBACK } from "./ladder-rules.data.ts";
import { nameTrend, type TrendDay } from "./ladder-trend.ts";

const GOOD: LadderDay = { done: "asPlanned", faults: [] };
const HERE: Absence = { missedInARow: 0, daysAway: 2 };
const PLANNED = { sets: 2, repetitions: 8 };
const judge = (days: readonly LadderDay[], absence = HERE) => judgeLadder(days, PLANNED, absence);

describe("the ladder over days", () => {
  // Attributed to Graves and Baechle, healthy strength training: goal 3 x 10, last sets of 12 and 12 go up, 12 and 11 do not.
  it("goes up two repetitions above the goal in two sessions, and not for one above", () => {
    const above = (repetitions: number): LadderDay => ({ done: "changed", repetitions, faults: [] });
    const ten = { sets: 3, repetitions: 10 };
    expect(judgeLadder([above(12), above(12)], ten, HERE)).toMatchObject({ step: "up", rule: "upTwoForTwo" });
    expect(judgeLadder([above(12), above(11)], ten, HERE).rule).toBe("stayNotYet");
  });

  // Common practice, no source: two good days running up, one stays.
  it("goes up after two good days, with the rule in words", () => {
    expect(judge([GOOD]).rule).toBe("stayOneGood");
    const up = judge([GOOD, GOOD]);
    expect(up).toMatchObject({ step: "up", rule: "upTwoDays", source: "common-practice" });
    expect(up.because).toBe(LADDER_RULES.upTwoDays.rule);
  });

  // One thing at a time, help first (a proposal of this project).
  it("takes help away before it goes up a rung; a touch is no help", () => {
    const helped: LadderDay = { ...GOOD, help: "minimal" };
    expect(judge([helped, helped])).toMatchObject({ step: "stay", rule: "stayLessHelp" });
    expect(judge([helped, { ...GOOD, help: "touching" }]).rule).toBe("stayLessHelp");
    expect(
      judge([
        { ...GOOD, help: "touching" },
        { ...GOOD, help: "touching" },
      ]).step,
    ).toBe("up");
  });

  it("goes down for more help two days running, not for one day", () => {
    const day = (help: NonNullable<LadderDay["help"]>): LadderDay => ({ done: "changed", faults: [], help });
    expect(judge([day("touching"), day("moderate")]).rule).toBe("stayNotYet");
    expect(judge([day("touching"), day("minimal"), day("moderate")])).toMatchObject({
      step: "down",
      rule: "downMoreHelp",
    });
  });

  // Common practice, no source: what hurts or has not recovered the next day was too much.
  it.each([{ pain: 4 }, { stillTired: true }])("goes down after a bad next day: %j", (nextDay) => {
    expect(judge([GOOD, { ...GOOD, nextDay }])).toMatchObject({ step: "down", rule: "downNextDay" });
    expect(judge([GOOD, { ...GOOD, nextDay: { pain: 3, stillTired: false } }]).step).toBe("up");
  });

  it("goes back a rung after three missed sessions, or as many days, whatever went before", () => {
    expect(judge([GOOD, GOOD], { missedInARow: 2, daysAway: 7 }).step).toBe("up");
    expect(judge([GOOD, GOOD], { missedInARow: 3, daysAway: null }).rule).toBe("backAfterAbsence");
    expect(judge([GOOD, GOOD], { missedInARow: 0, daysAway: 8 })).toMatchObject({
      step: "down",
      rule: "backAfterAbsence",
      because: "8 days without a session, as long as three missed.",
    });
  });

  it("lets what went wrong come before what went well and before an absence", () => {
    const away = { missedInARow: 5, daysAway: 30 };
    expect(judge([GOOD, { ...GOOD, gaveWay: true }], away).rule).toBe("downGaveWay");
    expect(judge([GOOD, { ...GOOD, pain: 5 }]).rule).toBe("downPain");
    expect(judge([GOOD, { ...GOOD, exertion: 8 }]).rule).toBe("downTooHard");
    expect(judge([]).rule).toBe("stayNew");
  });

  it("never goes up for a worse day: each thing that went wrong alone keeps it or takes it down", () => {
    const order = { down: 0, stay: 1, up: 2 };
    const worse: Partial<LadderDay>[] = [
      { faults: [{ stepDown: false }, { stepDown: false }] },
      { pain: 4 },
      { exertion: 6 },
      { gaveWay: true },
      { help: "maximal" },
      { done: "changed" },
      { nextDay: { pain: 6 } },
    ];
    for (const day of worse)
      expect(order[judge([GOOD, { ...GOOD, ...day }]).step], JSON.stringify(day)).toBeLessThan(order.up);
  });
});

describe("plateaus and setbacks", () => {
  const day = (rung: number, more: Partial<TrendDay> = {}): TrendDay => ({
    done: "asPlanned",
    faults: [],
    faultIds: [],
    rung,
    ...more,
  });

  it("names a plateau after four sessions on one rung, and what keeps it there", () => {
    const snaps = { faultIds: ["snaps"], faults: [{ stepDown: false }] };
    const three = [day(1), day(2, snaps), day(2, snaps), day(2)];
    expect(nameTrend(three, true)).toBeNull();
    const trend = nameTrend([...three, day(2)], true);
    expect(trend).toMatchObject({ what: "plateau", tryThis: PLATEAU_KEPT_BY.fault.tryThis });
    expect(trend?.words).toContain("4 sessions");
    expect(nameTrend([...three, day(2)], false)).toBeNull();
  });

  it.each([
    ["pain", { pain: 2 }],
    ["tired", { exertion: 6 }],
    ["help", { help: "minimal" }],
    ["short", { done: "changed" }],
    ["nothing", {}],
  ] as const)("tells %s", (kept, more) => {
    const days = Array.from({ length: PLATEAU.days }, () => day(0, more));
    expect(nameTrend(days, true)?.tryThis).toBe(PLATEAU_KEPT_BY[kept].tryThis);
  });

  it("names a setback two rungs below the best or down twice running, not one rung down once", () => {
    expect(nameTrend([day(3), day(2)], false)).toBeNull();
    expect(nameTrend([day(3), day(2), day(1)], true)?.what).toBe("setback");
    expect(nameTrend([day(3), day(1), day(1)], true)).toMatchObject({ what: "setback", tryThis: SETBACK.tryThis });
  });
});

it("every rule has its source and says what is done; no text names a side of a body", () => {
  for (const row of [...Object.values(LADDER_RULES), ...Object.values(PLATEAU_KEPT_BY), SETBACK])
    expect(Object.keys(BIBLIOGRAPHY)).toContain(row.source);
  for (const row of Object.values(LADDER_RULES)) expect(row.whatToDo.length).toBeGreaterThan(8);
  expect(JSON.stringify([LADDER_RULES, PLATEAU_KEPT_BY, SETBACK, LADDER_FIGURES])).not.toMatch(/\b(left|right)\b/i);
});
