import type { ContactSpecification, LimbAngles, PoseSpecification, SurfaceSpecification } from "../../mechanics/pose/specification.ts";
import { FEET_ON_FLOOR, FREE_SITTING, HIGH_SEAT, LEG_SITTING, SEAT, SEATED, SITTING_TABLE, STRONG_HAND_ON_KNEE, STRONG_HAND_ON_THIGH, STRONG_HIP_ON_SEAT, WEAK_HAND_ON_KNEE, WEAK_HAND_ON_THIGH, WEAK_HIP_ON_SEAT } from "./sitting-poses.data.ts";

/** More key poses of sitting at the edge, at a table, on a perch and of the move to another seat. Angles: "judgement", adjusted until they closed. */

/** The strong hand flat on the seat beside the hip. */
export const ARM_ON_SEAT = { shoulderFlexion: -8, shoulderAbduction: 20, shoulderExternalRotation: 0, elbowFlexion: 22, pronation: 90, wristExtension: 72 } as const satisfies LimbAngles;
const STRONG_HAND_ON_SEAT: ContactSpecification = { patch: "hand.strong", on: "seat", role: "both" };
const SITTING_DEG = FREE_SITTING.bothDeg ?? {};

/* Still sitting. */
export const HAND_BESIDE_HIP: PoseSpecification = {
  ...FREE_SITTING,
  strongDeg: ARM_ON_SEAT,
  contacts: [...SEATED, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH, STRONG_HAND_ON_SEAT],
};
/** The strong hand lies on the breastbone: neither hand helps. */
export const HAND_ON_BREASTBONE: PoseSpecification = {
  ...FREE_SITTING,
  strongDeg: { girdleProtraction: 8, shoulderFlexion: 42, shoulderAbduction: 4, shoulderExternalRotation: -62, elbowFlexion: 122, pronation: 120, wristExtension: 10 },
  contacts: [...SEATED, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH, { patch: "hand.strong", on: { body: "chestFront" }, role: "both", effort: "light" }],
};
/** The same with the eyes shut: head upright, the feet a little closer. */
export const EYES_SHUT: PoseSpecification = {
  ...HAND_ON_BREASTBONE,
  trunkDeg: { lumbarFlexion: 3, thoraxFlexion: 3, neckFlexion: -6 },
  bothDeg: { ...SITTING_DEG, hipAbduction: 3 },
};

/* Weight to each side. */
const WAIST = { lumbarFlexion: 3, thoraxFlexion: 3, neckFlexion: -3 } as const;
export const OVER_STRONG_HIP: PoseSpecification = { ...FREE_SITTING, trunkDeg: { ...WAIST, lumbarSideBend: 5, thoraxSideBend: 2 }, pelvis: { pitchDeg: 0, rollToStrongDeg: 5 }, shift: { toWeakCm: -3 } };
export const OVER_WEAK_HIP: PoseSpecification = { ...FREE_SITTING, trunkDeg: { ...WAIST, lumbarSideBend: -5, thoraxSideBend: -2 }, pelvis: { pitchDeg: 0, rollToStrongDeg: -5 }, shift: { toWeakCm: 3 } };
/** Ahead over both feet, hands gliding toward the knees. */
export const OVER_BOTH_FEET: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: 24 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 3, neckFlexion: -16 },
  bothDeg: { ...SITTING_DEG, hipFlexion: 112, kneeFlexion: 98, ankleDorsiflexion: 8, shoulderFlexion: 18, elbowFlexion: 60 },
  contacts: [{ patch: "buttock.weak", on: "seat", role: "both" }, { patch: "buttock.strong", on: "seat", role: "both" }, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH, STRONG_HAND_ON_THIGH],
};
/** The same, over the weak foot. */
export const OVER_WEAK_FOOT: PoseSpecification = { ...OVER_BOTH_FEET, shift: { toWeakCm: 3, forwardCm: 1 } };

/* Tilting the pelvis. */
export const SLUMPED: PoseSpecification = { ...FREE_SITTING, pelvis: { pitchDeg: -16 }, trunkDeg: { lumbarFlexion: 22, thoraxFlexion: 12, neckFlexion: -18 }, bothDeg: { ...SITTING_DEG, hipFlexion: 76 } };
export const PELVIS_UPRIGHT: PoseSpecification = { ...FREE_SITTING, pelvis: { pitchDeg: 2 }, trunkDeg: { lumbarFlexion: -2, thoraxFlexion: 0, neckFlexion: 0 } };
export const PELVIS_AHEAD: PoseSpecification = { ...FREE_SITTING, pelvis: { pitchDeg: 12 }, trunkDeg: { lumbarFlexion: -13, thoraxFlexion: 2, neckFlexion: -2 }, bothDeg: { ...SITTING_DEG, hipFlexion: 100 } };
/** Half way back and stopped there, chest over the hips. */
export const PELVIS_BACK_STOPPED: PoseSpecification = { ...FREE_SITTING, pelvis: { pitchDeg: -18 }, trunkDeg: { lumbarFlexion: 10, thoraxFlexion: 6, neckFlexion: -4 }, bothDeg: { ...SITTING_DEG, hipFlexion: 72 } };

