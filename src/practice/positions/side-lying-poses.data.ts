import type { ContactSpecification, PoseSpecification, SurfaceSpecification } from "../../mechanics/pose/specification.ts";

/** Lying on either side, and coming up over the strong one. Angles: "judgement", adjusted until they closed. */

export const SIDE_PILLOW = { id: "pillow", kind: "pillow", height: { cm: 10 }, under: ["headSide"], depthCm: 40, widthCm: 55 } as const satisfies SurfaceSpecification;
export const KNEE_PILLOW = { id: "bolster", kind: "pillow", height: { cm: 18 }, under: ["knee.weak", "ankleSide.weak"], depthCm: 56, widthCm: 24 } as const satisfies SurfaceSpecification;
export const ARM_PILLOW = { id: "block", kind: "pillow", height: { cm: 24 }, under: ["elbow.weak", "wrist.weak"], depthCm: 24, widthCm: 36 } as const satisfies SurfaceSpecification;

export const STRONG_SIDE_DOWN: readonly ContactSpecification[] = [
  { patch: "headSide", on: "pillow", role: "both" },
  { patch: "ribSide.strong", on: "mat", role: "both" },
  { patch: "shoulderSide.strong", on: "mat", role: "bears" },
  { patch: "hipSide.strong", on: "mat", role: "both" },
  { patch: "knee.strong", on: "mat", role: "both" },
  { patch: "ankleSide.strong", on: "mat", role: "both" },
  { patch: "elbow.strong", on: "mat", role: "both" },
  { patch: "wrist.strong", on: "mat", role: "both" },
];
const STRONG_ARM_BEFORE_FACE = { girdleProtraction: 24, shoulderFlexion: 70, shoulderAbduction: 48, elbowFlexion: 92, pronation: 90 } as const;
const WEAK_ARM_ON_PILLOW = { girdleProtraction: 8, shoulderFlexion: 62, shoulderAbduction: -24, shoulderExternalRotation: 4, elbowFlexion: 26, pronation: 90 } as const;

