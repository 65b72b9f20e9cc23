import type { ContactSpecification, PoseSpecification, SurfaceSpecification } from "../../../mechanics/pose/specification.ts";
import { ARM_DOWN, FOOT_STRONG, FOOT_WEAK } from "../../positions/standing-poses.data.ts";
import {
  ARM_ON_TABLE,
  BOTH_FEET,
  FINGERTIPS,
  HAND_FLAT,
  HAND_TABLE,
  STANDING_AT_WALL,
  STANDING_FREE,
  STANDING_HAND_FLAT,
  STRIDE_STRONG_AHEAD,
  STRIDE_WEAK_AHEAD,
  UPRIGHT,
} from "../../positions/upright-poses.data.ts";

/** Key poses standing at the mat, in stride and at a wall. */

const STRONG_BALL_RESTS: ContactSpecification = { patch: "forefoot.strong", on: "floor", role: "both", effort: "rest" };
const STRONG_RESTS_ON_STEP: ContactSpecification = { patch: "foot.strong", on: "step", role: "both", effort: "rest" };
const WEAK_RESTS_ON_STEP: ContactSpecification = { patch: "foot.weak", on: "step", role: "both", effort: "rest" };
const BLOCK: SurfaceSpecification = { id: "step", kind: "block", height: { cm: 5 }, under: ["foot.strong"], depthCm: 32, widthCm: 34 };
const HIGH_BLOCK: SurfaceSpecification = { ...BLOCK, height: { cm: 15 } };

/** The trunk a little over the standing strong leg. */
const OVER_STRONG = { lumbarSideBend: -5, thoraxSideBend: -4, neckSideBend: 6 } as const;

export const STANDING_FINGERTIPS: PoseSpecification = { ...STANDING_HAND_FLAT, contacts: [...BOTH_FEET, FINGERTIPS] };
/** Head and chest turned to look over the weak shoulder, no hand. */
export const LOOKING_OVER_WEAK: PoseSpecification = { ...STANDING_FREE, trunkDeg: { thoraxTurn: 16, lumbarTurn: 5, neckTurn: 50 } };

/** No sharing between the feet: the shift says where the weight is. */
const SHIFTED_FREE: PoseSpecification = { ...UPRIGHT, surfaces: [] };
const SHIFTED_HAND_FLAT: PoseSpecification = { ...UPRIGHT, strongDeg: ARM_ON_TABLE, surfaces: [HAND_TABLE], contacts: [...BOTH_FEET, HAND_FLAT] };
export const TO_STRONG_HAND_FLAT: PoseSpecification = { ...SHIFTED_HAND_FLAT, shift: { toWeakCm: -5 } };
export const TO_WEAK_HAND_FLAT: PoseSpecification = { ...SHIFTED_HAND_FLAT, shift: { toWeakCm: 5 } };
export const TO_WEAK_FREE: PoseSpecification = { ...SHIFTED_FREE, shift: { toWeakCm: 6 } };
export const TO_WEAK_STRONG_HEEL_OFF: PoseSpecification = {
  ...SHIFTED_FREE,
  strongDeg: { hipFlexion: 22, kneeFlexion: 42, ankleDorsiflexion: -18, toeExtension: 30 },
  contacts: [FOOT_WEAK, STRONG_BALL_RESTS],
  shift: { forwardCm: 3, toWeakCm: 9.5 },
};

const SQUAT: PoseSpecification = {
  ...SHIFTED_HAND_FLAT,
  pelvis: { pitchDeg: 18 },
  trunkDeg: { lumbarFlexion: 3, neckFlexion: -10 },
  bothDeg: { ...ARM_DOWN, hipFlexion: 46, hipAbduction: 4, kneeFlexion: 48, ankleDorsiflexion: 18 },
  strongDeg: { ...ARM_ON_TABLE, shoulderFlexion: 46, elbowFlexion: 46 },
};
export const SMALL_SQUAT_HAND: PoseSpecification = { ...SQUAT, sharing: "standing" };
export const SMALL_SQUAT_FREE: PoseSpecification = {
  ...STANDING_FREE,
  pelvis: { pitchDeg: 24 },
  trunkDeg: { lumbarFlexion: 4, neckFlexion: -14 },
  bothDeg: { ...ARM_DOWN, hipFlexion: 54, hipAbduction: 4, kneeFlexion: 50, ankleDorsiflexion: 19 },
  strongDeg: { shoulderFlexion: 62, elbowFlexion: 10, pronation: 90 },
};
/** The same bend with the seat over the weak foot. */
export const SMALL_SQUAT_TO_WEAK: PoseSpecification = { ...SQUAT, shift: { toWeakCm: 5 } };

