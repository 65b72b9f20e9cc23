import type { ContactSpecification, LimbAngles, PoseSpecification, SurfaceSpecification } from "../../mechanics/pose/specification.ts";
import { LONG_SEATED, LONG_SITTING, STRONG_HAND_ON_THIGH, STRONG_HIP_ON_MAT, WEAK_HAND_ON_THIGH } from "./sitting-poses.data.ts";
import { SIDE_SITTING_ON_STRONG } from "./side-sitting-poses.data.ts";

/** Key poses of sitting against a wall, in bed with the backrest up, and of side-sitting and the turn from it. Angles: "judgement", adjusted until they closed. */

/* Against a wall. */
const WALL: SurfaceSpecification = { id: "wall", kind: "wall", height: { cm: 0 }, under: ["shoulderBlade.weak", "shoulderBlade.strong"] };
const BLADES_ON_WALL: readonly ContactSpecification[] = [
  { patch: "shoulderBlade.weak", on: "wall", role: "bears" },
  { patch: "shoulderBlade.strong", on: "wall", role: "bears" },
];
/** Long sitting on the mat, the back at a wall, both blades on it. */
export const SITTING_AGAINST_WALL: PoseSpecification = {
  ...LONG_SITTING,
  pelvis: { pitchDeg: -12 },
  trunkDeg: { lumbarFlexion: 2, thoraxFlexion: 2, neckFlexion: 4 },
  bothDeg: { ...LONG_SITTING.bothDeg, hipFlexion: 79 },
  surfaces: [WALL],
  contacts: [...LONG_SEATED, ...BLADES_ON_WALL, WEAK_HAND_ON_THIGH, STRONG_HAND_ON_THIGH],
};
/** The trunk turned by the strong shoulder: the strong blade leaves the wall, the weak one stays. */
export const STRONG_BLADE_OFF_WALL: PoseSpecification = {
  ...SITTING_AGAINST_WALL,
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 2, lumbarTurn: 5, thoraxTurn: 14, neckTurn: 10 },
  contacts: [...LONG_SEATED, { patch: "shoulderBlade.weak", on: "wall", role: "bears" }, WEAK_HAND_ON_THIGH, STRONG_HAND_ON_THIGH],
};
/** A hand's breadth off the wall, which stays as a stop behind. */
export const OFF_THE_WALL: PoseSpecification = {
  ...SITTING_AGAINST_WALL,
  pelvis: { pitchDeg: -6 },
  trunkDeg: { lumbarFlexion: 12, thoraxFlexion: 9, neckFlexion: -3 },
  contacts: [...LONG_SEATED, WEAK_HAND_ON_THIGH, STRONG_HAND_ON_THIGH],
};
const WEAK_HAND_ON_MAT: ContactSpecification = { patch: "hand.weak", on: "mat", role: "both", effort: "rest" };
/** The weak hand lies on a cloth on the mat beside the thigh. */
export const WEAK_HAND_ON_CLOTH: PoseSpecification = {
  ...SITTING_AGAINST_WALL,
  weakDeg: { shoulderFlexion: 10, shoulderAbduction: 16, shoulderExternalRotation: 0, elbowFlexion: 6, pronation: 120, wristExtension: 56, girdleElevation: -4 },
  contacts: [...LONG_SEATED, ...BLADES_ON_WALL, WEAK_HAND_ON_MAT, STRONG_HAND_ON_THIGH],
};
const HAND_ROLL: SurfaceSpecification = { id: "bolster", kind: "bolster", height: { cm: 18 }, under: ["hand.weak"], depthCm: 18, widthCm: 26 };
/** The weak hand lies on a firm roll beside the thigh, rolled ahead by the helper or by itself. */
export const WEAK_HAND_ON_ROLL: PoseSpecification = {
  ...SITTING_AGAINST_WALL,
  weakDeg: { shoulderFlexion: 30, shoulderAbduction: 18, shoulderExternalRotation: 0, elbowFlexion: 26, pronation: 150, wristExtension: 30 },
  surfaces: [WALL, HAND_ROLL],
  contacts: [...LONG_SEATED, ...BLADES_ON_WALL, { patch: "hand.weak", on: "bolster", role: "both", effort: "rest" }, STRONG_HAND_ON_THIGH],
};
export const WEAK_HAND_ROLLS_AHEAD: PoseSpecification = {
  ...WEAK_HAND_ON_ROLL,
  weakDeg: { girdleProtraction: 12, shoulderFlexion: 46, shoulderAbduction: 14, shoulderExternalRotation: 0, elbowFlexion: 8, pronation: 150, wristExtension: 34 },
};