/** On the strong side, the weak arm and the weak leg in front on pillows. */
export const SIDE_LYING_ON_STRONG: PoseSpecification = {
  pelvis: { pitchDeg: 0, rollToStrongDeg: 90, turnToWeakDeg: -90 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 8, neckFlexion: 12 },
  weakDeg: { ...WEAK_ARM_ON_PILLOW, hipFlexion: 62, hipAbduction: -8, kneeFlexion: 74, ankleDorsiflexion: -8 },
  strongDeg: { ...STRONG_ARM_BEFORE_FACE, hipFlexion: 22, kneeFlexion: 40, ankleDorsiflexion: -10 },
  surfaces: [SIDE_PILLOW, KNEE_PILLOW, ARM_PILLOW],
  contacts: [
    ...STRONG_SIDE_DOWN,
    { patch: "knee.weak", on: "bolster", role: "both" },
    { patch: "ankleSide.weak", on: "bolster", role: "both" },
    { patch: "elbow.weak", on: "block", role: "both", effort: "rest" },
    { patch: "wrist.weak", on: "block", role: "both", effort: "rest" },
  ],
  notCounted: ["foot.weak", "foot.strong", "toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};

const WEAK_SIDE_DOWN: readonly ContactSpecification[] = [
  { patch: "headSide", on: "pillow", role: "both" },
  { patch: "ribSide.weak", on: "mat", role: "both" },
  { patch: "hipSide.weak", on: "mat", role: "both" },
  { patch: "knee.weak", on: "mat", role: "both" },
  { patch: "ankleSide.weak", on: "mat", role: "both" },
  { patch: "elbow.weak", on: "mat", role: "both", effort: "rest" },
  { patch: "wrist.weak", on: "mat", role: "both", effort: "rest" },
];
/** Shoulder blade drawn forward, the arm out in front, palm up. */
const WEAK_ARM_UNDER = { girdleProtraction: 27, shoulderFlexion: 78, shoulderAbduction: 48, elbowFlexion: 8, pronation: 10 } as const;

/** On the weak side, the blade drawn forward and the arm out in front; the strong leg ahead on a pillow. */
export const SIDE_LYING_ON_WEAK: PoseSpecification = {
  pelvis: { pitchDeg: -6, rollToStrongDeg: -90, turnToWeakDeg: 90 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, neckFlexion: 12 },
  weakDeg: { ...WEAK_ARM_UNDER, hipFlexion: 8, kneeFlexion: 22, ankleDorsiflexion: -8 },
  strongDeg: { girdleProtraction: 0, shoulderFlexion: 8, shoulderAbduction: 4, shoulderExternalRotation: -20, elbowFlexion: 32, pronation: 90, hipFlexion: 62, hipAbduction: -8, kneeFlexion: 74, ankleDorsiflexion: -8 },
  surfaces: [SIDE_PILLOW, { ...KNEE_PILLOW, under: ["knee.strong", "ankleSide.strong"] }],
  contacts: [
    ...WEAK_SIDE_DOWN,
    { patch: "knee.strong", on: "bolster", role: "both" },
    { patch: "ankleSide.strong", on: "bolster", role: "both" },
    { patch: "wrist.strong", on: { body: "hipSide.strong" }, role: "both", effort: "rest" },
  ],
  notCounted: ["foot.weak", "foot.strong", "toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};

/** The strong arm reaches ahead from lying on the weak side; the weak blade carries. */
export const STRONG_ARM_REACHES_AHEAD: PoseSpecification = {
  ...SIDE_LYING_ON_WEAK,
  pelvis: { pitchDeg: 0, rollToStrongDeg: -90, turnToWeakDeg: 90 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, neckFlexion: 12, thoraxTurn: 8 },
  strongDeg: { ...SIDE_LYING_ON_WEAK.strongDeg, girdleProtraction: 18, shoulderFlexion: 82, shoulderAbduction: -4, elbowFlexion: 6 },
  contacts: [...WEAK_SIDE_DOWN, { patch: "knee.strong", on: "bolster", role: "both" }, { patch: "ankleSide.strong", on: "bolster", role: "both" }],
};

/** The weak hand slides further ahead on a cloth, the blade following. */
export const WEAK_HAND_SLIDES_AHEAD: PoseSpecification = {
  ...SIDE_LYING_ON_WEAK,
  weakDeg: { ...SIDE_LYING_ON_WEAK.weakDeg, girdleProtraction: 30, shoulderFlexion: 92, shoulderAbduction: 48, elbowFlexion: 2, pronation: 90 },
};

/** Both knees bent, feet together; the weak knee opens from the strong one, heels touching. */
export const WEAK_KNEE_OPENS: PoseSpecification = {
  ...SIDE_LYING_ON_STRONG,
  weakDeg: { ...WEAK_ARM_ON_PILLOW, hipFlexion: 46, hipAbduction: 5, hipExternalRotation: 28, kneeFlexion: 82, ankleDorsiflexion: -6 },
  strongDeg: { ...STRONG_ARM_BEFORE_FACE, hipFlexion: 46, kneeFlexion: 84, ankleDorsiflexion: -6 },
  surfaces: [SIDE_PILLOW, ARM_PILLOW],
  contacts: [
    ...STRONG_SIDE_DOWN,
    { patch: "ankleSide.weak", on: { body: "ankleSide.strong" }, role: "both" },
    { patch: "elbow.weak", on: "block", role: "both", effort: "rest" },
    { patch: "wrist.weak", on: "block", role: "both", effort: "rest" },
  ],
};

export const ARM_ON_PILLOW_ONLY: readonly ContactSpecification[] = [
  ...STRONG_SIDE_DOWN,
  { patch: "elbow.weak", on: "block", role: "both", effort: "rest" },
  { patch: "wrist.weak", on: "block", role: "both", effort: "rest" },
];

/** The weak thigh lifted level, the foot still on its pillow. */
export const WEAK_THIGH_LEVEL: PoseSpecification = {
  ...SIDE_LYING_ON_STRONG,
  weakDeg: { ...WEAK_ARM_ON_PILLOW, hipFlexion: 34, hipAbduction: 10, hipExternalRotation: 12, kneeFlexion: 74, ankleDorsiflexion: -6 },
  strongDeg: { ...STRONG_ARM_BEFORE_FACE, hipFlexion: 40, kneeFlexion: 70, ankleDorsiflexion: -6 },
  surfaces: [SIDE_PILLOW, { ...KNEE_PILLOW, under: ["ankleSide.weak"], depthCm: 30, widthCm: 24 }, ARM_PILLOW],
  contacts: [...ARM_ON_PILLOW_ONLY, { patch: "ankleSide.weak", on: "bolster", role: "both", effort: "rest" }],
};

/** The whole weak leg off its support, the arm on its pillow. */
const WEAK_LEG_FREE: PoseSpecification = {
  ...SIDE_LYING_ON_STRONG,
  strongDeg: { ...STRONG_ARM_BEFORE_FACE, hipFlexion: 40, kneeFlexion: 70, ankleDorsiflexion: -6 },
  surfaces: [SIDE_PILLOW, ARM_PILLOW],
  contacts: ARM_ON_PILLOW_ONLY,
};

/** The weak leg straight and a little behind the line of the trunk, lifted by twenty degrees. */
export const WEAK_LEG_RAISED_STRAIGHT: PoseSpecification = {
  ...WEAK_LEG_FREE,
  weakDeg: { ...WEAK_ARM_ON_PILLOW, hipFlexion: -4, hipAbduction: 20, kneeFlexion: 4, ankleDorsiflexion: -4 },
};

/** The same, the weak hand on the weak hip instead of the pillow and the strong arm off the mat's push. */
export const WEAK_LEG_RAISED_ARM_OFF: PoseSpecification = {
  ...WEAK_LEG_FREE,
  weakDeg: { shoulderFlexion: 4, shoulderAbduction: 4, elbowFlexion: 20, pronation: 90, hipFlexion: -6, hipAbduction: 28, kneeFlexion: 4, ankleDorsiflexion: -4 },
  surfaces: [SIDE_PILLOW],
  contacts: [...STRONG_SIDE_DOWN, { patch: "wrist.weak", on: { body: "hipSide.weak" }, role: "both" }],
};

/** The pelvis turned ahead, the shoulders square. */
export const PELVIS_AHEAD: PoseSpecification = {
  ...SIDE_LYING_ON_STRONG,
  pelvis: { pitchDeg: 14, rollToStrongDeg: 90, turnToWeakDeg: -90 },
  trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 6, neckFlexion: 12, lumbarTurn: 5, thoraxTurn: 8 },
};

/** Shoulders back, pelvis ahead: the trunk wound up between them. */
export const SHOULDERS_BACK_PELVIS_AHEAD: PoseSpecification = {
  ...SIDE_LYING_ON_STRONG,
  pelvis: { pitchDeg: 16, rollToStrongDeg: 90, turnToWeakDeg: -90 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 2, neckFlexion: 8, lumbarTurn: 11, thoraxTurn: 24, neckTurn: 12 },
  weakDeg: { ...SIDE_LYING_ON_STRONG.weakDeg, girdleProtraction: -4, shoulderFlexion: 8, shoulderAbduction: 4, shoulderExternalRotation: -20, elbowFlexion: 32, pronation: 90 },
  surfaces: [SIDE_PILLOW, KNEE_PILLOW],
  contacts: [
    ...STRONG_SIDE_DOWN,
    { patch: "knee.weak", on: "bolster", role: "both" },
    { patch: "ankleSide.weak", on: "bolster", role: "both" },
    { patch: "wrist.weak", on: { body: "hipSide.weak" }, role: "both" },
  ],
};

/** Shoulders ahead, pelvis back, the weak arm reaching: the other half of the winding. */
export const SHOULDERS_AHEAD_PELVIS_BACK: PoseSpecification = {
  ...SIDE_LYING_ON_STRONG,
  pelvis: { pitchDeg: -14, rollToStrongDeg: 90, turnToWeakDeg: -90 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 8, neckFlexion: 12, lumbarTurn: -10, thoraxTurn: -16 },
  weakDeg: { ...SIDE_LYING_ON_STRONG.weakDeg, girdleProtraction: 22, shoulderFlexion: 78, shoulderAbduction: -14, elbowFlexion: 8 },
};

/** The height of a mat from which the feet reach the floor. */
export const MAT_EDGE = { id: "seat", kind: "edge", height: { of: "kneeHollow", plusCm: 0 }, under: ["buttock.weak", "buttock.strong"], depthCm: 90, widthCm: 200 } as const satisfies SurfaceSpecification;

const LEGS_OVER_EDGE = { hipFlexion: 72, hipAbduction: -8, kneeFlexion: 84, ankleDorsiflexion: 0 } as const;
const WEAK_ARM_ACROSS = { girdleProtraction: 4, shoulderFlexion: 22, shoulderAbduction: -2, shoulderExternalRotation: -22, elbowFlexion: 42, pronation: 90 } as const;

/** Legs over the edge, trunk low over the strong forearm. */
export const STRONG_FOREARM_PROP_LOW: PoseSpecification = {
  pelvis: { pitchDeg: 0, rollToStrongDeg: 54 },
  trunkDeg: { lumbarFlexion: 13, thoraxFlexion: 11, lumbarSideBend: -4, thoraxSideBend: 0, neckSideBend: 14, neckFlexion: 6 },
  weakDeg: { ...WEAK_ARM_ACROSS, shoulderFlexion: 0, shoulderAbduction: -13, shoulderExternalRotation: -30, elbowFlexion: 46, ...LEGS_OVER_EDGE },
  strongDeg: { shoulderFlexion: 24, shoulderAbduction: 82, elbowFlexion: 92, pronation: 110, ...LEGS_OVER_EDGE },
  surfaces: [MAT_EDGE],
  contacts: [
    { patch: "elbow.strong", on: "seat", role: "both" },
    { patch: "wrist.strong", on: "seat", role: "both" },
    { patch: "hipSide.strong", on: "seat", role: "both" },
    { patch: "buttock.strong", on: "seat", role: "bears" },
    { patch: "thighBack.strong", on: "seat", role: "bears" },
    { patch: "knee.weak", on: { body: "knee.strong" }, role: "both" },
    { patch: "ankleSide.weak", on: { body: "ankleSide.strong" }, role: "both" },
    { patch: "elbow.weak", on: { body: "belly" }, role: "both", effort: "rest" },
    { patch: "wrist.weak", on: { body: "pelvisFront.strong" }, role: "both", effort: "rest" },
  ],
  notCounted: ["foot.weak", "foot.strong", "toes.weak", "toes.strong", "hand.weak"],
};

/** Up on the strong forearm, the elbow under the shoulder. */
export const STRONG_FOREARM_PROP: PoseSpecification = {
  ...STRONG_FOREARM_PROP_LOW,
  pelvis: { pitchDeg: -4, rollToStrongDeg: 16 },
  trunkDeg: { lumbarFlexion: 12, thoraxFlexion: 8, lumbarSideBend: -20, thoraxSideBend: -12, neckSideBend: 24, neckFlexion: 4 },
  weakDeg: { ...WEAK_ARM_ACROSS, shoulderFlexion: 0, shoulderAbduction: -19, shoulderExternalRotation: -37, elbowFlexion: 47, ...LEGS_OVER_EDGE, hipFlexion: 68 },
  strongDeg: { shoulderFlexion: 18, shoulderAbduction: 52, elbowFlexion: 88, pronation: 120, ...LEGS_OVER_EDGE, hipFlexion: 80 },
  contacts: [
    { patch: "elbow.strong", on: "seat", role: "both" },
    { patch: "wrist.strong", on: "seat", role: "both" },
    { patch: "buttock.strong", on: "seat", role: "both" },
    { patch: "hipSide.strong", on: "seat", role: "bears" },
    { patch: "thighBack.strong", on: "seat", role: "both" },
    { patch: "buttock.weak", on: "seat", role: "bears" },
    { patch: "thighBack.weak", on: "seat", role: "both" },
    { patch: "elbow.weak", on: { body: "belly" }, role: "both", effort: "rest" },
    { patch: "wrist.weak", on: { body: "pelvisFront.strong" }, role: "both", effort: "rest" },
  ],
};

/** Up on the straight strong arm, both feet on the floor. */
export const STRONG_HAND_PROP: PoseSpecification = {
  ...STRONG_FOREARM_PROP,
  pelvis: { pitchDeg: -4, rollToStrongDeg: 1 },
  trunkDeg: { lumbarFlexion: 10, thoraxFlexion: 6, lumbarSideBend: -8, thoraxSideBend: -7, neckSideBend: 14, neckFlexion: 4 },
  weakDeg: { ...WEAK_ARM_ACROSS, shoulderFlexion: 19, elbowFlexion: 33, hipFlexion: 80, hipExternalRotation: 1, kneeFlexion: 85, ankleDorsiflexion: 0 },
  strongDeg: { shoulderFlexion: 13, shoulderAbduction: 34, shoulderExternalRotation: 10, elbowFlexion: 20, pronation: 150, wristExtension: 60, hipFlexion: 82, kneeFlexion: 85, ankleDorsiflexion: 0 },
  contacts: [
    { patch: "hand.strong", on: "seat", role: "both" },
    { patch: "buttock.strong", on: "seat", role: "both" },
    { patch: "thighBack.strong", on: "seat", role: "bears" },
    { patch: "buttock.weak", on: "seat", role: "both" },
    { patch: "thighBack.weak", on: "seat", role: "bears" },
    { patch: "foot.weak", on: "floor", role: "both" },
    { patch: "foot.strong", on: "floor", role: "both" },
    { patch: "wrist.weak", on: { body: "thighFront.weak" }, role: "both" },
  ],
  notCounted: ["foot.weak", "foot.strong", "toes.weak", "toes.strong", "hand.weak"],
};
