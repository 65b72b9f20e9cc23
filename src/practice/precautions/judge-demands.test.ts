import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DEMAND_IDS, type DemandId, POSITION_IDS, type PositionId } from "../codes.ts";
import { PRECAUTION_IDS } from "./identifiers.data.ts";
import { judgeDemands, keepsOut } from "./judge-demands.ts";
import type { Orders } from "./orders.ts";
import { type PrecautionFinding, type PrecautionId, VERDICTS, type Verdict } from "./precaution.ts";
import { PRECAUTIONS } from "./table.ts";

function hardest(
  codes: readonly (PrecautionId | PrecautionFinding)[],
  demands: readonly DemandId[],
  position: PositionId,
  facts = {},
): Verdict | null {
  const findings = codes.map((code) => (typeof code === "string" ? { code } : code));
  return judgeDemands(findings, demands, position, facts)[0]?.verdict ?? null;
}
const withOrders = (code: PrecautionId, orders: Orders): PrecautionFinding => ({ code, orders });

describe("what a condition says about a rung", () => {
  it("says nothing without a condition", () => {
    expect(judgeDemands([], ["shoulderLoad"], "hands-and-knees")).toEqual([]);
  });

  // Common practice, no source: one row a condition.
  it.each<[PrecautionId, readonly DemandId[], PositionId, Verdict | null]>([
    ["hemi_shoulder_pain", ["shoulderLoad"], "prone-on-elbows", "bar"],
    ["hemi_shoulder_pain", ["shoulderLoad"], "forearms-on-table-standing", "change"],
    ["hemi_shoulder_pain", ["footPressure"], "hook-lying", null],
    ["hemi_shoulder_subluxation_weight", ["shoulderLoad"], "hands-and-knees", "change"],
    ["tracheostomy", ["pronePressure"], "prone", "clearFirst"],
    ["weight_bearing_order", ["standing"], "standing-in-bars", "clearFirst"],
    ["knee_arthritis_skin", ["kneePressure"], "hands-and-knees", "bar"],
    ["knee_arthritis_skin", ["kneePressure"], "tall-kneeling-at-bench", "change"],
    ["impulsivity", ["suddenStanding"], "short-sitting", "change"],
    ["aphasia", ["suddenStanding"], "short-sitting", "change"],
    ["seizure", ["standing"], "standing", "change"],
    ["head_down", ["headLow"], "prone-on-elbows", "bar"],
  ])("%s with %j in %s: %s", (code, demands, position, verdict) => {
    expect(hardest([code], demands, position)).toBe(verdict);
  });

  it("keeps a hip replaced from behind out of low sitting and off the crossed leg (hip-precautions-posterior-2019)", () => {
    expect(hardest(["thr_posterior"], ["hipAcrossMidline"], "hook-lying")).toBe("bar");
    expect(hardest(["thr_posterior"], [], "long-sitting")).toBe("bar");
    expect(hardest(["thr_posterior"], ["footPressure"], "hook-lying")).toBe("change");
  });

  it("asks before a hip replaced from the front goes straight to its end (hip-precautions-anterior)", () => {
    expect(hardest(["thr_anterior"], ["footPressure"], "hook-lying")).toBe("clearFirst");
    expect(hardest(["thr_anterior"], [], "half-kneeling-weak-forward")).toBe("clearFirst");
    expect(hardest(["thr_anterior"], [], "short-sitting")).toBeNull();
  });

  it("keeps a healing breastbone off the arms and the chest (sternal-precautions-2016)", () => {
    expect(hardest(["sternotomy"], ["wristLoad"], "plantigrade")).toBe("bar");
    expect(hardest(["sternotomy"], ["pronePressure"], "wedge-prone")).toBe("bar");
    expect(hardest(["sternotomy"], ["suddenStanding"], "short-sitting")).toBe("change");
  });

  it("keeps a brittle spine from its end and lets it bridge (osteoporosis-exercise-table)", () => {
    expect(hardest(["osteoporosis"], ["trunkEndRange"], "short-sitting")).toBe("bar");
    expect(keepsOut(judgeDemands([{ code: "osteoporosis" }], ["footPressure"], "hook-lying"))).toBe(false);
  });

  it("rules out lying on the front for unsettled breathing, cleared or not (awake-prone-table)", () => {
    expect(hardest(["prone_cardioresp"], ["pronePressure"], "prone")).toBe("bar");
    expect(hardest([withOrders("prone_cardioresp", { cleared: true })], ["pronePressure"], "prone")).toBe("bar");
  });

  it("reaches every rung with a suspected clot (hillegass-2016)", () => {
    expect(hardest(["dvt_suspected"], [], "supine")).toBe("bar");
  });

  it("leaves a rung alone whose load is known to be on the strong side", () => {
    const strongOnly = { sides: { wristLoad: ["strong"] } };
    expect(hardest(["hemi_shoulder_pain"], ["wristLoad"], "plantigrade", strongOnly)).toBeNull();
    expect(
      hardest(["hemi_shoulder_pain"], ["wristLoad"], "plantigrade", { sides: { wristLoad: ["weak", "strong"] } }),
    ).toBe("bar");
  });

  it("judges by the site's own table where there is one", () => {
    const site = { ...PRECAUTIONS, head_down: { ...PRECAUTIONS.head_down, lines: [] } };
    expect(judgeDemands([{ code: "head_down" }], ["headLow"], "supine", {}, site)).toEqual([]);
    expect(judgeDemands([{ code: "head_down" }], ["headLow"], "supine")).toHaveLength(1);
  });

  it("answers the same in whatever order conditions and demands are named", () => {
    const one = judgeDemands([{ code: "sternotomy" }, { code: "seizure" }], ["standing", "wristLoad"], "plantigrade");
    const other = judgeDemands([{ code: "seizure" }, { code: "sternotomy" }], ["wristLoad", "standing"], "plantigrade");
    expect(one.length).toBeGreaterThan(1);
    expect(one).toEqual(other);
  });
});

