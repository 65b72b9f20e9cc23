import type { ContactSpecification, LimbAngles, PoseSpecification, SurfaceSpecification } from "../../mechanics/pose/specification.ts";

/** Poses in sitting and at a table that positions, rungs and transitions start from. Angles: "judgement", adjusted until they closed. */

/** A seat as high as the hollow of the knee, deep enough for half the thigh. */
export const SEAT: SurfaceSpecification = { id: "seat", kind: "seat", height: { of: "kneeHollow", plusCm: -1 }, under: ["buttock.weak", "buttock.strong"], depthCm: 60, widthCm: 120 };
/** The high seat of a raised plinth: about a fifth higher than the hollow of the knee. */
export const HIGH_SEAT: SurfaceSpecification = { id: "seat", kind: "seat", height: { of: "kneeHollow", times: 1.22 }, under: ["buttock.weak", "buttock.strong"], depthCm: 60, widthCm: 120 };
/** A table at the height of the bent elbow in sitting. */
export const SITTING_TABLE: SurfaceSpecification = { id: "table", kind: "table", height: { of: "elbowSitting", plusCm: -2 }, under: ["forearm.weak", "forearm.strong"], depthCm: 60, widthCm: 110 };
/** A table or raised plinth to lean the forearms on in standing. */
export const STANDING_TABLE: SurfaceSpecification = { id: "table", kind: "table", height: { of: "elbowStanding", times: 0.86 }, under: ["forearm.weak", "forearm.strong"], depthCm: 70, widthCm: 120 };

export const WEAK_HIP_ON_SEAT: readonly ContactSpecification[] = [
  { patch: "buttock.weak", on: "seat", role: "both" },
  { patch: "thighBack.weak", on: "seat", role: "bears" },
];
export const STRONG_HIP_ON_SEAT: readonly ContactSpecification[] = [
  { patch: "buttock.strong", on: "seat", role: "both" },
  { patch: "thighBack.strong", on: "seat", role: "bears" },
];
export const SEATED: readonly ContactSpecification[] = [...WEAK_HIP_ON_SEAT, ...STRONG_HIP_ON_SEAT];
export const FEET_ON_FLOOR: readonly ContactSpecification[] = [
  { patch: "foot.weak", on: "floor", role: "both" },
  { patch: "foot.strong", on: "floor", role: "both" },
];
export const FOREARMS_ON_TABLE: readonly ContactSpecification[] = [
  { patch: "forearm.weak", on: "table", role: "both" },
  { patch: "forearm.strong", on: "table", role: "both" },
];
export const WEAK_HAND_ON_THIGH: ContactSpecification = { patch: "hand.weak", on: { body: "thighFront.weak" }, role: "both", effort: "rest" };
export const STRONG_HAND_ON_THIGH: ContactSpecification = { patch: "hand.strong", on: { body: "thighFront.strong" }, role: "both", effort: "rest" };

/** The strong hand lies flat on the knee of its side, as when leaning well ahead. */
export const STRONG_HAND_ON_KNEE: ContactSpecification = { patch: "hand.strong", on: { body: "knee.strong" }, role: "both", effort: "rest" };
export const WEAK_HAND_ON_KNEE: ContactSpecification = { patch: "hand.weak", on: { body: "knee.weak" }, role: "both", effort: "rest" };

/** The hand lies palm down on the thigh of its own side. */
export const HAND_ON_THIGH = { shoulderFlexion: 4, shoulderAbduction: 8, shoulderExternalRotation: -22, elbowFlexion: 62, pronation: 165, wristExtension: 28 } as const satisfies LimbAngles;
export const LEG_SITTING = { hipFlexion: 88, hipAbduction: 7, kneeFlexion: 92, ankleDorsiflexion: 2 } as const satisfies LimbAngles;

/** Short sitting: hips square, feet flat under the knees, hands on the thighs; the weight may go to either side. */
export const FREE_SITTING: PoseSpecification = {
  pelvis: { pitchDeg: 0 },
  trunkDeg: { lumbarFlexion: 3, thoraxFlexion: 3, neckFlexion: -3 },
  bothDeg: { ...HAND_ON_THIGH, ...LEG_SITTING },
  surfaces: [SEAT],
  contacts: [...SEATED, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH, STRONG_HAND_ON_THIGH],
  notCounted: ["hand.weak", "hand.strong", "toes.weak", "toes.strong"],
};
/** Short sitting at rest: the person's own sharing between the sides. */
export const SHORT_SITTING: PoseSpecification = { ...FREE_SITTING, sharing: "sitting" };