/* Down to the elbow and back. */
const ELBOW_REST: SurfaceSpecification = { id: "block", kind: "block", height: { of: "kneeHollow", plusCm: 13 }, under: ["forearm.strong"], depthCm: 26, widthCm: 22 };
const ELBOW_DOWN = { shoulderFlexion: 2, shoulderAbduction: 34, shoulderExternalRotation: 42, elbowFlexion: 84, pronation: 130, wristExtension: 0 } as const satisfies LimbAngles;
export const STRONG_ELBOW_ON_BLOCK: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: 0, rollToStrongDeg: 4 },
  trunkDeg: { ...WAIST, lumbarSideBend: -14, thoraxSideBend: -12, neckSideBend: 14 },
  strongDeg: ELBOW_DOWN,
  surfaces: [SEAT, ELBOW_REST],
  contacts: [...SEATED, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH, { patch: "forearm.strong", on: "block", role: "both" }],
};
export const STRONG_ELBOW_ON_SEAT: PoseSpecification = {
  ...STRONG_ELBOW_ON_BLOCK,
  pelvis: { pitchDeg: 0, rollToStrongDeg: 16 },
  trunkDeg: { ...WAIST, lumbarSideBend: -22, thoraxSideBend: -20, neckSideBend: 24 },
  strongDeg: { ...ELBOW_DOWN, shoulderAbduction: 46 },
  surfaces: [SEAT],
  contacts: [...STRONG_HIP_ON_SEAT, { patch: "thighBack.weak", on: "seat", role: "bears" }, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH, { patch: "forearm.strong", on: "seat", role: "both" }],
};
export const WEAK_ELBOW_ON_BLOCK: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: 0, rollToStrongDeg: -4 },
  trunkDeg: { ...WAIST, lumbarSideBend: 14, thoraxSideBend: 12, neckSideBend: -14 },
  weakDeg: ELBOW_DOWN,
  surfaces: [SEAT, { ...ELBOW_REST, under: ["forearm.weak"] }],
  contacts: [...SEATED, ...FEET_ON_FLOOR, STRONG_HAND_ON_THIGH, { patch: "forearm.weak", on: "block", role: "both" }],
};
/** A hand above the block on the way home: the trunk alone carries the lean to the weak side. */
export const WEAK_LEAN_HELD: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: 0, rollToStrongDeg: -4 },
  trunkDeg: { ...WAIST, lumbarSideBend: 10, thoraxSideBend: 9, neckSideBend: -12 },
};

/* Turning. */
export const TURNED_TO_STRONG: PoseSpecification = {
  ...FREE_SITTING,
  trunkDeg: { ...WAIST, lumbarTurn: -9, thoraxTurn: -24, neckTurn: -28 },
  weakDeg: { shoulderFlexion: 26, shoulderAbduction: -8, shoulderExternalRotation: -20, elbowFlexion: 30 },
  strongDeg: { ...ARM_ON_SEAT, shoulderFlexion: -18, shoulderAbduction: 24 },
  contacts: [...SEATED, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH, STRONG_HAND_ON_SEAT],
};
/** Arms carried together, the strong hand round the weak forearm above the wrist. */
const ARMS_TOGETHER = {
  weakDeg: { girdleProtraction: 6, shoulderFlexion: 40, shoulderAbduction: 3, shoulderExternalRotation: -38, elbowFlexion: 58, pronation: 80, wristExtension: 0 },
  strongDeg: { girdleProtraction: 4, shoulderFlexion: 38, shoulderAbduction: 8, shoulderExternalRotation: -54, elbowFlexion: 78, pronation: 90, wristExtension: 0 },
} as const;
const GRIP_ON_FOREARM: ContactSpecification = { patch: "grip.strong", on: { body: "wrist.weak" }, role: "both", grips: true };
export const TURNED_TO_WEAK: PoseSpecification = {
  ...FREE_SITTING,
  trunkDeg: { ...WAIST, lumbarTurn: 9, thoraxTurn: 24, neckTurn: 20 },
  ...ARMS_TOGETHER,
  contacts: [...SEATED, ...FEET_ON_FLOOR, GRIP_ON_FOREARM],
};
/** The strong hand comes across to the outer side of the weak knee. */
export const TURNED_TO_WEAK_HAND_ON_KNEE: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: 10 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 8, lumbarTurn: 12, thoraxTurn: 30, neckTurn: 14, neckFlexion: -10 },
  bothDeg: { ...SITTING_DEG, hipFlexion: 98 },
  weakDeg: { shoulderFlexion: -6, shoulderAbduction: 10, elbowFlexion: 84, shoulderExternalRotation: -24 },
  strongDeg: { girdleProtraction: 12, shoulderFlexion: 50, shoulderAbduction: -18, shoulderExternalRotation: -10, elbowFlexion: 14, pronation: 150, wristExtension: 20 },
  contacts: [...SEATED, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH, { patch: "hand.strong", on: { body: "knee.weak" }, role: "both", effort: "rest" }],
};

