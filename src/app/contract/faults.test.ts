import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { PRECAUTION_IDS } from "../../practice/precautions/identifiers.data.ts";
import { LARGEST_CASE, parseCase, validateCase } from "./parse-case.ts";

const EXAMPLES = ["case-p", "case-a", "aphasia", "neglect"];
const least = () => ({
  person: { sex: "female", ageYears: 71, heightCm: 162, massKg: 68 },
  weakSide: "left",
  daysSinceOnset: 12,
});

function faultsOf(value: unknown) {
  const parsed = typeof value === "string" ? parseCase(value) : parseCase(JSON.stringify(value));
  expect(parsed.ok).toBe(false);
  return parsed.ok ? [] : parsed.faults;
}
/** No fault may carry the words of a library or a parser. */
function expectPlain(faults: readonly { path: string; found: string; expected: string }[]) {
  for (const { path, found, expected } of faults) {
    expect(path).not.toBe("");
    expect(found).not.toBe("");
    expect(expected).not.toMatch(/invalid|zod|received|unrecognized|undefined|NaN|Unexpected|\[object|expected/i);
    expect(found).not.toMatch(/undefined|Unexpected|token|\[object/);
  }
}

describe("a case file that is accepted", () => {
  it.each(EXAMPLES)("takes the example %s unchanged", (name) => {
    const text = readFileSync(new URL(`../../../examples/${name}.json`, import.meta.url), "utf8");
    const parsed = parseCase(text);
    expect(parsed).toMatchObject({ ok: true, warnings: [] });
    expect(parsed.ok && parsed.value).toEqual(JSON.parse(text));
  });

  it("takes the required fields alone and says that the date is missing", () => {
    expect(parseCase(JSON.stringify(least()))).toMatchObject({
      ok: true,
      value: least(),
      warnings: [{ path: "date" }],
    });
  });

  it("takes null for no onset, and every group without its fields", () => {
    const empty = Object.fromEntries(
      [
        "cause",
        "strength",
        "loadShareWeak",
        "rangeDeg",
        "tone",
        "sensation",
        "shoulder",
        "balance",
        "signs",
        "communication",
        "vitals",
        "helpers",
        "approach",
        "home",
      ].map((name) => [name, {}]),
    );
    expect(validateCase({ ...least(), daysSinceOnset: null, ...empty }).ok).toBe(true);
  });

  it("takes all 43 precautions, bare and with orders", () => {
    expect(PRECAUTION_IDS.length).toBe(43);
    expect(validateCase({ ...least(), precautions: [...PRECAUTION_IDS] }).ok).toBe(true);
    const ordered = PRECAUTION_IDS.map((code) => ({
      code,
      note: "by order",
      orders: { cleared: true, systolicMax: 160, weightBearing: { leg: "left", percent: 50 } },
    }));
    expect(validateCase({ ...least(), precautions: ordered }).ok).toBe(true);
  });

  it("takes every form of a strength reading", () => {
    const strength = {
      left: { hipExtension: "3-", kneeExtension: { newtonMetres: 38 }, elbowExtension: { newtons: 60, leverCm: 22 } },
      trunk: { flexion: "3" },
    };
    expect(validateCase({ ...least(), strength }).ok).toBe(true);
  });

  it("takes an amputation beside the kind or in its own group", () => {
    const fields = { side: "left", level: "belowKnee", prosthesis: "on" };
    expect(validateCase({ ...least(), cause: { kind: "amputation", ...fields } }).ok).toBe(true);
    expect(validateCase({ ...least(), cause: { kind: "amputation", amputation: fields } }).ok).toBe(true);
  });
});

describe("a case file that is refused", () => {
  it("lists every missing field at once", () => {
    const faults = faultsOf({});
    expect(faults.map(({ path }) => path)).toEqual(["person", "weakSide", "daysSinceOnset"]);
    expect(faultsOf({ person: {}, weakSide: "left", daysSinceOnset: 1 }).map(({ path }) => path)).toEqual([
      "person.sex",
      "person.ageYears",
      "person.heightCm",
      "person.massKg",
    ]);
    for (const { found } of faults) expect(found).toBe("nothing");
    expectPlain(faults);
  });

  it.each([
    [
      "metres for centimetres",
      { person: { ...least().person, heightCm: 1.62 } },
      "person.heightCm",
      "1.62",
      /120 to 220 centimetres; this looks like metres: write 162/,
    ],
    [
      "a mass of a billion",
      { person: { ...least().person, massKg: 1e9 } },
      "person.massKg",
      "1000000000",
      /30 to 250 kilograms/,
    ],
    [
      "a number in quotes",
      { person: { ...least().person, ageYears: "71" } },
      "person.ageYears",
      '"71"',
      /18 to 110 years/,
    ],
    ["an unknown field", { weekSide: "left" }, "weekSide", "an unknown field", /nearest: "weakSide"/],
    [
      "an unknown field inside",
      { person: { ...least().person, heightCM: 162 } },
      "person.heightCM",
      "an unknown field",
      /nearest: "heightCm"/,
    ],
    [
      "an unknown side",
      { weakSide: "lft" },
      "weakSide",
      '"lft"',
      /one of "left", "right", "both", "neither"; nearest: "left"/,
    ],
    [
      "a grade out of range",
      { strength: { left: { hipFlexion: "6" } } },
      "strength.left.hipFlexion",
      '"6"',
      /manual grade: one of "0", "1"/,
    ],
    [
      "a grade without quotes",
      { strength: { left: { hipFlexion: 3 } } },
      "strength.left.hipFlexion",
      "3",
      /in quotes.*newtonMetres/,
    ],
    [
      "an unknown joint direction",
      { strength: { left: { hipExtention: "3" } } },
      "strength.left.hipExtention",
      "an unknown field",
      /nearest: "hipExtension"/,
    ],
    [
      "an unknown precaution",
      { precautions: ["hemi_sholder_protect"] },
      "precautions[0]",
      '"hemi_sholder_protect"',
      /nearest: "hemi_shoulder_protect"/,
    ],
    [
      "an unknown precaution with a note",
      { precautions: [{ code: "pushr", note: "x" }] },
      "precautions[0].code",
      '"pushr"',
      /nearest: "pusher"/,
    ],
    [
      "an unknown task",
      { look: [{ task: "bridging", result: "alone" }] },
      "look[0].task",
      '"bridging"',
      /nearest: "bridge"/,
    ],
    ["a share in percent", { loadShareWeak: { standing: 38 } }, "loadShareWeak.standing", "38", /write 0\.38/],
    ["a day that does not exist", { date: "2026-02-30" }, "date", '"2026-02-30"', /year-month-day/],
    ["days before the onset", { daysSinceOnset: -3 }, "daysSinceOnset", "-3", /0 to 40000, or null/],
    ["null where a field may only be absent", { date: null }, "date", "null", /year-month-day/],
    [
      "half a dynamometer reading",
      { strength: { right: { grip: { newtons: 60 } } } },
      "strength.right.grip.leverCm",
      "nothing",
      /lever: a number from 2 to 80/,
    ],
    ["text for a list", { equipment: "belt" }, "equipment", '"belt"', /a list of at most/],
  ])("names %s", (_what, change, path, found, expected) => {
    const faults = faultsOf({ ...least(), ...change });
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ path, found });
    expect(faults[0]?.expected).toMatch(expected);
    expectPlain(faults.map((fault) => ({ ...fault, found: "seen" })));
  });

  it("names every fault of a file with many, each once", () => {
    const faults = faultsOf({
      ...least(),
      weakSide: 3,
      person: { sex: "f", heightCm: 1.7, massKg: 68 },
      vitals: { systolic: 900, pulse: 70 },
      colour: 1,
    });
    expect(faults.map(({ path }) => path).sort()).toEqual([
      "colour",
      "person.ageYears",
      "person.heightCm",
      "person.sex",
      "vitals.pulse",
      "vitals.systolic",
      "weakSide",
    ]);
    expectPlain(faults);
  });

  it.each([
    ["nothing", "", /^nothing$/],
    ["blanks", " \n ", /^nothing$/],
    ["broken JSON", '{\n "person": {,\n}', /^broken JSON in line 2, at character \d+$/],
    ["JSON cut short", '{"person": {"sex": "fem', /^broken JSON/],
    ["a list", "[]", /^a list of 0$/],
    ["a bare word", '"left"', /^"left"$/],
    ["null", "null", /^null$/],
    ["far too much", `{"label": "${"x".repeat(LARGEST_CASE)}"}`, /^6 million characters$/],
  ])("says that the file holds %s", (_what, text, found) => {
    const faults = faultsOf(text);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ path: "the file" });
    expect(faults[0]?.found).toMatch(found);
    expectPlain(faults);
  });

  it("tells a file of a million faults in a moment", () => {
    const many = Object.fromEntries(Array.from({ length: 200_000 }, (_, index) => [`k${index}`, 1]));
    const faults = faultsOf({ ...least(), ...many });
    expect(faults).toHaveLength(501);
    expect(faults.at(-1)).toMatchObject({ found: "more than 500 faults" });
  });

  it("offers a grade with a blank behind it as that grade", () => {
    expect(faultsOf({ ...least(), strength: { left: { hipFlexion: "4 " } } })[0]?.expected).toMatch(/nearest: "4"$/);
  });

  it("does not take names of the language itself for fields", () => {
    const faults = faultsOf(
      '{"__proto__": {"x": 1}, "constructor": 2, "weakSide": "left", "daysSinceOnset": 1, "person": {"sex": "male", "ageYears": 60, "heightCm": 170, "massKg": 70, "toString": 1}}',
    );
    expect(faults.map(({ path }) => path)).toContain("constructor");
    expect(faults.map(({ path }) => path)).toContain("person.toString");
  });
});
