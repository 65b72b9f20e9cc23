import type { ContactSpecification, LimbAngles, PoseSpecification, SurfaceSpecification } from "../../mechanics/pose/specification.ts";
import {
  ARM_HANGING,
  BENCH,
  FRONT_LEG,
  HALF_KNEELING_WEAK_FORWARD,
  HAND_ON_BENCH,
  HAND_STRONG,
  HAND_WEAK,
  HANDS_AND_KNEES,
  LEG_KNEELING,
  LEG_ON_ALL_FOURS,
  LEG_STRONG,
  LEG_WEAK,
  REAR_LEG,
  TALL_KNEELING,
} from "./kneeling-poses.data.ts";

/** More poses on hands and knees, sitting on the heels and kneeling. Angles: "judgement", adjusted until they closed. */

const FEET_LIMP = ["toes.weak", "toes.strong", "foot.weak", "foot.strong"] as const;
const ARMS_AND_FEET_LIMP = [...FEET_LIMP, "hand.weak", "hand.strong"] as const;
const WEAK_HAND_ON_THIGH: ContactSpecification = { patch: "hand.weak", on: { body: "thighFront.weak" }, role: "both", effort: "rest" };
const STRONG_HAND_ON_THIGH: ContactSpecification = { patch: "hand.strong", on: { body: "thighFront.strong" }, role: "both", effort: "rest" };

/** Hands and knees with the back rounded, then hollowed, then bent to a side. */
export const BACK_ROUNDED: PoseSpecification = { ...HANDS_AND_KNEES, pelvis: { pitchDeg: 62 }, trunkDeg: { lumbarFlexion: 26, thoraxFlexion: 16, neckFlexion: 10 } };
export const BACK_HOLLOWED: PoseSpecification = { ...HANDS_AND_KNEES, pelvis: { pitchDeg: 92 }, trunkDeg: { lumbarFlexion: -16, thoraxFlexion: -6, neckFlexion: -30 } };
export const BENT_TO_WEAK: PoseSpecification = { ...HANDS_AND_KNEES, trunkDeg: { ...HANDS_AND_KNEES.trunkDeg, lumbarSideBend: 14, thoraxSideBend: 10, neckSideBend: 14 } };

/** Hands and knees with a hand and the knee of the other side away. */
const REACHING_AHEAD = { shoulderFlexion: 150, shoulderAbduction: 8, shoulderExternalRotation: 0, elbowFlexion: 5, pronation: 90, wristExtension: 0 } as const satisfies LimbAngles;
const LEG_OUT_BEHIND = { hipFlexion: 4, kneeFlexion: 12, ankleDorsiflexion: -25 } as const satisfies LimbAngles;
export const STRONG_HAND_LIGHT_FOOT_SLID: PoseSpecification = {
  ...HANDS_AND_KNEES,
  weakDeg: { hipFlexion: 28, kneeFlexion: 12, ankleDorsiflexion: -62 },
  contacts: [HAND_WEAK, { patch: "hand.strong", on: "mat", role: "both", effort: "rest" }, ...LEG_STRONG, { patch: "instep.weak", on: "mat", role: "both", effort: "rest" }],
  shift: { forwardCm: -4 },
};
export const STRONG_HAND_AND_WEAK_LEG: PoseSpecification = {
  ...HANDS_AND_KNEES,
  strongDeg: REACHING_AHEAD,
  weakDeg: LEG_OUT_BEHIND,
  contacts: [HAND_WEAK, ...LEG_STRONG],
  shift: { forwardCm: -5 },
};
export const WEAK_HAND_AND_STRONG_LEG: PoseSpecification = {
  ...HANDS_AND_KNEES,
  weakDeg: { ...REACHING_AHEAD, shoulderFlexion: 118, elbowFlexion: 15 },
  strongDeg: LEG_OUT_BEHIND,
  contacts: [HAND_STRONG, ...LEG_WEAK],
  shift: { forwardCm: -5 },
  notCounted: [...FEET_LIMP, "hand.weak"],
};