/* The weak leg in sitting. */
export const WEAK_FOOT_AHEAD: PoseSpecification = { ...FREE_SITTING, weakDeg: { kneeFlexion: 56, ankleDorsiflexion: -26 } };
const STRONG_FOOT_ON_FLOOR: ContactSpecification = { patch: "foot.strong", on: "floor", role: "both" };
const HANDS_ON_THIGHS: readonly ContactSpecification[] = [WEAK_HAND_ON_THIGH, STRONG_HAND_ON_THIGH];
export const WEAK_FOOT_OFF: PoseSpecification = {
  ...FREE_SITTING,
  weakDeg: { kneeFlexion: 54, ankleDorsiflexion: 0 },
  contacts: [...SEATED, STRONG_FOOT_ON_FLOOR, ...HANDS_ON_THIGHS],
};
export const WEAK_KNEE_STRAIGHT: PoseSpecification = { ...WEAK_FOOT_OFF, weakDeg: { kneeFlexion: 12, ankleDorsiflexion: 4 } };
export const WEAK_LEG_STRAIGHT_THIGH_UP: PoseSpecification = {
  ...WEAK_FOOT_OFF,
  weakDeg: { hipFlexion: 98, kneeFlexion: 12, ankleDorsiflexion: 4 },
  contacts: [{ patch: "buttock.weak", on: "seat", role: "both" }, ...STRONG_HIP_ON_SEAT, STRONG_FOOT_ON_FLOOR, ...HANDS_ON_THIGHS],
};
export const WEAK_HEEL_UP: PoseSpecification = {
  ...FREE_SITTING,
  weakDeg: { hipFlexion: 94, kneeFlexion: 98, ankleDorsiflexion: -24, toeExtension: 20 },
  contacts: [{ patch: "buttock.weak", on: "seat", role: "both" }, ...STRONG_HIP_ON_SEAT, STRONG_FOOT_ON_FLOOR, { patch: "forefoot.weak", on: "floor", role: "both" }, ...HANDS_ON_THIGHS],
};
export const WEAK_TOES_UP: PoseSpecification = {
  ...FREE_SITTING,
  weakDeg: { kneeFlexion: 84, ankleDorsiflexion: 12 },
  contacts: [...SEATED, STRONG_FOOT_ON_FLOOR, { patch: "heel.weak", on: "floor", role: "both" }, ...HANDS_ON_THIGHS],
};
export const WEAK_TOES_UP_FOOT_AHEAD: PoseSpecification = { ...WEAK_TOES_UP, weakDeg: { kneeFlexion: 52, ankleDorsiflexion: 6 } };