/* The front of the weak thigh, with the back at the wall. */
const KNEE_ROLL: SurfaceSpecification = { id: "bolster", kind: "bolster", height: { cm: 10 }, under: ["kneeHollow.weak"], depthCm: 10, widthCm: 34 };
const STRONG_LEG_ON_MAT: readonly ContactSpecification[] = [...STRONG_HIP_ON_MAT, { patch: "calf.strong", on: "mat", role: "both" }, { patch: "heel.strong", on: "mat", role: "bears" }];
const WEAK_BUTTOCK: ContactSpecification = { patch: "buttock.weak", on: "mat", role: "both" };
const AT_THE_WALL: readonly ContactSpecification[] = [...STRONG_LEG_ON_MAT, WEAK_BUTTOCK, ...BLADES_ON_WALL, WEAK_HAND_ON_THIGH, STRONG_HAND_ON_THIGH];
/** A small roll under the weak knee, heel down: the knee presses it flat. */
export const KNEE_PRESSES_ROLL: PoseSpecification = {
  ...SITTING_AGAINST_WALL,
  weakDeg: { hipFlexion: 86, kneeFlexion: 24, ankleDorsiflexion: 4, shoulderFlexion: 2, elbowFlexion: 72 },
  surfaces: [WALL, KNEE_ROLL],
  contacts: [...AT_THE_WALL, { patch: "kneeHollow.weak", on: "bolster", role: "both" }, { patch: "heel.weak", on: "mat", role: "both" }],
};
export const HEEL_UP_OVER_ROLL: PoseSpecification = {
  ...KNEE_PRESSES_ROLL,
  weakDeg: { hipFlexion: 86, kneeFlexion: 2, ankleDorsiflexion: 6, shoulderFlexion: 2, elbowFlexion: 72 },
  contacts: [...AT_THE_WALL, { patch: "kneeHollow.weak", on: "bolster", role: "both" }],
};
/** The roll is gone: the whole weak leg is a hand's breadth off the mat, knee straight. */
export const STRAIGHT_LEG_OFF_MAT: PoseSpecification = {
  ...SITTING_AGAINST_WALL,
  weakDeg: { hipFlexion: 89, kneeFlexion: 2, ankleDorsiflexion: 6, shoulderFlexion: 2, elbowFlexion: 72 },
  contacts: AT_THE_WALL,
};