/** Short sitting with both forearms on a table in front, leaning a little. */
export const FOREARMS_ON_TABLE_SITTING: PoseSpecification = {
  pelvis: { pitchDeg: 10 },
  trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 6, neckFlexion: -10 },
  bothDeg: { ...LEG_SITTING, hipFlexion: 98, shoulderFlexion: 46, shoulderAbduction: 12, elbowFlexion: 66, pronation: 150, wristExtension: 0, girdleProtraction: 5 },
  surfaces: [SEAT, SITTING_TABLE],
  contacts: [...SEATED, ...FEET_ON_FLOOR, ...FOREARMS_ON_TABLE],
  notCounted: ["hand.weak", "hand.strong", "toes.weak", "toes.strong"],
};

/** Standing bent at the hips, both forearms on a high table, elbows under the shoulders. */
export const FOREARMS_ON_TABLE_STANDING: PoseSpecification = {
  pelvis: { pitchDeg: 44 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 6, neckFlexion: -18 },
  bothDeg: { hipFlexion: 46, hipAbduction: 5, kneeFlexion: 10, ankleDorsiflexion: 5, shoulderFlexion: 58, shoulderAbduction: 10, elbowFlexion: 86, pronation: 150, wristExtension: 0, girdleProtraction: 5 },
  surfaces: [STANDING_TABLE],
  contacts: [...FEET_ON_FLOOR, ...FOREARMS_ON_TABLE],
  notCounted: ["hand.weak", "hand.strong", "toes.weak", "toes.strong"],
};

export const LEG_LONG = { hipFlexion: 84, hipAbduction: 8, hipExternalRotation: 4, kneeFlexion: 0, ankleDorsiflexion: 6 } as const satisfies LimbAngles;
/** Long sitting on the mat; the legs may carry where they touch. */
export const WEAK_HIP_ON_MAT: readonly ContactSpecification[] = [
  { patch: "buttock.weak", on: "mat", role: "both" },
  { patch: "thighBack.weak", on: "mat", role: "bears" },
];
export const STRONG_HIP_ON_MAT: readonly ContactSpecification[] = [
  { patch: "buttock.strong", on: "mat", role: "both" },
  { patch: "thighBack.strong", on: "mat", role: "bears" },
];
export const LEGS_LONG_ON_MAT: readonly ContactSpecification[] = [
  { patch: "calf.weak", on: "mat", role: "both" },
  { patch: "calf.strong", on: "mat", role: "both" },
  { patch: "heel.weak", on: "mat", role: "bears" },
  { patch: "heel.strong", on: "mat", role: "bears" },
];
export const LONG_SEATED: readonly ContactSpecification[] = [...WEAK_HIP_ON_MAT, ...STRONG_HIP_ON_MAT, ...LEGS_LONG_ON_MAT];
/** Long sitting: legs long and a little apart, the back as long as the hamstrings allow, hands on the thighs. */
export const LONG_SITTING: PoseSpecification = {
  pelvis: { pitchDeg: -8 },
  trunkDeg: { lumbarFlexion: 12, thoraxFlexion: 8, neckFlexion: -6 },
  bothDeg: { ...HAND_ON_THIGH, ...LEG_LONG, shoulderFlexion: 6, shoulderAbduction: 7, shoulderExternalRotation: -18, elbowFlexion: 67, wristExtension: 29 },
  contacts: [...LONG_SEATED, WEAK_HAND_ON_THIGH, STRONG_HAND_ON_THIGH],
  notCounted: ["hand.weak", "hand.strong", "foot.weak", "foot.strong", "toes.weak", "toes.strong"],
};

/** The strong arm as a post: hand flat on the mat beside and behind the hip, fingers outward, elbow nearly straight. */
export const ARM_PROPS = { shoulderFlexion: -22, shoulderAbduction: 20, shoulderExternalRotation: 0, elbowFlexion: 8, pronation: 70, wristExtension: 70 } as const satisfies LimbAngles;
