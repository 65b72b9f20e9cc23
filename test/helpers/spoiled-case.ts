import fc from "fast-check";
import { validCase } from "./case-arbitrary.ts";

type Loose = Record<string, unknown>;
const inner = (file: Loose, key: string): Loose => ({ ...(typeof file[key] === "object" ? file[key] : {}) }) as Loose;
const person = (file: Loose, change: Loose): Loose => ({ ...file, person: { ...inner(file, "person"), ...change } });
const without = (file: Loose, key: string): Loose =>
  Object.fromEntries(Object.entries(file).filter(([each]) => each !== key));

/** Ways to spoil a good case so that it must be refused, with the field the refusal must name. */
const WAYS: readonly { readonly names: string; readonly spoil: (file: Loose) => unknown }[] = [
  { names: "person", spoil: (file) => without(file, "person") },
  { names: "weakSide", spoil: (file) => without(file, "weakSide") },
  { names: "daysSinceOnset", spoil: (file) => without(file, "daysSinceOnset") },
  { names: "person.heightCm", spoil: (file) => person(file, { heightCm: 1.75 }) },
  { names: "person.massKg", spoil: (file) => person(file, { massKg: 1e9 }) },
  { names: "person.massKg", spoil: (file) => person(file, { massKg: -70 }) },
  { names: "person.ageYears", spoil: (file) => person(file, { ageYears: "seventy" }) },
  { names: "person.sex", spoil: (file) => person(file, { sex: "femail" }) },
  { names: "person.shoe", spoil: (file) => person(file, { shoe: 42 }) },
  { names: "weakSide", spoil: (file) => ({ ...file, weakSide: "lft" }) },
  { names: "weakSide", spoil: (file) => ({ ...file, weakSide: ["left"] }) },
  { names: "daysSinceOnset", spoil: (file) => ({ ...file, daysSinceOnset: -1 }) },
  { names: "Strength", spoil: (file) => ({ ...file, Strength: {} }) },
  { names: "strength.left.hipExtension", spoil: (file) => ({ ...file, strength: { left: { hipExtension: "6" } } }) },
  { names: "strength.right.hipExtensor", spoil: (file) => ({ ...file, strength: { right: { hipExtensor: "3" } } }) },
  { names: "strength.left.kneeExtension", spoil: (file) => ({ ...file, strength: { left: { kneeExtension: 3 } } }) },
  { names: "look[0].task", spoil: (file) => ({ ...file, look: [{ task: "bridges", result: "alone" }] }) },
  { names: "look[0].result", spoil: (file) => ({ ...file, look: [{ task: "bridge", result: "good" }] }) },
  { names: "look", spoil: (file) => ({ ...file, look: "bridge" }) },
  { names: "precautions[0]", spoil: (file) => ({ ...file, precautions: ["shoulder"] }) },
  { names: "vitals.systolic", spoil: (file) => ({ ...file, vitals: { systolic: "138/82" } }) },
  { names: "equipment[0]", spoil: (file) => ({ ...file, equipment: ["crane"] }) },
  { names: "approach.arm", spoil: (file) => ({ ...file, approach: { arm: "rest" } }) },
  { names: "date", spoil: (file) => ({ ...file, date: "16.3.2026" }) },
  { names: "place", spoil: (file) => ({ ...file, place: "sofa" }) },
];

/** A case that must be refused, as the text of its file, and the field that must be named. */
export const spoiledCase: fc.Arbitrary<{ readonly text: string; readonly names: string }> = fc.oneof(
  {
    weight: 9,
    arbitrary: fc
      .tuple(validCase, fc.constantFrom(...WAYS))
      .map(([file, { names, spoil }]) => ({ text: JSON.stringify(spoil({ ...file })), names })),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(validCase, fc.double({ min: 0, max: 0.98, noNaN: true }))
      .map(([file, share]) => JSON.stringify(file).slice(0, Math.floor(JSON.stringify(file).length * share)))
      .map((text) => ({ text, names: "the file" })),
  },
);