/* In bed, the backrest up. */
const BACKREST: SurfaceSpecification = { id: "wedge", kind: "wedge", height: { of: "kneeHollow", times: 0.98 }, under: ["shoulderBlade.weak", "shoulderBlade.strong"], depthCm: 66, widthCm: 80 };
/** The floor the helper stands on, beside a bed raised to the helper's hips. */
const FLOOR_BELOW: SurfaceSpecification = { id: "floor", kind: "floor", height: { cm: -65 } };
const MATTRESS: SurfaceSpecification = { id: "mat", kind: "block", height: { cm: 0 }, under: ["buttock.weak", "buttock.strong", "heel.weak", "heel.strong"], depthCm: 200, widthCm: 90 };
/** Leaning on the raised backrest, legs long, hands on the thighs. */
export const BED_SITTING: PoseSpecification = {
  ...LONG_SITTING,
  pelvis: { pitchDeg: -38 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 6, neckFlexion: 16 },
  bothDeg: { ...LONG_SITTING.bothDeg, hipFlexion: 54, shoulderFlexion: 4, shoulderAbduction: 12, shoulderExternalRotation: -40, elbowFlexion: 74, wristExtension: 10 },
  surfaces: [MATTRESS, BACKREST, FLOOR_BELOW],
  contacts: [
    ...LONG_SEATED,
    { patch: "shoulderBlade.weak", on: "wedge", role: "both" },
    { patch: "shoulderBlade.strong", on: "wedge", role: "both" },
    { patch: "hand.weak", on: { body: "pelvisFront.weak" }, role: "both", effort: "rest" },
    { patch: "hand.strong", on: { body: "pelvisFront.strong" }, role: "both", effort: "rest" },
  ],
};
/** Head and shoulders have left the backrest by themselves. */
export const BLADES_OFF_BACKREST: PoseSpecification = {
  ...LONG_SITTING,
  surfaces: [MATTRESS, FLOOR_BELOW],
  pelvis: { pitchDeg: -26 },
  trunkDeg: { lumbarFlexion: 26, thoraxFlexion: 18, neckFlexion: 6 },
  bothDeg: { ...LONG_SITTING.bothDeg, hipFlexion: 66, shoulderFlexion: 16, elbowFlexion: 46 },
};
/** The strong hand pushes on the mattress beside the hip: the back has left the rest. */
export const HAND_PUSHES_UP_IN_BED: PoseSpecification = {
  ...LONG_SITTING,
  surfaces: [MATTRESS, FLOOR_BELOW],
  pelvis: { pitchDeg: -22 },
  trunkDeg: { lumbarFlexion: 20, thoraxFlexion: 12, neckFlexion: 0 },
  bothDeg: { ...LONG_SITTING.bothDeg, hipFlexion: 70 },
  strongDeg: { shoulderFlexion: -8, shoulderAbduction: 24, shoulderExternalRotation: 0, elbowFlexion: 18, pronation: 90, wristExtension: 68 },
  contacts: [...LONG_SEATED, WEAK_HAND_ON_THIGH, { patch: "hand.strong", on: "mat", role: "both" }],
};
/** Clear of the backrest, hands on the thighs, nothing behind. */
export const CLEAR_OF_BACKREST: PoseSpecification = {
  ...LONG_SITTING,
  surfaces: [MATTRESS, FLOOR_BELOW],
  pelvis: { pitchDeg: -14 },
  trunkDeg: { lumbarFlexion: 18, thoraxFlexion: 11, neckFlexion: -6 },
  bothDeg: { ...LONG_SITTING.bothDeg, hipFlexion: 78 },
};

