import type { ContactSpecification, LimbAngles, PoseSpecification, SurfaceSpecification } from "../../mechanics/pose/specification.ts";

/** Standing with both hands on a table or raised plinth. Angles: "judgement", adjusted until they closed. */

/** A table or raised plinth at about the height of the hip joint, against a wall or braked. */
const HAND_TABLE: SurfaceSpecification = { id: "table", kind: "table", height: { of: "hipStanding", times: 0.92 }, under: ["hand.weak", "hand.strong"], depthCm: 70, widthCm: 120 };
const WEAK_FOOT: ContactSpecification = { patch: "foot.weak", on: "floor", role: "both" };
const STRONG_FOOT: ContactSpecification = { patch: "foot.strong", on: "floor", role: "both" };
const WEAK_HAND: ContactSpecification = { patch: "hand.weak", on: "table", role: "both" };
/** Where the legs are the work: the weak palm only lies there. */
const WEAK_HAND_RESTS: ContactSpecification = { ...WEAK_HAND, effort: "rest" };
const STRONG_HAND: ContactSpecification = { patch: "hand.strong", on: "table", role: "both" };
const ARM_ON_TABLE = { shoulderFlexion: 66, shoulderAbduction: 10, shoulderExternalRotation: 8, elbowFlexion: 6, pronation: 165, wristExtension: 74 } as const satisfies LimbAngles;
const LEG = { hipFlexion: 40, hipAbduction: 4, kneeFlexion: 8, ankleDorsiflexion: 6 } as const satisfies LimbAngles;
const LIMP = ["toes.weak", "toes.strong"] as const;

/** Standing bent a little at the hips, both hands flat on the table under the shoulders, elbows long. */
export const HANDS_ON_TABLE: PoseSpecification = {
  pelvis: { pitchDeg: 36 },
  trunkDeg: { lumbarFlexion: 2, thoraxFlexion: 4, neckFlexion: -16 },
  bothDeg: { ...LEG, ...ARM_ON_TABLE },
  surfaces: [HAND_TABLE],
  contacts: [WEAK_FOOT, STRONG_FOOT, WEAK_HAND, STRONG_HAND],
  notCounted: LIMP,
};
const WEAK_HAND_RESTING: PoseSpecification = { ...HANDS_ON_TABLE, contacts: [WEAK_FOOT, STRONG_FOOT, WEAK_HAND_RESTS, STRONG_HAND], notCounted: [...LIMP, "hand.weak"] };
export const LEANED_ONTO_HANDS: PoseSpecification = { ...HANDS_ON_TABLE, shift: { forwardCm: 9 } };
export const TABLE_TO_STRONG: PoseSpecification = { ...WEAK_HAND_RESTING, shift: { toWeakCm: -6 } };
export const TABLE_TO_WEAK: PoseSpecification = { ...HANDS_ON_TABLE, shift: { toWeakCm: 6 } };
/** The weak hand rests, the strong hand has left the table. */
export const STRONG_HAND_LIGHT: PoseSpecification = {
  ...HANDS_ON_TABLE,
  strongDeg: { shoulderFlexion: 50, elbowFlexion: 40, pronation: 120, wristExtension: 10 },
  contacts: [WEAK_FOOT, STRONG_FOOT, WEAK_HAND],
  shift: { forwardCm: 2, toWeakCm: 2 },
};
export const STRONG_HAND_REACHES_WEAK: PoseSpecification = {
  ...STRONG_HAND_LIGHT,
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 4, lumbarTurn: 5, thoraxTurn: 16, neckTurn: 18, neckFlexion: -12 },
  strongDeg: { shoulderFlexion: 100, shoulderAbduction: -18, elbowFlexion: 8, pronation: 90, wristExtension: 0 },
  shift: { forwardCm: 3, toWeakCm: 3 },
};

