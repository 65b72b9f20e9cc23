import { z } from "zod";
import { LIMB_KEYS, TRUNK_KEYS } from "../../plan/person/slots.ts";
import { BODY_SIDES, GRADES, LOAD_SHARE_KEYS, SENSATION_KEYS, TONE_GRADES, TONE_KEYS } from "./case-codes.ts";
import { codes, eachOptional, group, maybe, measured } from "./fields.ts";

const READING_WORDS =
  'strength: a manual grade in quotes ("0" to "5", with + or -), {"newtonMetres": number} or {"newtons": number, "leverCm": number}';

/** A manual grade, a moment read from a dynamometer, or a force with its lever. */
export const STRENGTH_READING = z
  .union(
    [
      codes("manual grade", GRADES),
      group("reading of a dynamometer", {
        newtonMetres: measured({ what: "moment", min: 0, max: 800, unit: "newton-metres" }),
      }),
      group("reading of a dynamometer", {
        newtons: measured({ what: "force", min: 0, max: 3000, unit: "newtons" }),
        leverCm: measured({
          what: "lever",
          min: 2,
          max: 80,
          unit: "centimetres",
          hint: (v) => (v > 0 && v < 1 ? "this looks like metres" : null),
        }),
      }),
    ],
    { error: READING_WORDS },
  )
  .meta({ id: "strengthReading", description: "A manual grade, or a reading of a dynamometer" });

const LIMB_STRENGTH = group("strength of one side", eachOptional(LIMB_KEYS, STRENGTH_READING));
export const STRENGTH = group("strength", {
  ...eachOptional(BODY_SIDES, LIMB_STRENGTH),
  trunk: maybe(group("strength of the trunk", eachOptional(TRUNK_KEYS, STRENGTH_READING))),
});

const RANGE_ANGLE = measured({ what: "range", min: -90, max: 200, unit: "degrees" });
const LIMB_RANGE = group("range of one side", eachOptional([...LIMB_KEYS, "hamstrings"] as const, RANGE_ANGLE));
export const RANGE = group("range", {
  ...eachOptional(BODY_SIDES, LIMB_RANGE),
  trunk: maybe(group("range of the trunk", eachOptional(TRUNK_KEYS, RANGE_ANGLE))),
});

export const TONE = group(
  "tone",
  eachOptional(
    BODY_SIDES,
    group("tone of one side", eachOptional(TONE_KEYS, codes("modified Ashworth grade", TONE_GRADES))),
  ),
);

export const SENSATION = group(
  "sensation",
  eachOptional(
    BODY_SIDES,
    group("sensation of one side", eachOptional(SENSATION_KEYS, codes("sensation", ["intact", "reduced", "absent"]))),
  ),
);

export const LOAD_SHARE_WEAK = group(
  "share of body weight seen on the weak side",
  eachOptional(
    LOAD_SHARE_KEYS,
    measured({
      what: "share",
      min: 0,
      max: 1,
      hint: (v) => (v > 1 && v <= 100 ? `this looks like percent: write ${v / 100}` : null),
    }),
  ),
);
