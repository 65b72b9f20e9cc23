import type { ContactSpecification, PoseSpecification, SurfaceSpecification } from "../../../mechanics/pose/specification.ts";
import { FEET_ON_FLOOR, FREE_SITTING, HIGH_SEAT, SEAT, SEATED, SHORT_SITTING, SITTING_TABLE, STRONG_HAND_ON_THIGH, STRONG_HIP_ON_SEAT, WEAK_HAND_ON_THIGH, WEAK_HIP_ON_SEAT } from "../../positions/sitting-poses.data.ts";

/** Key poses of short sitting at the edge of a mat, plinth or bed. Angles: "judgement", adjusted until they closed. */

/** A small table for the strong hand, clear of the belly. */
const HAND_TABLE: SurfaceSpecification = { ...SITTING_TABLE, under: ["hand.strong"], depthCm: 45, widthCm: 55 };

/** The strong hand lies on a table and has slid ahead; the chest follows over the thighs. */
export const HAND_SLID_AHEAD: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: 12 },
  trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 5, neckFlexion: -12 },
  bothDeg: { ...SHORT_SITTING.bothDeg, hipFlexion: 100 },
  weakDeg: { shoulderFlexion: -4, shoulderAbduction: 13, shoulderExternalRotation: -24, elbowFlexion: 84, wristExtension: 31 },
  strongDeg: { shoulderFlexion: 78, shoulderAbduction: 4, elbowFlexion: 14, pronation: 165, wristExtension: 10 },
  surfaces: [SEAT, HAND_TABLE],
  contacts: [...SEATED, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH, { patch: "hand.strong", on: "table", role: "both", effort: "rest" }],
};
/** Out to the strong side at shoulder height: the strong buttock carries more. */
export const REACHES_TO_STRONG: PoseSpecification = {
  ...FREE_SITTING,
  trunkDeg: { ...SHORT_SITTING.trunkDeg, lumbarSideBend: -7, thoraxSideBend: -5, thoraxTurn: -10, neckTurn: -20, neckSideBend: 6 },
  weakDeg: { shoulderFlexion: 4, shoulderAbduction: -5, shoulderExternalRotation: -7, elbowFlexion: 48, wristExtension: 39 },
  strongDeg: { shoulderFlexion: 62, shoulderAbduction: 58, elbowFlexion: 8, pronation: 90 },
  contacts: [...SEATED, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH],
};
/** The strong hand crosses to the weak side: the weak buttock carries more. */
export const REACHES_ACROSS: PoseSpecification = {
  ...FREE_SITTING,
  trunkDeg: { ...SHORT_SITTING.trunkDeg, lumbarTurn: 6, thoraxTurn: 24, lumbarSideBend: 4, neckTurn: 20 },
  weakDeg: { shoulderFlexion: 17, shoulderAbduction: -6, shoulderExternalRotation: -40, elbowFlexion: 46, wristExtension: 27 },
  strongDeg: { shoulderFlexion: 86, shoulderAbduction: -26, elbowFlexion: 8, pronation: 90 },
  contacts: [...SEATED, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH],
  shift: { toWeakCm: 1.5 },
};
/** From the edge of the seat, ahead of the weak foot: that foot takes weight. */
export const REACHES_OVER_WEAK_FOOT: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: 16 },
  trunkDeg: { lumbarFlexion: 12, thoraxFlexion: 8, thoraxTurn: 12, neckFlexion: -14 },
  bothDeg: { ...SHORT_SITTING.bothDeg, hipFlexion: 104, kneeFlexion: 100, ankleDorsiflexion: 10 },
  weakDeg: { shoulderFlexion: 0, shoulderAbduction: 8, shoulderExternalRotation: -27, elbowFlexion: 89, wristExtension: 34 },
  strongDeg: { shoulderFlexion: 98, shoulderAbduction: -14, elbowFlexion: 6, pronation: 90 },
  contacts: [{ patch: "buttock.weak", on: "seat", role: "both" }, { patch: "buttock.strong", on: "seat", role: "both" }, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH],
  shift: { toWeakCm: 2.5 },
};
/** Down to a target in front of the feet. */
export const REACHES_DOWN: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: 34 },
  trunkDeg: { lumbarFlexion: 26, thoraxFlexion: 16, neckFlexion: -14 },
  bothDeg: { ...SHORT_SITTING.bothDeg, hipFlexion: 122, kneeFlexion: 98, ankleDorsiflexion: 8 },
  weakDeg: { shoulderFlexion: 72, shoulderAbduction: 6, elbowFlexion: 12, shoulderExternalRotation: 0, wristExtension: 0, pronation: 90 },
  strongDeg: { shoulderFlexion: 96, shoulderAbduction: 2, elbowFlexion: 6, shoulderExternalRotation: 0, wristExtension: 0, pronation: 90 },
  contacts: [...SEATED, ...FEET_ON_FLOOR],
};

