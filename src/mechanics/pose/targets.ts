import { radiansOf } from "../../quantity/angles.ts";
import { compose, type Rotation, rotationAbout } from "../../quantity/vectors.ts";
import { prosthesisRange } from "../body/amputation.ts";
import type { Body } from "../body/body.ts";
import type { AngleId, LimbAngle, MidAngle } from "../body/names.ts";
import { LIMB_LIMITS_DEG, MID_LIMITS_DEG } from "./joint-limits.data.ts";
import type { HeightSpecification, PoseSpecification, SurfaceId } from "./specification.ts";

/** A pose's aims for one body: pelvis orientation and every angle [rad]; what is not named aims at zero. */
export interface PoseTargets {
  readonly rotation: Rotation;
  readonly angles: readonly number[];
}

export interface Limits {
  readonly least: Float64Array;
  readonly most: Float64Array;
}

/** Reads the aims of a specification. */
export function targetsOf(body: Body, pose: PoseSpecification): PoseTargets {
  const weakAt = body.weakAt;
  const turn = rotationAbout([0, 0, 1], radiansOf(pose.pelvis.turnToWeakDeg ?? 0) * weakAt);
  const pitch = rotationAbout([0, 1, 0], radiansOf(pose.pelvis.pitchDeg));
  // Tipping toward the strong side: the head goes to the strong side, the strong side comes to lie underneath.
  const roll = rotationAbout([1, 0, 0], radiansOf(pose.pelvis.rollToStrongDeg ?? 0) * weakAt);
  const angles = body.angles.map((id) => radiansOf(targetDegrees(pose, id)));
  return { rotation: compose(turn, compose(pitch, roll)), angles };
}

/** What of a pose is no finite number: the joint, the pelvis or the shift; null where all is. */
export function notANumber(body: Body, pose: PoseSpecification, targets: PoseTargets): string | null {
  const joint = targets.angles.findIndex((angle) => !Number.isFinite(angle));
  if (joint >= 0) return body.angles[joint] ?? "an angle";
  if (!targets.rotation.every(Number.isFinite)) return "the pelvis' turn";
  const { forwardCm = 0, toWeakCm = 0 } = pose.shift ?? {};
  return Number.isFinite(forwardCm) && Number.isFinite(toWeakCm) ? null : "the shift";
}

function targetDegrees(pose: PoseSpecification, id: AngleId): number {
  const [name, side] = id.split(".");
  if (side === undefined) return pose.trunkDeg?.[name as MidAngle] ?? 0;
  const own = side === "weak" ? pose.weakDeg : pose.strongDeg;
  return own?.[name as LimbAngle] ?? pose.bothDeg?.[name as LimbAngle] ?? 0;
}

/** Least and most of every angle of the body [rad]; a person's own range narrows them. */
export function limitsOf(body: Body, own?: Readonly<Partial<Record<AngleId, readonly [number, number]>>>): Limits {
  const least = new Float64Array(body.angles.length);
  const most = new Float64Array(body.angles.length);
  body.angles.forEach((id, i) => {
    const [name, side] = id.split(".");
    const general = side === undefined ? MID_LIMITS_DEG[name as MidAngle] : LIMB_LIMITS_DEG[name as LimbAngle];
    const range = narrower(own?.[id], prosthesisRange(body, id));
    least[i] = range === undefined ? radiansOf(general[0]) : Math.max(radiansOf(general[0]), range[0]);
    most[i] = range === undefined ? radiansOf(general[1]) : Math.min(radiansOf(general[1]), range[1]);
  });
  return { least, most };
}

/** What both ranges allow. */
function narrower(
  a: readonly [number, number] | undefined,
  b: readonly [number, number] | undefined,
): readonly [number, number] | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  return [Math.max(a[0], b[0]), Math.min(a[1], b[1])];
}

const lengthOf = (body: Body, id: "thigh.weak" | "shank.weak" | "upperArm.weak" | "forearm.weak"): number =>
  body.segments[body.segmentIndex[id]]?.length ?? 0;

/** Heights of a standing, kneeling or sitting body [m] above what it stands on. */
export function bodyHeights(
  body: Body,
): Readonly<
  Record<"kneeHollow" | "elbowStanding" | "elbowKneeling" | "elbowSitting" | "hipStanding" | "wristStanding", number>
> {
  const ankle = 0.039 * body.size.height;
  const shank = lengthOf(body, "shank.weak");
  const thigh = lengthOf(body, "thigh.weak");
  const upperArm = lengthOf(body, "upperArm.weak");
  const girdle = body.segments[body.segmentIndex["girdle.weak"]];
  const abdomen = body.segments[body.segmentIndex.abdomen];
  const thorax = body.segments[body.segmentIndex.thorax];
  const shoulder = (abdomen?.joint[2] ?? 0) + (thorax?.joint[2] ?? 0) + (girdle?.joint[2] ?? 0);
  const kneeHollow = ankle + shank - 0.055 * body.stature;
  const hip = ankle + shank + thigh;
  return {
    kneeHollow,
    hipStanding: hip,
    elbowStanding: hip + shoulder - upperArm,
    wristStanding: hip + shoulder - upperArm - lengthOf(body, "forearm.weak"),
    elbowKneeling: 0.05 + thigh + shoulder - upperArm,
    elbowSitting: kneeHollow + 0.086 * body.stature + shoulder - upperArm,
  };
}

/** Height of a surface's top above the mat or floor [m] for this body. */
export function surfaceHeight(body: Body, pose: PoseSpecification, id: SurfaceId): number | null {
  if (id === "mat" || id === "floor") {
    const own = pose.surfaces?.find((surface) => surface.id === id);
    return own === undefined ? 0 : heightIn(body, own.height);
  }
  const surface = pose.surfaces?.find((each) => each.id === id);
  return surface === undefined ? null : heightIn(body, surface.height);
}

function heightIn(body: Body, height: HeightSpecification): number {
  if ("cm" in height) return height.cm / 100;
  return bodyHeights(body)[height.of] * (height.times ?? 1) + (height.plusCm ?? 0) / 100;
}
