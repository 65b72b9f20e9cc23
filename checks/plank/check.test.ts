import { describe, expect, it } from "vitest";
import { at, placed, printRows, referenceBody, type Sex } from "../holding.ts";
import expected from "./expected.json" with { type: "json" };

describe("a straight body on hands and toes", () => {
  it("carries the derived share on its hands", () => {
    const rows = (expected.share as [Sex, number][]).map(([sex, theirs]) => {
      const body = referenceBody(sex);
      const { frames, centre } = placed(body, 0, {});
      const sole = at(body, frames, "foot.weak")[2] - 0.039 * body.size.height;
      return {
        what: sex,
        ours: (centre[2] - sole) / (at(body, frames, "upperArm.weak")[2] - sole),
        theirs,
        allowed: 0.01,
      };
    });
    expect(printRows("plank", rows)).toEqual([]);
  });
});