const STRONG_HAND_ON_TABLE: ContactSpecification = { patch: "hand.strong", on: "table", role: "both" };
const ARM_ON_TABLE = { shoulderFlexion: 42, shoulderAbduction: 10, elbowFlexion: 44, pronation: 165, wristExtension: 6, shoulderExternalRotation: 0 } as const;

/** The strong hip comes up, the weak hip carries, the strong hand rests on a table in front. */
export const STRONG_HIP_UP: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: 0, rollToStrongDeg: -14 },
  trunkDeg: { ...SHORT_SITTING.trunkDeg, lumbarSideBend: -13, thoraxSideBend: -3 },
  weakDeg: { shoulderFlexion: 4, shoulderAbduction: 1, elbowFlexion: 54, wristExtension: 33 },
  strongDeg: ARM_ON_TABLE,
  surfaces: [SEAT, HAND_TABLE],
  contacts: [...WEAK_HIP_ON_SEAT, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH, STRONG_HAND_ON_TABLE],
};
/** The weak hip comes up, the strong hip carries, the strong hand on the table. */
export const WEAK_HIP_UP: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: 0, rollToStrongDeg: 14 },
  trunkDeg: { ...SHORT_SITTING.trunkDeg, lumbarSideBend: 13, thoraxSideBend: 3 },
  weakDeg: { shoulderFlexion: 3, shoulderAbduction: 14, elbowFlexion: 70, wristExtension: 22 },
  strongDeg: ARM_ON_TABLE,
  surfaces: [SEAT, HAND_TABLE],
  contacts: [...STRONG_HIP_ON_SEAT, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH, STRONG_HAND_ON_TABLE],
};
/** The same with both hands on the thighs. */
export const WEAK_HIP_UP_HANDS_OFF: PoseSpecification = {
  ...WEAK_HIP_UP,
  trunkDeg: { ...SHORT_SITTING.trunkDeg, lumbarSideBend: 11, thoraxSideBend: 3 },
  strongDeg: { shoulderFlexion: 5, shoulderAbduction: 0, elbowFlexion: 53, wristExtension: 34 },
  surfaces: [SEAT],
  contacts: [...STRONG_HIP_ON_SEAT, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH, STRONG_HAND_ON_THIGH],
};
/** A seat so high that the feet hang free of the floor. */
const VERY_HIGH_SEAT: SurfaceSpecification = { ...HIGH_SEAT, height: { of: "kneeHollow", times: 1.4 } };
const FEET_LIMP = ["hand.weak", "hand.strong", "toes.weak", "toes.strong", "foot.weak", "foot.strong"] as const;
const HANGING = { kneeFlexion: 80, ankleDorsiflexion: -18 } as const;
/** Sitting with the feet hanging, square. */
export const FEET_HANGING: PoseSpecification = {
  ...FREE_SITTING,
  bothDeg: { ...SHORT_SITTING.bothDeg, ...HANGING },
  surfaces: [VERY_HIGH_SEAT],
  contacts: [
    { patch: "buttock.weak", on: "seat", role: "both" },
    { patch: "buttock.strong", on: "seat", role: "both" },
    { patch: "thighBack.weak", on: "seat", role: "both" },
    { patch: "thighBack.strong", on: "seat", role: "both" },
    WEAK_HAND_ON_THIGH,
    STRONG_HAND_ON_THIGH,
  ],
  notCounted: FEET_LIMP,
};
/** With the feet hanging the weak hip comes up: the strong hip and both thighs carry. */
export const WEAK_HIP_UP_FEET_HANGING: PoseSpecification = {
  ...WEAK_HIP_UP_HANDS_OFF,
  bothDeg: { ...SHORT_SITTING.bothDeg, ...HANGING },
  weakDeg: { shoulderFlexion: 5, shoulderAbduction: 13, shoulderExternalRotation: -27, elbowFlexion: 62, wristExtension: 20 },
  strongDeg: { shoulderFlexion: 3, shoulderAbduction: 2, shoulderExternalRotation: -19, elbowFlexion: 58, wristExtension: 34 },
  surfaces: [VERY_HIGH_SEAT],
  contacts: [
    { patch: "buttock.strong", on: "seat", role: "both" },
    { patch: "thighBack.strong", on: "seat", role: "both" },
    { patch: "thighBack.weak", on: "seat", role: "both" },
    WEAK_HAND_ON_THIGH,
    STRONG_HAND_ON_THIGH,
  ],
  notCounted: FEET_LIMP,
};
