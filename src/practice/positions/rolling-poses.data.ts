import type { PoseSpecification } from "../../mechanics/pose/specification.ts";

/** Key poses of rolling from the back to either side. Angles: "judgement", adjusted until they closed. */

const LOW_PILLOW = { id: "pillow", kind: "pillow", height: { cm: 8 }, under: ["headSide", "headBack"], depthCm: 40, widthCm: 55 } as const;

const WEAK_ARM_HELD = { girdleProtraction: 12, shoulderFlexion: 63, shoulderAbduction: -4, shoulderExternalRotation: -39, elbowFlexion: 19, pronation: 90 } as const;
const STRONG_HAND_HOLDS = { girdleProtraction: 5, shoulderFlexion: 50, shoulderAbduction: 22, shoulderExternalRotation: -49, elbowFlexion: 70, pronation: 90 } as const;

/** A third of the way to the strong side, both knees together and over, arms held together. */
export const ROLL_STRONG_BEGUN: PoseSpecification = {
  pelvis: { pitchDeg: -60, rollToStrongDeg: 90, turnToWeakDeg: -90 },
  trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 6, neckFlexion: 14, lumbarTurn: 5, thoraxTurn: 8, neckTurn: -10 },
  weakDeg: { ...WEAK_ARM_HELD, hipFlexion: 46, hipAbduction: -16, hipExternalRotation: -24, kneeFlexion: 114, ankleDorsiflexion: -20 },
  strongDeg: { ...STRONG_HAND_HOLDS, hipFlexion: 48, hipAbduction: 28, hipExternalRotation: 12, kneeFlexion: 114, ankleDorsiflexion: -20 },
  surfaces: [LOW_PILLOW],
  contacts: [
    { patch: "headBack", on: "pillow", role: "both" },
    { patch: "shoulderBlade.strong", on: "mat", role: "both" },
    { patch: "shoulderBlade.weak", on: "mat", role: "bears" },
    { patch: "ribSide.strong", on: "mat", role: "bears" },
    { patch: "buttock.strong", on: "mat", role: "both" },
    { patch: "hipSide.strong", on: "mat", role: "bears" },
    { patch: "heel.strong", on: "mat", role: "both" },
    { patch: "heel.weak", on: "mat", role: "both" },
    { patch: "knee.weak", on: { body: "knee.strong" }, role: "both" },
    { patch: "grip.strong", on: { body: "wrist.weak" }, role: "both", grips: true },
  ],
  notCounted: ["foot.weak", "foot.strong", "toes.weak", "toes.strong", "hand.weak"],
};

const ON_THE_STRONG_SIDE = [
  { patch: "headSide", on: "pillow", role: "both" },
  { patch: "shoulderSide.strong", on: "mat", role: "bears" },
  { patch: "shoulderBlade.strong", on: "mat", role: "bears" },
  { patch: "ribSide.strong", on: "mat", role: "both" },
  { patch: "buttock.strong", on: "mat", role: "bears" },
  { patch: "hipSide.strong", on: "mat", role: "both" },
  { patch: "knee.strong", on: "mat", role: "both" },
  { patch: "ankleSide.strong", on: "mat", role: "both" },
  { patch: "grip.strong", on: { body: "wrist.weak" }, role: "both", grips: true },
] as const;

/** Half way: pelvis ahead of the shoulders, the weak knee lying on the strong one. */
export const ROLL_STRONG_HALF_WAY: PoseSpecification = {
  ...ROLL_STRONG_BEGUN,
  pelvis: { pitchDeg: -22, rollToStrongDeg: 90, turnToWeakDeg: -90 },
  trunkDeg: { ...ROLL_STRONG_BEGUN.trunkDeg, lumbarTurn: 8, thoraxTurn: 12 },
  weakDeg: { ...WEAK_ARM_HELD, hipFlexion: 44, hipAbduction: -24, hipExternalRotation: -8, kneeFlexion: 84, ankleDorsiflexion: -14 },
  strongDeg: { ...STRONG_HAND_HOLDS, hipFlexion: 42, hipAbduction: 10, hipExternalRotation: 16, kneeFlexion: 84, ankleDorsiflexion: -14 },
  contacts: [...ON_THE_STRONG_SIDE, { patch: "knee.weak", on: { body: "knee.strong" }, role: "both" }],
};

