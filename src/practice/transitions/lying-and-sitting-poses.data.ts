import type { ContactSpecification, LimbAngles, PoseSpecification, SurfaceSpecification } from "../../mechanics/pose/specification.ts";
import { LEGS_FACE_DOWN, PRONE, PRONE_ON_ELBOWS } from "../positions/prone-poses.data.ts";
import { ROLL_STRONG_HALF_WAY, ROLL_STRONG_NEARLY_OVER, ROLL_WEAK_BEGUN } from "../positions/rolling-poses.data.ts";
import { STRONG_FOREARM_PROP } from "../positions/side-lying-poses.data.ts";
import { SIDE_SITTING_ON_STRONG } from "../positions/side-sitting-poses.data.ts";
import { ARM_PROPS, LONG_SITTING, STRONG_HIP_ON_MAT, WEAK_HAND_ON_THIGH, WEAK_HIP_ON_MAT } from "../positions/sitting-poses.data.ts";

/** Moments on the way between lying, prone and sitting. Angles: "judgement", adjusted until they closed. */

const FEET_LIMP = ["foot.weak", "foot.strong", "toes.weak", "toes.strong"] as const;
const LIMP = ["hand.weak", ...FEET_LIMP] as const;

/* Rolling over the strong side and up over its elbow with the weak leg lying on the strong one down to the ankle. */
const WEAK_ANKLE_ON_STRONG: ContactSpecification = { patch: "ankleSide.weak", on: { body: "ankleSide.strong" }, role: "both" };
export const ROLLING_TO_STRONG_LEGS_TOGETHER: PoseSpecification = {
  ...ROLL_STRONG_HALF_WAY,
  weakDeg: { ...ROLL_STRONG_HALF_WAY.weakDeg, hipAbduction: -14, hipExternalRotation: 0 },
  contacts: [...ROLL_STRONG_HALF_WAY.contacts, WEAK_ANKLE_ON_STRONG],
};
/** Nearly over: the whole weak leg has come down in front. */
export const ROLLING_TO_STRONG_WEAK_LEG_DOWN: PoseSpecification = {
  ...ROLL_STRONG_NEARLY_OVER,
  contacts: [...ROLL_STRONG_NEARLY_OVER.contacts, { patch: "ankleSide.weak", on: "mat", role: "both" }],
};
/** The strong foot pushes; the strong forearm still lies on the body. */
export const ROLLING_TO_WEAK_ARM_ON_BODY: PoseSpecification = {
  ...ROLL_WEAK_BEGUN,
  strongDeg: { ...ROLL_WEAK_BEGUN.strongDeg, shoulderFlexion: 6, shoulderAbduction: 6, shoulderExternalRotation: -50, elbowFlexion: 60 },
  contacts: [...ROLL_WEAK_BEGUN.contacts, { patch: "wrist.strong", on: { body: "belly" }, role: "both", effort: "rest" }],
};
/** Up on the strong forearm, the weak ankle lying on the strong one. */
export const STRONG_FOREARM_PROP_FEET_TOGETHER: PoseSpecification = { ...STRONG_FOREARM_PROP, contacts: [...STRONG_FOREARM_PROP.contacts, WEAK_ANKLE_ON_STRONG] };