/** Creeping: one knee or one hand on its way, the rest carries. */
const KNEE_DRAWN_UP = { hipFlexion: 104, kneeFlexion: 112, ankleDorsiflexion: -20 } as const satisfies LimbAngles;
export const WEAK_KNEE_DRAWN_UP: PoseSpecification = { ...HANDS_AND_KNEES, weakDeg: KNEE_DRAWN_UP, contacts: [HAND_WEAK, HAND_STRONG, ...LEG_STRONG], shift: { toWeakCm: -2 } };
export const STRONG_KNEE_DRAWN_UP: PoseSpecification = { ...HANDS_AND_KNEES, strongDeg: KNEE_DRAWN_UP, contacts: [HAND_WEAK, HAND_STRONG, ...LEG_WEAK], shift: { toWeakCm: 2 } };
export const STRONG_HAND_STEPS: PoseSpecification = {
  ...HANDS_AND_KNEES,
  strongDeg: { shoulderFlexion: 100, shoulderAbduction: 8, elbowFlexion: 32, pronation: 150, wristExtension: 20 },
  contacts: [HAND_WEAK, ...LEG_WEAK, ...LEG_STRONG],
  shift: { forwardCm: -7, toWeakCm: 1 },
};
/** Strides on hands and knees: the strong hand and the weak knee are ahead and carry again. */
export const CREEP_STRIDE: PoseSpecification = {
  ...HANDS_AND_KNEES,
  strongDeg: { shoulderFlexion: 96 },
  weakDeg: { hipFlexion: 92, kneeFlexion: 92 },
  shift: { forwardCm: 2, toWeakCm: 2 },
};

/** Seat back toward the heels with the hands staying ahead. */
const SEAT_BACK: PoseSpecification = {
  ...HANDS_AND_KNEES,
  bothDeg: { ...HANDS_AND_KNEES.bothDeg, hipFlexion: 112, kneeFlexion: 124, shoulderFlexion: 128, wristExtension: 45, ankleDorsiflexion: -62 },
};
export const SEAT_HALF_WAY_BACK: PoseSpecification = { ...SEAT_BACK, pelvis: { pitchDeg: 84 } };
export const SEAT_NEAR_HEELS: PoseSpecification = {
  ...SEAT_BACK,
  pelvis: { pitchDeg: 84 },
  trunkDeg: { lumbarFlexion: 14, thoraxFlexion: 8, neckFlexion: -6 },
  bothDeg: { ...SEAT_BACK.bothDeg, hipFlexion: 126, kneeFlexion: 142, shoulderFlexion: 142, elbowFlexion: 24, wristExtension: 30, ankleDorsiflexion: -66 },
};
export const SEAT_BACK_TO_WEAK: PoseSpecification = { ...SEAT_HALF_WAY_BACK, shift: { toWeakCm: 4 } };

/** A low bench across the mat: on the knees, trunk nearly level, both forearms on it. */
const LOW_BENCH: SurfaceSpecification = { id: "bench", kind: "bench", height: { of: "elbowKneeling", times: 0.52 }, under: ["forearm.weak", "forearm.strong"], depthCm: 40, widthCm: 90 };
const FOREARMS_ON_LOW_BENCH: readonly ContactSpecification[] = [
  { patch: "forearm.weak", on: "bench", role: "both" },
  { patch: "forearm.strong", on: "bench", role: "both" },
];
export const KNEES_AND_FOREARMS: PoseSpecification = {
  pelvis: { pitchDeg: 66 },
  trunkDeg: { lumbarFlexion: 2, thoraxFlexion: 4, neckFlexion: -20 },
  bothDeg: { ...LEG_ON_ALL_FOURS, hipFlexion: 70, shoulderFlexion: 84, shoulderAbduction: 10, elbowFlexion: 88, pronation: 150, wristExtension: 0, girdleProtraction: 5 },
  surfaces: [LOW_BENCH],
  contacts: [...FOREARMS_ON_LOW_BENCH, ...LEG_WEAK, ...LEG_STRONG],
  notCounted: ARMS_AND_FEET_LIMP,
};
export const FOREARMS_ROCKED_BACK: PoseSpecification = { ...KNEES_AND_FOREARMS, shift: { forwardCm: -8 } };
export const FOREARMS_TO_WEAK: PoseSpecification = { ...KNEES_AND_FOREARMS, shift: { forwardCm: 2, toWeakCm: 4 } };
export const STRONG_FOREARM_FLOATS: PoseSpecification = {
  ...KNEES_AND_FOREARMS,
  strongDeg: { shoulderFlexion: 104, shoulderAbduction: 8, elbowFlexion: 62, pronation: 150 },
  contacts: [{ patch: "forearm.weak", on: "bench", role: "both" }, ...LEG_WEAK, ...LEG_STRONG],
  shift: { forwardCm: -9, toWeakCm: 1 },
};
export const FOREARMS_STRONG_LEG_BACK: PoseSpecification = {
  ...KNEES_AND_FOREARMS,
  strongDeg: { hipFlexion: 8, kneeFlexion: 14, ankleDorsiflexion: -25 },
  contacts: [...FOREARMS_ON_LOW_BENCH, ...LEG_WEAK],
  shift: { toWeakCm: 3 },
};

