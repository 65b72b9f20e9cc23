import { describe, expect, it } from "vitest";
import { cautionsFor, heartRateGuides, stopSignsFor } from "./cautions.ts";
import { guardSignsOf, helpersFor, judgeSite, longestHoldFor, wordsFor } from "./effects.ts";
import { judgeHolds } from "./holds.ts";
import { gatherOrders } from "./orders.ts";

const LONG_AGO = { daysSinceOnset: 12, stroke: true };

describe("conditions that hold the session", () => {
  it("holds for a suspected clot until it is cleared (hillegass-2016)", () => {
    const hold = judgeHolds([{ code: "dvt_suspected", note: "weak calf swollen" }], LONG_AGO);
    expect(hold?.because).toEqual([
      expect.objectContaining({ rule: "suspected clot", measured: "weak calf swollen", source: "hillegass-2016" }),
    ]);
    expect(judgeHolds([{ code: "dvt_suspected", orders: { cleared: true } }], LONG_AGO)).toBeNull();
  });

  it("holds the first day after a stroke, ticked or not, until it is cleared (winstein-2016)", () => {
    expect(judgeHolds([], { daysSinceOnset: 0, stroke: true })?.because[0]?.source).toBe("winstein-2016");
    expect(judgeHolds([{ code: "acute_24h" }], LONG_AGO)).not.toBeNull();
    expect(
      judgeHolds([{ code: "acute_24h", orders: { cleared: true } }], { daysSinceOnset: 0, stroke: true }),
    ).toBeNull();
    expect(judgeHolds([], { daysSinceOnset: 1, stroke: true })).toBeNull();
    expect(judgeHolds([], { daysSinceOnset: 0, stroke: false })).toBeNull();
    expect(judgeHolds([], { daysSinceOnset: null, stroke: true })).toBeNull();
  });
});

describe("what a condition changes besides rungs", () => {
  // Common practice, no source.
  it("puts pushing before neglect before fainting for the guard", () => {
    const signs = guardSignsOf([{ code: "orthostatic_hypotension" }, { code: "neglect" }, { code: "pusher" }]).map(
      ({ sign, side }) => [sign, side],
    );
    expect(signs).toEqual([
      ["pushing", "weak"],
      ["neglect", "weak"],
      ["fainting", "all"],
    ]);
  });

  it("asks for a second helper where a seizure or pushing would need one", () => {
    expect(helpersFor([{ code: "seizure" }], ["kneePressure"], "tall-kneeling")?.count).toBe(2);
    expect(helpersFor([{ code: "pusher" }], ["standing"], "standing-in-bars")?.count).toBe(2);
    expect(helpersFor([{ code: "pusher" }], [], "supine")).toBeNull();
  });

  it("shows before it speaks with aphasia", () => {
    expect(wordsFor([{ code: "aphasia" }])[0]?.text).toMatch(/^Show it first/);
  });

  it("keeps hands off a healing breastbone (sternal-precautions-2016) and never pulls the weak arm (canadian-stroke-shoulder-2019)", () => {
    expect(judgeSite([{ code: "sternotomy" }], "upperChest.weak")[0]?.verdict).toBe("bar");
    expect(judgeSite([{ code: "hemi_shoulder_protect" }], "forearmUnder.weak")[0]?.because).toContain("never pulled");
    expect(judgeSite([{ code: "hemi_shoulder_protect" }], "forearmUnder.strong")).toEqual([]);
  });

  it("shortens holds under unsettled pressure to five seconds (eye-pressure-breath-holding)", () => {
    expect(longestHoldFor([{ code: "uncontrolled_htn_isometric" }])).toBe(5);
    expect(longestHoldFor([{ code: "neglect" }])).toBeNull();
  });

  it("prints each caution once, and that orders prevail once", () => {
    const texts = cautionsFor([{ code: "tkr" }, { code: "dysphagia_reflux" }], ["anticoagulant", "betaBlocker"]).map(
      ({ text }) => text,
    );
    expect(new Set(texts).size).toBe(texts.length);
    expect(texts.filter((text) => text.includes("orders and the local protocol prevail"))).toHaveLength(1);
    expect(cautionsFor([])).toEqual([]);
  });

  it("adds the stop signs of the condition and knows whose heart rate guides", () => {
    expect(stopSignsFor([{ code: "dvt_suspected" }])[0]?.source).toBe("vte-update-2022");
    expect(heartRateGuides(["diuretic"])).toBe(true);
    expect(heartRateGuides(["diuretic", "betaBlocker"])).toBe(false);
  });

  it("takes the stricter of two orders, a share for each leg", () => {
    expect(
      gatherOrders([
        { orders: { systolicMax: 170, systolicMin: 100, weightBearing: { leg: "weak", percent: 50 } } },
        { orders: { systolicMax: 160, systolicMin: 105, weightBearing: { leg: "weak", percent: 20 } } },
        { orders: { weightBearing: { leg: "strong", percent: 0 } } },
        {},
      ]),
    ).toEqual({ systolicMax: 160, systolicMin: 105, legPercentMax: { weak: 20, strong: 0 } });
  });
});
