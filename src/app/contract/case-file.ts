import { z } from "zod";
import { EQUIPMENT_IDS, PLACE_IDS } from "../../practice/codes.ts";
import {
  APHASIAS,
  APPROACHES,
  BALANCE_GRADES,
  FALLS_SEEN,
  FOLLOWS,
  LIVES_WITH,
  RAILS,
  SEVERITIES,
  WEAK_SIDES,
} from "./case-codes.ts";
import { CAUSE, MEDICINES, PRECAUTION, VITALS } from "./case-condition.ts";
import { LOOK_ENTRY, PREVIOUS_SESSION } from "./case-look.ts";
import { BOUNDS } from "./case-bounds.ts";
import { LOAD_SHARE_WEAK, RANGE, SENSATION, STRENGTH, TONE } from "./case-strength.ts";
import { OWN_RUNG } from "./case-own-rung.ts";
import { codes, counted, eachOptional, group, ISO_DATE, listOf, maybe, measured, words, yesOrNo } from "./fields.ts";

const HEIGHT = {
  what: "height",
  min: 120,
  max: 220,
  unit: "centimetres",
  hint: (v: number) =>
    v >= 1.2 && v <= 2.2
      ? `this looks like metres: write ${Math.round(v * 100)}`
      : v >= 1200 && v <= 2200
        ? `this looks like millimetres: write ${Math.round(v / 10)}`
        : null,
};
const MASS = {
  what: "mass",
  min: 30,
  max: 250,
  unit: "kilograms",
  hint: (v: number) => (v >= 30_000 && v <= 250_000 ? `this looks like grams: write ${v / 1000}` : null),
};

const PERSON = group("person", {
  sex: codes("sex", ["female", "male"]),
  ageYears: measured({ what: "age", min: 18, max: 110, unit: "years" }),
  heightCm: measured(HEIGHT),
  massKg: measured(MASS),
});

const DAYS_WORDS = "days since onset: a number from 0 to 40000, or null where there was no onset";
const DAYS_SINCE_ONSET = z.union(
  [
    z.number({ error: DAYS_WORDS }).min(0, { error: DAYS_WORDS }).max(40_000, { error: DAYS_WORDS }),
    z.null({ error: DAYS_WORDS }),
  ],
  {
    error: DAYS_WORDS,
  },
);

const FAMILY_HELPER = group("helper in the family", {
  heightCm: maybe(measured(HEIGHT)),
  massKg: maybe(measured(MASS)),
  ageYears: maybe(measured({ what: "age", min: 10, max: 110, unit: "years" })),
  backTrouble: maybe(yesOrNo("back trouble")),
  /** Rungs, "activity/rung", that this helper showed back twice, safely. */
  shownTwice: maybe(listOf("shown back twice", words("rung shown back", 160), 200)),
});

const tenth = (what: string) => measured({ what, min: 0, max: 10, unit: "(0 none, 10 the most)" });
const surface = (what: string) =>
  measured({
    what,
    min: 15,
    max: 120,
    unit: "centimetres",
    hint: (v) => (v > 0.1 && v < 1.3 ? `this looks like metres: write ${Math.round(v * 100)}` : null),
  });

const MEASURE = group("one measure", {
  id: words("measure", 80),
  date: maybe(ISO_DATE),
  value: measured({ what: "value", min: -100_000, max: 100_000 }),
});

/** Everything a case file may say of one person. Only the first three are required; what is absent is not known. */
export const CASE_FILE = group("case file", {
  person: PERSON,
  weakSide: codes("weak side", WEAK_SIDES),
  daysSinceOnset: DAYS_SINCE_ONSET,
  $schema: maybe(words("address of the schema", 500)),
  label: maybe(words("label", 200)),
  date: maybe(ISO_DATE),
  dominantHand: maybe(codes("dominant hand", ["left", "right", "both"])),
  cause: maybe(CAUSE),
  look: maybe(listOf("look", LOOK_ENTRY, 60)),
  strength: maybe(STRENGTH),
  loadShareWeak: maybe(LOAD_SHARE_WEAK),
  rangeDeg: maybe(RANGE),
  tone: maybe(TONE),
  sensation: maybe(SENSATION),
  shoulder: maybe(
    group("weak shoulder", {
      painAtRest: maybe(tenth("pain at rest")),
      painOnMovement: maybe(tenth("pain on movement")),
      gapFingers: maybe(measured({ what: "gap under the acromion", min: 0, max: 5, unit: "finger breadths" })),
    }),
  ),
  balance: maybe(group("balance", eachOptional(["sitting", "standing"], codes("balance", BALANCE_GRADES)))),
  signs: maybe(
    group("signs", {
      pushing: maybe(codes("pushing", SEVERITIES)),
      neglect: maybe(codes("neglect", SEVERITIES)),
      impulsive: maybe(yesOrNo("impulsive")),
      faints: maybe(yesOrNo("faints")),
      fallSeen: maybe(codes("fall seen", FALLS_SEEN)),
    }),
  ),
  communication: maybe(
    group("communication", {
      aphasia: maybe(codes("aphasia", APHASIAS)),
      follows: maybe(codes("what the person follows", FOLLOWS)),
      language: maybe(
        z
          .string({ error: 'language: a language tag such as "en" or "pt-BR"' })
          .regex(/^[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*$/, { error: 'language: a language tag such as "en" or "pt-BR"' }),
      ),
    }),
  ),
  precautions: maybe(listOf("precautions", PRECAUTION, 100)),
  medicines: maybe(MEDICINES),
  vitals: maybe(VITALS),
  place: maybe(codes("place", PLACE_IDS)),
  equipment: maybe(listOf("equipment", codes("equipment", EQUIPMENT_IDS), 60)),
  helpers: maybe(
    group("helpers", {
      count: maybe(counted({ what: "helpers", min: 0, max: 10 })),
      canKneel: maybe(yesOrNo("can kneel")),
      family: maybe(FAMILY_HELPER),
    }),
  ),
  approach: maybe(group("approach", eachOptional(["arm", "leg", "trunk"], codes("approach", APPROACHES)))),
  goals: maybe(listOf("goals", words("goal", 300), 30)),
  home: maybe(
    group("home", {
      stepsIn: maybe(counted({ what: "steps at the door", min: 0, max: 200 })),
      railGoingUp: maybe(codes("rail going up", RAILS)),
      bedHeightCm: maybe(surface("height of the bed")),
      toiletHeightCm: maybe(surface("height of the toilet")),
      livesWith: maybe(codes("lives with", LIVES_WITH)),
    }),
  ),
  measures: maybe(listOf("measures", MEASURE, 500)),
  ownRungs: maybe(listOf("own rungs", OWN_RUNG, 40)),
  bounds: maybe(listOf("bounds for an assistant", BOUNDS, 60)),
  previous: maybe(listOf("previous", PREVIOUS_SESSION, 400)),
});

/** One person's findings as they are typed: lengths in centimetres, angles in degrees, sides by body side. */
export type CaseFile = z.infer<typeof CASE_FILE>;
