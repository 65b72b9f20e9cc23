import { describe, expect, it } from "vitest";
import type { Body } from "../../src/mechanics/body/body.ts";
import { evenStrengths } from "../../src/mechanics/body/strength-keys.ts";
import { GRAVITY } from "../../src/mechanics/body/strength-norms.ts";
import { at, centreOf, type Compared, momentAbout, placed, printRows, referenceBody, type Sex } from "../holding.ts";
import { BRIDGE, BRIDGE_STRONG_FOOT_UP, holdPose } from "../poses.ts";
import expected from "./expected.json" with { type: "json" };

/** Shoulder, hip and knee in line over an upright shank, the line's slope found so that the shoulder is 70 mm high. */
function bridgeOf(body: Body, feet: number): { share: number; hipMoment: number } {
  let slope = 30;
  for (let k = 0; k < 40; k++) {
    const { frames } = straight(body, slope, feet);
    const sole = at(body, frames, "foot.weak")[2] - 0.039 * body.size.height;
    slope += (at(body, frames, "upperArm.weak")[2] - sole - 0.07) * 40;
  }
  const { frames } = straight(body, slope, feet);
  const ankle = at(body, frames, "foot.weak");
  const shoulder = at(body, frames, "upperArm.weak");
  // Head and arms rest by themselves; the rest is carried at ankle and shoulder.
  const rest = centreOf(body, frames, (id) => !/^(head|upperArm|forearm|hand)/.test(id));
  const share = ((rest.centre[0] - shoulder[0]) / (ankle[0] - shoulder[0])) * rest.mass;
  const newtons = (share * GRAVITY) / feet;
  const hipMoment = momentAbout(body, frames, "hipFlexion.weak", [
    { segment: "foot.weak", at: ankle, force: [0, 0, newtons] },
  ]);
  return { share: share / body.size.mass, hipMoment: -hipMoment };
}

/** On the back with the head toward the room's back, the trunk and thighs at a slope. */
function straight(body: Body, slope: number, feet: number) {
  const both = { kneeFlexion: 90 + slope, ankleDorsiflexion: 0, shoulderFlexion: 0 };
  return placed(body, -90 - slope, feet === 2 ? both : { "kneeFlexion.weak": 90 + slope, "kneeFlexion.strong": 0 });
}

describe("the bridge", () => {
  it("asks the derived moment of the hips", () => {
    const rows: Compared[] = expected.rows.flatMap(({ sex, feet, share, hipMoment }) => {
      const ours = bridgeOf(referenceBody(sex as Sex), feet);
      const what = `${sex}, ${feet === 2 ? "both feet" : "one foot"}`;
      return [
        { what: `${what}, share on feet`, ours: ours.share, theirs: share, allowed: 0.01 },
        { what: `${what}, N.m a hip`, ours: ours.hipMoment, theirs: hipMoment, allowed: feet === 2 ? 4 : 6 },
      ];
    });
    expect(printRows("bridge", rows)).toEqual([]);
  });

  it("asks about three times as much of one hip with the other foot up, in the real pose", () => {
    const body = referenceBody("male");
    const hip = (pose: typeof BRIDGE): number =>
      holdPose(body, pose, 40, evenStrengths(1)).efforts.find((each) => each.angle === "hipFlexion.weak")?.moment ?? 0;
    const both = -hip(BRIDGE);
    const one = -hip(BRIDGE_STRONG_FOOT_UP);
    console.log(`bridge, real pose: both feet ${both.toFixed(1)} N.m a hip, one foot ${one.toFixed(1)} N.m`);
    expect(one / both).toBeGreaterThan(2);
  });
});