/** A firm roll between the seat and the lower legs. */
const SEAT_ROLL: SurfaceSpecification = { id: "bolster", kind: "bolster", height: { cm: 24 }, under: ["buttock.weak", "buttock.strong"], depthCm: 24, widthCm: 60 };
const LEG_HEEL_SITTING = { hipFlexion: 70, hipAbduction: 4, kneeFlexion: 130, ankleDorsiflexion: -64 } as const satisfies LimbAngles;
const HAND_ON_LAP = { shoulderFlexion: 8, shoulderAbduction: 7, shoulderExternalRotation: -20, elbowFlexion: 58, pronation: 165, wristExtension: 28 } as const satisfies LimbAngles;
const SEAT_ON_ROLL: readonly ContactSpecification[] = [
  { patch: "buttock.weak", on: "bolster", role: "both" },
  { patch: "buttock.strong", on: "bolster", role: "both" },
];
/** Sitting back on a roll laid over the heels, hands on the thighs. */
export const HEEL_SITTING: PoseSpecification = {
  pelvis: { pitchDeg: 0 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 3, neckFlexion: -4 },
  bothDeg: { ...LEG_HEEL_SITTING, ...HAND_ON_LAP },
  surfaces: [SEAT_ROLL],
  contacts: [...SEAT_ON_ROLL, ...LEG_WEAK, ...LEG_STRONG, WEAK_HAND_ON_THIGH, STRONG_HAND_ON_THIGH],
  notCounted: ARMS_AND_FEET_LIMP,
};
export const HEEL_SITTING_REACH_AHEAD: PoseSpecification = {
  ...HEEL_SITTING,
  pelvis: { pitchDeg: 12 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, neckFlexion: -16 },
  strongDeg: { shoulderFlexion: 88, shoulderAbduction: 4, shoulderExternalRotation: 0, elbowFlexion: 10, pronation: 90, wristExtension: 0 },
  contacts: [...SEAT_ON_ROLL, ...LEG_WEAK, ...LEG_STRONG, WEAK_HAND_ON_THIGH],
};
export const HEEL_SITTING_REACH_TO_WEAK: PoseSpecification = {
  ...HEEL_SITTING_REACH_AHEAD,
  pelvis: { pitchDeg: 8 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 5, lumbarTurn: 7, thoraxTurn: 22, neckTurn: 22, lumbarSideBend: 6 },
  weakDeg: { ...HAND_ON_LAP, shoulderAbduction: 16, shoulderExternalRotation: -12, elbowFlexion: 48 },
  strongDeg: { ...HEEL_SITTING_REACH_AHEAD.strongDeg, shoulderAbduction: -22 },
};
/** Seat just off the roll: the thighs carry the trunk. */
export const SEAT_OFF_ROLL: PoseSpecification = {
  ...TALL_KNEELING,
  pelvis: { pitchDeg: 30 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 3, neckFlexion: -20 },
  bothDeg: { hipFlexion: 84, kneeFlexion: 136, ankleDorsiflexion: -62, shoulderFlexion: 34, shoulderAbduction: 6, elbowFlexion: 12, pronation: 90 },
  surfaces: [SEAT_ROLL],
  shift: { forwardCm: -3 },
};

/** Kneeling upright, weight moved without anything to hold on to. */
/** Kneeling upright with nothing to hold on to. */
const KNEELING_FREE: PoseSpecification = {
  pelvis: { pitchDeg: 2 },
  trunkDeg: {},
  bothDeg: { ...LEG_KNEELING, ...ARM_HANGING, hipAbduction: 5 },
  contacts: [...LEG_WEAK, ...LEG_STRONG],
  notCounted: ARMS_AND_FEET_LIMP,
};
export const KNEELING_TO_STRONG: PoseSpecification = { ...KNEELING_FREE, shift: { toWeakCm: -6 } };
export const KNEELING_TO_WEAK: PoseSpecification = { ...KNEELING_FREE, shift: { toWeakCm: 6 } };
export const KNEELING_LEANED_BACK: PoseSpecification = {
  ...KNEELING_FREE,
  pelvis: { pitchDeg: -16 },
  trunkDeg: { neckFlexion: 10 },
  bothDeg: { ...KNEELING_FREE.bothDeg, hipFlexion: 0, kneeFlexion: 108, shoulderFlexion: -14 },
};
/** The hand at the thigh of its side, trunk turned to look behind over the weak shoulder. */
export const KNEELING_TURNED_TO_WEAK: PoseSpecification = { ...KNEELING_FREE, trunkDeg: { lumbarTurn: 8, thoraxTurn: 24, neckTurn: 30 }, shift: { toWeakCm: 3 } };

