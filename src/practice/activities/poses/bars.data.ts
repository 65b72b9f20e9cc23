import type { PoseSpecification } from "../../../mechanics/pose/specification.ts";
import { ARM_DOWN, ARM_ON_BAR, BARS, FOOT_STRONG, FOOT_WEAK, GRIP_STRONG, GRIP_WEAK, LEG_STANDING, STANDING_IN_BARS, STANDING_ONE_HAND } from "../../positions/standing-poses.data.ts";

/** Key poses in the parallel bars. */
/** A seat stands close behind; both hands are on the bars. */
export const STANDING_SEAT_CLOSE: PoseSpecification = { ...STANDING_IN_BARS };
export const WEIGHT_TO_WEAK: PoseSpecification = {
  pelvis: { pitchDeg: 2 },
  bothDeg: { ...LEG_STANDING, ...ARM_ON_BAR },
  surfaces: [BARS],
  contacts: [FOOT_WEAK, FOOT_STRONG, GRIP_STRONG, GRIP_WEAK],
  shift: { toWeakCm: 5 },
  notCounted: ["toes.weak", "toes.strong", "hand.weak"],
};
export const SMALL_KNEE_BEND: PoseSpecification = {
  ...STANDING_ONE_HAND,
  pelvis: { pitchDeg: 16 },
  trunkDeg: { lumbarFlexion: 3, neckFlexion: -10 },
  bothDeg: { hipFlexion: 42, hipAbduction: 4, kneeFlexion: 46, ankleDorsiflexion: 18 },
  weakDeg: ARM_DOWN,
  strongDeg: { ...ARM_ON_BAR, shoulderFlexion: 20, elbowFlexion: 55 },
};
export const STRONG_HEEL_OFF: PoseSpecification = {
  ...WEIGHT_TO_WEAK,
  strongDeg: { hipFlexion: 22, kneeFlexion: 42, ankleDorsiflexion: -18, toeExtension: 30 },
  weakDeg: ARM_DOWN,
  contacts: [FOOT_WEAK, { patch: "forefoot.strong", on: "floor", role: "both", effort: "rest" }, GRIP_STRONG],
  shift: { toWeakCm: 6 },
};
export const STRONG_FOOT_TAPS_AHEAD: PoseSpecification = {
  ...WEIGHT_TO_WEAK,
  weakDeg: ARM_DOWN,
  strongDeg: { hipFlexion: 28, kneeFlexion: 8, ankleDorsiflexion: 4 },
  contacts: [FOOT_WEAK, { patch: "heel.strong", on: "floor", role: "both", effort: "rest" }, GRIP_STRONG],
  shift: { toWeakCm: 4 },
};
/** The strong foot in the air on its way ahead: the weak leg carries. */
export const STRONG_FOOT_IN_AIR: PoseSpecification = {
  ...WEIGHT_TO_WEAK,
  weakDeg: ARM_DOWN,
  strongDeg: { hipFlexion: 38, kneeFlexion: 50, ankleDorsiflexion: 4 },
  contacts: [FOOT_WEAK, GRIP_STRONG],
};
export const STRONG_FOOT_ON_STEP: PoseSpecification = {
  ...WEIGHT_TO_WEAK,
  weakDeg: ARM_DOWN,
  strongDeg: { hipFlexion: 52, kneeFlexion: 58, ankleDorsiflexion: 8 },
  surfaces: [BARS, { id: "step", kind: "step", height: { cm: 10 }, under: ["foot.strong"], depthCm: 30, widthCm: 30 }],
  contacts: [FOOT_WEAK, { patch: "foot.strong", on: "step", role: "both", effort: "rest" }, GRIP_STRONG],
  shift: { toWeakCm: 4 },
};
/** The weak foot in the air on its way ahead: the strong leg and hand carry. */
export const WEAK_FOOT_IN_AIR: PoseSpecification = {
  ...WEIGHT_TO_WEAK,
  weakDeg: { ...ARM_DOWN, hipFlexion: 34, kneeFlexion: 46, ankleDorsiflexion: 0 },
  contacts: [FOOT_STRONG, GRIP_STRONG],
  // Only the strong foot stands: the centre goes over it.
  shift: { toWeakCm: -12 },
  notCounted: ["toes.weak", "toes.strong", "hand.weak", "foot.weak"],
};
/** Stride with the weak foot ahead, both feet down. */
export const WEAK_FOOT_AHEAD: PoseSpecification = {
  ...WEIGHT_TO_WEAK,
  weakDeg: { ...ARM_DOWN, hipFlexion: 20, kneeFlexion: 6, ankleDorsiflexion: -4 },
  strongDeg: { hipFlexion: -10, kneeFlexion: 6, ankleDorsiflexion: 12 },
  contacts: [FOOT_WEAK, FOOT_STRONG, GRIP_STRONG],
  shift: { forwardCm: 3 },
};
/** Walking in the order hand, weak, strong: the strong foot passes the standing weak leg. */
export const WALKING_STRONG_PASSES: PoseSpecification = {
  ...STRONG_FOOT_IN_AIR,
  weakDeg: { ...ARM_DOWN, hipFlexion: 6, kneeFlexion: 8, ankleDorsiflexion: 8 },
  strongDeg: { ...ARM_ON_BAR, shoulderFlexion: 26, elbowFlexion: 35, hipFlexion: 20, kneeFlexion: 42, ankleDorsiflexion: 2 },
};
