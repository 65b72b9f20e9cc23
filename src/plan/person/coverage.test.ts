import { describe, expect, it } from "vitest";
import { buildBody } from "../../mechanics/body/build.ts";
import { type Grade, gradeQuantiles } from "../../mechanics/body/grades.ts";
import { seededStream } from "../../quantity/random.ts";
import { keepPoses } from "../assess/prepared.ts";
import type { Findings, LookTask } from "../findings.ts";
import { TASK_RESULTS } from "./evidence.ts";
import { buildPersonModel } from "./model.ts";
import { quantile } from "./normal.ts";
import { priorBelief, strengthOf } from "./prior.ts";
import { readEvidence, taskModel } from "./read-evidence.ts";
import { LIMB_KEYS, SLOT_COUNT, SLOTS } from "./slots.ts";

const SIZE = { sex: "female", height: 1.63, mass: 68 } as const;
const BODY = buildBody(SIZE, -1);
const KEEPER = keepPoses({ body: BODY, ageYears: 67, loadShareWeak: {}, ranges: {} });
const NOTHING: Findings = {
  size: SIZE,
  ageYears: 67,
  pattern: "oneSide",
  daysSinceOnset: 14,
  stroke: true,
  date: null,
  look: [],
  strength: [],
  loadShareWeak: {},
  rangeDeg: { weak: {}, strong: {} },
  tone: { weak: {}, strong: {} },
  sensation: { weak: {}, strong: {} },
  shoulder: { painAtRest: null, painOnMovement: null, gapFingers: null },
  balance: { sitting: null, standing: null },
  signs: { pushing: null, neglect: null, impulsive: null, faints: null, fallSeen: null },
  communication: { aphasia: null, follows: null },
  precautions: [],
  medicines: [],
  vitals: {},
  place: null,
  equipment: [],
  helpers: { count: 1, canKneel: true, backTrouble: false },
  approach: { arm: "lend", leg: "train", trunk: "train" },
  assumed: [],
  goals: [],
  home: null,
  previous: [],
};
const GRADES: readonly Grade[] = ["0", "1", "2-", "2", "2+", "3-", "3", "3+", "4-", "4", "4+", "5-", "5"];
const TASKS: readonly LookTask[] = [
  "bridge",
  "bridgeLiftWeakFoot",
  "propOnForearms",
  "handsAndKnees",
  "standUp",
  "step",
];

/** An invented person: strengths from the first guess, graded and seen with noise of their own. */
function invent(seed: number): { truth: Float64Array; findings: Findings } {
  const stream = seededStream(seed);
  const normal = () => quantile(Math.min(Math.max(stream(), 1e-9), 1 - 1e-9));
  const prior = priorBelief("oneSide");
  const root: number[][] = [];
  for (let i = 0; i < SLOT_COUNT; i++) {
    root.push([]);
    for (let j = 0; j <= i; j++) {
      let sum = prior.covariance[i * SLOT_COUNT + j] ?? 0;
      for (let k = 0; k < j; k++) sum -= (root[i]?.[k] ?? 0) * (root[j]?.[k] ?? 0);
      (root[i] ?? [])[j] = i === j ? Math.sqrt(Math.max(sum, 1e-9)) : sum / (root[j]?.[j] ?? 1);
    }
  }
  const noise = Array.from({ length: SLOT_COUNT }, normal);
  const truth = Float64Array.from({ length: SLOT_COUNT }, (_, i) =>
    strengthOf((prior.mean[i] ?? 0) + (root[i] ?? []).reduce((sum, value, k) => sum + value * (noise[k] ?? 0), 0)),
  );
  const strength: Findings["strength"] = LIMB_KEYS.filter((_, k) => k % 3 === seed % 3).map((key) => {
    const slot = SLOTS.findIndex((each) => each.side === "weak" && each.key === key);
    const seen = Math.log(Math.max(truth[slot] ?? 0, 0.003)) + 0.3 * normal();
    const nearest = GRADES.reduce((best, grade) => {
      const off = (each: Grade) => Math.abs(Math.log(Math.max(gradeQuantiles(BODY, 67, key, each)[1], 0.003)) - seen);
      return off(grade) < off(best) ? grade : best;
    });
    return { side: "weak" as const, key, reading: { grade: nearest } };
  });
  const look: Findings["look"] = TASKS.flatMap((task) => {
    const model = taskModel(NOTHING, KEEPER, task);
    if (model === null) return [];
    const effort = model.logEffort(truth) + 0.34 * normal() + 0.15 * -Math.log(Math.max(stream(), 1e-9)) - 0.1;
    const result =
      effort > Math.log(1.6) ? 0 : effort > 0 ? 1 : effort > Math.log(0.8) ? 2 : effort > Math.log(0.5) ? 3 : 4;
    return [{ task, result: TASK_RESULTS[result] ?? "cannot", gaveWay: null, stoppedBy: null, seatHeight: null }];
  });
  return { truth, findings: { ...NOTHING, strength, look } };
}

/** Truth shares the first guess: this tests the arithmetic, not the clinic. */
describe("how often the truth lies inside what is believed", () => {
  it("holds the middle nine tenths about nine times in ten, and is nearer than the first guess", () => {
    let inside = 0;
    let all = 0;
    let error = 0;
    let before = 0;
    const guess = buildPersonModel("oneSide", [], 200);
    for (let seed = 1; seed <= 14; seed++) {
      const { truth, findings } = invent(seed);
      const model = buildPersonModel("oneSide", readEvidence(findings, BODY, KEEPER));
      for (let i = 0; i < SLOT_COUNT; i++) {
        if (SLOTS[i]?.side !== "weak") continue;
        const s = truth[i] ?? 0;
        const range = model.ranges[i];
        if (range === undefined) continue;
        all++;
        if (s >= range.low && s <= range.high) inside++;
        error += Math.abs(range.middle - s);
        before += Math.abs((guess.ranges[i]?.middle ?? 0) - s);
      }
    }
    console.log(
      `${all} strengths of 14 invented people: ${Math.round((100 * inside) / all)} in a hundred inside 90, error ${(error / all).toFixed(2)} of normal, ${(before / all).toFixed(2)} before any finding`,
    );
    // Allowance: five points of coverage either way and the scatter of some 14 correlated people.
    expect(inside / all).toBeGreaterThan(0.78);
    expect(error / all).toBeLessThan(0.7 * (before / all));
  }, 60_000);
});
