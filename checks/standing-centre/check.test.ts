import { describe, expect, it } from "vitest";
import { at, type Compared, placed, printRows, referenceBody, type Sex } from "../holding.ts";
import expected from "./expected.json" with { type: "json" };

describe("the standing centre of mass", () => {
  it("stands where the published parts put it", () => {
    const rows: Compared[] = [];
    for (const [kind, allowed] of [
      ["derived", 0.005],
      ["textbook", 0.015],
    ] as const) {
      for (const [sex, theirs] of expected[kind] as [Sex, number][]) {
        const body = referenceBody(sex);
        const { frames, centre } = placed(body, 0, {});
        const sole = at(body, frames, "foot.weak")[2] - 0.039 * body.size.height;
        rows.push({ what: `${sex}, ${kind}`, ours: (centre[2] - sole) / body.size.height, theirs, allowed });
      }
    }
    expect(printRows("standing centre", rows)).toEqual([]);
  });
});