/** Toes and balls of both feet off the floor. */
export const TOES_UP: PoseSpecification = {
  ...SHIFTED_HAND_FLAT,
  pelvis: { pitchDeg: 14 },
  bothDeg: { ...ARM_DOWN, hipFlexion: 18, hipAbduction: 3, kneeFlexion: 4, ankleDorsiflexion: 8, toeExtension: 20 },
  strongDeg: { ...ARM_ON_TABLE, shoulderFlexion: 42 },
  contacts: [{ patch: "heel.weak", on: "floor", role: "both" }, { patch: "heel.strong", on: "floor", role: "both" }, HAND_FLAT],
  shift: { forwardCm: -6 },
};
const TIPTOE: PoseSpecification = {
  ...SHIFTED_HAND_FLAT,
  pelvis: { pitchDeg: 3 },
  bothDeg: { ...ARM_DOWN, hipFlexion: 2, hipAbduction: 3, kneeFlexion: 2, ankleDorsiflexion: -24, toeExtension: 28 },
  strongDeg: { ...ARM_ON_TABLE, elbowFlexion: 44 },
  contacts: [{ patch: "forefoot.weak", on: "floor", role: "both" }, { patch: "forefoot.strong", on: "floor", role: "both" }, HAND_FLAT],
};
export const HEELS_UP: PoseSpecification = { ...TIPTOE, shift: { forwardCm: 8 } };
export const HEELS_UP_TO_WEAK: PoseSpecification = { ...TIPTOE, shift: { forwardCm: 8, toWeakCm: 4 } };

/** The strong hand reaches ahead at breast height. */
export const REACH_AHEAD: PoseSpecification = {
  ...STANDING_FREE,
  pelvis: { pitchDeg: 10 },
  trunkDeg: { lumbarFlexion: 4, neckFlexion: -8 },
  bothDeg: { ...ARM_DOWN, hipFlexion: 12, hipAbduction: 3, kneeFlexion: 6, ankleDorsiflexion: 2 },
  strongDeg: { shoulderFlexion: 88, elbowFlexion: 8, pronation: 90, girdleProtraction: 8 },
};
/** The strong hand reaches across the body at hip height, weight over the weak foot. */
export const REACH_ACROSS: PoseSpecification = {
  ...SHIFTED_FREE,
  trunkDeg: { thoraxTurn: 22, lumbarTurn: 7, neckTurn: 20, lumbarFlexion: 4 },
  strongDeg: { shoulderFlexion: 62, shoulderAbduction: -20, elbowFlexion: 12, pronation: 100 },
  shift: { toWeakCm: 5 },
};
/** Stands ahead of the weak knee; the hand comes down to it and lays no weight on it. */
const STOOL_AHEAD: SurfaceSpecification = { id: "stool", kind: "stool", height: { cm: 40 }, under: ["hand.strong"], depthCm: 30, widthCm: 30 };
/** Down to a stool ahead of the weak knee. */
export const REACH_LOW: PoseSpecification = {
  ...SHIFTED_FREE,
  pelvis: { pitchDeg: 42 },
  trunkDeg: { lumbarFlexion: 14, thoraxFlexion: 8, thoraxTurn: 12, neckFlexion: -18 },
  bothDeg: { ...ARM_DOWN, hipFlexion: 72, hipAbduction: 4, kneeFlexion: 44, ankleDorsiflexion: 14 },
  weakDeg: { shoulderFlexion: 42, elbowFlexion: 10, pronation: 90 },
  strongDeg: { shoulderFlexion: 78, shoulderAbduction: -8, elbowFlexion: 14, pronation: 140 },
  shift: { forwardCm: -9, toWeakCm: 2 },
  surfaces: [STOOL_AHEAD],
};

