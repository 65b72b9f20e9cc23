import type { ContactSpecification, LimbAngles, PoseSpecification, SurfaceSpecification } from "../../mechanics/pose/specification.ts";
import { BRIDGE_START, HALF_BRIDGE, TAIL_TILT } from "./bridge-poses.data.ts";
import { WEAK_LEG_STRAIGHT } from "./leg-poses.data.ts";
import { ARM_ALONGSIDE, ARMS_RESTING, HEAD_AND_SHOULDERS, HEAD_PILLOW, HOOK_LYING, SUPINE } from "./lying-poses.data.ts";

/** More key poses on the back: tilt, knees, legs, ankles, lifts of head and seat. Angles: "judgement", adjusted until they closed. */

const SEAT: readonly ContactSpecification[] = [
  { patch: "buttock.weak", on: "mat", role: "both" },
  { patch: "buttock.strong", on: "mat", role: "both" },
];
const LOW_BACK: ContactSpecification = { patch: "lowBack", on: "mat", role: "bears" };
const FLAT_BACK: ContactSpecification = { patch: "lowBack", on: "mat", role: "both" };
const WEAK_FOOT: ContactSpecification = { patch: "foot.weak", on: "mat", role: "both" };
const STRONG_FOOT: ContactSpecification = { patch: "foot.strong", on: "mat", role: "both" };
const LYING_ON_BACK = [...HEAD_AND_SHOULDERS, ...ARMS_RESTING, ...SEAT, LOW_BACK] as const;
const WEAK_LIMP = ["foot.weak", "toes.weak", "toes.strong", "hand.weak", "hand.strong"] as const;
const STRONG_LIMP = ["foot.strong", "toes.weak", "toes.strong", "hand.weak", "hand.strong"] as const;
const rollUnder = { kind: "bolster", depthCm: 24, widthCm: 50 } as const;

/** The low back hollowed a little, seat and shoulders down. */
export const BACK_HOLLOWED: PoseSpecification = {
  ...BRIDGE_START,
  pelvis: { pitchDeg: -82 },
  trunkDeg: { lumbarFlexion: -8, thoraxFlexion: 2, neckFlexion: 8 },
  contacts: [...HEAD_AND_SHOULDERS, ...ARMS_RESTING, ...SEAT, WEAK_FOOT, STRONG_FOOT],
};
const FLAT_ON_ONE_FOOT = [...HEAD_AND_SHOULDERS, ...ARMS_RESTING, ...SEAT, FLAT_BACK] as const;
/** The back stays flat, the strong foot leaves the mat. */
export const FLAT_STRONG_FOOT_UP: PoseSpecification = {
  ...TAIL_TILT,
  strongDeg: { hipFlexion: 76, kneeFlexion: 128, ankleDorsiflexion: -14 },
  contacts: [...FLAT_ON_ONE_FOOT, WEAK_FOOT],
  notCounted: STRONG_LIMP,
};
/** The back stays flat, the weak foot leaves the mat. */
export const FLAT_WEAK_FOOT_UP: PoseSpecification = {
  ...TAIL_TILT,
  weakDeg: { hipFlexion: 76, kneeFlexion: 128, ankleDorsiflexion: -14 },
  contacts: [...FLAT_ON_ONE_FOOT, STRONG_FOOT],
  notCounted: WEAK_LIMP,
};