/** Nearly there: the weak knee over and down in front, the shoulders following. */
export const ROLL_STRONG_NEARLY_OVER: PoseSpecification = {
  ...ROLL_STRONG_BEGUN,
  pelvis: { pitchDeg: 6, rollToStrongDeg: 90, turnToWeakDeg: -90 },
  trunkDeg: { ...ROLL_STRONG_BEGUN.trunkDeg, lumbarTurn: 8, thoraxTurn: 12 },
  weakDeg: { ...WEAK_ARM_HELD, hipFlexion: 76, hipAbduction: -22, hipExternalRotation: -10, kneeFlexion: 86, ankleDorsiflexion: -14 },
  strongDeg: { ...STRONG_HAND_HOLDS, hipFlexion: 26, hipAbduction: 4, hipExternalRotation: 4, kneeFlexion: 56, ankleDorsiflexion: -14 },
  contacts: [...ON_THE_STRONG_SIDE, { patch: "knee.weak", on: "mat", role: "both" }],
};

/** Half way and stopped there by the trunk alone: both arms reach ahead, the weak knee lies on the strong one. */
export const ROLL_STRONG_STOPPED: PoseSpecification = {
  ...ROLL_STRONG_HALF_WAY,
  pelvis: { pitchDeg: -27, rollToStrongDeg: 90, turnToWeakDeg: -90 },
  trunkDeg: { ...ROLL_STRONG_BEGUN.trunkDeg, lumbarTurn: 6, thoraxTurn: 10 },
  weakDeg: { girdleProtraction: 15, shoulderFlexion: 77, shoulderAbduction: 1, shoulderExternalRotation: -38, elbowFlexion: 17, pronation: 90, hipFlexion: 40, hipAbduction: -25, hipExternalRotation: -8, kneeFlexion: 84, ankleDorsiflexion: -14 },
  strongDeg: { ...ROLL_STRONG_HALF_WAY.strongDeg, girdleProtraction: 4, shoulderFlexion: 66, shoulderAbduction: 14, shoulderExternalRotation: -50, elbowFlexion: 60 },
  contacts: [...ON_THE_STRONG_SIDE, { patch: "knee.weak", on: { body: "knee.strong" }, role: "both" }],
};

const WEAK_ARM_AHEAD = { girdleElevation: 0, girdleProtraction: 22, shoulderFlexion: 74, shoulderAbduction: 34, shoulderExternalRotation: 20, elbowFlexion: 6, pronation: 10 } as const;

const ON_THE_WEAK_SIDE = [
  { patch: "headSide", on: "pillow", role: "both" },
  { patch: "shoulderBlade.weak", on: "mat", role: "bears" },
  { patch: "ribSide.weak", on: "mat", role: "both" },
  { patch: "buttock.weak", on: "mat", role: "bears" },
  { patch: "hipSide.weak", on: "mat", role: "both" },
  { patch: "knee.weak", on: "mat", role: "both" },
  { patch: "ankleSide.weak", on: "mat", role: "both" },
  { patch: "elbow.weak", on: "mat", role: "both", effort: "rest" },
  { patch: "wrist.weak", on: "mat", role: "both", effort: "rest" },
] as const;