/* Side-sitting. */
const SIDE_SEAT_STRONG: readonly ContactSpecification[] = [
  { patch: "buttock.strong", on: "mat", role: "both" },
  { patch: "hipSide.strong", on: "mat", role: "bears" },
  { patch: "thighBack.strong", on: "mat", role: "bears" },
  { patch: "knee.strong", on: "mat", role: "both" },
  { patch: "ankleSide.strong", on: "mat", role: "both" },
  { patch: "knee.weak", on: "mat", role: "both" },
  { patch: "ankleSide.weak", on: "mat", role: "both" },
  WEAK_HAND_ON_THIGH,
];
const HIP_BLOCK: SurfaceSpecification = { id: "block", kind: "block", height: { cm: 16 }, under: ["hand.strong"], depthCm: 24, widthCm: 28 };
/** On the strong hip, the strong hand on a firm block: the trunk stays nearly upright. */
export const ON_STRONG_HIP_HAND_ON_BLOCK: PoseSpecification = {
  ...SIDE_SITTING_ON_STRONG,
  trunkDeg: { ...SIDE_SITTING_ON_STRONG.trunkDeg, lumbarSideBend: 9 },
  strongDeg: { ...SIDE_SITTING_ON_STRONG.strongDeg, elbowFlexion: 26, shoulderAbduction: 24 },
  surfaces: [HIP_BLOCK],
  contacts: [...SIDE_SEAT_STRONG, { patch: "hand.strong", on: "block", role: "both" }],
};
/** On the strong hip, the strong hand on its thigh: the waist on the weak side holds the trunk. */
export const ON_STRONG_HIP_NO_HAND: PoseSpecification = {
  ...SIDE_SITTING_ON_STRONG,
  trunkDeg: { lumbarFlexion: 7, thoraxFlexion: 5, lumbarSideBend: 13, thoraxSideBend: 6, neckSideBend: 2 },
  strongDeg: { hipFlexion: 96, hipAbduction: 26, hipExternalRotation: 58, kneeExternalRotation: 16, shoulderFlexion: 20, shoulderAbduction: 14, shoulderExternalRotation: -20, elbowFlexion: 50, pronation: 165, wristExtension: 28 },
  contacts: [...SIDE_SEAT_STRONG, STRONG_HAND_ON_THIGH],
  shift: { forwardCm: 1 },
};
const LEG_UNDER = { hipFlexion: 96, hipAbduction: 26, hipExternalRotation: 58, kneeExternalRotation: 16 } as const satisfies LimbAngles;
const LEG_BESIDE = { hipFlexion: 60, hipAbduction: 21, hipExternalRotation: -44, kneeExternalRotation: -14 } as const satisfies LimbAngles;
const SIDE_SEAT_WEAK: readonly ContactSpecification[] = [
  { patch: "buttock.weak", on: "mat", role: "both" },
  { patch: "hipSide.weak", on: "mat", role: "bears" },
  { patch: "thighBack.weak", on: "mat", role: "bears" },
  { patch: "knee.weak", on: "mat", role: "both" },
  { patch: "ankleSide.weak", on: "mat", role: "both" },
  { patch: "knee.strong", on: "mat", role: "both" },
  { patch: "ankleSide.strong", on: "mat", role: "both" },
];
const FEET_LIMP = ["foot.weak", "foot.strong", "toes.weak", "toes.strong"] as const;
const FRONT_BLOCK: SurfaceSpecification = { id: "stool", kind: "stool", height: { cm: 30 }, under: ["hand.strong"], depthCm: 34, widthCm: 34 };
/** On the weak hip: both knees to the strong side, the strong hand on a low stool in front, the weak hand laid on the mat. */
export const SIDE_SITTING_ON_WEAK: PoseSpecification = {
  pelvis: { pitchDeg: 2, rollToStrongDeg: -14 },
  trunkDeg: { lumbarFlexion: 9, thoraxFlexion: 7, lumbarSideBend: -6, thoraxSideBend: -4, neckSideBend: -4 },
  bothDeg: { kneeFlexion: 110, ankleDorsiflexion: -46 },
  weakDeg: { ...LEG_UNDER, shoulderFlexion: -3, shoulderAbduction: 27, elbowFlexion: 9, pronation: 80, wristExtension: 76 },
  strongDeg: { ...LEG_BESIDE, shoulderFlexion: 50, shoulderAbduction: 0, elbowFlexion: 20, pronation: 165, wristExtension: 26 },
  surfaces: [FRONT_BLOCK],
  contacts: [...SIDE_SEAT_WEAK, { patch: "hand.weak", on: "mat", role: "both", effort: "rest" }, { patch: "hand.strong", on: "stool", role: "both" }],
  notCounted: ["hand.weak", ...FEET_LIMP],
};
/** The weak hand is a post beside the weak hip; the strong hand lies on its thigh. */
export const ON_WEAK_HIP_WEAK_POST: PoseSpecification = {
  ...SIDE_SITTING_ON_WEAK,
  trunkDeg: { lumbarFlexion: 7, lumbarSideBend: -6, thoraxSideBend: -3, thoraxFlexion: 5, neckSideBend: -4 },
  strongDeg: { ...LEG_BESIDE, shoulderFlexion: 4, shoulderAbduction: 12, shoulderExternalRotation: -17, elbowFlexion: 49, pronation: 165, wristExtension: 27 },
  surfaces: [],
  contacts: [...SIDE_SEAT_WEAK, { patch: "hand.weak", on: "mat", role: "both" }, STRONG_HAND_ON_THIGH],
  notCounted: ["hand.strong", ...FEET_LIMP],
};
export const ON_WEAK_HIP_STRONG_REACHES: PoseSpecification = {
  ...ON_WEAK_HIP_WEAK_POST,
  strongDeg: { ...LEG_BESIDE, shoulderFlexion: 84, shoulderAbduction: 4, elbowFlexion: 10, pronation: 90 },
  contacts: [...SIDE_SEAT_WEAK, { patch: "hand.weak", on: "mat", role: "both" }],
};

