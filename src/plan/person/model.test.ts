import { describe, expect, it } from "vitest";
import { seededStream } from "../../quantity/random.ts";
import {
  type Evidence,
  type EffortModel,
  strengthLikelihood,
  taskLikelihood,
  taskOutcomes,
  TASK_RESULTS,
} from "./evidence.ts";
import { buildPersonModel } from "./model.ts";
import { cumulative, cumulativeDelayed, quantile } from "./normal.ts";
import { latentOf, priorBelief, strengthOf } from "./prior.ts";
import { SLOT_COUNT, slotIndex } from "./slots.ts";

/** A task whose cube-norm effort is a plain sum: load / strength for a few slots. */
function plainTask(loads: ReadonlyMap<number, number>): EffortModel {
  const cubes = (s: Float64Array) => [...loads].map(([i, load]) => (load / Math.max(s[i] ?? 0, 1e-3)) ** 3);
  return {
    logEffort: (s) => Math.log(cubes(s).reduce((a, b) => a + b, 0)) / 3,
    logGradient: (s, into) => {
      into.fill(0);
      const parts = cubes(s);
      const total = parts.reduce((a, b) => a + b, 0);
      [...loads.keys()].forEach((i, k) => {
        into[i] = -(parts[k] ?? 0) / total;
      });
    },
    jointShare: () => 0.5,
  };
}
const hip = slotIndex("weak", "hipExtension");
const knee = slotIndex("weak", "kneeExtension");
const bridge = plainTask(
  new Map([
    [hip, 0.15],
    [slotIndex("weak", "kneeFlexion"), 0.08],
    [slotIndex("strong", "hipExtension"), 0.15],
  ]),
);
const grade = (slot: number, q: readonly [number, number, number]): Evidence => ({
  id: `grade.${slot}`,
  words: "grade",
  kind: "grade",
  seenInFunction: false,
  quantity: { of: "strength", slot },
  logLikelihood: strengthLikelihood(q),
  outcomes: null,
});
const seen = (task: EffortModel, result: (typeof TASK_RESULTS)[number]): Evidence => ({
  id: "look.bridge",
  words: "bridge",
  kind: "look",
  seenInFunction: true,
  quantity: { of: "effort", task },
  logLikelihood: taskLikelihood(result, 0.25),
  outcomes: { found: TASK_RESULTS.indexOf(result), probabilities: taskOutcomes(0.25) },
});

describe("the normal distribution", () => {
  it("agrees with the printed table (Abramowitz and Stegun, table 26.1)", () => {
    expect(cumulative(1)).toBeCloseTo(0.841344746068543, 12);
    expect(cumulative(2.5)).toBeCloseTo(0.993790334674224, 12);
    expect(cumulative(-4)).toBeCloseTo(3.1671241833e-5, 13);
    for (const p of [1e-6, 0.01, 0.3, 0.5, 0.975, 0.9999]) expect(cumulative(quantile(p))).toBeCloseTo(p, 12);
  });
  it("adds an exponential delay as a convolution does", () => {
    const [spread, delay, x] = [0.34, 0.5, 0.2];
    let sum = 0;
    const step = 1e-3;
    for (let t = step / 2; t < 8; t += step)
      sum += (Math.exp(-t / delay) / delay) * cumulative((x - t) / spread) * step;
    expect(cumulativeDelayed(x, spread, delay)).toBeCloseTo(sum, 5);
  });
});

