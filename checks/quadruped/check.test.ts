import { describe, expect, it } from "vitest";
import { evenStrengths } from "../../src/mechanics/body/strength-keys.ts";
import { at, centreOf, placed, printRows, referenceBody, type Sex, SEXES } from "../holding.ts";
import { HANDS_AND_KNEES, holdPose } from "../poses.ts";
import expected from "./expected.json" with { type: "json" };

describe("hands and knees", () => {
  it("puts the derived share on the hands under the derivation's own conditions", () => {
    const rows = (expected.share as [Sex, number][]).map(([sex, theirs]) => {
      const body = referenceBody(sex);
      const { frames } = placed(body, 90, { hipFlexion: 90, kneeFlexion: 90, shoulderFlexion: 90 });
      const hip = at(body, frames, "thigh.weak")[0];
      const hands = at(body, frames, "upperArm.weak")[0];
      const upper = centreOf(body, frames, (id) => !/^(thigh|shank|foot|toes)/.test(id));
      return {
        what: sex,
        ours: (upper.mass * (upper.centre[0] - hip)) / (hands - hip) / body.size.mass,
        theirs,
        allowed: 0.01,
      };
    });
    expect(printRows("quadruped", rows)).toEqual([]);
  });

  it("shares plausibly between hands and knees in the real pose", () => {
    for (const sex of SEXES) {
      const balance = holdPose(referenceBody(sex), HANDS_AND_KNEES, 30, evenStrengths(1));
      const hands = balance.loads
        .filter((load) => load.patch.startsWith("hand"))
        .reduce((sum, load) => sum + load.share, 0);
      console.log(`quadruped, real pose, ${sex}: both hands ${(hands * 100).toFixed(1)} % of weight`);
      expect(hands).toBeGreaterThan(expected.band[0] ?? 0);
      expect(hands).toBeLessThan(expected.band[1] ?? 1);
    }
  });
});