/* From side-sitting to hands and knees. */
const MAT_HANDS: readonly ContactSpecification[] = [{ patch: "hand.weak", on: "mat", role: "both" }, { patch: "hand.strong", on: "mat", role: "both" }];
/** Over the weak hip: the strong arm has swung across, both hands are on the mat beside the weak hip, which still sits. */
export const OVER_WEAK_BOTH_HANDS_DOWN: PoseSpecification = {
  ...SIDE_SITTING_ON_WEAK,
  pelvis: { pitchDeg: 26, rollToStrongDeg: -22 },
  trunkDeg: { lumbarFlexion: 14, thoraxFlexion: 10, lumbarTurn: 12, thoraxTurn: 30, lumbarSideBend: 6, neckFlexion: -10 },
  weakDeg: { ...LEG_UNDER, shoulderFlexion: 58, shoulderAbduction: 12, elbowFlexion: 10, pronation: 150, wristExtension: 74 },
  strongDeg: { ...LEG_BESIDE, girdleProtraction: 10, shoulderFlexion: 76, shoulderAbduction: -4, elbowFlexion: 10, pronation: 150, wristExtension: 70 },
  surfaces: [],
  contacts: [...SIDE_SEAT_WEAK, ...MAT_HANDS],
  notCounted: FEET_LIMP,
};
const BOTH_KNEES: readonly ContactSpecification[] = [
  { patch: "knee.weak", on: "mat", role: "both" },
  { patch: "ankleSide.weak", on: "mat", role: "both" },
  { patch: "knee.strong", on: "mat", role: "both" },
  { patch: "ankleSide.strong", on: "mat", role: "both" },
];
/** The seat has left the mat and swings over the knees; both arms carry. */
export const OVER_WEAK_SEAT_UP: PoseSpecification = {
  pelvis: { pitchDeg: 58, rollToStrongDeg: -14 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, lumbarTurn: 4, thoraxTurn: 10, neckFlexion: -16 },
  bothDeg: { kneeFlexion: 112, ankleDorsiflexion: -50, shoulderFlexion: 76, shoulderAbduction: 8, shoulderExternalRotation: 8, elbowFlexion: 8, pronation: 160, wristExtension: 78 },
  weakDeg: { hipFlexion: 84, hipAbduction: 6, hipExternalRotation: 12 },
  strongDeg: { hipFlexion: 70, hipAbduction: 10, hipExternalRotation: -12 },
  contacts: [...BOTH_KNEES, ...MAT_HANDS],
  notCounted: FEET_LIMP,
};
/** Over the strong hip: the strong hand alone is the pivot, the seat has left the mat, the weak arm hangs in front. */
export const OVER_STRONG_SEAT_UP: PoseSpecification = {
  pelvis: { pitchDeg: 54, rollToStrongDeg: 16 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, lumbarTurn: -4, thoraxTurn: -8, neckFlexion: -16 },
  bothDeg: { kneeFlexion: 112, ankleDorsiflexion: -50 },
  weakDeg: { hipFlexion: 70, hipAbduction: 10, hipExternalRotation: -12, shoulderFlexion: 58, shoulderAbduction: 4, elbowFlexion: 50, pronation: 120 },
  strongDeg: { hipFlexion: 84, hipAbduction: 6, hipExternalRotation: 12, shoulderFlexion: 74, shoulderAbduction: 4, shoulderExternalRotation: 8, elbowFlexion: 8, pronation: 160, wristExtension: 78 },
  contacts: [...BOTH_KNEES, { patch: "hand.strong", on: "mat", role: "both" }],
  notCounted: ["hand.weak", ...FEET_LIMP],
};
/** The seat sinks again toward the weak side and stops a hand above the mat. */
export const OVER_WEAK_SEAT_LOW: PoseSpecification = {
  ...OVER_WEAK_SEAT_UP,
  pelvis: { pitchDeg: 46, rollToStrongDeg: -18 },
  weakDeg: { hipFlexion: 92, hipAbduction: 10, hipExternalRotation: 26 },
  strongDeg: { hipFlexion: 78, hipAbduction: 14, hipExternalRotation: -20 },
  bothDeg: { ...OVER_WEAK_SEAT_UP.bothDeg, kneeFlexion: 124, shoulderFlexion: 84 },
};