describe("the person model", () => {
  it("is the prior where nothing was found", () => {
    const model = buildPersonModel("oneSide", []);
    const prior = priorBelief("oneSide");
    expect(model.ranges[hip]?.middle).toBeCloseTo(0.5, 1);
    expect(strengthOf(prior.mean[hip] ?? 0)).toBeCloseTo(0.5, 9);
    expect(model.samples.effective).toBeGreaterThan(500);
  });
  it("matches brute-force weighing of many draws from the prior for one grade and one task", () => {
    const evidence = [grade(knee, [0.05, 0.06, 0.13]), seen(bridge, "withTouch")];
    const model = buildPersonModel("oneSide", evidence, 2000);
    const stream = seededStream(5);
    const prior = priorBelief("oneSide");
    // Brute force in the three strengths that matter, conditioned by rejection on a fine grid of draws from the prior.
    const cholesky = (size: number, a: (i: number, j: number) => number) => {
      const l: number[][] = [];
      for (let i = 0; i < size; i++) {
        l.push([]);
        for (let j = 0; j <= i; j++) {
          let s = a(i, j);
          for (let k = 0; k < j; k++) s -= (l[i]?.[k] ?? 0) * (l[j]?.[k] ?? 0);
          (l[i] as number[])[j] = i === j ? Math.sqrt(s) : s / (l[j]?.[j] ?? 1);
        }
      }
      return l;
    };
    const ids = [hip, knee, slotIndex("weak", "kneeFlexion"), slotIndex("strong", "hipExtension")];
    const l = cholesky(4, (i, j) => prior.covariance[(ids[i] ?? 0) * SLOT_COUNT + (ids[j] ?? 0)] ?? 0);
    let total = 0;
    let mean = 0;
    for (let n = 0; n < 60000; n++) {
      const e = [0, 1, 2, 3].map(() => quantile(Math.min(Math.max(stream(), 1e-9), 1 - 1e-9)));
      const z = new Float64Array(SLOT_COUNT);
      ids.forEach((id, i) => {
        z[id] = (prior.mean[id] ?? 0) + e.reduce((s, v, k) => s + (k <= i ? (l[i]?.[k] ?? 0) * v : 0), 0);
      });
      const s = Float64Array.from(z, strengthOf);
      const w = Math.exp(
        (evidence[0]?.logLikelihood(z[knee] ?? 0) ?? 0) + (evidence[1]?.logLikelihood(bridge.logEffort(s)) ?? 0),
      );
      total += w;
      mean += w * (s[hip] ?? 0);
    }
    const weighted = model.samples.draws.reduce(
      (sum, draw, k) => sum + (draw[hip] ?? 0) * (model.samples.weights[k] ?? 0),
      0,
    );
    // Allowance: three standard errors of two means over some 500 effective draws of a quantity spread by about 0.2.
    expect(Math.abs(weighted - mean / total)).toBeLessThan(0.04);
  });
  it("does not depend on the order of the findings and repeats itself to the bit", () => {
    const evidence = [grade(knee, [0.05, 0.06, 0.13]), grade(hip, [0.1, 0.2, 0.3]), seen(bridge, "alone")];
    const one = buildPersonModel("oneSide", evidence);
    const two = buildPersonModel("oneSide", [...evidence].reverse());
    expect(two.ranges).toEqual(one.ranges);
  });
  it("puts a low grade low and lets the same joint group follow", () => {
    const none = buildPersonModel("oneSide", []);
    const low = buildPersonModel("oneSide", [grade(knee, [0.02, 0.04, 0.06])]);
    expect(low.ranges[knee]?.middle).toBeLessThan(0.07);
    expect(low.ranges[knee]?.high).toBeLessThan(0.12);
    expect(low.ranges[hip]?.middle ?? 1).toBeLessThan(none.ranges[hip]?.middle ?? 0);
    expect(
      Math.abs(
        (low.ranges[slotIndex("strong", "elbowFlexion")]?.middle ?? 0) -
          (none.ranges[slotIndex("strong", "elbowFlexion")]?.middle ?? 0),
      ),
    ).toBeLessThan(0.12);
  });
  it("a better result never makes the task look harder", () => {
    const efforts = TASK_RESULTS.map((result) => {
      const model = buildPersonModel("oneSide", [seen(bridge, result)]);
      return model.samples.draws.reduce(
        (sum, draw, k) => sum + bridge.logEffort(draw) * (model.samples.weights[k] ?? 0),
        0,
      );
    });
    for (let k = 1; k < efforts.length; k++) expect(efforts[k]).toBeLessThanOrEqual((efforts[k - 1] ?? 0) + 0.02);
  });
  it("keeps latent values and strengths inverse to each other", () => {
    for (const s of [0.01, 0.2, 0.9, 1.2]) expect(strengthOf(latentOf(s))).toBeCloseTo(s, 9);
  });
});
