import type { PoseSpecification } from "../../mechanics/pose/specification.ts";
import { SEAT_HALF_WAY_BACK } from "../positions/kneeling-more-poses.data.ts";
import { ARM_HANGING, BENCH, FRONT_LEG, HALF_KNEELING_STRONG_FORWARD, KNEELING_AT_BENCH, LEG_STRONG, LEG_WEAK } from "../positions/kneeling-poses.data.ts";
import { FEET_ON_FLOOR, HIGH_SEAT, WEAK_HAND_ON_KNEE } from "../positions/sitting-poses.data.ts";
import { BARS } from "../positions/standing-poses.data.ts";
import { HAND_FLAT, HAND_TABLE } from "../positions/upright-poses.data.ts";

/** Moments on the way between hands and knees, kneeling, half kneeling, a seat and standing. Angles: "judgement", adjusted until they closed. */

const FEET_LIMP = ["toes.weak", "toes.strong", "foot.weak", "foot.strong"] as const;

/* Between hands and knees and the bench. */
/** Rocked back: the strong hand already on the bench, the weak side of the chest carried by the helper. */
export const STRONG_HAND_UP_ON_BENCH: PoseSpecification = {
  ...KNEELING_AT_BENCH,
  pelvis: { pitchDeg: 54 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 2, neckFlexion: -24 },
  bothDeg: { hipFlexion: 84, kneeFlexion: 118, ankleDorsiflexion: -62 },
  weakDeg: { ...ARM_HANGING, shoulderFlexion: 52, elbowFlexion: 16 },
  strongDeg: { shoulderFlexion: 100, shoulderAbduction: 8, elbowFlexion: 28, pronation: 165, wristExtension: 22 },
  surfaces: [{ ...BENCH, height: { of: "elbowKneeling", times: 0.72 }, under: ["hand.strong"], depthCm: 40, widthCm: 60 }],
  contacts: [...LEG_WEAK, ...LEG_STRONG, { patch: "hand.strong", on: "bench", role: "both" }],
};
/** Seat back toward the strong heel, the strong forearm down on the mat, the weak forearm laid beside it. */
export const STRONG_FOREARM_DOWN_SEAT_BACK: PoseSpecification = {
  ...SEAT_HALF_WAY_BACK,
  pelvis: { pitchDeg: 88, rollToStrongDeg: 4 },
  trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 6, lumbarTurn: -2, thoraxTurn: -6, neckFlexion: -14 },
  bothDeg: { ...SEAT_HALF_WAY_BACK.bothDeg, hipFlexion: 112, kneeFlexion: 126 },
  weakDeg: { shoulderFlexion: 112, shoulderAbduction: 8, elbowFlexion: 70, pronation: 120, wristExtension: 0 },
  strongDeg: { shoulderFlexion: 104, shoulderAbduction: 8, elbowFlexion: 88, pronation: 150, wristExtension: 0 },
  contacts: [...LEG_WEAK, ...LEG_STRONG, { patch: "forearm.strong", on: "mat", role: "both" }, { patch: "forearm.weak", on: "mat", role: "both", effort: "rest" }],
  notCounted: ["hand.weak", "hand.strong", ...FEET_LIMP],
};

/** The strong foot has just come through and been set: the weight is still over the weak knee. */
export const STRONG_FOOT_JUST_SET: PoseSpecification = { ...HALF_KNEELING_STRONG_FORWARD, shift: { forwardCm: -3, toWeakCm: 3 } };

