import type { ContactSpecification, LimbAngles, PoseSpecification } from "../../mechanics/pose/specification.ts";
import { LEG_FACE_DOWN, LEGS_FACE_DOWN, PRONE, PRONE_ON_ELBOWS } from "./prone-poses.data.ts";

/** More key poses face down: knee, hip, blades, chest and the pelvis moved. Angles: "judgement", adjusted until they closed. */

const HEAD_DOWN: ContactSpecification = { patch: "headSide", on: "pillow", role: "both" };
const CHEST_DOWN: ContactSpecification = { patch: "chestFront", on: "mat", role: "both" };
const BELLY_DOWN: ContactSpecification = { patch: "belly", on: "mat", role: "bears" };
const HIPS_DOWN: readonly ContactSpecification[] = [
  { patch: "pelvisFront.weak", on: "mat", role: "both" },
  { patch: "pelvisFront.strong", on: "mat", role: "both" },
];
const WEAK_ARM_DOWN: readonly ContactSpecification[] = [
  { patch: "forearm.weak", on: "mat", role: "bears", effort: "rest" },
  { patch: "hand.weak", on: "mat", role: "both", effort: "rest" },
];
const STRONG_ARM_DOWN: readonly ContactSpecification[] = [
  { patch: "forearm.strong", on: "mat", role: "bears", effort: "rest" },
  { patch: "hand.strong", on: "mat", role: "both", effort: "rest" },
];
const STRONG_LEG_DOWN: readonly ContactSpecification[] = [
  { patch: "thighFront.strong", on: "mat", role: "both" },
  { patch: "knee.strong", on: "mat", role: "bears" },
  { patch: "instep.strong", on: "mat", role: "both" },
];
const WEAK_LEG_DOWN: readonly ContactSpecification[] = [
  { patch: "thighFront.weak", on: "mat", role: "both" },
  { patch: "knee.weak", on: "mat", role: "bears" },
  { patch: "instep.weak", on: "mat", role: "both" },
];
const TRUNK_AND_ARMS_DOWN = [HEAD_DOWN, CHEST_DOWN, BELLY_DOWN, ...HIPS_DOWN, ...WEAK_ARM_DOWN, ...STRONG_ARM_DOWN] as const;

const WEAK_SHIN_FREE: PoseSpecification = {
  ...PRONE,
  contacts: [...TRUNK_AND_ARMS_DOWN, ...STRONG_LEG_DOWN, { patch: "thighFront.weak", on: "mat", role: "both" }, { patch: "knee.weak", on: "mat", role: "bears" }],
};
/** The weak shin a little short of upright, being let down. */
export const WEAK_SHIN_NEAR_UPRIGHT: PoseSpecification = { ...WEAK_SHIN_FREE, weakDeg: { kneeFlexion: 68, ankleDorsiflexion: -20 } };
/** The weak shin half way up. */
export const WEAK_SHIN_HALF_UP: PoseSpecification = { ...WEAK_SHIN_FREE, weakDeg: { kneeFlexion: 44, ankleDorsiflexion: -20 } };
/** The weak foot a hand's breadth off the mat. */
export const WEAK_FOOT_OFF_MAT: PoseSpecification = { ...WEAK_SHIN_FREE, weakDeg: { kneeFlexion: 20, ankleDorsiflexion: -20 } };

/** The strong leg lifted straight, the weak one pressing into the mat. */
export const STRONG_LEG_LIFTED_FACE_DOWN: PoseSpecification = {
  ...PRONE,
  strongDeg: { hipFlexion: -12, hipAbduction: 5, kneeFlexion: 3 },
  contacts: [...TRUNK_AND_ARMS_DOWN, ...WEAK_LEG_DOWN],
};
/** The weak thigh lifted with its knee bent. */
export const WEAK_THIGH_LIFTED_KNEE_BENT: PoseSpecification = {
  ...PRONE,
  weakDeg: { hipFlexion: -11, hipAbduction: 5, kneeFlexion: 84, ankleDorsiflexion: -10 },
  contacts: [...TRUNK_AND_ARMS_DOWN, ...STRONG_LEG_DOWN],
};
/** The weak leg lifted straight. */
export const WEAK_LEG_LIFTED_FACE_DOWN: PoseSpecification = {
  ...PRONE,
  weakDeg: { hipFlexion: -12, hipAbduction: 5, kneeFlexion: 3 },
  contacts: [...TRUNK_AND_ARMS_DOWN, ...STRONG_LEG_DOWN],
};