/** Both thighs over a firm roll, heels down. */
const ROLL_UNDER_THIGHS = { ...rollUnder, id: "bolster", height: { cm: 24 }, under: ["kneeHollow.weak", "kneeHollow.strong"] } as const satisfies SurfaceSpecification;
export const THIGHS_ON_ROLL: PoseSpecification = {
  ...SUPINE,
  pelvis: { pitchDeg: -92 },
  bothDeg: { ...SUPINE.bothDeg, hipFlexion: 30, hipAbduction: 4, hipExternalRotation: 0, kneeFlexion: 58, ankleDorsiflexion: -14 },
  surfaces: [HEAD_PILLOW, ROLL_UNDER_THIGHS],
  contacts: [
    ...LYING_ON_BACK,
    { patch: "kneeHollow.weak", on: "bolster", role: "both" },
    { patch: "kneeHollow.strong", on: "bolster", role: "both" },
    { patch: "heel.weak", on: "mat", role: "both" },
    { patch: "heel.strong", on: "mat", role: "both" },
  ],
};
/** The seat lifted off the roll under the ends of the thighs. */
export const SEAT_UP_THIGHS_ON_ROLL: PoseSpecification = {
  ...THIGHS_ON_ROLL,
  pelvis: { pitchDeg: -103 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 5, neckFlexion: 12 },
  bothDeg: { ...THIGHS_ON_ROLL.bothDeg, shoulderFlexion: -18, hipFlexion: 8, kneeFlexion: 50 },
  contacts: [
    ...HEAD_AND_SHOULDERS,
    ...ARMS_RESTING,
    { patch: "kneeHollow.weak", on: "bolster", role: "both" },
    { patch: "kneeHollow.strong", on: "bolster", role: "both" },
    { patch: "heel.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "heel.strong", on: "mat", role: "both", effort: "rest" },
  ],
};
const ROLL_UNDER_CALVES = { ...rollUnder, id: "bolster", height: { cm: 24 }, under: ["calf.weak", "calf.strong"] } as const satisfies SurfaceSpecification;
/** Both calves on the roll, seat down. */
export const CALVES_ON_ROLL: PoseSpecification = {
  ...SUPINE,
  pelvis: { pitchDeg: -92 },
  bothDeg: { ...SUPINE.bothDeg, hipFlexion: 18, hipAbduction: 4, hipExternalRotation: 2, kneeFlexion: 12, ankleDorsiflexion: -16 },
  surfaces: [HEAD_PILLOW, ROLL_UNDER_CALVES],
  contacts: [...LYING_ON_BACK, { patch: "calf.weak", on: "bolster", role: "both" }, { patch: "calf.strong", on: "bolster", role: "both" }],
};
/** The seat lifted on straight legs, calves on the roll. */
export const SEAT_UP_CALVES_ON_ROLL: PoseSpecification = {
  ...CALVES_ON_ROLL,
  pelvis: { pitchDeg: -101 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 5, neckFlexion: 12 },
  bothDeg: { ...CALVES_ON_ROLL.bothDeg, shoulderFlexion: -18, hipFlexion: 1, kneeFlexion: 8 },
  contacts: [...HEAD_AND_SHOULDERS, ...ARMS_RESTING, { patch: "calf.weak", on: "bolster", role: "both" }, { patch: "calf.strong", on: "bolster", role: "both" }],
};
/** The same, the strong hand on the belly. */
export const SEAT_UP_CALVES_HAND_ON_BELLY: PoseSpecification = {
  ...SEAT_UP_CALVES_ON_ROLL,
  strongDeg: { shoulderFlexion: -16, shoulderAbduction: 20, shoulderExternalRotation: -66, elbowFlexion: 80, pronation: 100 },
  contacts: [
    ...HEAD_AND_SHOULDERS,
    { patch: "forearm.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "elbow.strong", on: "mat", role: "both", effort: "rest" },
    { patch: "wrist.strong", on: { body: "belly" }, role: "both" },
    { patch: "calf.weak", on: "bolster", role: "both" },
    { patch: "calf.strong", on: "bolster", role: "both" },
  ],
};
const OUTER_PILLOW = { id: "bolster", kind: "pillow", height: { cm: 26 }, under: ["knee.weak"], depthCm: 36, widthCm: 36 } as const satisfies SurfaceSpecification;
const OPENED: LimbAngles = { hipFlexion: 54, hipAbduction: 26, hipExternalRotation: 14 };
/** The weak knee let out onto a pillow, the strong knee upright. */
export const WEAK_KNEE_OUT_ON_PILLOW: PoseSpecification = {
  ...HOOK_LYING,
  weakDeg: { ...OPENED, hipAbduction: 34, hipExternalRotation: 22 },
  surfaces: [HEAD_PILLOW, OUTER_PILLOW],
  contacts: [...LYING_ON_BACK, STRONG_FOOT, { patch: "heel.weak", on: "mat", role: "both" }, { patch: "knee.weak", on: "bolster", role: "both", effort: "rest" }],
  notCounted: WEAK_LIMP,
};
/** The weak knee stopped half way out, nothing under it. */
export const WEAK_KNEE_HALF_OUT: PoseSpecification = {
  ...HOOK_LYING,
  weakDeg: OPENED,
  contacts: [...LYING_ON_BACK, STRONG_FOOT, { patch: "heel.weak", on: "mat", role: "both" }],
  notCounted: WEAK_LIMP,
};
/** Both knees open together. */
export const BOTH_KNEES_OPEN: PoseSpecification = {
  ...HOOK_LYING,
  weakDeg: OPENED,
  strongDeg: OPENED,
  contacts: [...LYING_ON_BACK, { patch: "heel.weak", on: "mat", role: "both" }, { patch: "heel.strong", on: "mat", role: "both" }],
  notCounted: [...WEAK_LIMP, "foot.strong"],
};

/** The straight weak leg with its heel on a pillow, made light. */
export const WEAK_HEEL_LIGHT_ON_PILLOW: PoseSpecification = {
  ...WEAK_LEG_STRAIGHT,
  weakDeg: { hipFlexion: 12, hipAbduction: 3, kneeFlexion: 3, ankleDorsiflexion: -6 },
  surfaces: [HEAD_PILLOW, { id: "bolster", kind: "pillow", height: { cm: 18 }, under: ["heel.weak"], depthCm: 30, widthCm: 34 }],
  contacts: [...LYING_ON_BACK, STRONG_FOOT, { patch: "heel.weak", on: "bolster", role: "both", effort: "light" }],
};
/** The straight weak leg a hand's breadth off the mat. */
export const WEAK_LEG_UP: PoseSpecification = {
  ...WEAK_LEG_STRAIGHT,
  weakDeg: { hipFlexion: 14, hipAbduction: 3, kneeFlexion: 3, ankleDorsiflexion: -4 },
  contacts: [...LYING_ON_BACK, STRONG_FOOT],
};
/** The same, carried out to the weak side. */
export const WEAK_LEG_UP_AND_OUT: PoseSpecification = { ...WEAK_LEG_UP, weakDeg: { ...WEAK_LEG_UP.weakDeg, hipAbduction: 22 } };

const WEAK_LEG_LIES: readonly ContactSpecification[] = [
  { patch: "heel.weak", on: "mat", role: "both" },
  { patch: "calf.weak", on: "mat", role: "bears" },
  { patch: "thighBack.weak", on: "mat", role: "bears" },
];
/** Both legs long, the strong one lifted. */
export const STRONG_LEG_UP_WEAK_LONG: PoseSpecification = {
  ...SUPINE,
  weakDeg: { hipFlexion: -4, hipAbduction: 5, hipExternalRotation: 8, kneeFlexion: 1 },
  strongDeg: { hipFlexion: 14, hipAbduction: 4, hipExternalRotation: 0, kneeFlexion: 3, ankleDorsiflexion: -4 },
  contacts: [...LYING_ON_BACK, ...WEAK_LEG_LIES],
  notCounted: [...STRONG_LIMP, "foot.weak"],
};
/** The weak knee up as a post, the strong leg lifted straight. */
export const STRONG_LEG_UP_WEAK_POST: PoseSpecification = {
  ...HOOK_LYING,
  strongDeg: { hipFlexion: 14, hipAbduction: 4, kneeFlexion: 3, ankleDorsiflexion: -4 },
  contacts: [...LYING_ON_BACK, WEAK_FOOT],
  notCounted: STRONG_LIMP,
};
/** The same, the strong leg carried out to its side. */
export const STRONG_LEG_OUT_WEAK_POST: PoseSpecification = { ...STRONG_LEG_UP_WEAK_POST, strongDeg: { ...STRONG_LEG_UP_WEAK_POST.strongDeg, hipAbduction: 24 } };

const UNDER_WEAK_KNEE = { ...rollUnder, id: "bolster", under: ["kneeHollow.weak"], widthCm: 40 } as const;
const STRONG_KNEE_UP: LimbAngles = { hipFlexion: 58, hipAbduction: 2, hipExternalRotation: 0, kneeFlexion: 124, ankleDorsiflexion: -24 };
const OVER_THE_ROLL = [...LYING_ON_BACK, STRONG_FOOT, { patch: "kneeHollow.weak", on: "bolster", role: "both" }] as const;
/** The weak knee over a high roll, its heel on the mat, the strong knee up. */
export const WEAK_KNEE_OVER_ROLL: PoseSpecification = {
  ...HOOK_LYING,
  weakDeg: { hipFlexion: 24, hipAbduction: 3, kneeFlexion: 48, ankleDorsiflexion: -14 },
  strongDeg: STRONG_KNEE_UP,
  surfaces: [HEAD_PILLOW, { ...UNDER_WEAK_KNEE, height: { cm: 18 } }],
  contacts: [...OVER_THE_ROLL, { patch: "heel.weak", on: "mat", role: "both" }],
  notCounted: WEAK_LIMP,
};
/** A low roll under the weak knee, pressed down, the heel staying. */
export const WEAK_KNEE_PRESSED: PoseSpecification = {
  ...WEAK_KNEE_OVER_ROLL,
  weakDeg: { hipFlexion: 11, hipAbduction: 3, kneeFlexion: 20, ankleDorsiflexion: -8 },
  surfaces: [HEAD_PILLOW, { ...UNDER_WEAK_KNEE, height: { cm: 9 } }],
};
/** A low roll, the weak knee straight and its heel just off the mat. */
export const WEAK_KNEE_STRAIGHT_LOW_ROLL: PoseSpecification = {
  ...WEAK_KNEE_OVER_ROLL,
  weakDeg: { hipFlexion: 10, hipAbduction: 3, kneeFlexion: 6, ankleDorsiflexion: -8 },
  surfaces: [HEAD_PILLOW, { ...UNDER_WEAK_KNEE, height: { cm: 9 } }],
  contacts: OVER_THE_ROLL,
};
/** A high roll, the weak knee straightened as far as it goes. */
export const WEAK_KNEE_STRAIGHT_HIGH_ROLL: PoseSpecification = {
  ...WEAK_KNEE_OVER_ROLL,
  weakDeg: { hipFlexion: 22, hipAbduction: 3, kneeFlexion: 4, ankleDorsiflexion: -6 },
  contacts: OVER_THE_ROLL,
};

/** Both feet drawn up together, legs long. */
export const BOTH_FEET_UP: PoseSpecification = {
  ...SUPINE,
  bothDeg: { ...SUPINE.bothDeg, hipExternalRotation: 4, ankleDorsiflexion: 4 },
  notCounted: ["toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};
/** The weak calf on a flat roll, its heel free, the foot drawn up. */
export const WEAK_FOOT_UP_CALF_ON_ROLL: PoseSpecification = {
  ...SUPINE,
  weakDeg: { hipFlexion: 4, hipAbduction: 4, hipExternalRotation: 2, kneeFlexion: 8, ankleDorsiflexion: 6 },
  surfaces: [HEAD_PILLOW, { ...rollUnder, id: "bolster", kind: "pillow", height: { cm: 10 }, under: ["calf.weak"], widthCm: 36 }],
  contacts: [
    ...LYING_ON_BACK,
    { patch: "calf.weak", on: "bolster", role: "both" },
    { patch: "heel.strong", on: "mat", role: "both" },
    { patch: "calf.strong", on: "mat", role: "bears" },
    { patch: "thighBack.strong", on: "mat", role: "bears" },
  ],
  notCounted: ["foot.strong", "toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};
/** Both knees up, the weak heel down and its forefoot raised. */
export const WEAK_FOREFOOT_UP: PoseSpecification = {
  ...HOOK_LYING,
  weakDeg: { ankleDorsiflexion: -4 },
  contacts: [...LYING_ON_BACK, STRONG_FOOT, { patch: "heel.weak", on: "mat", role: "both" }],
};

const ARMS_ON_BODY: readonly ContactSpecification[] = [
  { patch: "forearm.weak", on: "mat", role: "both", effort: "rest" },
];
const STRONG_ARM_TO_KNEE: LimbAngles = { shoulderFlexion: 32, shoulderAbduction: 4, elbowFlexion: 6, pronation: 90 };
/** The head alone off the pillow, eyes on the knees. */
export const HEAD_UP: PoseSpecification = {
  ...HOOK_LYING,
  trunkDeg: { lumbarFlexion: 3, thoraxFlexion: 3, neckFlexion: 34 },
  contacts: [
    { patch: "shoulderBlade.weak", on: "mat", role: "both" },
    { patch: "shoulderBlade.strong", on: "mat", role: "both" },
    ...ARMS_RESTING,
    ...SEAT,
    LOW_BACK,
    WEAK_FOOT,
    STRONG_FOOT,
  ],
};
/** Head and the tops of the shoulders up, the strong hand on its way to the knee. */
export const SHOULDERS_UP: PoseSpecification = {
  ...HOOK_LYING,
  pelvis: { pitchDeg: -98 },
  trunkDeg: { lumbarFlexion: 10, thoraxFlexion: 16, neckFlexion: 28 },
  weakDeg: { shoulderFlexion: -46 },
  strongDeg: STRONG_ARM_TO_KNEE,
  contacts: [...ARMS_ON_BODY, ...SEAT, FLAT_BACK, WEAK_FOOT, STRONG_FOOT],
};
/** The strong shoulder up and across toward the weak knee. */
export const STRONG_SHOULDER_ACROSS: PoseSpecification = {
  ...SHOULDERS_UP,
  trunkDeg: { lumbarFlexion: 14, lumbarTurn: 6, thoraxFlexion: 14, thoraxTurn: 20, neckFlexion: 28, neckTurn: 10 },
  weakDeg: { shoulderFlexion: -8, shoulderAbduction: 20 },
  strongDeg: { ...STRONG_ARM_TO_KNEE, girdleProtraction: 10, shoulderFlexion: 52, shoulderAbduction: -24 },
  contacts: [...ARMS_ON_BODY, ...SEAT, FLAT_BACK, WEAK_FOOT, STRONG_FOOT, { patch: "shoulderBlade.weak", on: "mat", role: "both" }],
};
/** The weak shoulder up and across toward the strong knee, its forearm carried by the strong hand. */
export const WEAK_SHOULDER_ACROSS: PoseSpecification = {
  ...SHOULDERS_UP,
  trunkDeg: { lumbarFlexion: 14, lumbarTurn: -6, thoraxFlexion: 14, thoraxTurn: -20, neckFlexion: 28, neckTurn: -10 },
  weakDeg: { girdleProtraction: 14, shoulderFlexion: 56, shoulderAbduction: -8, shoulderExternalRotation: -38, elbowFlexion: 22, pronation: 90 },
  strongDeg: { girdleProtraction: 4, shoulderFlexion: 44, shoulderAbduction: 18, shoulderExternalRotation: -48, elbowFlexion: 62, pronation: 90 },
  contacts: [...SEAT, FLAT_BACK, WEAK_FOOT, STRONG_FOOT, { patch: "shoulderBlade.strong", on: "mat", role: "both" }, { patch: "grip.strong", on: { body: "wrist.weak" }, role: "both", grips: true }],
};

const STRONG_HAND_ON_BELLY: LimbAngles = { shoulderFlexion: -12, shoulderAbduction: 20, shoulderExternalRotation: -66, elbowFlexion: 80, pronation: 100 };
/** Knees up, the strong hand on the belly to feel the breath. */
export const HAND_FEELS_BREATH: PoseSpecification = {
  ...HOOK_LYING,
  strongDeg: STRONG_HAND_ON_BELLY,
  contacts: [
    ...HEAD_AND_SHOULDERS,
    ...ARMS_ON_BODY,
    { patch: "elbow.strong", on: "mat", role: "both", effort: "rest" },
    { patch: "wrist.strong", on: { body: "belly" }, role: "both" },
    ...SEAT,
    LOW_BACK,
    WEAK_FOOT,
    STRONG_FOOT,
  ],
};
/** Knees up, the strong arm laid back beside the head on the in-breath. */
export const STRONG_ARM_OVERHEAD: PoseSpecification = {
  ...HOOK_LYING,
  strongDeg: { girdleElevation: 10, shoulderFlexion: 150, shoulderAbduction: 16, elbowFlexion: 24, pronation: 90 },
  surfaces: [HEAD_PILLOW, { id: "block", kind: "pillow", height: { cm: 14 }, under: ["wrist.strong"], depthCm: 40, widthCm: 30 }],
  contacts: [...HEAD_AND_SHOULDERS, ...ARMS_ON_BODY, { patch: "wrist.strong", on: "block", role: "both", effort: "rest" }, ...SEAT, LOW_BACK, WEAK_FOOT, STRONG_FOOT],
};

/** The seat light and over to the strong side, feet staying. */
export const HIPS_OVER_TO_STRONG: PoseSpecification = { ...HALF_BRIDGE, trunkDeg: { ...HALF_BRIDGE.trunkDeg, lumbarSideBend: -6 }, shift: { toWeakCm: -3 } };
/** The seat light and over to the weak side, feet staying. */
export const HIPS_OVER_TO_WEAK: PoseSpecification = { ...HALF_BRIDGE, trunkDeg: { ...HALF_BRIDGE.trunkDeg, lumbarSideBend: 6 }, shift: { toWeakCm: 3 } };
/** Head and shoulders light on the strong elbow, moved sideways. */
export const SHOULDERS_OVER: PoseSpecification = {
  ...HOOK_LYING,
  trunkDeg: { lumbarFlexion: 4, lumbarSideBend: -6, thoraxFlexion: 6, thoraxSideBend: -6, thoraxTurn: 10, neckFlexion: 28 },
  strongDeg: { ...ARM_ALONGSIDE, shoulderFlexion: -32, shoulderAbduction: 24, elbowFlexion: 70 },
  contacts: [{ patch: "shoulderBlade.weak", on: "mat", role: "both" }, ...ARMS_ON_BODY, { patch: "elbow.strong", on: "mat", role: "both" }, ...SEAT, LOW_BACK, WEAK_FOOT, STRONG_FOOT],
};
/** Chin in, head light, seat light: both feet push the body up the bed. */
export const PUSH_UP_THE_BED: PoseSpecification = {
  ...HALF_BRIDGE,
  trunkDeg: { ...HALF_BRIDGE.trunkDeg, neckFlexion: 40 },
  bothDeg: { ...HALF_BRIDGE.bothDeg, hipFlexion: 20, kneeFlexion: 108, ankleDorsiflexion: -12 },
  contacts: [{ patch: "shoulderBlade.weak", on: "mat", role: "both" }, { patch: "shoulderBlade.strong", on: "mat", role: "both" }, ...ARMS_RESTING, WEAK_FOOT, STRONG_FOOT],
};