/** The strong foot rests on a low block. */
export const STRONG_ON_LOW_BLOCK: PoseSpecification = {
  ...SHIFTED_HAND_FLAT,
  strongDeg: { ...ARM_ON_TABLE, hipFlexion: 34, kneeFlexion: 36, ankleDorsiflexion: 8 },
  surfaces: [HAND_TABLE, BLOCK],
  contacts: [FOOT_WEAK, STRONG_RESTS_ON_STEP, HAND_FLAT],
  shift: { toWeakCm: 4 },
};
export const STRONG_ON_HIGH_BLOCK: PoseSpecification = {
  ...STRONG_ON_LOW_BLOCK,
  strongDeg: { ...ARM_ON_TABLE, hipFlexion: 60, kneeFlexion: 66, ankleDorsiflexion: 9 },
  surfaces: [HAND_TABLE, HIGH_BLOCK],
  contacts: [FOOT_WEAK, STRONG_RESTS_ON_STEP, FINGERTIPS],
  shift: { toWeakCm: 6 },
};
export const STRONG_ON_HIGH_BLOCK_FREE: PoseSpecification = {
  ...SHIFTED_FREE,
  strongDeg: { hipFlexion: 60, kneeFlexion: 66, ankleDorsiflexion: 9 },
  surfaces: [HIGH_BLOCK],
  contacts: [FOOT_WEAK, STRONG_RESTS_ON_STEP],
  shift: { forwardCm: 1, toWeakCm: 8 },
};

/** The weak heel on a line ahead; the strong leg and hand carry. */
export const WEAK_HEEL_ON_LINE: PoseSpecification = {
  ...SHIFTED_HAND_FLAT,
  trunkDeg: OVER_STRONG,
  weakDeg: { hipFlexion: 28, kneeFlexion: 8, ankleDorsiflexion: 2 },
  contacts: [FOOT_STRONG, { patch: "heel.weak", on: "floor", role: "both", effort: "rest" }, HAND_FLAT],
  shift: { forwardCm: 1, toWeakCm: -8.5 },
};
export const WEAK_FOOT_OVER_LINE: PoseSpecification = {
  ...SHIFTED_HAND_FLAT,
  trunkDeg: OVER_STRONG,
  weakDeg: { hipFlexion: 44, kneeFlexion: 52, ankleDorsiflexion: 2 },
  contacts: [FOOT_STRONG, HAND_FLAT],
  shift: { forwardCm: 2, toWeakCm: -13 },
};
export const WEAK_FOOT_ON_BLOCK: PoseSpecification = {
  ...SHIFTED_HAND_FLAT,
  trunkDeg: OVER_STRONG,
  weakDeg: { hipFlexion: 52, kneeFlexion: 56, ankleDorsiflexion: 6 },
  surfaces: [HAND_TABLE, { ...BLOCK, height: { cm: 10 }, under: ["foot.weak"] }],
  contacts: [FOOT_STRONG, WEAK_RESTS_ON_STEP, FINGERTIPS],
  shift: { forwardCm: 1, toWeakCm: -8 },
};

/** Quarter turn to the strong side: the strong foot has stepped round first. */
export const TURNED_TO_STRONG: PoseSpecification = {
  ...SHIFTED_HAND_FLAT,
  trunkDeg: { thoraxTurn: -10, neckTurn: -30 },
  strongDeg: { ...ARM_ON_TABLE, shoulderFlexion: 18, shoulderAbduction: 28, hipExternalRotation: 32, hipAbduction: 12, hipFlexion: 8 },
  shift: { forwardCm: 2, toWeakCm: -3 },
};
/** Quarter turn to the weak side: the weak foot has stepped round and takes the weight. */
export const TURNED_TO_WEAK: PoseSpecification = {
  ...SHIFTED_FREE,
  trunkDeg: { thoraxTurn: 10, neckTurn: 30 },
  weakDeg: { hipExternalRotation: 28, hipAbduction: 10, hipFlexion: 8 },
  shift: { forwardCm: 2, toWeakCm: 4 },
};
/** On the way round to the weak side: the strong foot is in the air, the weak leg carries and turns. */
export const TURNING_STRONG_FOOT_FOLLOWS: PoseSpecification = {
  ...SHIFTED_HAND_FLAT,
  trunkDeg: { thoraxTurn: 8, neckTurn: 24 },
  weakDeg: { hipExternalRotation: 18, hipAbduction: 4 },
  strongDeg: { ...ARM_ON_TABLE, hipFlexion: 26, kneeFlexion: 44, hipExternalRotation: -12 },
  contacts: [FOOT_WEAK, HAND_FLAT],
  shift: { toWeakCm: 9 },
};

