import { describe, expect, it } from "vitest";
import { buildBody } from "../mechanics/body/build.ts";
import type { SegmentId } from "../mechanics/body/names.ts";
import type { PatchId } from "../mechanics/body/patches.ts";
import { patchOn } from "../mechanics/body/patches.ts";
import { type ClosedPose, closePose } from "../mechanics/pose/close.ts";
import { pointInRoom } from "../mechanics/pose/kinematics.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import { ACTIVITIES, POSITIONS, TRANSITIONS } from "../practice/catalogue.ts";

/** Every pose lying and on the way up from it, closed on the bodies it will be drawn for. */
const LYING = ["supine", "hook-lying", "side-lying-on-weak-side", "side-lying-on-strong-side"];
const isLying = (id: string): boolean => LYING.includes(id);
const PEOPLE = [
  { sex: "female", height: 1.63, mass: 68 },
  { sex: "male", height: 1.77, mass: 84 },
  { sex: "female", height: 1.52, mass: 90 },
  { sex: "male", height: 1.9, mass: 70 },
] as const;
const BODIES = PEOPLE.map((size) => buildBody(size, 1));

const POSES: readonly { readonly name: string; readonly pose: PoseSpecification }[] = [
  ...ACTIVITIES.filter(({ position }) => isLying(position)).flatMap(({ id, rungs }) =>
    rungs.flatMap((rung) => [
      { name: `${id}/${rung.id}`, pose: rung.pose },
      ...(rung.start === undefined ? [] : [{ name: `${id}/${rung.id}, start`, pose: rung.start }]),
    ]),
  ),
  ...POSITIONS.filter(({ id }) => isLying(id)).map(({ id, pose }) => ({ name: id, pose })),
  ...TRANSITIONS.filter(({ from, to }) => isLying(from) && isLying(to)).flatMap(({ id, steps }) =>
    steps.flatMap(({ pose }, k) => (pose === undefined ? [] : [{ name: `${id}, step ${k + 1}`, pose }])),
  ),
];

function closed(pose: PoseSpecification, k: number): ClosedPose {
  const body = BODIES[k];
  if (body === undefined) throw new Error("no such body");
  const result = closePose(body, pose);
  if (!result.closed) throw new Error(result.because);
  return result;
}
function poseOf(activity: string, rung: string): PoseSpecification {
  const found = ACTIVITIES.find(({ id }) => id === activity)?.rungs.find(({ id }) => id === rung)?.pose;
  if (found === undefined) throw new Error(`no ${activity}/${rung}`);
  return found;
}
/** Height of a joint above the mat [m] on the second body. */
function heightOf(pose: PoseSpecification, segment: SegmentId): number {
  const body = BODIES[1];
  if (body === undefined) throw new Error("no such body");
  return pointInRoom(body, closed(pose, 1).frames, segment, [0, 0, 0])[2];
}
function clearOf(pose: PoseSpecification, patch: PatchId): number {
  const body = BODIES[1];
  if (body === undefined) throw new Error("no such body");
  const { frames } = closed(pose, 1);
  const { balls, segment } = patchOn(body, patch);
  return Math.min(...balls.map((ball) => pointInRoom(body, frames, segment, ball.centre)[2] - ball.radius));
}

describe("poses lying", () => {
  it("close on a short, a tall, a heavy and a slight body within a millimetre, nothing sinking, near their aims", () => {
    const wrong: string[] = [];
    for (const { name, pose } of POSES) {
      BODIES.forEach((body, k) => {
        const result = closePose(body, pose);
        const who = `${name} on ${PEOPLE[k]?.sex} ${PEOPLE[k]?.height}`;
        if (!result.closed) wrong.push(`${who}: ${result.because}`);
        else {
          if (result.residual > 0.001 || result.sinks > 0.001)
            wrong.push(`${who}: residual ${result.residual}, sinks ${result.sinks}`);
          if (result.furthest.by > 0.6)
            wrong.push(
              `${who}: ${result.furthest.angle} is ${Math.round(result.furthest.by * 57.3)} degrees off its aim`,
            );
        }
      });
    }
    expect(wrong).toEqual([]);
    expect(POSES.length).toBeGreaterThan(60);
  });

  it("lift a seat that leaves the mat, higher in the full lift than in the half", () => {
    const tilt = heightOf(poseOf("bridge", "tail-tilt"), "pelvis");
    const half = heightOf(poseOf("bridge", "half-lift"), "pelvis");
    const full = heightOf(poseOf("bridge", "full-lift"), "pelvis");
    expect(half - tilt).toBeGreaterThan(0.05);
    expect(full - half).toBeGreaterThan(0.04);
  });

  it("lift the foot that is said to be free by a hand's breadth at least, and no other", () => {
    for (const [rung, side] of [
      ["weak-foot-up", "weak"],
      ["strong-foot-up", "strong"],
    ] as const) {
      const pose = poseOf("bridge", rung);
      const other = side === "weak" ? "strong" : "weak";
      expect(clearOf(pose, `foot.${side}`)).toBeGreaterThan(0.08);
      expect(Math.abs(clearOf(pose, `foot.${other}`))).toBeLessThan(0.002);
    }
    expect(clearOf(poseOf("heel-slide-weak", "foot-over-block"), "foot.weak")).toBeGreaterThan(0.06);
    expect(clearOf(poseOf("hip-abduction-side-lying", "straight-leg"), "ankleSide.weak")).toBeGreaterThan(0.25);
  });

  it("never raise the self-assisted arm past the vertical, and keep the hand at the wrist", () => {
    for (const rung of ["third-up", "breast-height", "reach-up"]) {
      const pose = poseOf("arm-raise-self-assisted", rung);
      expect(pose.weakDeg?.shoulderFlexion ?? 0).toBeLessThanOrEqual(90);
      expect(closed(pose, 1).contacts.find(({ patch }) => patch === "grip.strong")?.touches).toBe(true);
    }
  });

  it("lie on the side they name, the blade forward where it is the weak one", () => {
    for (const { id, pose } of POSITIONS) {
      if (id === "side-lying-on-weak-side") {
        expect(heightOf(pose, "thigh.weak")).toBeLessThan(heightOf(pose, "thigh.strong") - 0.1);
        expect(pose.weakDeg?.girdleProtraction ?? 0).toBeGreaterThan(20);
      }
      if (id === "side-lying-on-strong-side")
        expect(heightOf(pose, "thigh.strong")).toBeLessThan(heightOf(pose, "thigh.weak") - 0.1);
    }
    expect(heightOf(poseOf("roll-to-strong-side", "stop-half-way"), "thigh.strong")).toBeLessThan(
      heightOf(poseOf("roll-to-strong-side", "stop-half-way"), "thigh.weak") - 0.08,
    );
  });

  it("come up: the head higher on the hand than on the elbow, and there higher than low over the forearm", () => {
    const low = heightOf(poseOf("side-lying-to-sit-over-strong", "legs-over"), "head");
    const elbow = heightOf(poseOf("side-lying-to-sit-over-strong", "forearm-prop"), "head");
    const hand = heightOf(poseOf("side-lying-to-sit-over-strong", "hand-prop"), "head");
    expect(elbow - low).toBeGreaterThan(0.03);
    expect(hand - elbow).toBeGreaterThan(0.1);
  });
});
