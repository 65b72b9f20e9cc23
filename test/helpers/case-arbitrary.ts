import fc from "fast-check";
import * as code from "../../src/app/contract/case-codes.ts";
import { LOOK_TASKS } from "../../src/plan/findings.ts";
import { LIMB_KEYS, TRUNK_KEYS } from "../../src/plan/person/slots.ts";
import { EQUIPMENT_IDS, PLACE_IDS } from "../../src/practice/codes.ts";
import { PRECAUTION_IDS } from "../../src/practice/precautions/identifiers.data.ts";
import { MEDICINE_IDS } from "../../src/practice/precautions/medicines.data.ts";

const one = <T>(list: readonly T[]) => fc.constantFrom(...list);
const between = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true }).map((v) => Math.round(v * 100) / 100);
const some = <T>(shape: { [K in keyof T]: fc.Arbitrary<T[K]> }) => fc.record(shape, { requiredKeys: [] });
const each = <T>(names: readonly string[], field: fc.Arbitrary<T>) =>
  fc.record(Object.fromEntries(names.map((name) => [name, field])), { requiredKeys: [] });

const reading = fc.oneof(
  { weight: 4, arbitrary: one(code.GRADES) },
  fc.record({ newtonMetres: between(0, 300) }),
  fc.record({ newtons: between(0, 600), leverCm: between(5, 50) }),
);
const gaveWay = fc.record(
  { joint: one(code.GAVE_WAY_JOINTS), side: one(["weak", "strong"]), how: one(code.GAVE_WAY_HOW) },
  { requiredKeys: ["joint"] },
);
const look = fc.record(
  {
    task: one(LOOK_TASKS),
    result: one(code.LOOK_RESULTS),
    gaveWay,
    stoppedBy: one(code.TASK_STOPPED_BY),
    seatHeightCm: between(35, 80),
  },
  { requiredKeys: ["task", "result"] },
);

/** Case files that must be accepted: any subset of the optional fields, any legal values. */
export const validCase = fc.record(
  {
    person: fc.record({
      sex: one(["female", "male"]),
      ageYears: fc.integer({ min: 18, max: 110 }),
      heightCm: between(120, 220),
      massKg: between(30, 250),
    }),
    weakSide: one(code.WEAK_SIDES),
    daysSinceOnset: fc.option(fc.integer({ min: 0, max: 4000 })),
    label: fc.string({ minLength: 1, maxLength: 40 }),
    date: one(["2026-03-16", "2024-02-29"]),
    dominantHand: one(["left", "right"]),
    cause: some({ kind: one(code.CAUSE_KINDS), type: one(code.STROKE_TYPES), territory: one(code.TERRITORIES) }),
    look: fc.uniqueArray(look, { maxLength: 12, selector: ({ task }) => task }),
    strength: some({
      left: each(LIMB_KEYS, reading),
      right: each(LIMB_KEYS, reading),
      trunk: each(TRUNK_KEYS, one(code.GRADES)),
    }),
    loadShareWeak: each(code.LOAD_SHARE_KEYS, between(0, 1)),
    rangeDeg: each(["left", "right"], each([...LIMB_KEYS, "hamstrings"], between(-20, 150))),
    tone: each(["left", "right"], each(code.TONE_KEYS, one(code.TONE_GRADES))),
    sensation: each(["left", "right"], each(code.SENSATION_KEYS, one(["intact", "reduced", "absent"]))),
    shoulder: some({
      painAtRest: fc.integer({ min: 0, max: 10 }),
      painOnMovement: fc.integer({ min: 0, max: 10 }),
      gapFingers: between(0, 2),
    }),
    balance: each(["sitting", "standing"], one(code.BALANCE_GRADES)),
    signs: some({
      pushing: one(code.SEVERITIES),
      neglect: one(code.SEVERITIES),
      impulsive: fc.boolean(),
      faints: fc.boolean(),
      fallSeen: one(code.FALLS_SEEN),
    }),
    communication: some({ aphasia: one(code.APHASIAS), follows: one(code.FOLLOWS), language: one(["en", "pt-BR"]) }),
    precautions: fc.uniqueArray(one(PRECAUTION_IDS), { maxLength: 5 }),
    medicines: fc.uniqueArray(one(MEDICINE_IDS), { maxLength: 4 }),
    vitals: some({
      systolic: fc.integer({ min: 80, max: 220 }),
      diastolic: fc.integer({ min: 40, max: 120 }),
      heartRate: fc.integer({ min: 40, max: 150 }),
      oxygenSaturation: fc.integer({ min: 80, max: 100 }),
    }),
    place: one(PLACE_IDS),
    equipment: fc.uniqueArray(one(EQUIPMENT_IDS), { maxLength: 8 }),
    helpers: some({ count: fc.integer({ min: 0, max: 3 }), canKneel: fc.boolean() }),
    approach: each(["arm", "leg", "trunk"], one(code.APPROACHES)),
    home: some({
      stepsIn: fc.integer({ min: 0, max: 20 }),
      railGoingUp: one(code.RAILS),
      livesWith: one(code.LIVES_WITH),
    }),
    previous: fc.constant([]),
  },
  { requiredKeys: ["person", "weakSide", "daysSinceOnset"] },
);