/** Both knees bent over the toes; then the same with the strong foot a foot's length ahead. */
export const TABLE_KNEES_BENT: PoseSpecification = {
  ...WEAK_HAND_RESTING,
  bothDeg: { ...HANDS_ON_TABLE.bothDeg, hipFlexion: 62, kneeFlexion: 42, ankleDorsiflexion: 18, shoulderFlexion: 72, wristExtension: 70 },
};
export const TABLE_KNEES_BENT_TO_WEAK: PoseSpecification = { ...TABLE_KNEES_BENT, shift: { toWeakCm: 5 } };
export const TABLE_WEAK_LEG_BENT_ALONE: PoseSpecification = {
  ...TABLE_KNEES_BENT,
  bothDeg: { ...TABLE_KNEES_BENT.bothDeg, hipFlexion: 56, kneeFlexion: 32, ankleDorsiflexion: 14 },
  strongDeg: { hipFlexion: 70, kneeFlexion: 70, ankleDorsiflexion: 0 },
  contacts: [WEAK_FOOT, { patch: "forefoot.strong", on: "floor", role: "both", effort: "rest" }, WEAK_HAND_RESTS, STRONG_HAND],
  shift: { toWeakCm: 5 },
};

/** The weak foot steps back; the strong foot leaves the floor. */
export const TABLE_WEAK_FOOT_BACK: PoseSpecification = {
  ...WEAK_HAND_RESTING,
  weakDeg: { hipFlexion: 16, kneeFlexion: 8, ankleDorsiflexion: 0, toeExtension: 30 },
  contacts: [{ patch: "forefoot.weak", on: "floor", role: "both" }, STRONG_FOOT, WEAK_HAND_RESTS, STRONG_HAND],
  shift: { toWeakCm: -3 },
};
export const TABLE_WEAK_LEG_BACK_UP: PoseSpecification = {
  ...WEAK_HAND_RESTING,
  weakDeg: { hipFlexion: 6, kneeFlexion: 10, ankleDorsiflexion: 0 },
  contacts: [STRONG_FOOT, WEAK_HAND_RESTS, STRONG_HAND],
  shift: { toWeakCm: -10 },
  notCounted: [...LIMP, "foot.weak", "hand.weak"],
};
export const TABLE_STRONG_FOOT_BACK: PoseSpecification = {
  ...WEAK_HAND_RESTING,
  strongDeg: { hipFlexion: 16, kneeFlexion: 8, ankleDorsiflexion: 0, toeExtension: 30 },
  contacts: [WEAK_FOOT, { patch: "forefoot.strong", on: "floor", role: "both" }, WEAK_HAND_RESTS, STRONG_HAND],
  shift: { toWeakCm: 4 },
};
export const TABLE_STRONG_FOOT_UP: PoseSpecification = {
  ...WEAK_HAND_RESTING,
  strongDeg: { hipFlexion: 66, kneeFlexion: 58, ankleDorsiflexion: 2 },
  contacts: [WEAK_FOOT, WEAK_HAND_RESTS, STRONG_HAND],
  shift: { toWeakCm: 5 },
};
export const TABLE_STRONG_FOOT_UP_ONE_HAND: PoseSpecification = {
  ...TABLE_STRONG_FOOT_UP,
  weakDeg: { shoulderFlexion: 4, shoulderAbduction: 12, shoulderExternalRotation: -40, elbowFlexion: 92, pronation: 90, wristExtension: 0 },
  contacts: [WEAK_FOOT, STRONG_HAND],
  notCounted: [...LIMP, "hand.weak"],
};

/** Bending the elbows toward the table and pushing away. */
export const PUSH_AWAY_SMALL: PoseSpecification = {
  ...HANDS_ON_TABLE,
  pelvis: { pitchDeg: 40 },
  bothDeg: { ...LEG, hipFlexion: 42, ankleDorsiflexion: 8, shoulderFlexion: 62, shoulderAbduction: 20, elbowFlexion: 34, pronation: 160, wristExtension: 80 },
  shift: { forwardCm: 3 },
};
export const PUSH_AWAY_DEEP: PoseSpecification = {
  ...PUSH_AWAY_SMALL,
  pelvis: { pitchDeg: 46 },
  bothDeg: { ...PUSH_AWAY_SMALL.bothDeg, hipFlexion: 46, ankleDorsiflexion: 10, shoulderFlexion: 56, shoulderAbduction: 26, elbowFlexion: 62, wristExtension: 82 },
  shift: { forwardCm: 6 },
};