/** The weak arm hanging a little away from the thigh. */
const ARM_ASIDE = { ...ARM_HANGING, shoulderFlexion: -4, shoulderAbduction: 16 } as const satisfies LimbAngles;

/** Hiking a hip at the bench: a knee grows light and leaves the mat, the other carries. */
const HIKING: PoseSpecification = {
  pelvis: { pitchDeg: 4 },
  trunkDeg: { lumbarFlexion: 3, thoraxFlexion: 2, neckFlexion: -2 },
  bothDeg: LEG_KNEELING,
  weakDeg: ARM_ASIDE,
  strongDeg: HAND_ON_BENCH,
  surfaces: [{ ...BENCH, under: ["hand.strong"] }],
  contacts: [{ patch: "hand.strong", on: "bench", role: "both" }],
  notCounted: ARMS_AND_FEET_LIMP,
};
export const WEAK_KNEE_LIGHT: PoseSpecification = {
  ...HIKING,
  trunkDeg: { ...HIKING.trunkDeg, lumbarSideBend: -5, thoraxSideBend: -4 },
  contacts: [...LEG_STRONG, { patch: "shin.weak", on: "mat", role: "both", effort: "light" }, { patch: "hand.strong", on: "bench", role: "both" }],
  shift: { toWeakCm: -9 },
};
export const WEAK_HIP_HIKED: PoseSpecification = {
  ...HIKING,
  pelvis: { pitchDeg: 4, rollToStrongDeg: 8 },
  trunkDeg: { ...HIKING.trunkDeg, lumbarSideBend: 10, thoraxSideBend: 3 },
  weakDeg: { ...ARM_ASIDE, hipFlexion: 12, kneeFlexion: 98, ankleDorsiflexion: -40 },
  strongDeg: { ...HAND_ON_BENCH, hipAbduction: -5 },
  contacts: [...LEG_STRONG, { patch: "hand.strong", on: "bench", role: "both" }],
  shift: { toWeakCm: -6 },
};
export const STRONG_KNEE_LIGHT: PoseSpecification = {
  ...HIKING,
  trunkDeg: { ...HIKING.trunkDeg, lumbarSideBend: 5, thoraxSideBend: 4 },
  contacts: [...LEG_WEAK, { patch: "shin.strong", on: "mat", role: "both", effort: "light" }, { patch: "hand.strong", on: "bench", role: "both" }],
  shift: { toWeakCm: 4 },
};
export const STRONG_HIP_HIKED: PoseSpecification = {
  ...HIKING,
  pelvis: { pitchDeg: 4, rollToStrongDeg: -8 },
  trunkDeg: { ...HIKING.trunkDeg, lumbarSideBend: -10, thoraxSideBend: -3 },
  weakDeg: { ...ARM_ASIDE, hipAbduction: -5 },
  strongDeg: { ...HAND_ON_BENCH, hipFlexion: 12, kneeFlexion: 98, ankleDorsiflexion: -40 },
  contacts: [...LEG_WEAK, { patch: "hand.strong", on: "bench", role: "both" }],
  shift: { toWeakCm: -2 },
};