/* The strong hand presses a block. */
const HAND_BLOCK: SurfaceSpecification = { id: "block", kind: "block", height: { of: "kneeHollow", plusCm: 9 }, under: ["hand.strong"], depthCm: 22, widthCm: 24 };
const ARM_ON_HAND_BLOCK = { ...ARM_ON_SEAT, shoulderFlexion: -6, elbowFlexion: 42, shoulderAbduction: 16 } as const satisfies LimbAngles;
const HAND_ON_BLOCK: ContactSpecification = { patch: "hand.strong", on: "block", role: "both" };
export const HAND_ON_HIGH_BLOCK: PoseSpecification = {
  ...FREE_SITTING,
  strongDeg: ARM_ON_HAND_BLOCK,
  surfaces: [SEAT, HAND_BLOCK],
  contacts: [...SEATED, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH, HAND_ON_BLOCK],
  shift: { toWeakCm: -2 },
};
/** The strong arm straightens: the strong hip leaves the seat by a finger's breadth. */
export const BLOCK_LIFTS_STRONG_HIP: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: 2, rollToStrongDeg: -8 },
  trunkDeg: { ...WAIST, lumbarSideBend: -8 },
  strongDeg: { ...ARM_ON_HAND_BLOCK, elbowFlexion: 14 },
  surfaces: [SEAT, HAND_BLOCK],
  contacts: [...WEAK_HIP_ON_SEAT, ...FEET_ON_FLOOR, WEAK_HAND_ON_THIGH, HAND_ON_BLOCK],
};
const SEAT_JUST_OFF = { hipFlexion: 124, hipAbduction: 6, kneeFlexion: 98, ankleDorsiflexion: 19 } as const satisfies LimbAngles;
const NO_HANDS = ["hand.weak", "hand.strong", "toes.weak", "toes.strong"] as const;
/** Both hips off the seat, the strong hand on its block and both feet pressing. */
export const BLOCK_LIFTS_SEAT: PoseSpecification = {
  pelvis: { pitchDeg: 38 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, neckFlexion: -22 },
  bothDeg: { ...SEAT_JUST_OFF, hipFlexion: 118 },
  weakDeg: { shoulderFlexion: 18, shoulderAbduction: 10, shoulderExternalRotation: -18, elbowFlexion: 78, pronation: 165, wristExtension: 27 },
  strongDeg: { shoulderFlexion: 12, shoulderAbduction: 12, elbowFlexion: 26, pronation: 100, wristExtension: 72 },
  surfaces: [SEAT, HAND_BLOCK],
  contacts: [...FEET_ON_FLOOR, WEAK_HAND_ON_KNEE, HAND_ON_BLOCK],
  shift: { forwardCm: 3 },
  sharing: "standing",
  notCounted: NO_HANDS,
};

/* Along the edge. */
const EDGE_SEAT: SurfaceSpecification = { ...HIGH_SEAT, height: { of: "kneeHollow", times: 1.1 } };
/** Bowed so far that the seat grows light, the strong hand flat on the edge beside the hip. */
export const SEAT_LIGHT: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: 34 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 5, neckFlexion: -22 },
  bothDeg: { ...SITTING_DEG, hipFlexion: 118, kneeFlexion: 100, ankleDorsiflexion: 16 },
  weakDeg: { shoulderFlexion: 22, shoulderAbduction: 8, shoulderExternalRotation: -18, elbowFlexion: 70, wristExtension: 27 },
  strongDeg: { shoulderFlexion: 4, shoulderAbduction: 16, elbowFlexion: 28, pronation: 100, wristExtension: 72 },
  surfaces: [EDGE_SEAT],
  contacts: [{ patch: "buttock.weak", on: "seat", role: "both" }, { patch: "buttock.strong", on: "seat", role: "both" }, ...FEET_ON_FLOOR, WEAK_HAND_ON_KNEE, STRONG_HAND_ON_SEAT],
};
const EDGE_SEAT_OFF: PoseSpecification = {
  pelvis: { pitchDeg: 42 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, neckFlexion: -22 },
  bothDeg: { ...SEAT_JUST_OFF, hipFlexion: 114, kneeFlexion: 92 },
  weakDeg: { shoulderFlexion: 18, shoulderAbduction: 10, shoulderExternalRotation: -18, elbowFlexion: 78, pronation: 165, wristExtension: 27 },
  strongDeg: { shoulderFlexion: 16, shoulderAbduction: 16, elbowFlexion: 24, pronation: 100, wristExtension: 72 },
  surfaces: [EDGE_SEAT],
  contacts: [...FEET_ON_FLOOR, WEAK_HAND_ON_KNEE, STRONG_HAND_ON_SEAT],
  notCounted: NO_HANDS,
};
/** The seat is off and goes to the strong side, the strong hand set out ahead of it. */
export const SEAT_GOES_TO_STRONG: PoseSpecification = { ...EDGE_SEAT_OFF, strongDeg: { ...EDGE_SEAT_OFF.strongDeg, shoulderAbduction: 30, elbowFlexion: 12 }, shift: { toWeakCm: -4, forwardCm: 3 } };
/** The seat is off and goes to the weak side, the strong hand close to the hip pushing it over. */
export const SEAT_GOES_TO_WEAK: PoseSpecification = { ...EDGE_SEAT_OFF, strongDeg: { ...EDGE_SEAT_OFF.strongDeg, shoulderAbduction: 8, elbowFlexion: 30 }, shift: { toWeakCm: 4, forwardCm: 3 } };

