import { describe, expect, it } from "vitest";
import { BIBLIOGRAPHY } from "../../sources/bibliography.ts";
import type { GatheredOrders } from "../precautions/orders.ts";
import { judgeDuring } from "./judge-during.ts";
import { judgeVitals } from "./judge-vitals.ts";
import type { VitalSigns } from "./limit.ts";
import { NEAR_LIMITS, START_LIMITS } from "./start-limits.data.ts";
import { KEPT_FIGURES, NEAR_CHANGES, STOP_CHANGES, STOP_LIMITS } from "./stop-limits.data.ts";

const STEADY: VitalSigns = {
  systolic: 138,
  diastolic: 82,
  heartRate: 76,
  oxygenSaturation: 96,
  respiratoryRate: 16,
  temperatureC: 36.8,
};
const NO_ORDERS: GatheredOrders = { legPercentMax: {} };
const rulesOf = (vitals: VitalSigns, orders = NO_ORDERS): readonly string[] =>
  judgeVitals({ ...STEADY, ...vitals }, orders).hold?.because.map(({ source, limit }) => `${source}: ${limit}`) ?? [];

describe("whether the session may start", () => {
  it("starts with steady measurements and nothing to say", () => {
    expect(judgeVitals(STEADY)).toEqual({ hold: null, cautions: [] });
  });

  // Each figure as printed in the source named in its answer; the last one inside and the first one outside.
  it.each<[string, VitalSigns, VitalSigns, string]>([
    [
      "systolic below 110, BMC Neurology 14:163 table 1",
      { systolic: 110 },
      { systolic: 109 },
      "avert-criteria-2014: below 110 mmHg",
    ],
    [
      "systolic 180 or more, Heart Failure Reviews 2023 table 1",
      { systolic: 179 },
      { systolic: 180 },
      "heart-failure-rev-2023: at or above 180 mmHg",
    ],
    [
      "diastolic 110 or more, Heart Failure Reviews 2023 table 1",
      { diastolic: 109 },
      { diastolic: 110 },
      "heart-failure-rev-2023: at or above 110 mmHg",
    ],
    [
      "heart rate below 40, BMC Neurology 14:163 table 1",
      { heartRate: 40 },
      { heartRate: 39 },
      "avert-criteria-2014: below 40 1/min",
    ],
    [
      "heart rate above 110, BMC Neurology 14:163 table 1",
      { heartRate: 110 },
      { heartRate: 111 },
      "avert-criteria-2014: above 110 1/min",
    ],
    [
      "saturation below 92, BMC Neurology 14:163 table 1",
      { oxygenSaturation: 92 },
      { oxygenSaturation: 91 },
      "avert-criteria-2014: below 92 %",
    ],
    [
      "temperature above 38.5, BMC Neurology 14:163 table 1",
      { temperatureC: 38.5 },
      { temperatureC: 38.6 },
      "avert-criteria-2014: above 38.5 degrees Celsius",
    ],
    [
      "breathing above 30, Critical Care 18:658",
      { respiratoryRate: 30 },
      { respiratoryRate: 31 },
      "hodgson-2014: above 30 1/min",
    ],
  ])("%s", (_name, inside, outside, printed) => {
    expect(rulesOf(inside)).toEqual([]);
    expect(rulesOf(outside)).toEqual([printed]);
  });

  it("prints the measured value, the limit, the source and what to do", () => {
    const hold = judgeVitals({ ...STEADY, systolic: 196, oxygenSaturation: 88 }).hold;
    expect(hold?.because.map(({ measured }) => measured)).toEqual(["196 mmHg", "88 %"]);
    expect(hold?.whatToDo).toContain("measure again");
  });

  it("lets the physician's order stand in for the printed limit, both ways", () => {
    expect(rulesOf({ systolic: 161 }, { ...NO_ORDERS, systolicMax: 160 })).toEqual([
      "physician-orders: above 160 mmHg, by the physician's order",
    ]);
    expect(rulesOf({ systolic: 160 }, { ...NO_ORDERS, systolicMax: 160 })).toEqual([]);
    expect(rulesOf({ systolic: 195 }, { ...NO_ORDERS, systolicMax: 200 })).toEqual([]);
    expect(rulesOf({ systolic: 98 }, { ...NO_ORDERS, systolicMin: 95 })).toEqual([]);
    expect(rulesOf({ heartRate: 96 }, { ...NO_ORDERS, heartRateMax: 95 })).toHaveLength(1);
    expect(rulesOf({ oxygenSaturation: 89 }, { ...NO_ORDERS, oxygenSaturationMin: 88 })).toEqual([]);
  });

  it("never starts at a pressure at which an exercise stops, whatever the order (Heart Failure Reviews 2023 table 2)", () => {
    expect(rulesOf({ systolic: 250 }, { ...NO_ORDERS, systolicMax: 300 })).toEqual([
      "heart-failure-rev-2023: at or above 250 mmHg",
    ]);
    expect(rulesOf({ diastolic: 115 }, { ...NO_ORDERS, diastolicMax: 130 })).toEqual([
      "heart-failure-rev-2023: at or above 115 mmHg",
    ]);
  });

  it("warns near a limit, once it is not a hold (second phase of AVERT; American Thoracic Society 2002)", () => {
    const near = judgeVitals({ ...STEADY, systolic: 115, diastolic: 101, heartRate: 104 });
    expect(near.hold).toBeNull();
    expect(near.cautions.map(({ source }) => source)).toEqual([
      "avert-phase-two",
      "ats-walk-test-2002",
      "avert-phase-two",
    ]);
    expect(judgeVitals({ ...STEADY, systolic: 105 }).cautions).toEqual([]);
  });

  it("says what was not measured, and holds for nothing it does not know", () => {
    const none = judgeVitals({});
    expect(none.hold).toBeNull();
    expect(none.cautions.map(({ text }) => text)).toEqual([
      "Not measured yet: blood pressure, heart rate, oxygen saturation. Measure before the start.",
    ]);
  });

  // Common practice, no source, and proposals of this project.
  it("minds a meal, pain, sugar and the beta blocker", () => {
    const text = (vitals: VitalSigns, ...medicines: ("insulin" | "betaBlocker")[]): string =>
      judgeVitals({ ...STEADY, ...vitals }, NO_ORDERS, medicines)
        .cautions.map((caution) => caution.text)
        .join(" ");
    expect(text({ lastMealMinutesAgo: 59 })).toContain("59 minutes ago");
    expect(text({ lastMealMinutesAgo: 60 })).toBe("");
    expect(text({ lastMealMinutesAgo: 300 }, "insulin")).toContain("measure glucose");
    expect(text({ painNow: 7 })).toContain("Pain 7 of 10");
    expect(text({}, "betaBlocker")).toContain("does not show the effort");
  });
});

