import { describe, expect, it } from "vitest";
import { LIMB_STRENGTH_KEYS, type LimbStrengthKey } from "../../src/mechanics/body/strength-keys.ts";
import { peakNorm } from "../../src/mechanics/body/strength-norms.ts";
import expected from "./expected.json" with { type: "json" };

const both = (key: LimbStrengthKey): number =>
  (17 * peakNorm({ sex: "male", height: 1.72, mass: 71.8 }, 45, key) +
    13 * peakNorm({ sex: "female", height: 1.72, mass: 71.8 }, 45, key)) /
  30;

describe("normal strength against thirty adults in a rig", () => {
  it("lies within a factor of two in all sixteen directions, within 1.5 in thirteen", () => {
    const rows = Object.entries(expected).map(([name, printed]) => {
      const key = LIMB_STRENGTH_KEYS.find((each) => each === name);
      if (key === undefined) throw new Error(`no direction ${name}`);
      const ours = both(key);
      console.log(`isometric rig: ${name}: ${ours.toFixed(1)} against ${printed} (${(ours / printed).toFixed(2)})`);
      return { name, ratio: ours / printed };
    });
    expect(rows.length).toBe(16);
    for (const { name, ratio } of rows) {
      expect(ratio, name).toBeGreaterThan(0.5);
      expect(ratio, name).toBeLessThan(2);
    }
    expect(rows.filter(({ ratio }) => ratio > 1 / 1.5 && ratio < 1.5).length).toBeGreaterThanOrEqual(13);
  });
});
