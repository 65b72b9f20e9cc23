import { describe, expect, it } from "vitest";
import * as poses from "../../../checks/poses.ts";
import { buildBody } from "../body/build.ts";
import { evenStrengths, strengthsFrom } from "../body/strength-keys.ts";
import { closePose, type ClosedPose } from "../pose/close.ts";
import type { PoseSpecification } from "../pose/specification.ts";
import { limitsOf } from "../pose/targets.ts";
import { placeFrames, pointInRoom } from "../pose/kinematics.ts";
import { patchOn } from "../body/patches.ts";
import { type BalanceOutline, balanceOutline, prepareStations, type StationOptions } from "./outline.ts";
import { slideCentre } from "./slide.ts";

const SIZE = { sex: "male", height: 1.75, mass: 80 } as const;
const WEAK = strengthsFrom((id) => (id.endsWith(".weak") ? 0.3 : id.startsWith("trunk") ? 0.6 : 0.9));

function closed(specification: PoseSpecification, weakAt: 1 | -1 = 1): ClosedPose {
  const pose = closePose(buildBody(SIZE, weakAt), specification);
  if (!pose.closed) throw new Error(pose.because);
  return pose;
}
function outlineOf(
  specification: PoseSpecification,
  strengths = WEAK,
  weakAt: 1 | -1 = 1,
  options: StationOptions = {},
): BalanceOutline {
  const outline = balanceOutline(
    prepareStations(buildBody(SIZE, weakAt), 60, closed(specification, weakAt), options),
    strengths,
  );
  if (!outline.balanced) throw new Error(outline.because);
  return outline;
}

describe("the balance outline", () => {
  it("has an end with a name in every direction, and the least is the least", () => {
    for (const pose of [poses.HANDS_AND_KNEES, poses.TALL_KNEELING, poses.STANDING, poses.BRIDGE]) {
      const outline = outlineOf(pose);
      expect(outline.directions.length).toBe(8);
      for (const each of outline.directions) {
        expect(Number.isFinite(each.metres)).toBe(true);
        expect(each.metres).toBeGreaterThanOrEqual(outline.least.metres);
        expect(each.what).not.toBe("");
      }
    }
  });

  it("is the same way round on the mirrored tree", () => {
    for (const pose of [poses.HANDS_AND_KNEES, poses.TALL_KNEELING]) {
      const one = outlineOf(pose, WEAK, 1);
      const two = outlineOf(pose, WEAK, -1);
      one.directions.forEach((each, k) => {
        const other = two.directions[k];
        expect(other?.towards).toBe(each.towards);
        expect(other?.metres).toBeCloseTo(each.metres, 4);
        expect(other?.endedBy).toBe(each.endedBy);
        expect(other?.direction[1]).toBeCloseTo(-each.direction[1], 12);
      });
    }
  });

  it("is near in front of the knees in tall kneeling, and the least on hands and knees is toward the weak hand", () => {
    const kneeling = outlineOf(poses.TALL_KNEELING);
    console.log(
      `tall kneeling: least ${(kneeling.least.metres * 100).toFixed(1)} cm ${kneeling.least.towards}, ended by ${kneeling.least.endedBy}`,
    );
    expect(kneeling.least.towards).toBe("forward");
    const allFours = outlineOf(poses.HANDS_AND_KNEES);
    console.log(
      `hands and knees: least ${(allFours.least.metres * 100).toFixed(1)} cm ${allFours.least.towards}, ended by ${allFours.least.endedBy} ${allFours.least.what}`,
    );
    expect(["forwardWeak", "weak"]).toContain(allFours.least.towards);
  });

  it("is smaller, never larger, for weaker muscles, within a centimetre", () => {
    const stations = prepareStations(buildBody(SIZE, 1), 60, closed(poses.HANDS_AND_KNEES));
    const strong = balanceOutline(stations, evenStrengths(1));
    const weak = balanceOutline(stations, evenStrengths(0.4));
    if (!strong.balanced || !weak.balanced) throw new Error("no outline");
    weak.directions.forEach((each, k) => {
      expect(each.metres).toBeLessThan((strong.directions[k]?.metres ?? 0) + 0.01);
    });
  });

  it("answers the same again from what it kept", () => {
    const stations = prepareStations(buildBody(SIZE, 1), 60, closed(poses.HANDS_AND_KNEES));
    const first = balanceOutline(stations, WEAK);
    balanceOutline(stations, evenStrengths(1));
    expect(balanceOutline(stations, WEAK)).toEqual(first);
  });

  it("with its few stations a way is within 2.5 cm of one with six, where muscle ends it", () => {
    const few = outlineOf(poses.HANDS_AND_KNEES);
    const many = outlineOf(poses.HANDS_AND_KNEES, WEAK, 1, { shares: [0.16, 0.32, 0.48, 0.64, 0.8, 0.97] });
    let worst = 0;
    few.directions.forEach((each, k) => {
      const other = many.directions[k];
      if (each.endedBy === "muscle" && other?.endedBy === "muscle")
        worst = Math.max(worst, Math.abs(each.metres - other.metres));
    });
    console.log(`outline: three stations against six, worst difference ${(worst * 1000).toFixed(0)} mm`);
    expect(worst).toBeLessThan(0.025);
  });
});

describe("taking the weight outward", () => {
  it("keeps hands and knees where they are and every angle in its range", () => {
    const body = buildBody(SIZE, 1);
    const pose = closed(poses.HANDS_AND_KNEES);
    const limits = limitsOf(body);
    const slide = slideCentre(body, pose, [1, 0], 0, pose.configuration, 0.12, limits);
    if (slide.station === null) throw new Error("stuck");
    expect(slide.station.centre[0] - pose.centre[0]).toBeCloseTo(0.12, 2);
    const frames = placeFrames(body, slide.station.configuration);
    for (const id of ["hand.weak", "hand.strong", "shin.weak"] as const) {
      const patch = patchOn(body, id);
      for (const ball of patch.balls) {
        const before = pointInRoom(body, pose.frames, patch.segment, ball.centre);
        const after = pointInRoom(body, frames, patch.segment, ball.centre);
        expect(Math.hypot(after[0] - before[0], after[1] - before[1], after[2] - before[2])).toBeLessThan(0.006);
      }
    }
    slide.station.configuration.angles.forEach((angle, i) => {
      expect(angle).toBeGreaterThanOrEqual((limits.least[i] ?? 0) - 1e-9);
      expect(angle).toBeLessThanOrEqual((limits.most[i] ?? 0) + 1e-9);
    });
  });
});
