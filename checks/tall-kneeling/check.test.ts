import { describe, expect, it } from "vitest";
import { at, placed, printRows, referenceBody, type Sex } from "../holding.ts";
import expected from "./expected.json" with { type: "json" };

describe("tall kneeling", () => {
  it("has its centre of mass at the derived height", () => {
    const rows = (expected.millimetres as [Sex, number][]).map(([sex, theirs]) => {
      const body = referenceBody(sex);
      const { frames, centre } = placed(body, 0, { kneeFlexion: 90, ankleDorsiflexion: -90 });
      const mat = at(body, frames, "shank.weak")[2] - 0.05;
      return { what: sex, ours: (centre[2] - mat) * 1000, theirs, allowed: 10 };
    });
    expect(printRows("tall kneeling", rows)).toEqual([]);
  });
});
