import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { type LinearSolver, loadLinearSolver } from "../../mechanics/linear-program/linear-program.ts";
import { TRANSITIONS } from "../../practice/catalogue.ts";
import type { CaseFile } from "../contract/case-file.ts";
import { parseCase } from "../contract/parse-case.ts";
import { keepPeople, type PersonToday } from "./person-today.ts";
import { transitionSteps, type WaySteps } from "./transition-steps.ts";

const read = (name: string): CaseFile => {
  const parsed = parseCase(readFileSync(`examples/${name}.json`, "utf8"));
  if (!parsed.ok) throw new Error(`${name}: ${JSON.stringify(parsed.faults)}`);
  return parsed.value;
};
const WAYS = TRANSITIONS.filter(({ keyPoses }) => keyPoses !== undefined);
const REQUEST = { theme: "screen", width: 300 } as const;
let solver: LinearSolver;
let caseP: PersonToday;
let caseA: PersonToday;
beforeAll(async () => {
  solver = await loadLinearSolver();
  const people = keepPeople(solver);
  caseP = people.today(read("case-p"));
  caseA = people.today(read("case-a"));
}, 60_000);

/** Every text of an answer, pictures left out. */
function textsOf(value: unknown, key = ""): string[] {
  if (key === "svg" || key === "id" || key === "whoMoves") return [];
  if (typeof value === "string") return [value];
  if (Array.isArray(value)) return value.flatMap((each: unknown) => textsOf(each));
  if (typeof value === "object" && value !== null)
    return Object.entries(value).flatMap(([name, each]) => textsOf(each, name));
  return [];
}
const momentsOf = (way: WaySteps) => way.steps.flatMap(({ moments }) => moments);

describe("a way replayed step by step", () => {
  it("has every step in order, each moment with its picture, helper, effort and help", () => {
    const way = transitionSteps(caseP, "long-sitting-to-hands-and-knees", solver, REQUEST);
    expect(way.steps.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5]);
    expect(way.steps.map(({ moments }) => moments.length)).toEqual([1, 1, 0, 1, 1]);
    for (const moment of momentsOf(way)) {
      expect(moment.picture.svg).toMatch(/^<svg/);
      expect(moment.picture.text.length).toBeGreaterThan(40);
      expect(moment.hands).toHaveLength(2);
      expect(["easy", "steady", "hard", "edge", "folds"]).toContain(moment.effort);
    }
    expect(momentsOf(way).filter(({ hardest }) => hardest)).toHaveLength(1);
    const turning = way.steps[3]?.moments[0];
    expect(turning?.onThigh).toMatch(/upper chest/);
    expect(turning?.help?.sentence).toMatch(/newtons/);
  });

  it("speaks of the body's own sides only: no weak or strong is said, and the sides turn over with the person", () => {
    const other: PersonToday = { ...caseP, laterality: { weak: caseP.laterality.weak === "right" ? "left" : "right" } };
    for (const { id } of WAYS.slice(0, 12)) {
      const own = textsOf(transitionSteps(caseP, id, solver, REQUEST));
      expect(
        own.filter((text) => /\b(weak|strong)(er)?\b/i.test(text)),
        id,
      ).toEqual([]);
      expect(
        own.filter((text) => /NaN|undefined|Infinity/.test(text)),
        id,
      ).toEqual([]);
      const swapped = own.map((text) =>
        text.replace(/\b([Ll])eft\b|\b([Rr])ight\b/g, (word) =>
          word.toLowerCase() === "left" ? (word === "Left" ? "Right" : "right") : word === "Right" ? "Left" : "left",
        ),
      );
      expect(textsOf(transitionSteps(other, id, solver, REQUEST)), id).toEqual(swapped);
    }
  }, 30_000);

  it("is answered for every way, with or without key poses", () => {
    for (const { id, steps, keyPoses } of TRANSITIONS) {
      const way = transitionSteps(caseA, id, solver, { theme: "paper", width: 120 });
      expect(way.steps.length, id).toBe(steps.length);
      expect(momentsOf(way).length, id).toBe(keyPoses?.length ?? 0);
      if (keyPoses === undefined) expect(way.hardestStep, id).toBeNull();
    }
  }, 60_000);

  it("finds a hardest moment and the helpers for the two arm cases, printed", () => {
    const lines: string[] = [];
    for (const [name, person] of [
      ["Case P", caseP],
      ["Case A", caseA],
    ] as const)
      for (const { id } of WAYS) {
        const way = transitionSteps(person, id, solver, { theme: "paper", width: 120 });
        const hardest = momentsOf(way).find((moment) => moment.hardest);
        lines.push(
          `${name} | ${id} | ${way.helpers ?? "not today"} | step ${way.hardestStep} | ${hardest?.effort} | ${hardest?.givesWay ?? "-"} | ${hardest?.help?.newtons ?? "-"} N`,
        );
      }
    console.log(lines.join("\n"));
    // Both lie, roll, come up at the edge and sit with one helper (their case pages' look: with help, not impossible).
    for (const person of [caseP, caseA])
      for (const id of [
        "roll-onto-strong-side",
        "roll-onto-weak-side",
        "side-lying-to-short-sitting",
        "supine-to-hook-lying",
      ])
        expect(transitionSteps(person, id, solver, REQUEST).helpers, id).toBe(1);
  }, 60_000);

  it("refuses a way that does not exist as a programmer's error", () => {
    expect(() => transitionSteps(caseP, "bed-to-moon", solver, REQUEST)).toThrow("no way bed-to-moon");
  });
});