/* Backward and forward on the edge, one hip at a time. */
export const STRONG_HIP_GOES_BACK: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: 6, rollToStrongDeg: -11, turnToWeakDeg: -8 },
  trunkDeg: { ...WAIST, lumbarFlexion: 6, lumbarSideBend: -6 },
  bothDeg: { ...SITTING_DEG, hipFlexion: 94 },
  contacts: [...WEAK_HIP_ON_SEAT, ...FEET_ON_FLOOR, ...HANDS_ON_THIGHS],
};
export const WEAK_HIP_GOES_BACK: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: 6, rollToStrongDeg: 11, turnToWeakDeg: 8 },
  trunkDeg: { ...WAIST, lumbarFlexion: 6, lumbarSideBend: 6 },
  bothDeg: { ...SITTING_DEG, hipFlexion: 94 },
  contacts: [...STRONG_HIP_ON_SEAT, ...FEET_ON_FLOOR, ...HANDS_ON_THIGHS],
};
export const WEAK_HIP_GOES_AHEAD: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: -4, rollToStrongDeg: 11, turnToWeakDeg: -8 },
  trunkDeg: { ...WAIST, lumbarFlexion: 6, lumbarSideBend: 7 },
  bothDeg: { ...SITTING_DEG, hipFlexion: 86 },
  contacts: [...STRONG_HIP_ON_SEAT, ...FEET_ON_FLOOR, ...HANDS_ON_THIGHS],
};

/* The weak arm as a post beside the seat. */
const WEAK_HAND_ON_SEAT: ContactSpecification = { patch: "hand.weak", on: "seat", role: "both" };
const WEAK_POST = { shoulderFlexion: -4, shoulderAbduction: 18, shoulderExternalRotation: 14, elbowFlexion: 12, pronation: 90, wristExtension: 74 } as const satisfies LimbAngles;
export const WEAK_HAND_PLACED: PoseSpecification = {
  ...FREE_SITTING,
  weakDeg: WEAK_POST,
  contacts: [...SEATED, ...FEET_ON_FLOOR, WEAK_HAND_ON_SEAT, STRONG_HAND_ON_THIGH],
};
export const OVER_WEAK_HAND: PoseSpecification = { ...WEAK_HAND_PLACED, pelvis: { pitchDeg: 0, rollToStrongDeg: -3 }, trunkDeg: { ...WAIST, lumbarSideBend: 5, thoraxSideBend: 4, neckSideBend: -6 }, shift: { toWeakCm: 2 } };
export const OVER_WEAK_HAND_STRONG_REACHES: PoseSpecification = {
  ...OVER_WEAK_HAND,
  trunkDeg: { ...WAIST, lumbarTurn: 5, thoraxTurn: 16, lumbarSideBend: 5, thoraxSideBend: 3, neckTurn: 16 },
  strongDeg: { shoulderFlexion: 84, shoulderAbduction: -18, elbowFlexion: 10, pronation: 90, wristExtension: 0, shoulderExternalRotation: 0 },
  contacts: [...SEATED, ...FEET_ON_FLOOR, WEAK_HAND_ON_SEAT],
};

/* The weak hand glides on a table. */
const SLIDE_TABLE: SurfaceSpecification = { ...SITTING_TABLE, under: ["hand.weak"], depthCm: 60, widthCm: 90 };
const WEAK_HAND_ON_TABLE: ContactSpecification = { patch: "hand.weak", on: "table", role: "both", effort: "rest" };
const LEANS_A_LITTLE = { pelvis: { pitchDeg: 12 }, trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 5, neckFlexion: -12 }, bothDeg: { ...SITTING_DEG, hipFlexion: 100 } } as const;
export const HANDS_GLIDE_AHEAD: PoseSpecification = {
  ...FREE_SITTING,
  ...LEANS_A_LITTLE,
  weakDeg: { girdleProtraction: 10, shoulderFlexion: 70, shoulderAbduction: 2, shoulderExternalRotation: -10, elbowFlexion: 22, pronation: 150, wristExtension: 8 },
  strongDeg: { girdleProtraction: 8, shoulderFlexion: 58, shoulderAbduction: 6, shoulderExternalRotation: -46, elbowFlexion: 52, pronation: 100, wristExtension: 0 },
  surfaces: [SEAT, SLIDE_TABLE],
  contacts: [...SEATED, ...FEET_ON_FLOOR, WEAK_HAND_ON_TABLE, GRIP_ON_FOREARM],
};
export const WEAK_HAND_GLIDES_AHEAD: PoseSpecification = {
  ...HANDS_GLIDE_AHEAD,
  strongDeg: { shoulderFlexion: -4, shoulderAbduction: 13, shoulderExternalRotation: -24, elbowFlexion: 84, wristExtension: 31 },
  contacts: [...SEATED, ...FEET_ON_FLOOR, WEAK_HAND_ON_TABLE, STRONG_HAND_ON_THIGH],
};
export const WEAK_HAND_GLIDES_OUT: PoseSpecification = {
  ...WEAK_HAND_GLIDES_AHEAD,
  weakDeg: { girdleProtraction: 6, shoulderFlexion: 56, shoulderAbduction: 32, shoulderExternalRotation: 10, elbowFlexion: 24, pronation: 150, wristExtension: 8 },
};

