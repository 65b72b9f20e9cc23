import type { ContactSpecification, PoseSpecification, SurfaceSpecification } from "../../../mechanics/pose/specification.ts";
import { ARM_PROPS, LEGS_LONG_ON_MAT, LONG_SEATED, LONG_SITTING, STRONG_HIP_ON_MAT, WEAK_HAND_ON_THIGH, WEAK_HIP_ON_MAT } from "../../positions/sitting-poses.data.ts";

/** Key poses of long sitting. Angles: "judgement", adjusted until they closed. */

/** A low block for the strong hand: it gives the arm the length to lift the hip. */
const HAND_BLOCK: SurfaceSpecification = { id: "block", kind: "block", height: { cm: 8 }, under: ["hand.strong"], depthCm: 20, widthCm: 25 };
const HAND_ON_BLOCK: ContactSpecification = { patch: "hand.strong", on: "block", role: "both" };
const ARM_ON_BLOCK = { ...ARM_PROPS, shoulderFlexion: -6, shoulderAbduction: 14, elbowFlexion: 12, pronation: 100, wristExtension: 76 } as const;

/** Seat on a firm wedge, so that the pelvis tips forward more easily; the strong hand is on a block beside the hip. */
export const SEAT_ON_WEDGE: PoseSpecification = {
  ...LONG_SITTING,
  surfaces: [{ id: "wedge", kind: "wedge", height: { cm: 5 }, under: ["buttock.weak", "buttock.strong"], depthCm: 35, widthCm: 50 }, { ...HAND_BLOCK, height: { cm: 10 } }],
  bothDeg: { ...LONG_SITTING.bothDeg, hipFlexion: 79, kneeFlexion: 0, ankleDorsiflexion: -4, shoulderFlexion: 11, shoulderAbduction: 4, shoulderExternalRotation: -16, elbowFlexion: 56, wristExtension: 29 },
  strongDeg: { ...ARM_ON_BLOCK, shoulderFlexion: -4 },
  contacts: [
    { patch: "buttock.weak", on: "wedge", role: "both" },
    { patch: "buttock.strong", on: "wedge", role: "both" },
    { patch: "heel.weak", on: "mat", role: "both" },
    { patch: "heel.strong", on: "mat", role: "both" },
    { patch: "calf.weak", on: "mat", role: "bears" },
    { patch: "calf.strong", on: "mat", role: "bears" },
    WEAK_HAND_ON_THIGH,
    HAND_ON_BLOCK,
  ],
};
/** The strong hand is flat on the mat beside and behind the hip. */
export const STRONG_HAND_PROPS: PoseSpecification = {
  ...LONG_SITTING,
  pelvis: { pitchDeg: -10 },
  weakDeg: { shoulderFlexion: 11, shoulderAbduction: -5, shoulderExternalRotation: -12, elbowFlexion: 46, wristExtension: 34 },
  strongDeg: ARM_PROPS,
  contacts: [...LONG_SEATED, WEAK_HAND_ON_THIGH, { patch: "hand.strong", on: "mat", role: "both" }],
};
export const STRONG_HAND_REACHES_AHEAD: PoseSpecification = {
  ...LONG_SITTING,
  strongDeg: { shoulderFlexion: 92, shoulderAbduction: 0, elbowFlexion: 12, pronation: 90 },
  contacts: [...LONG_SEATED, WEAK_HAND_ON_THIGH],
};
/** Out to the strong side, a little further than the arm is long. */
export const REACHES_BEYOND_TO_STRONG: PoseSpecification = {
  ...LONG_SITTING,
  trunkDeg: { ...LONG_SITTING.trunkDeg, lumbarSideBend: -9, thoraxSideBend: -7, thoraxTurn: -12, neckTurn: -25, neckSideBend: 8 },
  weakDeg: { shoulderFlexion: 5, shoulderAbduction: -3, shoulderExternalRotation: -3, elbowFlexion: 57, wristExtension: 39 },
  strongDeg: { shoulderFlexion: 72, shoulderAbduction: 52, elbowFlexion: 8, pronation: 90 },
  contacts: [...LONG_SEATED, WEAK_HAND_ON_THIGH],
};
/** Across to the weak side and ahead, a little further than the arm is long. */
export const REACHES_BEYOND_TO_WEAK: PoseSpecification = {
  ...LONG_SITTING,
  trunkDeg: { ...LONG_SITTING.trunkDeg, lumbarFlexion: 16, lumbarTurn: 6, thoraxTurn: 24, lumbarSideBend: 10, neckTurn: 20 },
  weakDeg: { shoulderFlexion: 20, shoulderAbduction: -5, shoulderExternalRotation: -39, elbowFlexion: 60, wristExtension: 26 },
  strongDeg: { shoulderFlexion: 88, shoulderAbduction: -22, elbowFlexion: 8, pronation: 90 },
  contacts: [...LONG_SEATED, WEAK_HAND_ON_THIGH],
};

