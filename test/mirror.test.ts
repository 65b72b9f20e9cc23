import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CaseFile } from "../src/app/contract/case-file.ts";
import { parseCase } from "../src/app/contract/parse-case.ts";
import { createEngine } from "../src/app/engine/create-engine.ts";
import type { Engine } from "../src/app/engine/engine.ts";
import { lateralityOf } from "../src/app/engine/read-findings.ts";
import { validCase } from "./helpers/case-arbitrary.ts";
import { EXAMPLES, readExample } from "./helpers/example-cases.ts";
import { mirrorAnswer, mirrorWords } from "./helpers/mirror-answer.ts";
import { mirrorCase } from "./helpers/mirror-case.ts";

const MINUTES = 45;
/** One activity where the weak arm counts, one where nobody can fall, one over one leg. */
const ACTIVITIES = ["hands-and-knees-rock", "bridge", "bars-strong-step"];

/** The three answers about a case as the bytes that are sent, from a computing side that has answered nothing before. */
async function answer(file: CaseFile, activities: readonly string[]): Promise<Record<string, unknown>> {
  const engine: Engine = await createEngine();
  return {
    plan: engine.plan(file, MINUTES),
    ...Object.fromEntries(activities.map((activity) => [activity, engine.effort(file, activity)])),
    check: engine.check(file),
  };
}
const bytes = (value: unknown): string => JSON.stringify(value);

/** Where two texts part, with what stands around; empty where they are the same. */
function parting(own: string, other: string): string {
  if (own === other) return "";
  let at = 0;
  while (own[at] === other[at]) at++;
  return `${own.slice(Math.max(0, at - 150), at + 100)} <> ${other.slice(Math.max(0, at - 150), at + 100)}`;
}

describe("the helper of this test", () => {
  it("exchanges sides in words and codes and leaves other words alone", () => {
    expect(mirrorWords("leg.left, forwardLeft, Right, the left hip's; upright, cleft, alright")).toBe(
      "leg.right, forwardRight, Left, the right hip's; upright, cleft, alright",
    );
    expect(
      bytes(
        mirrorAnswer({
          side: "left",
          outline: [
            { x: 1, y: 0.5 },
            { x: 0, y: 0 },
          ],
        }),
      ),
    ).toBe(
      bytes({
        side: "right",
        outline: [
          { x: 1, y: -0.5 },
          { x: 0, y: 0 },
        ],
      }),
    );
  });
});

describe.each(EXAMPLES)("%s", (name) => {
  it("answers the mirrored person with the same answer mirrored, and the same file twice with the same bytes", async () => {
    const file = readExample(name);
    const own = await answer(file, ACTIVITIES);
    const mirrored = await answer(mirrorCase(file), ACTIVITIES);
    for (const part of Object.keys(own))
      expect(`${part}: ${parting(bytes(own[part]), bytes(mirrorAnswer(mirrored[part])))}`).toBe(`${part}: `);
    const again = await answer(file, ACTIVITIES);
    expect(parting(bytes(own), bytes(again))).toBe("");
    // Something is there to be mirrored.
    expect(bytes(own)).not.toBe(bytes(mirrored));
  }, 120_000);
});

/** A random person who is not held, so that there is something to plan. */
const people = fc
  .sample(validCase, { numRuns: 200, seed: 4 })
  .map((file) =>
    parseCase(
      bytes({ ...file, vitals: {}, daysSinceOnset: 5, precautions: [], helpers: { count: 2, canKneel: true } }),
    ),
  )
  .flatMap((read) => (read.ok ? [read.value] : []));
const oneOf = (side: CaseFile["weakSide"]) => people.filter(({ weakSide }) => weakSide === side).slice(0, 2);

describe("random people", () => {
  const chosen = (["left", "right", "both", "neither"] as const)
    .flatMap(oneOf)
    .map((file, i) => ({ number: i + 1, side: file.weakSide, file }));
  it.each(chosen)(
    "$number, weak side $side",
    async ({ file }) => {
      const hasWeakSide = lateralityOf(file).weak !== null;
      const own = await answer(file, ["sit-to-stand"]);
      const mirrored = await answer(mirrorCase(file), ["sit-to-stand"]);
      for (const part of Object.keys(own))
        expect(`${part}: ${parting(bytes(own[part]), bytes(mirrorAnswer(mirrored[part], hasWeakSide)))}`).toBe(
          `${part}: `,
        );
    },
    120_000,
  );
  it("are eight, two of each kind of weak side", () => {
    expect(chosen.map(({ side }) => side)).toEqual([
      "left",
      "left",
      "right",
      "right",
      "both",
      "both",
      "neither",
      "neither",
    ]);
  });
});
