import type { PoseSpecification, SurfaceSpecification } from "../../../mechanics/pose/specification.ts";
import { FEET_ON_FLOOR, HIGH_SEAT, SEAT, STRONG_HAND_ON_KNEE, WEAK_HAND_ON_KNEE } from "../../positions/sitting-poses.data.ts";

/** Key poses of standing up: the moment the seat is off and the feet carry. Angles: "judgement", adjusted until they closed. */

const NOT_COUNTED = ["hand.weak", "hand.strong", "toes.weak", "toes.strong"] as const;
const MIDDLE_SEAT: SurfaceSpecification = { ...HIGH_SEAT, height: { of: "kneeHollow", times: 1.1 } };

/** Perched very high with both forearms on a table in front. */
export const PERCH_FOREARMS_ON_TABLE: PoseSpecification = {
  pelvis: { pitchDeg: 42 },
  trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 6, neckFlexion: -20 },
  bothDeg: { hipFlexion: 90, hipAbduction: 6, kneeFlexion: 66, ankleDorsiflexion: 12, shoulderFlexion: 66, shoulderAbduction: 10, elbowFlexion: 76, pronation: 150, girdleProtraction: 4 },
  surfaces: [
    { ...HIGH_SEAT, height: { of: "kneeHollow", times: 1.45 } },
    { id: "table", kind: "table", height: { of: "elbowSitting", times: 1.12 }, under: ["forearm.weak", "forearm.strong"], depthCm: 60, widthCm: 110 },
  ],
  contacts: [...FEET_ON_FLOOR, { patch: "forearm.weak", on: "table", role: "both" }, { patch: "forearm.strong", on: "table", role: "both" }],
  sharing: "standing",
  notCounted: NOT_COUNTED,
};
const OFF_THE_HIGH_SEAT = { hipFlexion: 106, hipAbduction: 6, kneeFlexion: 84, ankleDorsiflexion: 18 } as const;
/** High seat, the strong hand pushes on the seat beside the hip. */
export const HIGH_SEAT_HAND_PUSHES: PoseSpecification = {
  pelvis: { pitchDeg: 37 },
  trunkDeg: { lumbarFlexion: 7, thoraxFlexion: 6, neckFlexion: -22 },
  bothDeg: { ...OFF_THE_HIGH_SEAT, hipFlexion: 101, kneeFlexion: 82, ankleDorsiflexion: 19 },
  weakDeg: { shoulderFlexion: 24, shoulderAbduction: 8, shoulderExternalRotation: -18, elbowFlexion: 56, pronation: 165, wristExtension: 27 },
  strongDeg: { shoulderFlexion: 10, shoulderAbduction: 13, elbowFlexion: 28, pronation: 100, wristExtension: 74 },
  surfaces: [HIGH_SEAT],
  contacts: [...FEET_ON_FLOOR, WEAK_HAND_ON_KNEE, { patch: "hand.strong", on: "seat", role: "both" }],
  sharing: "standing",
  notCounted: NOT_COUNTED,
};
/** High seat, hands resting on the knees: no push from the seat. */
const HANDS_ON_KNEES: PoseSpecification = {
  pelvis: { pitchDeg: 44 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, neckFlexion: -24 },
  bothDeg: { ...OFF_THE_HIGH_SEAT, hipFlexion: 110, shoulderFlexion: 18, shoulderAbduction: 11, shoulderExternalRotation: -20, elbowFlexion: 83, pronation: 165, wristExtension: 26 },
  surfaces: [HIGH_SEAT],
  contacts: [...FEET_ON_FLOOR, WEAK_HAND_ON_KNEE, STRONG_HAND_ON_KNEE],
  notCounted: NOT_COUNTED,
};
export const HIGH_SEAT_HANDS_ON_KNEES: PoseSpecification = { ...HANDS_ON_KNEES, sharing: "standing" };
/** A seat of middle height. */
export const MIDDLE_SEAT_OFF: PoseSpecification = {
  ...HIGH_SEAT_HANDS_ON_KNEES,
  pelvis: { pitchDeg: 46 },
  bothDeg: { ...HANDS_ON_KNEES.bothDeg, hipFlexion: 120, kneeFlexion: 92, ankleDorsiflexion: 18, shoulderFlexion: 11, shoulderAbduction: 16, elbowFlexion: 102 },
  surfaces: [MIDDLE_SEAT],
};
/** A seat as high as the hollow of the knee. */
const LOW_SEAT: PoseSpecification = {
  ...HANDS_ON_KNEES,
  pelvis: { pitchDeg: 46 },
  bothDeg: { ...HANDS_ON_KNEES.bothDeg, hipFlexion: 128, kneeFlexion: 102, ankleDorsiflexion: 20, shoulderFlexion: 4, shoulderAbduction: 18, elbowFlexion: 116 },
  surfaces: [SEAT],
};
export const LOW_SEAT_OFF: PoseSpecification = { ...LOW_SEAT, sharing: "standing" };
/** The same seat, the strong foot a third of a foot's length ahead: the weak leg takes more. */
export const STRONG_FOOT_AHEAD: PoseSpecification = {
  ...LOW_SEAT,
  pelvis: { pitchDeg: 49 },
  trunkDeg: { lumbarFlexion: 16, thoraxFlexion: 9, neckFlexion: -28 },
  bothDeg: { ...LOW_SEAT.bothDeg, hipFlexion: 131, kneeFlexion: 104, ankleDorsiflexion: 22, elbowFlexion: 118, shoulderFlexion: 7 },
  strongDeg: { hipFlexion: 127, kneeFlexion: 92, ankleDorsiflexion: 11 },
};
