import { describe, expect, it } from "vitest";
import { ACTIVITIES } from "../../practice/catalogue.ts";
import type { Rung } from "../../practice/activities/activity.ts";
import type { PlannedRung } from "../planned-rung.ts";
import { FAMILY_LIMITS, mayBeDrawn, refuseForFamily } from "./family-helper.ts";

const PERSON = { heightCm: 175, massKg: 80 };
const STANDING = { helperPose: "standing", because: "may fall" };
const rungOf = (fits: (rung: Rung) => boolean): Rung => {
  const found = ACTIVITIES.flatMap(({ rungs }) => rungs).find(fits);
  if (found === undefined) throw new Error("no such rung");
  return found;
};
const planned = (more: Partial<PlannedRung>): PlannedRung => ({
  activity: "a",
  rung: "r",
  dose: { sets: 1, restSeconds: 60 },
  help: null,
  guard: null,
  ...more,
});

describe("what a helper at home may be asked", () => {
  const kneeling = rungOf(({ helper }) => helper.pose === "kneeling" && helper.always !== true);
  const upright = rungOf(({ helper }) => helper.pose === "standing" && helper.always !== true);
  const touch = { words: "touching" };

  it("bars nothing of a grown, tall, sound helper, nor of one of whom nothing is known", () => {
    const sound = { heightCm: 172, massKg: 70, ageYears: 45, backTrouble: false };
    for (const family of [sound, {}])
      for (const rung of [kneeling, upright])
        expect(refuseForFamily(family, PERSON, planned({ help: touch, guard: STANDING }), rung)).toBeNull();
  });

  it("asks no child to hold or guard, and lets one be there", () => {
    const child = { ageYears: FAMILY_LIMITS.childUnder - 1 };
    expect(refuseForFamily(child, PERSON, planned({ help: touch }), upright)).toMatch(/child/);
    expect(refuseForFamily(child, PERSON, planned({ guard: STANDING }), upright)).toMatch(/child/);
    expect(refuseForFamily(child, PERSON, planned({ help: { words: "standBy" } }), upright)).toBeNull();
  });

  it("asks nobody with a troubled back to lift, block or kneel", () => {
    // Guiding only with a troubled back: the usual caution, as in the table of helper limits.
    const lifts = rungOf(({ helper }) => helper.hands.some(({ does }) => does === "lifts") && helper.always !== true);
    const sore = { backTrouble: true };
    expect(refuseForFamily(sore, PERSON, planned({ help: touch }), lifts)).toMatch(/lifted or blocked/);
    expect(refuseForFamily(sore, PERSON, planned({ guard: STANDING }), kneeling)).toMatch(/back/);
    expect(refuseForFamily(sore, PERSON, planned({}), kneeling)).toBeNull();
  });

  it("draws nobody on knees they should not go down on", () => {
    expect(
      [{ ageYears: 78 }, { backTrouble: true }, { ageYears: 45 }, {}].map((family) => mayBeDrawn(family, kneeling)),
    ).toEqual([false, false, true, true]);
    expect(mayBeDrawn({ ageYears: 78 }, upright)).toBe(true);
  });

  it("asks nobody old to kneel on the floor, and nobody small or light to steady standing", () => {
    const guarded = planned({ guard: STANDING });
    expect(refuseForFamily({ ageYears: 78 }, PERSON, guarded, kneeling)).toMatch(/kneel/);
    expect(refuseForFamily({ ageYears: 78 }, PERSON, guarded, upright)).toBeNull();
    expect(refuseForFamily({ heightCm: 152 }, PERSON, guarded, upright)).toMatch(/shorter/);
    expect(refuseForFamily({ massKg: 44 }, PERSON, guarded, upright)).toMatch(/light/);
    expect(refuseForFamily({ heightCm: 152, massKg: 44 }, PERSON, planned({ help: touch }), upright)).toBeNull();
  });
});