/** Both blades drawn back and down, the shoulder fronts light, the hands lying. */
export const BLADES_SET_FACE_DOWN: PoseSpecification = { ...PRONE, bothDeg: { ...PRONE.bothDeg, girdleProtraction: -16, girdleElevation: -4 } };
const ARM_LIFTED_ALONG: LimbAngles = { girdleProtraction: -14, girdleElevation: -4, shoulderFlexion: -12, shoulderAbduction: 14, elbowFlexion: 4, pronation: 60 };
/** The strong arm lifted along the body, the weak one lying. */
export const STRONG_ARM_LIFTED_ALONG: PoseSpecification = {
  ...BLADES_SET_FACE_DOWN,
  strongDeg: ARM_LIFTED_ALONG,
  contacts: [HEAD_DOWN, CHEST_DOWN, BELLY_DOWN, ...HIPS_DOWN, ...WEAK_ARM_DOWN, ...WEAK_LEG_DOWN, ...STRONG_LEG_DOWN],
};
/** Both arms lifted along the body. */
export const BOTH_ARMS_LIFTED_ALONG: PoseSpecification = {
  ...BLADES_SET_FACE_DOWN,
  weakDeg: ARM_LIFTED_ALONG,
  strongDeg: ARM_LIFTED_ALONG,
  contacts: [HEAD_DOWN, CHEST_DOWN, BELLY_DOWN, ...HIPS_DOWN, ...WEAK_LEG_DOWN, ...STRONG_LEG_DOWN],
};

/** The head lifted off the pillow and carried through the middle. */
export const HEAD_LIFTED_FACE_DOWN: PoseSpecification = {
  ...PRONE,
  trunkDeg: { ...PRONE.trunkDeg, neckFlexion: 4, neckTurn: -20 },
  contacts: [CHEST_DOWN, BELLY_DOWN, ...HIPS_DOWN, ...WEAK_ARM_DOWN, ...STRONG_ARM_DOWN, ...WEAK_LEG_DOWN, ...STRONG_LEG_DOWN],
  notCounted: ["hand.weak", "hand.strong", "foot.weak", "foot.strong", "toes.weak", "toes.strong"],
};
/** Head and breastbone lifted by the back, the forearms lying. */
export const CHEST_LIFTED_LOW: PoseSpecification = {
  ...HEAD_LIFTED_FACE_DOWN,
  pelvis: { pitchDeg: 86 },
  trunkDeg: { lumbarFlexion: -8, thoraxFlexion: -6, neckFlexion: 0, neckTurn: 0 },
  contacts: [{ patch: "belly", on: "mat", role: "both" }, ...HIPS_DOWN, ...WEAK_ARM_DOWN, ...STRONG_ARM_DOWN, ...WEAK_LEG_DOWN, ...STRONG_LEG_DOWN],
};
/** Head and chest lifted, the strong arm lifted along the body, the weak one lying. */
export const CHEST_LIFTED_STRONG_ARM_TOO: PoseSpecification = {
  ...CHEST_LIFTED_LOW,
  strongDeg: ARM_LIFTED_ALONG,
  contacts: [{ patch: "belly", on: "mat", role: "both" }, ...HIPS_DOWN, ...WEAK_ARM_DOWN, ...WEAK_LEG_DOWN, ...STRONG_LEG_DOWN],
};

