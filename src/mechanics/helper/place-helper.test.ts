import { describe, expect, it } from "vitest";
import { buildBody } from "../body/build.ts";
import { placeHelper } from "./place-helper.ts";
import type { Stance } from "./stances.data.ts";

const WOMAN = buildBody({ sex: "female", height: 1.65, mass: 62 }, 1);
const MAN = buildBody({ sex: "male", height: 1.78, mass: 80 }, 1);
const ALL: readonly Stance[] = ["standing", "strideStanding", "sitting", "halfKneeling", "kneeling"];
const UP = [0, 0, 80] as const;

describe("where a helper goes", () => {
  it("down beside a person on the floor mat, not bent over from standing (common practice, no source)", () => {
    for (const body of [WOMAN, MAN]) {
      const places = placeHelper(body, ALL, { height: 0.22, push: UP });
      console.log(
        `site 22 cm up, ${body.size.sex}: ${places.map(({ stance, forward, load }) => `${stance} at ${Math.round(forward * 100)} cm ${load.back.compression.toFixed(0)} N ${load.back.verdict}`).join("; ")}`,
      );
      expect(places[0]?.stance).toMatch(/neeling/);
      const standing = places.find(({ stance }) => stance === "standing");
      if (standing !== undefined)
        expect(standing.load.back.compression).toBeGreaterThan(places[0]?.load.back.compression ?? 1e9);
    }
  });
  it("loads the back of a standing helper less at a raised mat than at the floor (common practice, no source)", () => {
    for (const body of [WOMAN, MAN]) {
      const at = (height: number): number =>
        placeHelper(body, ["standing"], { height, push: UP })[0]?.load.back.compression ?? Number.MAX_VALUE;
      console.log(`standing, ${body.size.sex}: floor ${at(0.22).toFixed(0)} N, raised 50 cm ${at(0.72).toFixed(0)} N`);
      expect(at(0.72)).toBeLessThan(at(0.22));
      expect(at(0.72)).toBeLessThan(3400);
    }
  });
  it("is nowhere when the site cannot be reached", () => {
    expect(placeHelper(WOMAN, ALL, { height: 2.6, push: UP })).toEqual([]);
  });
});
