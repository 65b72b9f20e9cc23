import { describe, expect, it } from "vitest";
import { BIBLIOGRAPHY } from "../../sources/bibliography.ts";
import type { DoseRow } from "./dose.ts";
import { type DoseKind, doseFor } from "./dose-for.ts";
import { DOSES } from "./doses.data.ts";
import { AEROBIC, EXERTION } from "./exertion.data.ts";
import { estimateHeartRateMax, heartRateAtReserve, trainingHeartRates } from "./heart-rate.ts";
import { PROGRESSION_EVIDENCE, PROGRESSION_RULES } from "./progression.data.ts";
import { judgeLadderStep, type LoggedDay } from "./progression.ts";
import { TRIAL_DOSES } from "./trial-doses.data.ts";

const KINDS = Object.keys(DOSES).filter((key): key is DoseKind => key in DOSES);
const GOOD: LoggedDay = { done: "asPlanned", faults: [] };

describe("doses", () => {
  it("gives three sets of five for sit to stand (Barreca 2004, as tabled in Cochrane CD007232)", () => {
    expect(doseFor("standUp", 0.4)).toEqual({ kind: "repetitions", sets: 3, repetitions: 5, restSeconds: 60 });
  });

  it("gives 10 to 15 repetitions in one to three sets for strength and 10 to 30 seconds for stretching (Billinger 2014)", () => {
    expect(DOSES.strengthen).toMatchObject({ sets: [1, 3], repetitions: [10, 15], source: "billinger-2014" });
    expect(DOSES.stretch).toMatchObject({ holdSeconds: [10, 30], source: "billinger-2014" });
  });

  it("asks 11 to 14 of 20 for training, 40 to 70 percent of the reserve, 3 to 5 days (Billinger 2014)", () => {
    expect(EXERTION.training).toMatchObject({ from: 11, to: 14, scale: "6-20", source: "billinger-2014" });
    expect(AEROBIC.heartRateReserve).toMatchObject({ from: 0.4, to: 0.7 });
    expect(AEROBIC.daysPerWeek).toMatchObject({ from: 3, to: 5 });
  });

  it.each(KINDS)("%s stays inside its range, less and with longer rest as it gets harder", (kind) => {
    const row: DoseRow = DOSES[kind];
    const doses = [0.1, 0.5, 0.51, 0.7, 0.85, 0.86, 1.4].map((effort) => doseFor(kind, effort));
    for (const dose of doses) {
      expect(dose.sets).toBeGreaterThanOrEqual(row.sets[0]);
      expect(dose.sets).toBeLessThanOrEqual(row.sets[1]);
      expect(dose.repetitions !== undefined || dose.holdSeconds !== undefined).toBe(true);
    }
    for (const [index, dose] of doses.slice(1).entries()) {
      const easier = doses[index];
      expect(dose.restSeconds).toBeGreaterThanOrEqual(easier?.restSeconds ?? 0);
      expect(dose.repetitions ?? 0).toBeLessThanOrEqual(easier?.repetitions ?? 0);
    }
    expect(Object.keys(BIBLIOGRAPHY)).toContain(row.source);
  });

  it("shortens a hold to what a condition allows", () => {
    expect(doseFor("prop", 0.3, { holdSecondsMax: 5 }).holdSeconds).toBe(5);
    expect(doseFor("prop", 0.3, { holdSecondsMax: null }).holdSeconds).toBe(30);
  });

  it("lists published doses inside the printed envelope: 15 to 60 minutes, 2 to 6 days, 2 to 8 weeks", () => {
    for (const trial of TRIAL_DOSES) {
      if (trial.minutes !== null) expect(trial.minutes).toBeGreaterThanOrEqual(15);
      if (trial.minutes !== null) expect(trial.minutes).toBeLessThanOrEqual(60);
      if (trial.perWeek !== null && trial.weeks !== null && trial.totalHours !== null && trial.minutes !== null)
        expect((trial.minutes * trial.perWeek * trial.weeks) / 60, trial.source).toBeCloseTo(trial.totalHours, 1);
    }
  });
});

it("names no side of a body in any dose text", () => {
  expect(JSON.stringify([DOSES, EXERTION, TRIAL_DOSES, PROGRESSION_RULES, PROGRESSION_EVIDENCE])).not.toMatch(
    /\b(left|right)\b/i,
  );
});

// Common practice, no source: two sets of about eight with at most one fault, two days running; down at once.
describe("one rung up or down", () => {
  it("goes up after two good days running, not after one", () => {
    expect(judgeLadderStep([GOOD]).step).toBe("stay");
    expect(judgeLadderStep([GOOD, GOOD]).step).toBe("up");
    expect(judgeLadderStep([GOOD, { ...GOOD, done: "notDone" }, GOOD]).step).toBe("stay");
  });

  it("allows one fault a day and not two", () => {
    const fault = { stepDown: false };
    expect(judgeLadderStep([GOOD, { ...GOOD, faults: [fault] }]).step).toBe("up");
    expect(judgeLadderStep([GOOD, { ...GOOD, faults: [fault, fault] }]).step).toBe("stay");
  });

  it("counts seven repetitions as short of eight, unless fewer were planned", () => {
    const short: LoggedDay = { done: "changed", sets: 2, repetitions: 7, faults: [] };
    expect(judgeLadderStep([short, short]).step).toBe("stay");
    expect(judgeLadderStep([short, short], { sets: 3, repetitions: 5 }).step).toBe("up");
    expect(
      judgeLadderStep([
        { ...short, repetitions: 8 },
        { ...short, repetitions: 8 },
      ]).step,
    ).toBe("up");
  });

  it.each<[string, Partial<LoggedDay>]>([
    ["two poor in a row", { poorInARow: 2 }],
    ["a joint gave way", { gaveWay: true }],
    ["pain", { pain: 4 }],
    ["the stepping-down fault twice", { faults: [{ stepDown: true }, { stepDown: true }] }],
    ["very hard", { exertion: 7 }],
  ])("goes down after %s, however good the days before", (_name, day) => {
    expect(judgeLadderStep([GOOD, GOOD, { ...GOOD, ...day }]).step).toBe("down");
  });

  it("stays where nothing was done before", () => {
    expect(judgeLadderStep([])).toEqual({ step: "stay", because: "Not done before.", source: "common-practice" });
  });
});

describe("heart rate", () => {
  // Published worked examples: newsinfo.iu.edu 3041 (180, 80, 0.6 gives 140); academic.whitworth.edu hs433 (200, 50, 0.667 gives 150).
  it("finds the target on the reserve", () => {
    expect(heartRateAtReserve(80, 180, 0.6)).toBeCloseTo(140, 9);
    expect(heartRateAtReserve(50, 200, 0.667)).toBeCloseTo(150, 0);
  });

  it("estimates the highest rate (Tanaka 2001: 208 - 0.7 age; Brawner 2004: 164 - 0.7 age)", () => {
    expect(estimateHeartRateMax(70)).toBeCloseTo(159, 9);
    expect(estimateHeartRateMax(70, "onBetaBlocker")).toBeCloseTo(115, 9);
  });

  it("gives a band, or none where the rate is no guide", () => {
    const [low, high] = trainingHeartRates(70, 70, true) ?? [0, 0];
    expect(low).toBeCloseTo(105.6, 9);
    expect(high).toBeCloseTo(132.3, 9);
    expect(trainingHeartRates(70, 70, false)).toBeNull();
    expect(trainingHeartRates(160, 70, true)).toBeNull();
  });
});