describe("any conditions together", () => {
  const codes = fc.uniqueArray(fc.constantFrom(...PRECAUTION_IDS), { maxLength: 6 });
  const demands = fc.uniqueArray(fc.constantFrom(...DEMAND_IDS), { maxLength: 5 });
  const position = fc.constantFrom(...POSITION_IDS);

  it("never say less when one more is named, and give the hardest first", () => {
    fc.assert(
      fc.property(codes, fc.constantFrom(...PRECAUTION_IDS), demands, position, (some, more, asked, where) => {
        const few = judgeDemands(
          some.map((code) => ({ code })),
          asked,
          where,
        );
        const many = judgeDemands(
          [...some, more].map((code) => ({ code })),
          asked,
          where,
        );
        expect(many).toEqual(expect.arrayContaining([...few]));
        const ranks = many.map(({ verdict }) => VERDICTS.indexOf(verdict));
        expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
      }),
      { numRuns: 300 },
    );
  });

  it("never keep out more once all are cleared", () => {
    fc.assert(
      fc.property(codes, demands, position, (some, asked, where) => {
        const before = judgeDemands(
          some.map((code) => ({ code })),
          asked,
          where,
        );
        const after = judgeDemands(
          some.map((code) => ({ code, orders: { cleared: true } })),
          asked,
          where,
        );
        if (keepsOut(after)) expect(keepsOut(before)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});

describe("orders beside a condition", () => {
  it("lifts what the physician has cleared, and says so", () => {
    expect(hardest([withOrders("feeding_tube", { cleared: true })], ["pronePressure"], "prone")).toBe("watch");
    const sternum = judgeDemands([withOrders("sternotomy", { cleared: true })], ["wristLoad"], "plantigrade");
    expect(keepsOut(sternum)).toBe(false);
    expect(sternum.some(({ because }) => because.startsWith("Cleared by the physician"))).toBe(true);
  });

  it("does not lift pain", () => {
    expect(hardest([withOrders("hemi_shoulder_pain", { cleared: true })], ["shoulderLoad"], "prone-on-elbows")).toBe(
      "bar",
    );
  });

  it("judges the hip by the ordered angle: the angle itself is allowed, one more degree is not", () => {
    const ordered = [withOrders("thr_posterior", { hipFlexionDegMax: 100 })];
    expect(hardest(ordered, ["hipPastNinety"], "perch-sitting", { hipFlexionDeg: 101 })).toBe("bar");
    expect(hardest(ordered, ["hipPastNinety"], "perch-sitting", { hipFlexionDeg: 100 })).toBe("watch");
    expect(hardest(ordered, ["hipPastNinety"], "perch-sitting", { hipFlexionDeg: 90 })).toBeNull();
    expect(hardest(ordered, ["hipPastNinety"], "perch-sitting")).toBe("clearFirst");
  });

  it("bars a deep hip under a stricter order even where no demand names it", () => {
    const strict = [withOrders("thr_posterior", { hipFlexionDegMax: 70 })];
    expect(hardest(strict, [], "perch-sitting", { hipFlexionDeg: 75 })).toBe("bar");
    expect(hardest(strict, [], "perch-sitting", { hipFlexionDeg: 70 })).not.toBe("bar");
  });

  it("lifts a limit of 90 only by a higher order, never by a clearance beside it", () => {
    const both = [withOrders("thr_posterior", { hipFlexionDegMax: 80, cleared: true })];
    expect(hardest(both, ["hipPastNinety"], "long-sitting", { hipFlexionDeg: 95 })).toBe("bar");
  });

  it("judges weight on a leg by the ordered share: exactly the share is allowed", () => {
    const half = [withOrders("weight_bearing_order", { weightBearing: { leg: "weak", percent: 50 } })];
    expect(hardest(half, ["standing"], "standing-in-bars", { legShare: { weak: 0.5, strong: 0.5 } })).toBe("watch");
    expect(hardest(half, ["standing"], "standing-in-bars", { legShare: { weak: 0.51, strong: 0.49 } })).toBe("bar");
    expect(hardest(half, ["standing"], "standing-in-bars")).toBe("clearFirst");
  });

  it("keeps a leg without weight off the floor, and leaves the other leg free", () => {
    const none = [withOrders("weight_bearing_order", { weightBearing: { leg: "strong", percent: 0 } })];
    expect(hardest(none, ["footPressure"], "hook-lying")).toBe("bar");
    expect(hardest(none, ["footPressure"], "hook-lying", { sides: { footPressure: ["weak"] } })).toBeNull();
  });

  it("leaves weight as tolerated alone", () => {
    const full = [withOrders("weight_bearing_order", { weightBearing: { leg: "weak", percent: 100 } })];
    expect(judgeDemands(full, ["standing", "kneePressure"], "standing")).toEqual([]);
  });
});
