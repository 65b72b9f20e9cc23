import { describe, expect, it } from "vitest";
import type { Body } from "../mechanics/body/body.ts";
import { buildBody } from "../mechanics/body/build.ts";
import { type PatchId, patchOn } from "../mechanics/body/patches.ts";
import { type ClosedPose, closePose } from "../mechanics/pose/close.ts";
import { pointInRoom } from "../mechanics/pose/kinematics.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import { SITTING_LADDERS, SITTING_POSITIONS, SITTING_WAYS } from "../practice/catalogue-sitting.ts";

/** What a pose of these ladders must be on the outermost bodies (the pictures see to the common ones). Common practice, no source: a seat off is off, a lifted foot is clear. */
const BODIES = [
  ["a short and heavy woman", buildBody({ sex: "female", height: 1.5, mass: 90 }, -1)],
  ["a tall and slight man", buildBody({ sex: "male", height: 1.92, mass: 68 }, 1)],
] as const;

const POSES: readonly (readonly [string, PoseSpecification])[] = [
  ...SITTING_LADDERS.flatMap((activity) =>
    activity.rungs.flatMap((rung): (readonly [string, PoseSpecification])[] => [
      [`${activity.id} / ${rung.id}`, rung.pose],
      ...(rung.start === undefined ? [] : [[`${activity.id} / ${rung.id}, start`, rung.start] as const]),
    ]),
  ),
  ...SITTING_POSITIONS.map(({ id, pose }) => [id, pose] as const),
  ...SITTING_WAYS.flatMap((way) =>
    way.steps.flatMap(({ pose }, i): (readonly [string, PoseSpecification])[] =>
      pose === undefined ? [] : [[`${way.id}, step ${i + 1}`, pose]],
    ),
  ),
];

function rungPose(activity: string, rung: string): PoseSpecification {
  const found = SITTING_LADDERS.find(({ id }) => id === activity)?.rungs.find(({ id }) => id === rung)?.pose;
  if (found === undefined) throw new Error(`no rung ${activity} / ${rung}`);
  return found;
}
function closed(body: Body, pose: PoseSpecification): ClosedPose {
  const answer = closePose(body, pose);
  if (!answer.closed) throw new Error(answer.because);
  return answer;
}
/** How far a part of the skin is above a surface [m]. */
function clear(body: Body, pose: PoseSpecification, patch: PatchId, on: "seat" | "floor" | "mat"): number {
  const answer = closed(body, { ...pose, contacts: [...pose.contacts, { patch, on, role: "bears" }] });
  return Math.min(...(answer.contacts.at(-1)?.points.map(({ gap }) => gap) ?? [Number.NaN]));
}
/** The hindmost skin of a part [m]. */
function backOf(body: Body, pose: ClosedPose, patch: PatchId): number {
  const { segment, balls } = patchOn(body, patch);
  return Math.min(...balls.map((ball) => pointInRoom(body, pose.frames, segment, ball.centre)[0] - ball.radius));
}

describe.each(BODIES)("more sitting poses on %s", (_who, body) => {
  it.each(POSES)("%s closes within 1 mm, nothing sinks, and the weight is over what it stands on", (_name, pose) => {
    const answer = closePose(body, pose);
    expect(answer).toMatchObject({ closed: true });
    if (!answer.closed) return;
    expect(answer.residual).toBeLessThan(0.001);
    expect(answer.sinks).toBeLessThan(0.002);
    for (const contact of answer.contacts)
      if (contact.specification.role !== "bears") expect(contact.touches, contact.patch).toBe(true);
    const carried = answer.contacts
      .filter((contact) => contact.touches && contact.other === null && contact.specification.effort !== "rest")
      .flatMap((contact) => contact.points.map((point) => point.at));
    for (let degrees = 0; degrees < 360; degrees += 5) {
      const along = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)] as const;
      const reach = carried.map((at) => (at[0] - answer.centre[0]) * along[0] + (at[1] - answer.centre[1]) * along[1]);
      expect(Math.max(...reach)).toBeGreaterThan(0);
    }
  });

  it.each([
    ["short-sitting-block-press", "seat-off-block"],
    ["edge-scoot-sideways", "walk-seat-to-strong"],
    ["edge-scoot-sideways", "walk-seat-to-weak"],
    ["seat-to-seat-practice", "half-turn-to-strong"],
    ["seat-to-seat-practice", "half-turn-to-weak"],
    ["perch-to-stand", "off-perch-free"],
    ["perch-to-stand", "stop-below-perch"],
    ["sit-to-stand-other-feet", "lower-and-hover"],
    ["sit-to-stand-other-feet", "stop-half-way-up"],
    ["sit-to-stand-other-feet", "weak-foot-behind"],
    ["sit-to-stand-other-feet", "strong-foot-on-low-block"],
  ])("%s / %s: both hips are off the seat, and not high above it", (activity, rung) => {
    for (const side of ["weak", "strong"] as const) {
      const gap = clear(body, rungPose(activity, rung), `buttock.${side}`, "seat");
      expect(gap).toBeGreaterThan(0.003);
      expect(gap).toBeLessThan(0.25);
    }
  });

  it("lifts what a rung says is lifted", () => {
    expect(
      clear(body, rungPose("short-sitting-knee-straightening", "foot-off-floor"), "foot.weak", "floor"),
    ).toBeGreaterThan(0.03);
    expect(
      clear(body, rungPose("short-sitting-knee-straightening", "thigh-off-seat"), "thighBack.weak", "seat"),
    ).toBeGreaterThan(0.012);
    expect(clear(body, rungPose("short-sitting-heel-and-toes", "toes-up"), "forefoot.weak", "floor")).toBeGreaterThan(
      0.02,
    );
    expect(clear(body, rungPose("wall-sitting-thigh-set", "heel-up-over-roll"), "heel.weak", "mat")).toBeGreaterThan(
      0.05,
    );
    expect(clear(body, rungPose("wall-sitting-thigh-set", "straight-leg-raise"), "heel.weak", "mat")).toBeGreaterThan(
      0.05,
    );
    expect(clear(body, rungPose("cross-weak-leg", "thigh-carried-up"), "foot.weak", "floor")).toBeGreaterThan(0.03);
    expect(
      clear(body, rungPose("weak-hip-to-hands-and-knees", "seat-stops-low"), "buttock.weak", "mat"),
    ).toBeGreaterThan(0.02);
    expect(
      clear(body, rungPose("edge-scoot-back-and-ahead", "weak-hip-back-on-edge"), "buttock.weak", "seat"),
    ).toBeGreaterThan(0.01);
  });

  it("has blades and seat against the wall within a hand, and the blades off it where a rung says so", () => {
    const at = closed(body, rungPose("wall-sitting-tall", "both-blades-on"));
    const gap = (pose: ClosedPose): number =>
      backOf(body, pose, "shoulderBlade.strong") - backOf(body, pose, "buttock.strong");
    expect(Math.abs(gap(at))).toBeLessThan(0.06);
    expect(gap(closed(body, rungPose("wall-sitting-tall", "whole-back-off")))).toBeGreaterThan(gap(at) + 0.02);
  });
});