/** Weight on the strong buttock, both still down, the strong hand on its block. */
export const ROCKED_TO_STRONG: PoseSpecification = {
  ...LONG_SITTING,
  trunkDeg: { ...LONG_SITTING.trunkDeg, lumbarSideBend: -12, thoraxSideBend: -6, neckSideBend: 8 },
  weakDeg: { shoulderFlexion: 7, shoulderAbduction: 5, shoulderExternalRotation: -14, elbowFlexion: 62, wristExtension: 31 },
  surfaces: [HAND_BLOCK],
  strongDeg: ARM_ON_BLOCK,
  contacts: [...LONG_SEATED, WEAK_HAND_ON_THIGH, HAND_ON_BLOCK],
};
/** The strong hip is light and goes back; the trunk leans away from it, to the weak side; the strong hand pushes. */
export const STRONG_HIP_BACK: PoseSpecification = {
  ...LONG_SITTING,
  pelvis: { pitchDeg: -8, rollToStrongDeg: -9, turnToWeakDeg: -8 },
  trunkDeg: { ...LONG_SITTING.trunkDeg, lumbarSideBend: -3, neckSideBend: -5 },
  surfaces: [HAND_BLOCK],
  strongDeg: ARM_ON_BLOCK,
  contacts: [...WEAK_HIP_ON_MAT, ...LEGS_LONG_ON_MAT, WEAK_HAND_ON_THIGH, HAND_ON_BLOCK],
};
/** The weak hip is light and goes back; the trunk leans to the strong hand. */
export const WEAK_HIP_BACK: PoseSpecification = {
  ...LONG_SITTING,
  pelvis: { pitchDeg: -8, rollToStrongDeg: 10, turnToWeakDeg: 8 },
  trunkDeg: { ...LONG_SITTING.trunkDeg, lumbarSideBend: -15, thoraxSideBend: -7, neckSideBend: 6 },
  surfaces: [HAND_BLOCK],
  strongDeg: ARM_ON_BLOCK,
  contacts: [...STRONG_HIP_ON_MAT, ...LEGS_LONG_ON_MAT, WEAK_HAND_ON_THIGH, HAND_ON_BLOCK],
};
/** The weak hip is light and goes ahead; the block is gone, the strong hand is flat on the mat behind. */
export const WEAK_HIP_AHEAD: PoseSpecification = {
  ...LONG_SITTING,
  pelvis: { pitchDeg: -6, rollToStrongDeg: 9, turnToWeakDeg: -8 },
  trunkDeg: { ...LONG_SITTING.trunkDeg, lumbarSideBend: -4, thoraxSideBend: 2, neckSideBend: 6 },
  weakDeg: { shoulderFlexion: 10, shoulderAbduction: -3, shoulderExternalRotation: -12, elbowFlexion: 50, wristExtension: 34 },
  strongDeg: ARM_PROPS,
  contacts: [...STRONG_HIP_ON_MAT, ...LEGS_LONG_ON_MAT, WEAK_HAND_ON_THIGH, { patch: "hand.strong", on: "mat", role: "both" }],
};