const ON_FOREARMS: readonly ContactSpecification[] = [
  { patch: "forearm.weak", on: "mat", role: "both" },
  { patch: "forearm.strong", on: "mat", role: "both" },
];
/** On both elbows, the pelvis rolled onto its strong side, the weak hip bone up. */
export const PELVIS_ROLLED_TO_STRONG: PoseSpecification = {
  ...PRONE_ON_ELBOWS,
  pelvis: { pitchDeg: 76, rollToStrongDeg: 90, turnToWeakDeg: 90 },
  trunkDeg: { lumbarFlexion: -26, lumbarTurn: 9, thoraxFlexion: -10, thoraxTurn: 5, neckFlexion: -14 },
  weakDeg: { hipFlexion: 8, kneeFlexion: 26 },
  contacts: [{ patch: "pelvisFront.strong", on: "mat", role: "both" }, ...STRONG_LEG_DOWN, { patch: "knee.weak", on: "mat", role: "both" }, { patch: "instep.weak", on: "mat", role: "both" }, ...ON_FOREARMS],
};
/** The pelvis rolled onto its weak side, the strong hip bone up. */
export const PELVIS_ROLLED_TO_WEAK: PoseSpecification = {
  ...PRONE_ON_ELBOWS,
  pelvis: { pitchDeg: 76, rollToStrongDeg: -90, turnToWeakDeg: -90 },
  trunkDeg: { lumbarFlexion: -26, lumbarTurn: -9, thoraxFlexion: -10, thoraxTurn: -5, neckFlexion: -14 },
  strongDeg: { hipFlexion: 8, kneeFlexion: 26 },
  contacts: [{ patch: "pelvisFront.weak", on: "mat", role: "both" }, ...WEAK_LEG_DOWN, { patch: "knee.strong", on: "mat", role: "both" }, { patch: "instep.strong", on: "mat", role: "both" }, ...ON_FOREARMS],
};
/** On elbows and knees with the pelvis off the mat. */
export const PELVIS_UP_ON_ELBOWS_AND_KNEES: PoseSpecification = {
  ...PRONE_ON_ELBOWS,
  pelvis: { pitchDeg: 80 },
  trunkDeg: { lumbarFlexion: -4, thoraxFlexion: -2, neckFlexion: -10 },
  bothDeg: { ...PRONE_ON_ELBOWS.bothDeg, ...LEG_FACE_DOWN, shoulderFlexion: 72, hipFlexion: 6, kneeFlexion: 30 },
  contacts: [
    { patch: "knee.weak", on: "mat", role: "both" },
    { patch: "knee.strong", on: "mat", role: "both" },
    { patch: "instep.weak", on: "mat", role: "both" },
    { patch: "instep.strong", on: "mat", role: "both" },
    ...ON_FOREARMS,
  ],
};

const WEDGE = { id: "wedge", kind: "wedge", height: { cm: 13 }, under: ["chestFront"], depthCm: 36, widthCm: 24 } as const;
const CHEST_ON_WEDGE: ContactSpecification = { patch: "chestFront", on: "wedge", role: "both" };
const ARM_OVER_WEDGE: LimbAngles = { girdleProtraction: 8, shoulderFlexion: 78, shoulderAbduction: 14, shoulderExternalRotation: 0, elbowFlexion: 72, pronation: 150, wristExtension: 0 };
/** Face down with the breastbone on a narrow wedge, an arm to each side of it, forearms on the mat ahead. */
export const WEDGE_PRONE: PoseSpecification = {
  ...PRONE_ON_ELBOWS,
  pelvis: { pitchDeg: 82 },
  trunkDeg: { lumbarFlexion: -16, thoraxFlexion: -2, neckFlexion: 4 },
  bothDeg: { ...PRONE_ON_ELBOWS.bothDeg, ...ARM_OVER_WEDGE },
  surfaces: [WEDGE],
  contacts: [...LEGS_FACE_DOWN, CHEST_ON_WEDGE, { patch: "forearm.weak", on: "mat", role: "both", effort: "rest" }, { patch: "forearm.strong", on: "mat", role: "both", effort: "rest" }],
};
/** The head up from the wedge, eyes ahead. */
export const WEDGE_HEAD_UP: PoseSpecification = { ...WEDGE_PRONE, trunkDeg: { ...WEDGE_PRONE.trunkDeg, neckFlexion: -24 } };
/** The strong arm lifted ahead over the edge of the wedge. */
export const WEDGE_STRONG_ARM_AHEAD: PoseSpecification = {
  ...WEDGE_PRONE,
  strongDeg: { shoulderFlexion: 122, shoulderAbduction: 8, elbowFlexion: 8, pronation: 120 },
  contacts: [...LEGS_FACE_DOWN, CHEST_ON_WEDGE, { patch: "forearm.weak", on: "mat", role: "both", effort: "rest" }],
};
/** The weak hand slid ahead on the mat over the edge of the wedge. */
export const WEDGE_WEAK_HAND_AHEAD: PoseSpecification = {
  ...WEDGE_PRONE,
  weakDeg: { girdleProtraction: 16, shoulderFlexion: 98, shoulderAbduction: 10, shoulderExternalRotation: 0, elbowFlexion: 36, pronation: 120 },
  contacts: [...LEGS_FACE_DOWN, CHEST_ON_WEDGE, { patch: "wrist.weak", on: "mat", role: "both" }, { patch: "forearm.strong", on: "mat", role: "both", effort: "rest" }],
};