/** Weight kept back over the strong leg. */
export const STRIDE_BACK_ON_STRONG: PoseSpecification = { ...STRIDE_WEAK_AHEAD, shift: { forwardCm: -3, toWeakCm: -5 } };
export const STRIDE_AHEAD_ON_WEAK: PoseSpecification = { ...STRIDE_WEAK_AHEAD, shift: { forwardCm: 6, toWeakCm: 2 } };
export const STRIDE_STRONG_HEEL_OFF: PoseSpecification = {
  ...STRIDE_WEAK_AHEAD,
  strongDeg: { ...ARM_ON_TABLE, hipFlexion: -4, kneeFlexion: 34, ankleDorsiflexion: 0, toeExtension: 38 },
  contacts: [FOOT_WEAK, STRONG_BALL_RESTS, HAND_FLAT],
  shift: { forwardCm: 9, toWeakCm: 4 },
};
export const STRIDE_AHEAD_ON_WEAK_FREE: PoseSpecification = {
  ...STRIDE_WEAK_AHEAD,
  strongDeg: { hipFlexion: -9, kneeFlexion: 6, ankleDorsiflexion: 13 },
  surfaces: [],
  contacts: BOTH_FEET,
  shift: { forwardCm: 6, toWeakCm: 3 },
};

/** Weight ahead over the strong foot. */
export const STRIDE_AHEAD_ON_STRONG: PoseSpecification = { ...STRIDE_STRONG_AHEAD, shift: { forwardCm: 5, toWeakCm: -4 } };
/** Weight back over the weak leg, the strong foot ahead. */
export const STRIDE_BACK_ON_WEAK: PoseSpecification = { ...STRIDE_STRONG_AHEAD, shift: { forwardCm: -5 } };
/** The weak knee lets go: heel off, knee bent, its ball rests. */
export const WEAK_KNEE_RELEASED: PoseSpecification = {
  ...STRIDE_STRONG_AHEAD,
  trunkDeg: OVER_STRONG,
  weakDeg: { hipFlexion: 0, kneeFlexion: 36, ankleDorsiflexion: 2, toeExtension: 34 },
  strongDeg: { ...ARM_ON_TABLE, hipFlexion: 13, kneeFlexion: 5, ankleDorsiflexion: -3 },
  contacts: [FOOT_STRONG, { patch: "forefoot.weak", on: "floor", role: "both" }, HAND_FLAT],
  shift: { forwardCm: 1, toWeakCm: -8 },
};
/** The weak foot has left the floor and swings past the strong ankle. */
export const WEAK_FOOT_SWINGS_THROUGH: PoseSpecification = {
  ...STRIDE_STRONG_AHEAD,
  trunkDeg: OVER_STRONG,
  weakDeg: { hipFlexion: 8, kneeFlexion: 52, ankleDorsiflexion: -2 },
  strongDeg: { hipFlexion: 6, kneeFlexion: 6, ankleDorsiflexion: 2, ...ARM_ON_TABLE },
  contacts: [FOOT_STRONG, HAND_FLAT],
  shift: { forwardCm: 3, toWeakCm: -10 },
};
export const WEAK_KNEE_RELEASED_FREE: PoseSpecification = {
  ...WEAK_KNEE_RELEASED,
  strongDeg: { hipFlexion: 12, kneeFlexion: 5, ankleDorsiflexion: -3 },
  surfaces: [],
  contacts: [FOOT_STRONG, { patch: "forefoot.weak", on: "floor", role: "both" }],
  shift: { forwardCm: 8, toWeakCm: -6 },
};

/** A small slide down the wall. */
export const WALL_SLIDE: PoseSpecification = {
  ...STANDING_AT_WALL,
  bothDeg: { ...ARM_DOWN, hipFlexion: 38, hipAbduction: 3, kneeFlexion: 44, ankleDorsiflexion: 6 },
};
/** At the wall over the weak leg, the strong heel up. */
export const WALL_OVER_WEAK: PoseSpecification = {
  ...STANDING_AT_WALL,
  strongDeg: { hipFlexion: 30, kneeFlexion: 40, ankleDorsiflexion: -12, toeExtension: 24 },
  contacts: [FOOT_WEAK, STRONG_BALL_RESTS, ...STANDING_AT_WALL.contacts.slice(2)],
  shift: { toWeakCm: 6 },
};
/** The seat comes off the wall, the blades stay. */
export const WALL_SEAT_OFF: PoseSpecification = {
  ...STANDING_AT_WALL,
  pelvis: { pitchDeg: -8 },
  trunkDeg: { neckFlexion: 6 },
  bothDeg: { ...ARM_DOWN, hipFlexion: -2, hipAbduction: 3, kneeFlexion: 5, ankleDorsiflexion: -2 },
  contacts: [...BOTH_FEET, { patch: "shoulderBlade.weak", on: "wall", role: "bears" }, { patch: "shoulderBlade.strong", on: "wall", role: "bears" }],
};