/* Perched on a high plinth. */
const PERCH: SurfaceSpecification = { id: "seat", kind: "seat", height: { of: "kneeHollow", times: 1.5 }, under: ["buttock.weak", "buttock.strong"], depthCm: 60, widthCm: 120 };
const ON_THE_PERCH: readonly ContactSpecification[] = [{ patch: "buttock.weak", on: "seat", role: "both" }, { patch: "buttock.strong", on: "seat", role: "both" }];
/** Half sitting, half standing: thighs slope down, both feet flat and loaded. */
export const PERCH_SITTING: PoseSpecification = {
  pelvis: { pitchDeg: 6 },
  trunkDeg: { lumbarFlexion: 2, thoraxFlexion: 3, neckFlexion: -4 },
  bothDeg: { ...SITTING_DEG, ...LEG_SITTING, hipFlexion: 50, kneeFlexion: 52, ankleDorsiflexion: 8, shoulderFlexion: -4, elbowFlexion: 40 },
  surfaces: [PERCH],
  contacts: [...ON_THE_PERCH, ...FEET_ON_FLOOR],
  notCounted: NO_HANDS,
};
export const PERCH_OVER_WEAK_FOOT: PoseSpecification = { ...PERCH_SITTING, pelvis: { pitchDeg: 12 }, bothDeg: { ...PERCH_SITTING.bothDeg, hipFlexion: 56 }, shift: { toWeakCm: 2.5 } };
/** The strong foot stands on a low step: the weak foot carries what the perch does not. */
export const PERCH_STRONG_FOOT_ON_STEP: PoseSpecification = {
  ...PERCH_OVER_WEAK_FOOT,
  strongDeg: { hipFlexion: 72, kneeFlexion: 66, ankleDorsiflexion: 0 },
  surfaces: [PERCH, { id: "step", kind: "step", height: { cm: 12 }, under: ["foot.strong"], depthCm: 32, widthCm: 30 }],
  contacts: [...ON_THE_PERCH, { patch: "foot.weak", on: "floor", role: "both" }, { patch: "foot.strong", on: "step", role: "both", effort: "light" }],
};
const PERCH_TABLE: SurfaceSpecification = { id: "table", kind: "table", height: { of: "elbowStanding", times: 0.86 }, under: ["hand.strong"], depthCm: 50, widthCm: 70 };
/** The seat is just off the perch, the strong hand light on a table in front. */
export const PERCH_OFF_HAND_ON_TABLE: PoseSpecification = {
  pelvis: { pitchDeg: 24 },
  trunkDeg: { lumbarFlexion: 5, thoraxFlexion: 4, neckFlexion: -14 },
  bothDeg: { hipFlexion: 62, hipAbduction: 6, kneeFlexion: 54, ankleDorsiflexion: 14, ...{ shoulderFlexion: 12, shoulderAbduction: 8, elbowFlexion: 20, pronation: 90 } },
  strongDeg: { shoulderFlexion: 52, shoulderAbduction: 6, elbowFlexion: 40, pronation: 165, wristExtension: 20 },
  surfaces: [PERCH, PERCH_TABLE],
  contacts: [...FEET_ON_FLOOR, { patch: "hand.strong", on: "table", role: "both" }],
  sharing: "standing",
  notCounted: NO_HANDS,
};
export const PERCH_OFF_FREE: PoseSpecification = { ...PERCH_OFF_HAND_ON_TABLE, strongDeg: {}, surfaces: [PERCH], contacts: FEET_ON_FLOOR };
/** Going down past the perch's height and stopping: lower, slower. */
export const PERCH_STOPPED_BELOW: PoseSpecification = {
  ...PERCH_OFF_FREE,
  pelvis: { pitchDeg: 34 },
  bothDeg: { ...PERCH_OFF_FREE.bothDeg, hipFlexion: 88, kneeFlexion: 72, ankleDorsiflexion: 17, shoulderFlexion: 26 },
  surfaces: [{ ...PERCH, height: { of: "kneeHollow", times: 1.3 } }],
};

