import type { PoseSpecification } from "../../../mechanics/pose/specification.ts";
import { HAND_STRONG, HAND_WEAK, HANDS_AND_KNEES, LEG_STRONG, LEG_WEAK, ROLL } from "../../positions/kneeling-poses.data.ts";

/** Key poses on hands and knees. */
export const OVER_ROLL: PoseSpecification = {
  ...HANDS_AND_KNEES,
  pelvis: { pitchDeg: 92 },
  bothDeg: { ...HANDS_AND_KNEES.bothDeg, hipFlexion: 92, kneeFlexion: 96, shoulderFlexion: 78, elbowFlexion: 62, wristExtension: 62 },
  surfaces: [ROLL],
  contacts: [
    { patch: "chestFront", on: "bolster", role: "both" },
    { patch: "hand.weak", on: "mat", role: "both", effort: "rest" },
    HAND_STRONG,
    ...LEG_WEAK,
    ...LEG_STRONG,
  ],
};
export const ROCKED_BACK: PoseSpecification = { ...HANDS_AND_KNEES, shift: { forwardCm: -9 } };
export const ROCKED_TO_STRONG: PoseSpecification = { ...HANDS_AND_KNEES, shift: { forwardCm: -2, toWeakCm: -5 } };
export const ROCKED_TO_WEAK: PoseSpecification = { ...HANDS_AND_KNEES, shift: { forwardCm: -2, toWeakCm: 5 } };
export const ROCKED_FORWARD: PoseSpecification = { ...HANDS_AND_KNEES, shift: { forwardCm: 8 } };
export const ROCKED_BACK_STRONG: PoseSpecification = { ...HANDS_AND_KNEES, shift: { forwardCm: -6, toWeakCm: -5 } };
export const ROCKED_FORWARD_WEAK: PoseSpecification = { ...HANDS_AND_KNEES, shift: { forwardCm: 6, toWeakCm: 4 } };

/** The weak leg slid back until the knee is straight, the toes still on the mat. */
export const WEAK_LEG_SLID_BACK: PoseSpecification = {
  ...HANDS_AND_KNEES,
  weakDeg: { hipFlexion: 28, kneeFlexion: 12, ankleDorsiflexion: -30 },
  contacts: [HAND_WEAK, HAND_STRONG, ...LEG_STRONG, { patch: "instep.weak", on: "mat", role: "both", effort: "rest" }],
  shift: { toWeakCm: -2 },
};
export const WEAK_LEG_LIFTED: PoseSpecification = {
  ...HANDS_AND_KNEES,
  weakDeg: { hipFlexion: 2, kneeFlexion: 12, ankleDorsiflexion: -25 },
  contacts: [HAND_WEAK, HAND_STRONG, ...LEG_STRONG],
  shift: { toWeakCm: -3 },
};
export const STRONG_LEG_LIFTED: PoseSpecification = {
  ...HANDS_AND_KNEES,
  strongDeg: { hipFlexion: 2, kneeFlexion: 12, ankleDorsiflexion: -25 },
  contacts: [HAND_WEAK, HAND_STRONG, ...LEG_WEAK],
  shift: { toWeakCm: 3 },
};
export const STRONG_HAND_AHEAD: PoseSpecification = {
  ...HANDS_AND_KNEES,
  strongDeg: { shoulderFlexion: 150, shoulderAbduction: 8, shoulderExternalRotation: 0, elbowFlexion: 5, pronation: 90, wristExtension: 0 },
  contacts: [HAND_WEAK, ...LEG_WEAK, ...LEG_STRONG],
  shift: { forwardCm: -4, toWeakCm: 2 },
};
export const WEAK_HAND_AHEAD: PoseSpecification = {
  ...HANDS_AND_KNEES,
  weakDeg: { shoulderFlexion: 118, shoulderAbduction: 8, shoulderExternalRotation: 0, elbowFlexion: 15, pronation: 90, wristExtension: 0 },
  contacts: [HAND_STRONG, ...LEG_WEAK, ...LEG_STRONG],
  shift: { forwardCm: -4, toWeakCm: -2 },
  notCounted: ["toes.weak", "toes.strong", "foot.weak", "foot.strong", "hand.weak"],
};
