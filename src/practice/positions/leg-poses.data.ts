import type { PoseSpecification } from "../../mechanics/pose/specification.ts";
import { ARMS_RESTING, HEAD_AND_SHOULDERS, HOOK_LYING, SUPINE } from "./lying-poses.data.ts";

/** Key poses on the back: knees rolled to a side, the weak heel slid, the weak arm raised. Angles: "judgement", adjusted until they closed. */

const SHOULDERS_STAY = [
  { patch: "headBack", on: "pillow", role: "both" },
  { patch: "shoulderBlade.weak", on: "mat", role: "both" },
  { patch: "shoulderBlade.strong", on: "mat", role: "both" },
] as const;

/** Knees a hand's breadth toward the strong side, both feet still down. */
export const KNEES_ROCKED: PoseSpecification = {
  ...HOOK_LYING,
  pelvis: { pitchDeg: -84, rollToStrongDeg: 90, turnToWeakDeg: -90 },
  trunkDeg: { ...HOOK_LYING.trunkDeg, lumbarTurn: 4, thoraxTurn: 4 },
  weakDeg: { hipAbduction: -12, hipExternalRotation: -12 },
  strongDeg: { hipAbduction: 10, hipExternalRotation: 0 },
  contacts: [
    ...SHOULDERS_STAY,
    ...ARMS_RESTING,
    { patch: "buttock.strong", on: "mat", role: "both" },
    { patch: "buttock.weak", on: "mat", role: "bears" },
    { patch: "heel.weak", on: "mat", role: "both" },
    { patch: "heel.strong", on: "mat", role: "both" },
    { patch: "knee.weak", on: { body: "knee.strong" }, role: "both" },
  ],
};

export const KNEES_TO_STRONG: PoseSpecification = {
  ...KNEES_ROCKED,
  pelvis: { pitchDeg: -68, rollToStrongDeg: 90, turnToWeakDeg: -90 },
  trunkDeg: { ...HOOK_LYING.trunkDeg, lumbarTurn: 10, thoraxTurn: 12 },
  weakDeg: { hipAbduction: -16, hipExternalRotation: -26 },
  strongDeg: { hipAbduction: 28, hipExternalRotation: 8 },
};

export const KNEES_TO_WEAK: PoseSpecification = {
  ...KNEES_ROCKED,
  pelvis: { pitchDeg: -68, rollToStrongDeg: -90, turnToWeakDeg: 90 },
  trunkDeg: { ...HOOK_LYING.trunkDeg, lumbarTurn: -10, thoraxTurn: -12 },
  strongDeg: { hipAbduction: -16, hipExternalRotation: -26 },
  weakDeg: { hipAbduction: 28, hipExternalRotation: 8 },
  contacts: [
    ...SHOULDERS_STAY,
    ...ARMS_RESTING,
    { patch: "buttock.weak", on: "mat", role: "both" },
    { patch: "buttock.strong", on: "mat", role: "bears" },
    { patch: "heel.weak", on: "mat", role: "both" },
    { patch: "heel.strong", on: "mat", role: "both" },
    { patch: "knee.weak", on: { body: "knee.strong" }, role: "both" },
  ],
};

/** Knees to the weak side, the strong arm stretched out to the strong side at shoulder height. */
export const KNEES_TO_WEAK_ARM_OUT: PoseSpecification = {
  ...KNEES_TO_WEAK,
  strongDeg: { ...KNEES_TO_WEAK.strongDeg, shoulderFlexion: -14, shoulderAbduction: 82, elbowFlexion: 6, pronation: 30 },
};