describe("whether an exercise or a rise goes on", () => {
  const during = (now: VitalSigns, between: "effort" | "comingUp" | "rest", orders = NO_ORDERS): readonly string[] =>
    judgeDuring({ ...STEADY, ...now }, STEADY, between, orders).stop?.because.map(({ source }) => source) ?? [];

  it.each<[string, VitalSigns, VitalSigns, string]>([
    [
      "systolic 250 or more, Heart Failure Reviews 2023 table 2",
      { systolic: 249 },
      { systolic: 250 },
      "heart-failure-rev-2023",
    ],
    [
      "diastolic 115 or more, Heart Failure Reviews 2023 table 2",
      { diastolic: 114 },
      { diastolic: 115 },
      "heart-failure-rev-2023",
    ],
    ["saturation below 90, Critical Care 18:658", { oxygenSaturation: 90 }, { oxygenSaturation: 89 }, "hodgson-2014"],
    [
      "fall of more than 10 with effort, Trials 14:91 table 6",
      { systolic: 128 },
      { systolic: 127 },
      "exercise-stop-trial-table",
    ],
    [
      "more than 30 above rest, inpatient cardiac lists (secondary summary)",
      { heartRate: 106 },
      { heartRate: 107 },
      "cardiac-inpatient-phase",
    ],
  ])("effort: %s", (_name, inside, outside, source) => {
    expect(during(inside, "effort")).toEqual([]);
    expect(during(outside, "effort")).toEqual([source]);
  });

  it("coming up: a fall of 20 systolic or 10 diastolic stops (Freeman 2011 consensus)", () => {
    expect(during({ systolic: 119 }, "comingUp")).toEqual([]);
    expect(during({ systolic: 118 }, "comingUp")).toEqual(["orthostatic-statpearls"]);
    expect(during({ diastolic: 73 }, "comingUp")).toEqual([]);
    expect(during({ diastolic: 72 }, "comingUp")).toEqual(["orthostatic-statpearls"]);
  });

  it("coming up: a fall of 15 or 7 is worth waiting for (Shaw 2017)", () => {
    const cautions = (now: VitalSigns): readonly string[] =>
      judgeDuring({ ...STEADY, ...now }, STEADY, "comingUp").cautions.map(({ source }) => source);
    expect(cautions({ systolic: 124 })).toEqual([]);
    expect(cautions({ systolic: 123 })).toEqual(["shaw-2017"]);
    expect(cautions({ diastolic: 75 })).toEqual(["shaw-2017"]);
  });

  it("stops earlier under a lower order, and no later under a higher one", () => {
    expect(during({ systolic: 171 }, "rest", { ...NO_ORDERS, systolicMax: 170 })).toEqual(["physician-orders"]);
    expect(during({ systolic: 250 }, "rest", { ...NO_ORDERS, systolicMax: 280 })).toEqual(["heart-failure-rev-2023"]);
  });
});

describe("the table of limits", () => {
  const used = [...START_LIMITS, ...NEAR_LIMITS, ...STOP_LIMITS, ...STOP_CHANGES, ...NEAR_CHANGES];

  it("names a work for each figure and rests none on memory", () => {
    for (const { source, seen } of used) {
      expect(Object.keys(BIBLIOGRAPHY)).toContain(source);
      expect(["read", "quoted"]).toContain(seen);
      expect(BIBLIOGRAPHY[source].seen).not.toBe("memory");
    }
  });

  it("names no side of a body", () => {
    expect(JSON.stringify([used, KEPT_FIGURES])).not.toMatch(/\b(left|right)\b/i);
  });

  it("keeps the figure from memory out of use, with the reason", () => {
    const recalled = KEPT_FIGURES.filter(({ seen }) => seen === "memory");
    expect(recalled).toHaveLength(1);
    for (const { notUsedBecause } of KEPT_FIGURES) expect(notUsedBecause.length).toBeGreaterThan(5);
  });
});
