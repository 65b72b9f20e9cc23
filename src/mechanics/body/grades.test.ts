import { describe, expect, it } from "vitest";
import { buildBody } from "./build.ts";
import { type Grade, gradeQuantiles, gravityMoment, gravityShare } from "./grades.ts";
import { LIMB_STRENGTH_KEYS } from "./strength-keys.ts";

const GRADES: readonly Grade[] = ["0", "1", "1+", "2-", "2", "2+", "3-", "3", "3+", "4-", "4", "4+", "5-", "5"];
const MAN = buildBody({ sex: "male", height: 1.741, mass: 73 }, 1);
const WOMAN = buildBody({ sex: "female", height: 1.735, mass: 61.9 }, 1);

describe("grades", () => {
  it("hold the limb with the moments worked by hand from de Leva's table", () => {
    // Derived by hand: limb level, foot's centre 40 mm beyond the ankle; ours takes the sole's half height, hence 3 %.
    const byHand = [
      [MAN, "elbowFlexion", 2.9],
      [MAN, "shoulderFlexion", 10.6],
      [MAN, "kneeExtension", 10.7],
      [MAN, "hipExtension", 45.5],
      [WOMAN, "elbowFlexion", 2.1],
      [WOMAN, "shoulderFlexion", 7.8],
      [WOMAN, "kneeExtension", 9.3],
      [WOMAN, "hipExtension", 34.9],
    ] as const;
    for (const [body, key, moment] of byHand)
      expect(Math.abs((gravityMoment(body, key) ?? 0) / moment - 1)).toBeLessThan(0.03);
  });
  it("put grade 3 where published work found it: knee and elbow 4 to 10 %, shoulder 7 to 27 %, hip 4 to 65 % (Dvir 1997)", () => {
    for (const body of [MAN, WOMAN]) {
      for (const [key, low, high] of [
        ["kneeExtension", 0.04, 0.1],
        ["elbowFlexion", 0.03, 0.1],
        ["shoulderFlexion", 0.07, 0.27],
        ["hipExtension", 0.04, 0.65],
        ["hipAbduction", 0.04, 0.65],
      ] as const) {
        const g = gravityShare(body, 30, key);
        expect(g, `${body.size.sex} ${key}`).toBeGreaterThan(low);
        expect(g, `${body.size.sex} ${key}`).toBeLessThan(high);
      }
    }
  });
  it("rise with the grade at every quantile, for every muscle group", () => {
    for (const key of [...LIMB_STRENGTH_KEYS, "trunk.flexion", "trunk.rotation"] as const) {
      for (let k = 1; k < GRADES.length; k++) {
        const lower = gradeQuantiles(WOMAN, 67, key, GRADES[k - 1] ?? "0");
        const upper = gradeQuantiles(WOMAN, 67, key, GRADES[k] ?? "5");
        for (const q of [0, 1, 2] as const)
          expect(upper[q], `${key} ${GRADES[k]}`).toBeGreaterThanOrEqual(lower[q] - 1e-9);
      }
    }
  });
});
