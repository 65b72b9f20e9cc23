import fc from "fast-check";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { validCase } from "../../../test/helpers/case-arbitrary.ts";
import { mirrorCase } from "../../../test/helpers/mirror-case.ts";
import { parseCase } from "./parse-case.ts";

/** Every place of a value that holds something, as a list of steps. */
function placesOf(value: unknown, path: readonly string[] = []): readonly (readonly string[])[] {
  if (typeof value !== "object" || value === null) return [path];
  return [
    ...(path.length > 0 ? [path] : []),
    ...Object.entries(value).flatMap(([key, entry]) => placesOf(entry, [...path, key])),
  ];
}
function change(value: unknown, path: readonly string[], make: (old: unknown) => unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return make(value);
  if (Array.isArray(value))
    return value.map((entry, index) => (String(index) === step ? change(entry, rest, make) : entry));
  return Object.fromEntries(
    Object.entries(Object(value)).map(([key, entry]) => [key, key === step ? change(entry, rest, make) : entry]),
  );
}

const CASES = 1000;

describe("a thousand valid and a thousand spoiled files", () => {
  it(`accepts ${CASES} valid files and gives back what was written`, () => {
    let seen = 0;
    fc.assert(
      fc.property(validCase, (file) => {
        seen++;
        const text = JSON.stringify(file);
        const parsed = parseCase(text);
        if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
        expect(parsed.value).toEqual(JSON.parse(text));
        expect(parseCase(JSON.stringify(mirrorCase(file))).ok).toBe(true);
      }),
      { numRuns: CASES, seed: 11 },
    );
    expect(seen).toBe(CASES);
  });

  it(`refuses ${CASES} spoiled files and names the spoiled place`, () => {
    let seen = 0;
    const spoil = fc.tuple(
      validCase,
      fc.nat(),
      fc.constantFrom<unknown>(-1e9, 1e12, "nonsense code", { nothing: 1 }, null),
    );
    fc.assert(
      fc.property(spoil, ([file, pick, bad]) => {
        const places = placesOf(file).filter(
          (path) => !(path[0] === "label" || (bad === null && path[0] === "daysSinceOnset") || path[0] === "previous"),
        );
        const path = places[pick % places.length] ?? [];
        const parsed = parseCase(JSON.stringify(change(file, path, () => bad)));
        seen++;
        expect(parsed.ok).toBe(false);
        if (parsed.ok) return;
        expect(parsed.faults.length).toBeGreaterThan(0);
        expect(parsed.faults.every((fault) => fault.path.startsWith(path[0] ?? "?"))).toBe(true);
        for (const { expected } of parsed.faults)
          expect(expected).not.toMatch(/invalid|received|unrecognized|undefined/i);
      }),
      { numRuns: CASES, seed: 12 },
    );
    expect(seen).toBe(CASES);
  });

  it("never throws, whatever the text", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => void parseCase(text).ok),
      { numRuns: 500, seed: 13 },
    );
  });
});

describe("the mirrored file", () => {
  it("exchanges every side and comes back to itself when mirrored twice", () => {
    const file = JSON.parse(readFileSync(new URL("../../../examples/case-p.json", import.meta.url), "utf8"));
    const mirrored = mirrorCase(file);
    expect(mirrored.weakSide).toBe("left");
    expect(mirrored.dominantHand).toBe("left");
    expect(mirrored.home.railGoingUp).toBe("right");
    expect(mirrored.strength.left).toEqual(file.strength.right);
    expect(mirrorCase(mirrored)).toEqual(file);
  });
});
