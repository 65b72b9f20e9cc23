import type { PoseSpecification } from "../../../mechanics/pose/specification.ts";
import {
  ARM_HANGING,
  BENCH,
  FOREARM_ON_BENCH,
  HALF_KNEELING_STRONG_FORWARD,
  HALF_KNEELING_WEAK_FORWARD,
  HAND_ON_BENCH,
  KNEELING_AT_BENCH,
  LEG_KNEELING,
  LEG_STRONG,
  LEG_WEAK,
  TALL_KNEELING,
} from "../../positions/kneeling-poses.data.ts";

/** Key poses of kneeling and half kneeling. */
export const STRONG_FOREARM_ON_BENCH: PoseSpecification = {
  ...KNEELING_AT_BENCH,
  pelvis: { pitchDeg: 6 },
  weakDeg: ARM_HANGING,
  strongDeg: FOREARM_ON_BENCH,
  contacts: [...LEG_WEAK, ...LEG_STRONG, { patch: "forearm.strong", on: "bench", role: "both" }],
};
export const STRONG_HAND_ON_BENCH: PoseSpecification = {
  ...KNEELING_AT_BENCH,
  pelvis: { pitchDeg: 3 },
  trunkDeg: { lumbarFlexion: 2, thoraxFlexion: 1, neckFlexion: -2 },
  bothDeg: LEG_KNEELING,
  weakDeg: ARM_HANGING,
  strongDeg: HAND_ON_BENCH,
  surfaces: [{ ...BENCH, under: ["hand.strong"] }],
  contacts: [...LEG_WEAK, ...LEG_STRONG, { patch: "hand.strong", on: "bench", role: "both" }],
};
export const SHIFTED_TO_STRONG: PoseSpecification = { ...STRONG_HAND_ON_BENCH, shift: { toWeakCm: -5 } };
export const SHIFTED_TO_WEAK: PoseSpecification = { ...STRONG_HAND_ON_BENCH, shift: { toWeakCm: 5 } };
/** Nothing on the bench any more: the strong hand reaches ahead at breast height. */
export const STRONG_HAND_REACHES: PoseSpecification = {
  ...TALL_KNEELING,
  strongDeg: { shoulderFlexion: 75, elbowFlexion: 10, pronation: 90 },
};

/** Seat half way up from the heels, both forearms on the bench. */
export const HALF_UP_FOREARMS: PoseSpecification = {
  ...KNEELING_AT_BENCH,
  pelvis: { pitchDeg: 30 },
  trunkDeg: { lumbarFlexion: 2, thoraxFlexion: 2, neckFlexion: -20 },
  bothDeg: { hipFlexion: 68, kneeFlexion: 126, ankleDorsiflexion: -62, shoulderFlexion: 78, shoulderAbduction: 8, elbowFlexion: 50, pronation: 150 },
  surfaces: [{ ...BENCH, height: { of: "elbowKneeling", times: 0.72 } }],
};
export const HALF_UP_STRONG_HAND: PoseSpecification = {
  ...HALF_UP_FOREARMS,
  pelvis: { pitchDeg: 26 },
  weakDeg: { ...ARM_HANGING, shoulderFlexion: 30 },
  strongDeg: { shoulderFlexion: 62, shoulderAbduction: 6, elbowFlexion: 40, pronation: 165, wristExtension: 55 },
  surfaces: [{ ...BENCH, height: { of: "elbowKneeling", times: 0.66 }, under: ["hand.strong"] }],
  contacts: [...LEG_WEAK, ...LEG_STRONG, { patch: "hand.strong", on: "bench", role: "both" }],
};
/** Seat half way up with the strong hand on the thigh only. */
export const HALF_UP_FREE: PoseSpecification = {
  ...TALL_KNEELING,
  pelvis: { pitchDeg: 30 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 2, neckFlexion: -20 },
  bothDeg: { hipFlexion: 68, kneeFlexion: 124, ankleDorsiflexion: -62, shoulderFlexion: 34, shoulderAbduction: 6, elbowFlexion: 12, pronation: 90 },
};

export const WEIGHT_ON_WEAK_FOOT: PoseSpecification = { ...HALF_KNEELING_WEAK_FORWARD, shift: { forwardCm: 9, toWeakCm: 3 } };
export const WEAK_FORWARD_HAND_OFF: PoseSpecification = {
  ...HALF_KNEELING_WEAK_FORWARD,
  strongDeg: { ...HALF_KNEELING_WEAK_FORWARD.strongDeg, ...ARM_HANGING },
  surfaces: [],
  contacts: [{ patch: "foot.weak", on: "mat", role: "both" }, ...LEG_STRONG],
};
export const WEIGHT_ON_STRONG_FOOT: PoseSpecification = { ...HALF_KNEELING_STRONG_FORWARD, shift: { forwardCm: 12, toWeakCm: -5 } };
/** Rising: the weight is over the strong foot, which stands under the middle, and the weak knee has just come off the mat. */
export const RISING_STRONG_FORWARD: PoseSpecification = {
  ...HALF_KNEELING_STRONG_FORWARD,
  pelvis: { pitchDeg: 22 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, neckFlexion: -16 },
  weakDeg: { ...ARM_HANGING, shoulderFlexion: 20, hipFlexion: 30, kneeFlexion: 66, ankleDorsiflexion: 10, toeExtension: 50 },
  strongDeg: { hipFlexion: 88, hipAbduction: -4, kneeFlexion: 74, ankleDorsiflexion: 14, shoulderFlexion: 56, shoulderAbduction: 8, elbowFlexion: 45, pronation: 165, wristExtension: 55 },
  contacts: [
    { patch: "foot.strong", on: "mat", role: "both" },
    { patch: "forefoot.weak", on: "mat", role: "both" },
    { patch: "hand.strong", on: "bench", role: "both" },
  ],
  shift: { toWeakCm: -9 },
  notCounted: ["toes.weak", "toes.strong", "hand.weak"],
};