/** The weak leg lies straight, the strong knee is up. */
export const WEAK_LEG_STRAIGHT: PoseSpecification = {
  ...HOOK_LYING,
  weakDeg: { hipFlexion: -2, hipAbduction: 4, kneeFlexion: 5, ankleDorsiflexion: -18 },
  contacts: [
    ...HEAD_AND_SHOULDERS,
    ...ARMS_RESTING,
    { patch: "buttock.weak", on: "mat", role: "both" },
    { patch: "buttock.strong", on: "mat", role: "both" },
    { patch: "heel.weak", on: "mat", role: "both" },
    { patch: "calf.weak", on: "mat", role: "bears" },
    { patch: "thighBack.weak", on: "mat", role: "bears" },
    { patch: "foot.strong", on: "mat", role: "both" },
    { patch: "lowBack", on: "mat", role: "bears" },
  ],
  notCounted: ["foot.weak", "toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};

const SLIDING = [
  ...HEAD_AND_SHOULDERS,
  ...ARMS_RESTING,
  { patch: "buttock.weak", on: "mat", role: "both" },
  { patch: "buttock.strong", on: "mat", role: "both" },
  { patch: "lowBack", on: "mat", role: "bears" },
] as const;

/** The strong instep hooked under the weak calf draws the weak leg up. */
export const STRONG_FOOT_DRAWS_WEAK: PoseSpecification = {
  ...HOOK_LYING,
  weakDeg: { hipFlexion: 29, hipAbduction: -8, kneeFlexion: 60, ankleDorsiflexion: -12 },
  strongDeg: { hipFlexion: 30, hipAbduction: -7, hipExternalRotation: 0, kneeFlexion: 63, ankleDorsiflexion: -10 },
  contacts: [
    ...SLIDING,
    { patch: "heel.strong", on: "mat", role: "both" },
    { patch: "ankleSide.weak", on: { body: "instep.strong" }, role: "both" },
  ],
  notCounted: ["foot.weak", "foot.strong", "toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};

/** Half way up, the heel on the mat and the leg held under thigh and heel. */
export const WEAK_HEEL_HALF_WAY: PoseSpecification = {
  ...HOOK_LYING,
  weakDeg: { hipFlexion: 32, hipAbduction: 2, kneeFlexion: 66, ankleDorsiflexion: -6 },
  contacts: [...SLIDING, { patch: "heel.weak", on: "mat", role: "both" }, { patch: "foot.strong", on: "mat", role: "both" }],
  notCounted: ["foot.weak", "toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};

/** A third of the way up, where the slide is hardest to keep going. */
export const WEAK_HEEL_FIRST_THIRD: PoseSpecification = {
  ...WEAK_HEEL_HALF_WAY,
  weakDeg: { hipFlexion: 20, hipAbduction: 2, kneeFlexion: 42, ankleDorsiflexion: -2 },
};

/** The weak sole clear of the mat, knee bent, on its way to a low block. */
export const WEAK_FOOT_OVER_BLOCK: PoseSpecification = {
  ...HOOK_LYING,
  weakDeg: { hipFlexion: 74, hipAbduction: 2, kneeFlexion: 112, ankleDorsiflexion: -4 },
  surfaces: [...(HOOK_LYING.surfaces ?? []), { id: "block", kind: "block", height: { cm: 6 }, under: ["foot.weak"], depthCm: 25, widthCm: 20 }],
  contacts: [...SLIDING, { patch: "foot.strong", on: "mat", role: "both" }],
  notCounted: ["foot.weak", "toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};

const LYING_FLAT = [
  ...HEAD_AND_SHOULDERS,
  { patch: "buttock.weak", on: "mat", role: "both" },
  { patch: "buttock.strong", on: "mat", role: "both" },
  { patch: "heel.weak", on: "mat", role: "both" },
  { patch: "heel.strong", on: "mat", role: "both" },
  { patch: "thighBack.weak", on: "mat", role: "bears" },
  { patch: "thighBack.strong", on: "mat", role: "bears" },
  { patch: "calf.weak", on: "mat", role: "bears" },
  { patch: "calf.strong", on: "mat", role: "bears" },
] as const;

/** Strong hand round the weak forearm just above the wrist, both arms off the belly by a third. */
export const ARMS_A_THIRD_UP: PoseSpecification = {
  ...SUPINE,
  weakDeg: { girdleProtraction: 8, shoulderFlexion: 34, shoulderAbduction: 3, shoulderExternalRotation: -38, elbowFlexion: 42, pronation: 80 },
  strongDeg: { girdleProtraction: 4, shoulderFlexion: 33, shoulderAbduction: 9, shoulderExternalRotation: -54, elbowFlexion: 66, pronation: 90 },
  contacts: [...LYING_FLAT, { patch: "grip.strong", on: { body: "wrist.weak" }, role: "both", grips: true }],
};

/** Both arms at breast height, thumbs up, blades forward. */
export const ARMS_AT_BREAST_HEIGHT: PoseSpecification = {
  ...SUPINE,
  weakDeg: { girdleProtraction: 14, shoulderFlexion: 74, shoulderAbduction: 3, shoulderExternalRotation: -38, elbowFlexion: 18, pronation: 90 },
  strongDeg: { girdleProtraction: 6, shoulderFlexion: 66, shoulderAbduction: 8, shoulderExternalRotation: -50, elbowFlexion: 54, pronation: 90 },
  contacts: [...LYING_FLAT, { patch: "grip.strong", on: { body: "wrist.weak" }, role: "both", grips: true }],
};

/** At breast height, the blades reaching for the ceiling and the knees bent so that the back stays down. */
export const ARMS_REACH_FOR_CEILING: PoseSpecification = {
  ...HOOK_LYING,
  weakDeg: { girdleProtraction: 20, shoulderFlexion: 80, shoulderAbduction: 9, shoulderExternalRotation: -37, elbowFlexion: 16, pronation: 90 },
  strongDeg: { girdleProtraction: 11, shoulderFlexion: 74, shoulderAbduction: 19, shoulderExternalRotation: -57, elbowFlexion: 56, pronation: 90 },
  contacts: [
    ...HEAD_AND_SHOULDERS,
    { patch: "buttock.weak", on: "mat", role: "both" },
    { patch: "buttock.strong", on: "mat", role: "both" },
    { patch: "foot.weak", on: "mat", role: "both" },
    { patch: "foot.strong", on: "mat", role: "both" },
    { patch: "grip.strong", on: { body: "wrist.weak" }, role: "both", grips: true },
  ],
};