/* From one seat to another. */
const OTHER_SEAT: SurfaceSpecification = { id: "bench", kind: "seat", height: { of: "kneeHollow", times: 1.1 }, under: ["hand.strong"], depthCm: 60, widthCm: 60 };
const CHAIR: SurfaceSpecification = { ...EDGE_SEAT, depthCm: 45, widthCm: 46 };
const HAND_ON_OTHER_SEAT: ContactSpecification = { patch: "hand.strong", on: "bench", role: "both" };
/** At the chair's front edge, bowed, the strong hand already on the mat beside it. */
export const HAND_ON_NEXT_SEAT: PoseSpecification = {
  ...SEAT_LIGHT,
  strongDeg: { shoulderFlexion: 14, shoulderAbduction: 36, elbowFlexion: 6, pronation: 90, wristExtension: 66 },
  trunkDeg: { ...SEAT_LIGHT.trunkDeg, lumbarSideBend: -5, thoraxSideBend: -4 },
  surfaces: [CHAIR, OTHER_SEAT],
  contacts: [{ patch: "buttock.weak", on: "seat", role: "both" }, { patch: "buttock.strong", on: "seat", role: "both" }, ...FEET_ON_FLOOR, WEAK_HAND_ON_KNEE, HAND_ON_OTHER_SEAT],
};
/** Off the chair and half turned, low, the strong hand on the mat to the strong side. */
export const HALF_TURNED_TO_STRONG: PoseSpecification = {
  ...EDGE_SEAT_OFF,
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, lumbarTurn: -5, thoraxTurn: -10, neckFlexion: -20 },
  strongDeg: { shoulderFlexion: 22, shoulderAbduction: 32, elbowFlexion: 8, pronation: 90, wristExtension: 66, hipExternalRotation: 8 },
  surfaces: [CHAIR, OTHER_SEAT],
  contacts: [...FEET_ON_FLOOR, WEAK_HAND_ON_KNEE, HAND_ON_OTHER_SEAT],
  shift: { toWeakCm: -3, forwardCm: 3 },
};
/** Off the chair toward the weak side: the strong hand pushes on the chair, the weak leg takes the turn. */
export const HALF_TURNED_TO_WEAK: PoseSpecification = {
  ...EDGE_SEAT_OFF,
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, lumbarTurn: 5, thoraxTurn: 10, neckFlexion: -20 },
  surfaces: [CHAIR],
  shift: { toWeakCm: 3, forwardCm: 3 },
};

/* The weak leg crossed for dressing. */
/** The strong hand under the weak knee carries the thigh up. */
export const WEAK_THIGH_CARRIED_UP: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: 8 },
  trunkDeg: { lumbarFlexion: 12, thoraxFlexion: 9, lumbarTurn: 4, thoraxTurn: 8, neckFlexion: -6 },
  weakDeg: { hipFlexion: 112, kneeFlexion: 100, shoulderFlexion: 14, shoulderAbduction: 20, elbowFlexion: 70 },
  strongDeg: { girdleProtraction: 10, shoulderFlexion: 44, shoulderAbduction: -12, shoulderExternalRotation: -20, elbowFlexion: 34, pronation: 20, wristExtension: 10 },
  contacts: [{ patch: "buttock.weak", on: "seat", role: "both" }, ...STRONG_HIP_ON_SEAT, STRONG_FOOT_ON_FLOOR, { patch: "grip.strong", on: { body: "kneeHollow.weak" }, role: "both", grips: true }],
  shift: { toWeakCm: -3, forwardCm: -3 },
};
const CROSSED_LEG = { hipFlexion: 112, hipAbduction: -16, hipExternalRotation: 0, kneeFlexion: 92, ankleDorsiflexion: -8 } as const satisfies LimbAngles;
const KNEE_ON_THIGH: ContactSpecification = { patch: "kneeHollow.weak", on: { body: "thighFront.strong" }, role: "both" };
/** The weak leg lies crossed over the strong thigh, the strong hand on its knee. */
export const WEAK_LEG_CROSSED: PoseSpecification = {
  ...FREE_SITTING,
  pelvis: { pitchDeg: 2 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 5, neckFlexion: -4 },
  bothDeg: { ...SITTING_DEG, hipAbduction: 2 },
  weakDeg: { ...CROSSED_LEG, shoulderFlexion: 12, shoulderAbduction: 14, elbowFlexion: 66 },
  strongDeg: { shoulderFlexion: 34, shoulderAbduction: -4, shoulderExternalRotation: -20, elbowFlexion: 52, pronation: 165, wristExtension: 20 },
  contacts: [{ patch: "buttock.weak", on: "seat", role: "both" }, ...STRONG_HIP_ON_SEAT, STRONG_FOOT_ON_FLOOR, KNEE_ON_THIGH, { patch: "hand.strong", on: { body: "knee.weak" }, role: "both", effort: "rest" }],
  shift: { toWeakCm: -1 },
};
/** The chest comes down over the crossed leg and the strong hand reaches the weak foot. */
export const STRONG_HAND_TO_WEAK_FOOT: PoseSpecification = {
  ...WEAK_LEG_CROSSED,
  pelvis: { pitchDeg: 16 },
  trunkDeg: { lumbarFlexion: 20, thoraxFlexion: 14, neckFlexion: -4 },
  weakDeg: { ...CROSSED_LEG, hipFlexion: 122, kneeFlexion: 80, shoulderFlexion: 20, shoulderAbduction: 14, elbowFlexion: 66 },
  strongDeg: { girdleProtraction: 10, shoulderFlexion: 62, shoulderAbduction: 4, shoulderExternalRotation: -10, elbowFlexion: 12, pronation: 120, wristExtension: 0 },
  contacts: [{ patch: "buttock.weak", on: "seat", role: "both" }, ...STRONG_HIP_ON_SEAT, STRONG_FOOT_ON_FLOOR, KNEE_ON_THIGH],
  shift: { toWeakCm: -1 },
};

