import { describe, expect, it } from "vitest";
import * as poses from "../../../checks/poses.ts";
import { buildBody } from "../body/build.ts";
import { evenStrengths, strengthsFrom } from "../body/strength-keys.ts";
import { holdTimesOf } from "./position-time.ts";

const BODY = buildBody({ sex: "female", height: 1.62, mass: 68 }, 1);
const WHO = { sex: "female", age: 67, paretic: "weak" } as const;
const WEAK = strengthsFrom((id) => (id.endsWith(".weak") ? 0.4 : id.startsWith("trunk") ? 0.7 : 0.9));

describe("how long a position lasts", () => {
  it("names the joint that gives out first, with a time that ends", () => {
    for (const [name, pose] of [
      ["one foot up", poses.BRIDGE_STRONG_FOOT_UP],
      ["hands and knees", poses.HANDS_AND_KNEES],
      ["push-up on the knees", poses.PUSH_UP_ON_KNEES],
    ] as const) {
      const [first, ...rest] = holdTimesOf(poses.holdPose(BODY, pose, 67, WEAK), WHO);
      if (first === undefined) throw new Error(`${name} has no end`);
      console.log(
        `${name}: ${first.joint} ${first.direction}, ${first.side} side, ${Math.round(first.share * 100)} %, plan on ${Math.round(first.low ?? 0)} s`,
      );
      for (const each of rest) expect(each.low ?? 0).toBeGreaterThanOrEqual(first.low ?? 0);
    }
  });
  it("is shorter for the weak than for the healthy, and shorter with one foot up than with both", () => {
    const first = (pose: typeof poses.BRIDGE, strengths: typeof WEAK) =>
      holdTimesOf(poses.holdPose(BODY, pose, 67, strengths), WHO)[0]?.low ?? 1e9;
    expect(first(poses.HANDS_AND_KNEES, WEAK)).toBeLessThan(first(poses.HANDS_AND_KNEES, evenStrengths(1)));
    expect(first(poses.BRIDGE_STRONG_FOOT_UP, WEAK)).toBeLessThan(first(poses.BRIDGE, WEAK));
  });
  it("is nothing where a joint is over its strength already", () => {
    const times = holdTimesOf(poses.holdPose(BODY, poses.BRIDGE_STRONG_FOOT_UP, 67, evenStrengths(0.3)), WHO);
    expect(times[0]?.seconds).toBe(0);
  });
});