/* Between the strong side and face down. */
/** Past the side: the strong arm up beside the head, pelvis and chest rolled on, the weak arm along the weak side. */
export const ROLLING_FACE_DOWN: PoseSpecification = {
  pelvis: { pitchDeg: 44, rollToStrongDeg: 90, turnToWeakDeg: -90 },
  trunkDeg: { lumbarFlexion: 0, thoraxFlexion: 0, neckFlexion: -6, neckTurn: -30 },
  weakDeg: { shoulderFlexion: 2, shoulderAbduction: 6, elbowFlexion: 8, pronation: 90, hipFlexion: 14, hipAbduction: 2, kneeFlexion: 22, ankleDorsiflexion: -40 },
  strongDeg: { girdleElevation: 20, shoulderFlexion: 160, shoulderAbduction: 10, elbowFlexion: 20, pronation: 90, hipFlexion: 2, kneeFlexion: 12, ankleDorsiflexion: -30 },
  surfaces: [{ id: "pillow", kind: "pillow", height: { cm: 6 }, under: ["headSide"], depthCm: 35, widthCm: 50 }],
  contacts: [
    { patch: "headSide", on: "pillow", role: "both" },
    { patch: "ribSide.strong", on: "mat", role: "both" },
    { patch: "chestFront", on: "mat", role: "bears" },
    { patch: "hipSide.strong", on: "mat", role: "both" },
    { patch: "pelvisFront.strong", on: "mat", role: "bears" },
    { patch: "thighFront.strong", on: "mat", role: "bears" },
    { patch: "knee.strong", on: "mat", role: "both" },
    { patch: "knee.weak", on: "mat", role: "both" },
    { patch: "toes.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "wrist.strong", on: "mat", role: "both", effort: "rest" },
  ],
  notCounted: ["hand.weak", "hand.strong", ...FEET_LIMP, "head"],
};
/** Face down, the strong arm up beside the head, the weak arm along the body. */
export const FACE_DOWN_STRONG_ARM_UP: PoseSpecification = {
  ...PRONE,
  strongDeg: { girdleElevation: 12, shoulderFlexion: 152, shoulderAbduction: 14, shoulderExternalRotation: 0, elbowFlexion: 44, pronation: 150 },
  contacts: [
    ...LEGS_FACE_DOWN,
    { patch: "chestFront", on: "mat", role: "both" },
    { patch: "headSide", on: "pillow", role: "both" },
    { patch: "hand.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "wrist.strong", on: "mat", role: "both", effort: "rest" },
  ],
};

/* From face down onto both elbows. */
/** Both forearms brought up beside the head, the chest still down. */
export const FACE_DOWN_FOREARMS_AHEAD: PoseSpecification = {
  ...PRONE,
  trunkDeg: { ...PRONE.trunkDeg, neckFlexion: 6 },
  bothDeg: { ...PRONE.bothDeg, shoulderFlexion: 60, shoulderAbduction: 62, shoulderExternalRotation: 0, elbowFlexion: 100, pronation: 120 },
  contacts: [
    ...LEGS_FACE_DOWN,
    { patch: "chestFront", on: "mat", role: "both" },
    { patch: "headSide", on: "pillow", role: "both" },
    { patch: "elbow.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "wrist.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "elbow.strong", on: "mat", role: "both" },
    { patch: "wrist.strong", on: "mat", role: "both" },
  ],
};
/** Half way up: the elbows still ahead of the shoulders, the chest low. */
export const LOW_ON_ELBOWS: PoseSpecification = {
  ...PRONE_ON_ELBOWS,
  pelvis: { pitchDeg: 82 },
  trunkDeg: { lumbarFlexion: -16, thoraxFlexion: -3, neckFlexion: -20 },
  bothDeg: { ...PRONE_ON_ELBOWS.bothDeg, shoulderFlexion: 92, elbowFlexion: 66 },
};

/* Up from the strong side with the legs on the mat. */
const BOTH_LEGS_BENT_ASIDE: readonly ContactSpecification[] = [
  { patch: "hipSide.strong", on: "mat", role: "both" },
  { patch: "buttock.strong", on: "mat", role: "bears" },
  { patch: "knee.strong", on: "mat", role: "both" },
  { patch: "ankleSide.strong", on: "mat", role: "both" },
  { patch: "knee.weak", on: "mat", role: "both" },
  { patch: "ankleSide.weak", on: "mat", role: "both" },
];
const WEAK_ARM_IN_LAP = { girdleProtraction: 4, shoulderFlexion: 16, shoulderAbduction: -4, shoulderExternalRotation: -28, elbowFlexion: 44, pronation: 90 } as const satisfies LimbAngles;
/** On the strong elbow, both knees bent and lying aside, the weak one in front of the strong one. */
export const ON_MAT_STRONG_FOREARM: PoseSpecification = {
  pelvis: { pitchDeg: -2, rollToStrongDeg: 52 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 8, lumbarSideBend: 12, thoraxSideBend: 8, neckSideBend: 16 },
  bothDeg: { hipFlexion: 66, kneeFlexion: 90, ankleDorsiflexion: -20 },
  weakDeg: { ...WEAK_ARM_IN_LAP, hipFlexion: 96, hipAbduction: -18, hipExternalRotation: -20 },
  strongDeg: { shoulderFlexion: 24, shoulderAbduction: 74, elbowFlexion: 90, pronation: 110 },
  contacts: [
    ...BOTH_LEGS_BENT_ASIDE,
    { patch: "elbow.strong", on: "mat", role: "both" },
    { patch: "wrist.strong", on: "mat", role: "both" },
    { patch: "wrist.weak", on: { body: "thighFront.weak" }, role: "both", effort: "rest" },
  ],
  notCounted: LIMP,
};
/** Up on the straight strong arm, both knees still bent aside. */
export const ON_MAT_STRONG_HAND: PoseSpecification = {
  ...SIDE_SITTING_ON_STRONG,
  pelvis: { pitchDeg: -4, rollToStrongDeg: 24 },
  trunkDeg: { lumbarFlexion: 9, thoraxFlexion: 7, lumbarSideBend: 4, thoraxSideBend: 2, neckSideBend: 10 },
  strongDeg: { ...SIDE_SITTING_ON_STRONG.strongDeg, shoulderFlexion: 2, shoulderAbduction: 46, elbowFlexion: 14 },
};

/* Up over the strong elbow with the legs long. */
const LONG_LEGS: readonly ContactSpecification[] = [
  { patch: "heel.weak", on: "mat", role: "both", effort: "rest" },
  { patch: "heel.strong", on: "mat", role: "both" },
  { patch: "calf.weak", on: "mat", role: "bears", effort: "rest" },
  { patch: "calf.strong", on: "mat", role: "bears" },
];
/** Half way up from the back: turned onto the strong forearm, the legs long. */
export const STRONG_FOREARM_BEHIND: PoseSpecification = {
  ...LONG_SITTING,
  pelvis: { pitchDeg: -52, rollToStrongDeg: 8 },
  trunkDeg: { lumbarFlexion: 18, thoraxFlexion: 14, lumbarTurn: -5, thoraxTurn: -12, lumbarSideBend: -4, neckFlexion: 12 },
  bothDeg: { hipFlexion: 32, hipAbduction: 8, hipExternalRotation: 6, kneeFlexion: 2, ankleDorsiflexion: -16 },
  weakDeg: { shoulderFlexion: 14, shoulderAbduction: -4, shoulderExternalRotation: -30, elbowFlexion: 52, pronation: 100 },
  strongDeg: { shoulderFlexion: -34, shoulderAbduction: 26, shoulderExternalRotation: -10, elbowFlexion: 92, pronation: 90 },
  contacts: [
    ...STRONG_HIP_ON_MAT,
    ...WEAK_HIP_ON_MAT,
    ...LONG_LEGS,
    { patch: "elbow.strong", on: "mat", role: "both" },
    { patch: "wrist.strong", on: "mat", role: "both" },
    { patch: "wrist.weak", on: { body: "belly" }, role: "both", effort: "rest" },
  ],
  notCounted: LIMP,
};

/* Knees up in long sitting. */
/** Both knees bent up, feet flat, leaning on the strong hand behind. */
export const KNEES_UP_HAND_BEHIND: PoseSpecification = {
  ...LONG_SITTING,
  pelvis: { pitchDeg: -12 },
  trunkDeg: { lumbarFlexion: 16, thoraxFlexion: 8, neckFlexion: -4, lumbarSideBend: -2 },
  bothDeg: { hipFlexion: 96, hipAbduction: 4, kneeFlexion: 96, ankleDorsiflexion: -24 },
  weakDeg: { shoulderFlexion: 34, shoulderAbduction: 6, shoulderExternalRotation: -16, elbowFlexion: 34, pronation: 165, wristExtension: 24 },
  strongDeg: ARM_PROPS,
  contacts: [
    { patch: "buttock.weak", on: "mat", role: "both" },
    { patch: "buttock.strong", on: "mat", role: "both" },
    { patch: "foot.weak", on: "mat", role: "both" },
    { patch: "foot.strong", on: "mat", role: "both" },
    WEAK_HAND_ON_THIGH,
    { patch: "hand.strong", on: "mat", role: "both" },
  ],
  notCounted: ["hand.weak", "toes.weak", "toes.strong"],
};

/* Legs up onto the mat from its edge. */
const RAISED_MAT: SurfaceSpecification = { id: "mat", kind: "block", height: { cm: 0 }, under: ["buttock.weak", "buttock.strong", "heel.strong"], depthCm: 200, widthCm: 90 };
/** The floor the helper stands on beside it. */
const FLOOR_BELOW: SurfaceSpecification = { id: "floor", kind: "floor", height: { cm: -72 } };
/** Leaning on the strong hand behind; the strong leg lies long, the weak leg is on its way onto the mat in the helper's hands. */
export const WEAK_LEG_CARRIED_OVER: PoseSpecification = {
  ...LONG_SITTING,
  pelvis: { pitchDeg: -16 },
  trunkDeg: { lumbarFlexion: 15, thoraxFlexion: 8, lumbarSideBend: -4, thoraxSideBend: -3, neckFlexion: -4, neckSideBend: 4 },
  weakDeg: { hipFlexion: 88, hipAbduction: 24, kneeFlexion: 30, ankleDorsiflexion: -8, shoulderFlexion: 16, shoulderAbduction: -2, shoulderExternalRotation: -24, elbowFlexion: 46, pronation: 120, wristExtension: 10 },
  strongDeg: ARM_PROPS,
  surfaces: [RAISED_MAT, FLOOR_BELOW],
  contacts: [
    { patch: "buttock.weak", on: "mat", role: "both" },
    ...STRONG_HIP_ON_MAT,
    { patch: "calf.strong", on: "mat", role: "both" },
    { patch: "heel.strong", on: "mat", role: "bears" },
    { patch: "wrist.weak", on: { body: "belly" }, role: "both", effort: "rest" },
    { patch: "hand.strong", on: "mat", role: "both" },
  ],
  notCounted: LIMP,
};