/* Standing up, other ways. */
const OFF_THE_MIDDLE_SEAT: PoseSpecification = {
  pelvis: { pitchDeg: 46 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, neckFlexion: -24 },
  bothDeg: { hipFlexion: 120, hipAbduction: 6, kneeFlexion: 92, ankleDorsiflexion: 18, shoulderFlexion: 11, shoulderAbduction: 16, shoulderExternalRotation: -20, elbowFlexion: 102, pronation: 165, wristExtension: 26 },
  surfaces: [EDGE_SEAT],
  contacts: [...FEET_ON_FLOOR, WEAK_HAND_ON_KNEE, STRONG_HAND_ON_KNEE],
  notCounted: NO_HANDS,
};
export const WEAK_FOOT_BACK_SEAT_OFF: PoseSpecification = { ...OFF_THE_MIDDLE_SEAT, strongDeg: { hipFlexion: 118, kneeFlexion: 86, ankleDorsiflexion: 12 }, weakDeg: { kneeFlexion: 96, ankleDorsiflexion: 22 } };
/** The strong foot stands on a low block: the weak leg pushes. */
export const STRONG_FOOT_ON_BLOCK_SEAT_OFF: PoseSpecification = {
  ...OFF_THE_MIDDLE_SEAT,
  strongDeg: { hipFlexion: 128, kneeFlexion: 100, ankleDorsiflexion: 14 },
  surfaces: [EDGE_SEAT, { id: "block", kind: "block", height: { cm: 7 }, under: ["foot.strong"], depthCm: 32, widthCm: 26 }],
  contacts: [{ patch: "foot.weak", on: "floor", role: "both" }, { patch: "foot.strong", on: "block", role: "both" }, WEAK_HAND_ON_KNEE, STRONG_HAND_ON_KNEE],
};
const ARMS_AHEAD = { shoulderFlexion: 34, shoulderAbduction: 6, shoulderExternalRotation: 0, elbowFlexion: 14, pronation: 90, wristExtension: 0 } as const satisfies LimbAngles;
/** Half way up from a common seat and stopped there. */
export const STOPPED_HALF_WAY: PoseSpecification = {
  pelvis: { pitchDeg: 40 },
  trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 5, neckFlexion: -20 },
  bothDeg: { hipFlexion: 96, hipAbduction: 6, kneeFlexion: 76, ankleDorsiflexion: 18, ...ARMS_AHEAD },
  surfaces: [SEAT],
  contacts: FEET_ON_FLOOR,
  sharing: "standing",
  notCounted: NO_HANDS,
};
/** On the way down, a hand above a common seat. */
export const LOWERING_TO_SEAT: PoseSpecification = {
  ...STOPPED_HALF_WAY,
  pelvis: { pitchDeg: 46 },
  bothDeg: { ...STOPPED_HALF_WAY.bothDeg, hipFlexion: 116, kneeFlexion: 92, ankleDorsiflexion: 20, shoulderFlexion: 44 },
};