/** Arms in kneeling: the strong hand carries the weak forearm, or reaches. */
export const KNEELING_ARMS_CARRIED: PoseSpecification = {
  ...TALL_KNEELING,
  weakDeg: { shoulderFlexion: 62, shoulderAbduction: -8, shoulderExternalRotation: -10, elbowFlexion: 30, pronation: 90 },
  strongDeg: { shoulderFlexion: 58, shoulderAbduction: -10, shoulderExternalRotation: -35, elbowFlexion: 52, pronation: 20 },
  notCounted: [...ARMS_AND_FEET_LIMP, "forearm.weak", "upperArm.weak"],
};
export const KNEELING_STRONG_ARM_HIGH: PoseSpecification = { ...TALL_KNEELING, trunkDeg: { neckFlexion: -12 }, strongDeg: { shoulderFlexion: 142, shoulderAbduction: 8, elbowFlexion: 10, pronation: 90 } };
export const KNEELING_REACH_ACROSS: PoseSpecification = {
  ...KNEELING_FREE,
  trunkDeg: { lumbarTurn: 7, thoraxTurn: 20, neckTurn: 20, lumbarSideBend: 4 },
  strongDeg: { shoulderFlexion: 86, shoulderAbduction: -20, elbowFlexion: 8, pronation: 90 },
  shift: { toWeakCm: 4 },
};

/** Walking on the knees: the knee on its way is off, the other carries. */
const KNEE_ON_ITS_WAY = { hipFlexion: 24, kneeFlexion: 100, ankleDorsiflexion: -30 } as const satisfies LimbAngles;
export const KNEE_WALK_WEAK_AHEAD: PoseSpecification = {
  ...HIKING,
  pelvis: { pitchDeg: 5, rollToStrongDeg: 5 },
  weakDeg: { ...ARM_ASIDE, ...KNEE_ON_ITS_WAY },
  strongDeg: { ...HAND_ON_BENCH, hipAbduction: -3 },
  contacts: [...LEG_STRONG, { patch: "hand.strong", on: "bench", role: "both" }],
  shift: { toWeakCm: -9 },
};
export const KNEE_WALK_STRONG_AHEAD: PoseSpecification = {
  ...HIKING,
  pelvis: { pitchDeg: 5, rollToStrongDeg: -5 },
  weakDeg: { ...ARM_ASIDE, hipAbduction: -3 },
  strongDeg: { ...HAND_ON_BENCH, ...KNEE_ON_ITS_WAY },
  contacts: [...LEG_WEAK, { patch: "hand.strong", on: "bench", role: "both" }],
  shift: { toWeakCm: -2 },
};
export const KNEE_WALK_STRONG_BACK: PoseSpecification = {
  ...KNEE_WALK_STRONG_AHEAD,
  strongDeg: { ...HAND_ON_BENCH, hipFlexion: -8, kneeFlexion: 98, ankleDorsiflexion: -30 },
};
export const KNEE_WALK_STRONG_ASIDE: PoseSpecification = {
  ...KNEE_WALK_STRONG_AHEAD,
  strongDeg: { ...HAND_ON_BENCH, hipFlexion: 8, hipAbduction: 20, kneeFlexion: 102, ankleDorsiflexion: -30 },
};

/** Bowing from the hips with a long back, knees down. */
const BOW: PoseSpecification = {
  ...TALL_KNEELING,
  trunkDeg: { neckFlexion: -10 },
  bothDeg: { hipFlexion: 36, kneeFlexion: 108, ankleDorsiflexion: -62, shoulderFlexion: 22, shoulderAbduction: 6, elbowFlexion: 8, pronation: 90 },
};
export const BOW_AT_BENCH: PoseSpecification = {
  ...BOW,
  pelvis: { pitchDeg: 13 },
  bothDeg: { ...BOW.bothDeg, hipFlexion: 26, kneeFlexion: 104 },
  strongDeg: { shoulderFlexion: 50, shoulderAbduction: 6, elbowFlexion: 46, pronation: 165, wristExtension: 52 },
  surfaces: [{ ...BENCH, height: { of: "elbowKneeling", times: 0.8 }, under: ["hand.strong"] }],
  contacts: [...LEG_WEAK, ...LEG_STRONG, { patch: "hand.strong", on: "bench", role: "both", effort: "rest" }],
};
export const BOW_SMALL: PoseSpecification = { ...BOW, pelvis: { pitchDeg: 20 } };
export const BOW_DEEP: PoseSpecification = {
  ...BOW,
  pelvis: { pitchDeg: 40 },
  shift: { forwardCm: -3 },
  trunkDeg: { neckFlexion: -22 },
  bothDeg: { ...BOW.bothDeg, hipFlexion: 74, kneeFlexion: 126, shoulderFlexion: 40 },
};

