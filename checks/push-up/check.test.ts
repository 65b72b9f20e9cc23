import { describe, expect, it } from "vitest";
import { evenStrengths } from "../../src/mechanics/body/strength-keys.ts";
import { printRows, referenceBody, type Sex } from "../holding.ts";
import { holdPose, PUSH_UP_ON_KNEES, PUSH_UP_ON_TOES } from "../poses.ts";
import expected from "./expected.json" with { type: "json" };

describe("a push-up held still", () => {
  it("carries the measured share on the hands", () => {
    const rows = expected.rows.map(({ pose, sex, percent, spread }) => {
      const balance = holdPose(
        referenceBody(sex as Sex),
        pose === "toes" ? PUSH_UP_ON_TOES : PUSH_UP_ON_KNEES,
        25,
        evenStrengths(1),
      );
      const hands = balance.loads
        .filter((load) => load.patch.startsWith("hand"))
        .reduce((sum, load) => sum + load.share, 0);
      return { what: `${sex} on ${pose}, per cent of weight`, ours: 100 * hands, theirs: percent, allowed: spread + 2 };
    });
    expect(printRows("push-up", rows)).toEqual([]);
  });
});
