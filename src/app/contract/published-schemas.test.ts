import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
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