/** Half kneeling, weak foot in front: weight back on the strong knee; the strong hand away from the bench and out over the weak foot. */
export const BACK_ON_STRONG_KNEE: PoseSpecification = { ...HALF_KNEELING_WEAK_FORWARD, shift: { forwardCm: -4, toWeakCm: -3 } };
export const FORWARD_HAND_FREE: PoseSpecification = {
  ...HALF_KNEELING_WEAK_FORWARD,
  strongDeg: { ...REAR_LEG, ...ARM_HANGING },
  surfaces: [],
  contacts: [{ patch: "foot.weak", on: "mat", role: "both" }, ...LEG_STRONG],
  shift: { forwardCm: 8, toWeakCm: 2 },
};
export const REACH_OVER_WEAK_FOOT: PoseSpecification = {
  ...FORWARD_HAND_FREE,
  trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 5, thoraxTurn: 12, neckTurn: 12 },
  strongDeg: { ...REAR_LEG, shoulderFlexion: 84, shoulderAbduction: -8, elbowFlexion: 8, pronation: 90 },
  shift: { forwardCm: 10, toWeakCm: 2 },
};

/** A foot on its way through from kneeling to half kneeling. */
const LEG_THROUGH = { hipFlexion: 98, hipAbduction: 10, kneeFlexion: 112, ankleDorsiflexion: 4 } as const satisfies LimbAngles;
const THROUGH: PoseSpecification = { ...HIKING, surfaces: [{ ...BENCH, under: ["hand.strong"], depthCm: 35, widthCm: 40 }] };
export const WEAK_FOOT_THROUGH: PoseSpecification = {
  ...THROUGH,
  pelvis: { pitchDeg: 2, rollToStrongDeg: 4 },
  weakDeg: { ...LEG_THROUGH, ...ARM_HANGING },
  strongDeg: { ...REAR_LEG, ...HAND_ON_BENCH, hipAbduction: -2 },
  contacts: [...LEG_STRONG, { patch: "hand.strong", on: "bench", role: "both" }],
  shift: { forwardCm: -4, toWeakCm: -10.4 },
};
export const STRONG_FOOT_THROUGH: PoseSpecification = {
  ...THROUGH,
  pelvis: { pitchDeg: 2, rollToStrongDeg: -4 },
  weakDeg: { ...REAR_LEG, ...ARM_HANGING, hipAbduction: -2 },
  strongDeg: { ...LEG_THROUGH, ...HAND_ON_BENCH },
  contacts: [...LEG_WEAK, { patch: "hand.strong", on: "bench", role: "both" }],
  shift: { toWeakCm: -2 },
};

/** So far ahead over the weak foot that the strong knee grows light. */
export const STRONG_KNEE_GROWS_LIGHT: PoseSpecification = { ...HALF_KNEELING_WEAK_FORWARD, shift: { forwardCm: 6, toWeakCm: 1 } };
/** Rising over the weak foot, the strong hand on a high bench, on a stool, on a low stool: the strong knee is just off the mat. */
const RISE: PoseSpecification = {
  ...HALF_KNEELING_WEAK_FORWARD,
  pelvis: { pitchDeg: 24 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, neckFlexion: -16 },
  weakDeg: { ...FRONT_LEG, ...ARM_HANGING, shoulderFlexion: 24, hipFlexion: 90, hipAbduction: -2, kneeFlexion: 76, ankleDorsiflexion: 14 },
  strongDeg: { hipFlexion: 30, kneeFlexion: 66, ankleDorsiflexion: 10, toeExtension: 50, shoulderFlexion: 54, shoulderAbduction: 8, elbowFlexion: 40, pronation: 165, wristExtension: 58 },
  contacts: [
    { patch: "foot.weak", on: "mat", role: "both" },
    { patch: "forefoot.strong", on: "mat", role: "both" },
    { patch: "hand.strong", on: "stool", role: "both" },
  ],
  shift: { toWeakCm: 3 },
  notCounted: ["toes.weak", "toes.strong", "hand.weak"],
};
export const RISING_HIGH_STOOL: PoseSpecification = { ...RISE, surfaces: [{ id: "stool", kind: "stool", height: { of: "elbowKneeling", times: 1.02 }, under: ["hand.strong"], depthCm: 36, widthCm: 36 }] };
export const RISING_MIDDLE_STOOL: PoseSpecification = {
  ...RISE,
  surfaces: [{ id: "stool", kind: "stool", height: { of: "elbowKneeling", times: 0.8 }, under: ["hand.strong"], depthCm: 36, widthCm: 36 }],
  weakDeg: { ...RISE.weakDeg, hipFlexion: 98, kneeFlexion: 84 },
  shift: { toWeakCm: 5 },
};