/* Up from half kneeling at the bar. */
const ARM_UP_TO_BAR = { shoulderFlexion: 62, shoulderAbduction: 12, elbowFlexion: 58, pronation: 90, wristExtension: 10 } as const;
/** Half kneeling, the strong foot in front, the strong hand on the bar, the weak toes tucked under. */
export const HALF_KNEELING_AT_BAR: PoseSpecification = {
  ...HALF_KNEELING_STRONG_FORWARD,
  pelvis: { pitchDeg: 8 },
  weakDeg: { ...HALF_KNEELING_STRONG_FORWARD.weakDeg, hipFlexion: 2, kneeFlexion: 84, ankleDorsiflexion: 20, toeExtension: 72 },
  strongDeg: { ...FRONT_LEG, ...ARM_UP_TO_BAR, shoulderFlexion: 70, elbowFlexion: 80 },
  surfaces: [BARS],
  contacts: [
    { patch: "foot.strong", on: "mat", role: "both" },
    { patch: "knee.weak", on: "mat", role: "both" },
    { patch: "toes.weak", on: "mat", role: "both" },
    { patch: "grip.strong", on: "bars", role: "both", grips: true },
  ],
};
/** The weak knee has left the mat, the weight is over the strong foot, the hand pulls and pushes on the bar. */
export const RISING_AT_BAR: PoseSpecification = {
  ...HALF_KNEELING_STRONG_FORWARD,
  pelvis: { pitchDeg: 26 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, neckFlexion: -18 },
  weakDeg: { ...ARM_HANGING, shoulderFlexion: 24, hipFlexion: 24, kneeFlexion: 52, ankleDorsiflexion: 12, toeExtension: 45 },
  strongDeg: { hipFlexion: 84, hipAbduction: -3, kneeFlexion: 66, ankleDorsiflexion: 14, ...ARM_UP_TO_BAR },
  surfaces: [BARS],
  contacts: [
    { patch: "foot.strong", on: "mat", role: "both" },
    { patch: "forefoot.weak", on: "mat", role: "both" },
    { patch: "grip.strong", on: "bars", role: "both", grips: true },
  ],
  shift: { toWeakCm: -6 },
  notCounted: ["toes.weak", "toes.strong", "hand.weak"],
};

/* Off a seat. */
/** A seat a tenth higher than the hollow of the knee. */
const EDGE_SEAT = { ...HIGH_SEAT, height: { of: "kneeHollow", times: 1.1 } } as const;
/** The seat just off, the strong hand still pushing beside the hip. */
export const SEAT_OFF_HAND_PUSHES: PoseSpecification = {
  pelvis: { pitchDeg: 42 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, neckFlexion: -22 },
  bothDeg: { hipFlexion: 114, hipAbduction: 6, kneeFlexion: 92, ankleDorsiflexion: 18 },
  weakDeg: { shoulderFlexion: 18, shoulderAbduction: 10, shoulderExternalRotation: -18, elbowFlexion: 78, pronation: 165, wristExtension: 27 },
  strongDeg: { shoulderFlexion: 16, shoulderAbduction: 16, elbowFlexion: 24, pronation: 100, wristExtension: 72 },
  surfaces: [EDGE_SEAT],
  contacts: [...FEET_ON_FLOOR, WEAK_HAND_ON_KNEE, { patch: "hand.strong", on: "seat", role: "both" }],
  sharing: "standing",
  notCounted: ["hand.weak", "hand.strong", "toes.weak", "toes.strong"],
};
/** Half way up or down between the bars, the strong hand on its bar. */
export const HALF_UP_IN_BARS: PoseSpecification = {
  pelvis: { pitchDeg: 30 },
  trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 5, neckFlexion: -18 },
  bothDeg: { hipFlexion: 72, hipAbduction: 4, kneeFlexion: 64, ankleDorsiflexion: 18 },
  weakDeg: { ...ARM_HANGING, shoulderFlexion: 30 },
  strongDeg: { shoulderFlexion: 40, shoulderAbduction: 14, elbowFlexion: 56, pronation: 90, wristExtension: 10 },
  surfaces: [BARS, EDGE_SEAT],
  contacts: [...FEET_ON_FLOOR, { patch: "grip.strong", on: "bars", role: "both", grips: true }],
  shift: { toWeakCm: -4 },
  notCounted: ["hand.weak", "toes.weak", "toes.strong"],
};
/** Half way up or down before the mat, the strong hand flat on the table ahead. */
export const HALF_UP_HAND_ON_TABLE: PoseSpecification = {
  pelvis: { pitchDeg: 38 },
  trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 5, neckFlexion: -20 },
  bothDeg: { hipFlexion: 88, hipAbduction: 5, kneeFlexion: 72, ankleDorsiflexion: 18 },
  weakDeg: { ...ARM_HANGING, shoulderFlexion: 34 },
  strongDeg: { shoulderFlexion: 62, shoulderAbduction: 8, elbowFlexion: 40, pronation: 165, wristExtension: 20 },
  surfaces: [EDGE_SEAT, HAND_TABLE],
  contacts: [...FEET_ON_FLOOR, HAND_FLAT],
  shift: { toWeakCm: -4 },
  notCounted: ["hand.weak", "hand.strong", "toes.weak", "toes.strong"],
};