/** A third of the way to the weak side: the strong foot pushes, the weak arm lies out in front with its blade forward. */
export const ROLL_WEAK_BEGUN: PoseSpecification = {
  pelvis: { pitchDeg: -58, rollToStrongDeg: -90, turnToWeakDeg: 90 },
  trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 6, neckFlexion: 14, lumbarTurn: -4, thoraxTurn: -6, neckTurn: 10 },
  weakDeg: { ...WEAK_ARM_AHEAD, shoulderAbduction: 66, hipFlexion: 6, hipAbduction: 12, hipExternalRotation: 22, kneeFlexion: 14, ankleDorsiflexion: -18 },
  strongDeg: { girdleProtraction: 6, shoulderFlexion: 40, shoulderAbduction: 0, shoulderExternalRotation: -20, elbowFlexion: 30, pronation: 90, hipFlexion: 50, hipAbduction: 2, kneeFlexion: 100, ankleDorsiflexion: -24 },
  surfaces: [LOW_PILLOW],
  contacts: [
    { patch: "headBack", on: "pillow", role: "both" },
    { patch: "shoulderBlade.weak", on: "mat", role: "both" },
    { patch: "ribSide.weak", on: "mat", role: "bears" },
    { patch: "buttock.weak", on: "mat", role: "both" },
    { patch: "hipSide.weak", on: "mat", role: "bears" },
    { patch: "ankleSide.weak", on: "mat", role: "both" },
    { patch: "elbow.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "wrist.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "foot.strong", on: "mat", role: "both" },
  ],
  notCounted: ["foot.weak", "toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};

/** Half way, the strong arm reaching across for a target. */
export const ROLL_WEAK_REACHING: PoseSpecification = {
  ...ROLL_WEAK_BEGUN,
  pelvis: { pitchDeg: -40, rollToStrongDeg: -90, turnToWeakDeg: 90 },
  weakDeg: { ...WEAK_ARM_AHEAD, shoulderAbduction: 50, hipFlexion: 16, hipAbduction: 12, hipExternalRotation: 18, kneeFlexion: 26, ankleDorsiflexion: -18 },
  strongDeg: { girdleProtraction: 18, shoulderFlexion: 78, shoulderAbduction: -22, shoulderExternalRotation: -10, elbowFlexion: 8, pronation: 90, hipFlexion: 48, hipAbduction: 4, hipExternalRotation: 10, kneeFlexion: 96, ankleDorsiflexion: -24 },
  contacts: [
    { patch: "headBack", on: "pillow", role: "both" },
    { patch: "shoulderBlade.weak", on: "mat", role: "bears" },
    { patch: "ribSide.weak", on: "mat", role: "both" },
    { patch: "buttock.weak", on: "mat", role: "bears" },
    { patch: "hipSide.weak", on: "mat", role: "both" },
    { patch: "knee.weak", on: "mat", role: "bears" },
    { patch: "ankleSide.weak", on: "mat", role: "both" },
    { patch: "elbow.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "wrist.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "heel.strong", on: "mat", role: "both" },
  ],
};

/** Nearly over: the strong knee crosses in front and comes down. */
export const ROLL_WEAK_NEARLY_OVER: PoseSpecification = {
  ...ROLL_WEAK_BEGUN,
  pelvis: { pitchDeg: -16, rollToStrongDeg: -90, turnToWeakDeg: 90 },
  trunkDeg: { ...ROLL_WEAK_BEGUN.trunkDeg, lumbarTurn: -4, thoraxTurn: -6 },
  weakDeg: { ...WEAK_ARM_AHEAD, shoulderAbduction: 50, hipFlexion: 24, hipAbduction: 4, hipExternalRotation: 8, kneeFlexion: 44, ankleDorsiflexion: -18 },
  strongDeg: { girdleProtraction: 14, shoulderFlexion: 70, shoulderAbduction: -34, shoulderExternalRotation: -14, elbowFlexion: 14, pronation: 120, hipFlexion: 80, hipAbduction: -26, hipExternalRotation: -10, kneeFlexion: 86, ankleDorsiflexion: -14 },
  contacts: [...ON_THE_WEAK_SIDE, { patch: "knee.strong", on: "mat", role: "both" }],
  notCounted: ["foot.weak", "foot.strong", "toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};

/** Stopped half way: strong foot off the mat, its knee on the weak one, strong arm ahead; the trunk holds. */
export const ROLL_WEAK_STOPPED: PoseSpecification = {
  ...ROLL_WEAK_REACHING,
  pelvis: { pitchDeg: -24, rollToStrongDeg: -90, turnToWeakDeg: 90 },
  weakDeg: { ...WEAK_ARM_AHEAD, shoulderAbduction: 60, hipFlexion: 40, hipAbduction: 10, hipExternalRotation: 16, kneeFlexion: 80, ankleDorsiflexion: -18 },
  strongDeg: { ...ROLL_WEAK_REACHING.strongDeg, hipFlexion: 42, hipAbduction: -24, hipExternalRotation: -8, kneeFlexion: 84, ankleDorsiflexion: -14 },
  contacts: [...ON_THE_WEAK_SIDE, { patch: "knee.strong", on: { body: "knee.weak" }, role: "both" }],
  notCounted: ["foot.weak", "foot.strong", "toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};
