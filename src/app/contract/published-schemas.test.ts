import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { validCase } from "../../../test/helpers/case-arbitrary.ts";
import { validateCase } from "./parse-case.ts";
import { writePublishedSchemas } from "./published-schemas.ts";

const folder = new URL("../../../schema/", import.meta.url);

it.each([...writePublishedSchemas()])(
  "keeps schema/%s equal to the code (write it with: node schema/write.mjs)",
  (name, text) => {
    expect(readFileSync(new URL(name, folder), "utf8")).toBe(text);
  },
);

it("requires of a case what the case file requires, and refuses unknown fields", () => {
  const schema = JSON.parse(readFileSync(new URL("case.schema.json", folder), "utf8"));
  expect(schema.required).toEqual(["person", "weakSide", "daysSinceOnset"]);
  expect(schema.properties.person.required).toEqual(["sex", "ageYears", "heightCm", "massKg"]);
  expect(schema.additionalProperties).toBe(false);
  expect(schema.properties.precautions.items.anyOf[0].enum).toHaveLength(43);
});

describe("the published schema of a case, read back as a schema", () => {
  const readBack = z.fromJSONSchema(JSON.parse(readFileSync(new URL("case.schema.json", folder), "utf8")));
  const example = (name: string) =>
    JSON.parse(readFileSync(new URL(`../../../examples/${name}.json`, import.meta.url), "utf8"));

  it.each(["case-p", "case-a", "aphasia", "neglect"])("takes the example %s", (name) => {
    expect(readBack.safeParse(example(name)).success).toBe(true);
  });

  it("takes what the code takes and refuses what the code refuses, 300 files each", () => {
    fc.assert(
      fc.property(validCase, (file) => {
        expect(readBack.safeParse(JSON.parse(JSON.stringify(file))).success).toBe(true);
      }),
      { numRuns: 300, seed: 21 },
    );
    const spoil = fc.tuple(
      validCase,
      fc.constantFrom<object>(
        { weakSide: "lft" },
        { extra: 1 },
        { person: {} },
        { date: null },
        { daysSinceOnset: -1 },
      ),
    );
    fc.assert(
      fc.property(spoil, ([file, change]) => {
        const spoiled = JSON.parse(JSON.stringify({ ...file, ...change }));
        expect(validateCase(spoiled).ok).toBe(false);
        expect(readBack.safeParse(spoiled).success).toBe(false);
      }),
      { numRuns: 300, seed: 22 },
    );
  });
});
