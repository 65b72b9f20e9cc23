import { describe, expect, it } from "vitest";
import * as poses from "../../../checks/poses.ts";
import { seededStream } from "../../quantity/random.ts";
import { buildBody } from "../body/build.ts";
import { normalCapacities } from "../body/strength-capacities.ts";
import { STRENGTH_IDS, type Strengths, strengthsFrom } from "../body/strength-keys.ts";
import { closePose } from "../pose/close.ts";
import { prepareStatics } from "./statics.ts";
import { type EffortEstimate, estimateEfforts, storeEfforts, strengthVector } from "./stored-efforts.ts";

const random = seededStream(77);
const draw = (): Strengths =>
  strengthsFrom((id) => (id.endsWith(".weak") ? 0.15 + 0.6 * random() : 0.5 + 0.6 * random()));

describe("efforts answered from kept solutions", () => {
  it("lie between their bounds and near the solved ones, on 1,000 random strengths", { timeout: 30_000 }, () => {
    const errors: number[] = [];
    let outside = 0;
    let solves = 0;
    for (const specification of [
      poses.BRIDGE,
      poses.BRIDGE_STRONG_FOOT_UP,
      poses.HANDS_AND_KNEES,
      poses.TALL_KNEELING,
    ]) {
      const body = buildBody({ sex: "female", height: 1.62, mass: 68 }, 1);
      const pose = closePose(body, specification);
      if (!pose.closed) throw new Error(pose.because);
      const statics = prepareStatics(body, pose);
      const normal = normalCapacities(body, 67, pose.configuration.angles);
      const kept = Array.from({ length: 32 }, draw);
      const stored = storeEfforts(statics, normal, kept);
      if (stored === null) throw new Error("not in balance");
      for (let k = 0; k < 250; k++) {
        const strengths = draw();
        const solvedAt = storeEfforts(statics, normal, [strengths]);
        if (solvedAt === null) throw new Error("not in balance");
        const exact = estimateEfforts(solvedAt, strengthVector(strengths)).value;
        const estimate = estimateEfforts(stored, strengthVector(strengths));
        expect(estimate.low).toBeLessThanOrEqual(estimate.high + 1e-12);
        if (exact < estimate.low * 0.97 || exact > estimate.high * 1.03) outside++;
        errors.push(Math.abs(Math.log(estimate.value / exact)));
        expect(estimate.shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 5);
        solves++;
      }
    }
    errors.sort((a, b) => a - b);
    const at = (share: number): number => errors[Math.floor(share * (errors.length - 1))] ?? 0;
    console.log(
      `stored efforts: ${solves} strengths, error of E: median ${(100 * at(0.5)).toFixed(1)} %, 95th ${(100 * at(0.95)).toFixed(1)} %; ${outside} outside the bounds by over 3 %`,
    );
    expect(at(0.5)).toBeLessThan(0.05);
    expect(at(0.95)).toBeLessThan(0.2);
    expect(outside / solves).toBeLessThan(0.02);
  });

  it("are exact with no gap at a kept point, and their slope is that of solving again", () => {
    const body = buildBody({ sex: "male", height: 1.8, mass: 85 }, -1);
    const pose = closePose(body, poses.HANDS_AND_KNEES);
    if (!pose.closed) throw new Error(pose.because);
    const statics = prepareStatics(body, pose);
    const normal = normalCapacities(body, 60, pose.configuration.angles);
    const strengths = draw();
    const at = (which: Strengths): EffortEstimate => {
      const stored = storeEfforts(statics, normal, [which]);
      if (stored === null) throw new Error("not in balance");
      return estimateEfforts(stored, strengthVector(which));
    };
    const here = at(strengths);
    expect(here.high / here.low).toBeCloseTo(1, 9);
    // The leading slope against a difference of two solves.
    const lead = here.slope.reduce((best, value, k) => (value < (here.slope[best] ?? 0) ? k : best), 0);
    const id = STRENGTH_IDS[lead];
    const step = 0.05;
    const up = at(strengthsFrom((each) => strengths[each] * (each === id ? Math.exp(step) : 1)));
    const down = at(strengthsFrom((each) => strengths[each] * (each === id ? Math.exp(-step) : 1)));
    const slope = (Math.log(up.value) - Math.log(down.value)) / (2 * step);
    console.log(
      `stored efforts: slope of ln E along ${id}: ${(here.slope[lead] ?? 0).toFixed(3)}, by solving ${slope.toFixed(3)}`,
    );
    expect(slope).toBeCloseTo(here.slope[lead] ?? 0, 1);
  });
});
