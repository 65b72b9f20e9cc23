import { describe, expect, it } from "vitest";
import { buildBody } from "./build.ts";
import { capacitiesOf, normalCapacities } from "./strength-capacities.ts";
import { evenStrengths, LIMB_STRENGTH_KEYS, STRENGTH_IDS, strengthsFrom } from "./strength-keys.ts";
import { angleShare, peakNorm, trunkNorm } from "./strength-norms.ts";

const MAN = { sex: "male", height: 1.75, mass: 80 } as const;
const WOMAN = { sex: "female", height: 1.62, mass: 68 } as const;
const body = buildBody(WOMAN, 1);
const still = body.angles.map(() => 0);

describe("normal strength", () => {
  it("answers for every joint direction of the body", () => {
    const normal = normalCapacities(body, 60, still);
    expect(normal.directions.length).toBe(86);
    for (const moment of normal.moments) expect(moment).toBeGreaterThan(0.5);
    const ids = new Set(normal.directions.map((each) => each.strength).filter((each) => each !== null));
    // Every key but the grip is used somewhere.
    for (const id of STRENGTH_IDS) if (!id.startsWith("grip")) expect(ids.has(id)).toBe(true);
  });

  it("gives back the published moments on the people they stand for", () => {
    // Moment per kg at 1.70 m, as printed beside the leg curves (anderson2007).
    const size = { sex: "male", height: 1.7, mass: 80 } as const;
    expect(peakNorm(size, 22, "hipExtension") / 80).toBeCloseTo(2.68, 1);
    expect(peakNorm(size, 60, "kneeExtension") / 80).toBeCloseTo(2.6, 1);
    expect(peakNorm(size, 60, "anklePlantarflexion") / 80).toBeCloseTo(1.9, 1);
    // Worked rows of the arm's values.
    expect(peakNorm(MAN, 60, "shoulderAbduction")).toBeCloseTo(57, 6);
    expect(peakNorm(WOMAN, 80, "wristFlexion")).toBeCloseTo(11.9, 6);
    expect(peakNorm(WOMAN, 72, "grip") / 9.81).toBeCloseTo(23.6, 6);
  });

  it("falls with age, rises with size, and never below half of the peak over the angle", () => {
    for (const size of [MAN, WOMAN]) {
      for (const key of LIMB_STRENGTH_KEYS) {
        expect(peakNorm(size, 85, key)).toBeLessThan(peakNorm(size, 62, key));
        expect(peakNorm(size, 85, key)).toBeGreaterThan(0.35 * peakNorm(size, 62, key));
        for (let angle = -1.6; angle < 2.7; angle += 0.1) {
          const share = angleShare(size, 70, key, angle);
          expect(share).toBeGreaterThanOrEqual(0.5);
          expect(share).toBeLessThanOrEqual(1);
        }
      }
      for (const key of ["flexion", "extension", "lateralFlexion", "rotation"] as const)
        expect(trunkNorm(size, 80, key)).toBeLessThan(trunkNorm(size, 50, key));
    }
  });

  it("scales by the side's own strengths and mirrors", () => {
    const half = strengthsFrom((id) => (id.endsWith(".weak") ? 0.5 : 1));
    const one = capacitiesOf(body, 60, still, half);
    const two = capacitiesOf(buildBody(WOMAN, -1), 60, still, half);
    expect(two).toEqual(one);
    const hip = (side: "weak" | "strong"): number => one.down[body.angleIndex[`hipFlexion.${side}`]] ?? 0;
    expect(hip("weak")).toBeCloseTo(hip("strong") / 2, 9);
    expect(capacitiesOf(body, 60, still, evenStrengths(0)).up.every((moment) => moment > 0)).toBe(true);
  });
});
