import { describe, expect, it } from "vitest";
import * as poses from "../../../checks/poses.ts";
import { buildBody } from "../../mechanics/body/build.ts";
import { normalCapacities } from "../../mechanics/body/strength-capacities.ts";
import { prepareStatics } from "../../mechanics/equilibrium/statics.ts";
import { closePose } from "../../mechanics/pose/close.ts";
import type { PoseSpecification } from "../../mechanics/pose/specification.ts";
import { seededStream } from "../../quantity/random.ts";
import type { PreparedPose } from "../assess/prepared.ts";
import { SLOT_COUNT } from "./slots.ts";
import { keepTaskEfforts } from "./task-efforts.ts";

const random = seededStream(77);
/** As wide as what is believed after a look: most within a factor of 1.4 of the middle. */
const draw = (): Float64Array =>
  Float64Array.from({ length: SLOT_COUNT }, () => 0.55 * Math.exp(0.8 * (random() + random() - 1)));

function prepared(specification: PoseSpecification): PreparedPose {
  const body = buildBody({ sex: "female", height: 1.62, mass: 68 }, -1);
  const pose = closePose(body, specification);
  if (!pose.closed) throw new Error(pose.because);
  return {
    possible: true,
    pose,
    statics: prepareStatics(body, pose),
    normal: normalCapacities(body, 67, pose.configuration.angles),
  };
}

// Rival: solving the sharing afresh at the same strengths (which keeping those very strengths does).
describe("efforts of a task at strengths it was not solved at", () => {
  it("lie near the solved ones on 600 random strengths", { timeout: 60_000 }, () => {
    const errors: number[] = [];
    for (const specification of [poses.BRIDGE, poses.HANDS_AND_KNEES, poses.TALL_KNEELING]) {
      const ready = prepared(specification);
      const kept = keepTaskEfforts(ready, Array.from({ length: 24 }, draw));
      if (kept === null) throw new Error("not in balance");
      for (let k = 0; k < 200; k++) {
        const strengths = draw();
        const exact = keepTaskEfforts(ready, [strengths]);
        if (exact === null) throw new Error("not in balance");
        errors.push(Math.abs(kept.logEffort(strengths) - exact.logEffort(strengths)));
      }
    }
    errors.sort((a, b) => a - b);
    const at = (share: number): number => errors[Math.floor(share * (errors.length - 1))] ?? 0;
    console.log(
      `kept efforts: ${errors.length} strengths, error median ${(100 * at(0.5)).toFixed(1)} %, 95th ${(100 * at(0.95)).toFixed(1)} %`,
    );
    // Every strength drawn by itself, wider than any belief: still well within the third that a task leaves open anyway.
    expect(at(0.5)).toBeLessThan(0.15);
    expect(at(0.95)).toBeLessThan(0.35);
  });

  it("fall as a strength rises, by the slope of solving again", () => {
    const ready = prepared(poses.HANDS_AND_KNEES);
    const strengths = draw();
    const at = (which: Float64Array): number => keepTaskEfforts(ready, [which])?.logEffort(which) ?? Number.NaN;
    const slope = new Float64Array(SLOT_COUNT);
    keepTaskEfforts(ready, [strengths])?.logGradient(strengths, slope);
    let steepest = 0;
    slope.forEach((value, i) => {
      expect(value).toBeLessThanOrEqual(0);
      if (value < (slope[steepest] ?? 0)) steepest = i;
    });
    const moved = (by: number): Float64Array => strengths.map((s, i) => (i === steepest ? s * Math.exp(by) : s));
    const change = (at(moved(0.05)) - at(moved(-0.05))) / 0.1;
    console.log(`kept efforts: steepest slope ${(slope[steepest] ?? 0).toFixed(3)}, by solving ${change.toFixed(3)}`);
    expect(slope[steepest]).toBeLessThan(-0.05);
    expect(Math.abs(change - (slope[steepest] ?? 0))).toBeLessThan(0.1);
  });

  it("share out to one over the joints", () => {
    const kept = keepTaskEfforts(prepared(poses.BRIDGE), [draw()]);
    if (kept === null) throw new Error("not in balance");
    const strengths = draw();
    const joints = ["trunk", "neck", "shoulder girdle", "shoulder", "elbow", "wrist", "hip", "knee", "ankle", "toes"];
    const sum = joints.reduce(
      (total, joint) =>
        total +
        (joint === "trunk" || joint === "neck"
          ? kept.jointShare(strengths, joint)
          : kept.jointShare(strengths, `${joint}.weak`) + kept.jointShare(strengths, `${joint}.strong`)),
      0,
    );
    expect(sum).toBeCloseTo(1, 6);
  });
});
