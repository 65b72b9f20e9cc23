import { ProgrammingError } from "../../quantity/programming-error.ts";
import type { Body } from "./body.ts";
import { RESERVE_ABOVE_GRAVITY, SET_GRAVITY_SHARE, SHARE_OF_GRAVITY } from "./grades.data.ts";
import type { SegmentId } from "./names.ts";
import { LIMB_STRENGTH_KEYS, type LimbStrengthKey, type TrunkStrengthKey } from "./strength-keys.ts";
import { ancestry, neutralConfiguration, placeFrames, pointInRoom } from "../pose/kinematics.ts";
import { peakNorm, trunkNorm } from "./strength-norms.ts";

export type Grade = keyof typeof RESERVE_ABOVE_GRAVITY | keyof typeof SHARE_OF_GRAVITY;
/** 5th, 50th and 95th percentile of the fraction of normal strength. */
export type Quantiles = readonly [number, number, number];

const GRAVITY = 9.81;
const ARM: readonly SegmentId[] = ["upperArm.weak", "forearm.weak", "hand.weak"];
const FOREARM: readonly SegmentId[] = ["forearm.weak", "hand.weak"];
const LEG: readonly SegmentId[] = ["thigh.weak", "shank.weak", "foot.weak", "toes.weak"];
const SHANK: readonly SegmentId[] = ["shank.weak", "foot.weak", "toes.weak"];

/** Which parts are lifted in the test position, and whether the part beyond the first hangs straight down. */
const LIFTED: Readonly<
  Partial<Record<LimbStrengthKey, { readonly parts: readonly SegmentId[]; readonly restHangs: boolean }>>
> = {
  shoulderFlexion: { parts: ARM, restHangs: false },
  shoulderExtension: { parts: ARM, restHangs: false },
  shoulderAbduction: { parts: ARM, restHangs: false },
  shoulderAdduction: { parts: ARM, restHangs: false },
  shoulderExternalRotation: { parts: FOREARM, restHangs: false },
  shoulderInternalRotation: { parts: FOREARM, restHangs: false },
  elbowFlexion: { parts: FOREARM, restHangs: false },
  elbowExtension: { parts: FOREARM, restHangs: false },
  hipFlexion: { parts: LEG, restHangs: true },
  hipExtension: { parts: LEG, restHangs: false },
  hipAbduction: { parts: LEG, restHangs: false },
  hipAdduction: { parts: LEG, restHangs: false },
  kneeFlexion: { parts: SHANK, restHangs: false },
  kneeExtension: { parts: SHANK, restHangs: false },
};

/**
 * Moment that just holds the limb against gravity in the usual test position, limb level [N.m]: the meaning of grade 3.
 * @returns null for groups with another test (wrist, hand, ankle, hip rotators)
 * @source test positions: common practice; hip flexors sitting, with the shank hanging
 */
export function gravityMoment(body: Body, key: LimbStrengthKey): number | null {
  const lifted = LIFTED[key];
  if (lifted === undefined) return null;
  let along = 0;
  let moment = 0;
  lifted.parts.forEach((id, k) => {
    const segment = body.segments[body.segmentIndex[id]];
    if (segment === undefined) throw new ProgrammingError(`no segment ${id}`);
    const hangs = lifted.restHangs && k > 0;
    // The foot stands across the shank: its own length adds nothing along the limb.
    const own =
      id.startsWith("foot") || id.startsWith("toes") ? 0.5 * 0.039 * body.size.height : Math.abs(segment.centre[2]);
    moment += segment.mass * GRAVITY * (along + (hangs ? 0 : own));
    if (!hangs && !id.startsWith("foot")) along += segment.length;
  });
  return moment;
}

/**
 * Moment that just holds the trunk in its test, level [N.m]: extension lifts everything above the low back, lying face
 * down with the arms along the body; flexion curls head, arms and ribs up over the middle of the back.
 * @source test positions: common practice
 */
function trunkGravityMoment(body: Body, key: "flexion" | "extension"): number {
  const frames = placeFrames(body, neutralConfiguration(body));
  const hinge = body.segmentIndex[key === "extension" ? "abdomen" : "thorax"];
  const height = frames.positions[hinge]?.[2] ?? 0;
  let moment = 0;
  for (const segment of body.segments) {
    if (!ancestry(body, segment.index).has(hinge)) continue;
    moment += segment.mass * GRAVITY * (pointInRoom(body, frames, segment.index, segment.centre)[2] - height);
  }
  return moment;
}

/** The limb's own weight in the test position as a share of the normal peak of that muscle group. @param age [years] */
export function gravityShare(body: Body, age: number, key: LimbStrengthKey | `trunk.${TrunkStrengthKey}`): number {
  const set = SET_GRAVITY_SHARE[key];
  if (set !== undefined) return set;
  if (key === "trunk.flexion" || key === "trunk.extension") {
    const trunk = key === "trunk.flexion" ? "flexion" : "extension";
    return Math.min(0.85, trunkGravityMoment(body, trunk) / trunkNorm(body.size, age, trunk));
  }
  const limb = LIMB_STRENGTH_KEYS.find((each) => each === key);
  const moment = limb === undefined ? null : gravityMoment(body, limb);
  if (limb === undefined || moment === null) throw new ProgrammingError(`no test position for ${key}`);
  return Math.min(0.9, moment / peakNorm(body.size, age, limb));
}

/**
 * A manual grade as a fraction of normal strength, by the grade's own definition: grade 3 just holds the limb against
 * gravity, grade 2 lies below that, grade 4 between that and normal, grade 5 normal for age.
 * @returns 5th, 50th and 95th percentile
 */
export function gradeQuantiles(
  body: Body,
  age: number,
  key: LimbStrengthKey | `trunk.${TrunkStrengthKey}`,
  grade: Grade,
): Quantiles {
  const g = gravityShare(body, age, key);
  if (grade in RESERVE_ABOVE_GRAVITY) {
    const u = RESERVE_ABOVE_GRAVITY[grade as keyof typeof RESERVE_ABOVE_GRAVITY];
    return [g + (1 - g) * u[0], g + (1 - g) * u[1], g + (1 - g) * u[2]];
  }
  const share = SHARE_OF_GRAVITY[grade as keyof typeof SHARE_OF_GRAVITY];
  return [g * share[0], g * share[1], g * share[2]];
}
