import type { PoseSpecification } from "../../../mechanics/pose/specification.ts";
import { LEGS_FACE_DOWN, PRONE_ON_ELBOWS } from "../../positions/prone-poses.data.ts";

/** Key poses of the ladders on both elbows. Angles: "judgement", adjusted until they closed. */

/** A wedge under the breastbone takes the chest. */
export const OVER_A_WEDGE: PoseSpecification = {
  ...PRONE_ON_ELBOWS,
  surfaces: [{ id: "wedge", kind: "wedge", height: { cm: 14 }, under: ["chestFront"], depthCm: 34, widthCm: 24 }],
  contacts: [...PRONE_ON_ELBOWS.contacts, { patch: "chestFront", on: "wedge", role: "both" }],
};
export const SHIFTED_TO_STRONG: PoseSpecification = { ...PRONE_ON_ELBOWS, weakDeg: { pronation: 138 }, strongDeg: { pronation: 176, radialDeviation: 10 }, shift: { toWeakCm: -2.2 } };
export const SHIFTED_TO_WEAK: PoseSpecification = { ...PRONE_ON_ELBOWS, weakDeg: { pronation: 176, radialDeviation: 10 }, strongDeg: { pronation: 138 }, shift: { toWeakCm: 2 } };
export const SHIFTED_FORWARD: PoseSpecification = { ...PRONE_ON_ELBOWS, bothDeg: { ...PRONE_ON_ELBOWS.bothDeg, shoulderFlexion: 41, elbowFlexion: 99 } };

const ON_THE_WEAK_FOREARM = [...LEGS_FACE_DOWN, { patch: "forearm.weak", on: "mat", role: "both" }] as const;

/** The strong elbow stays, its forearm and hand come up a hand's breadth. */
export const STRONG_HAND_LIGHT: PoseSpecification = {
  ...PRONE_ON_ELBOWS,
  strongDeg: { elbowFlexion: 105 },
  contacts: [...ON_THE_WEAK_FOREARM, { patch: "elbow.strong", on: "mat", role: "both" }],
};
/** The weak upper arm and forearm are lifted for the person, low; the strong forearm carries. */
export const WEAK_FOREARM_LIFTED: PoseSpecification = {
  ...PRONE_ON_ELBOWS,
  trunkDeg: { ...PRONE_ON_ELBOWS.trunkDeg, lumbarSideBend: -4, thoraxSideBend: -4 },
  weakDeg: { shoulderFlexion: 72, shoulderAbduction: 16, elbowFlexion: 76, girdleElevation: 4 },
  strongDeg: { shoulderAbduction: -10, pronation: 176, wristExtension: 8 },
  contacts: [...LEGS_FACE_DOWN, { patch: "forearm.strong", on: "mat", role: "both" }],
  shift: { toWeakCm: -2 },
};
/** The strong arm reaches ahead, low over the mat. */
export const STRONG_ARM_AHEAD: PoseSpecification = {
  ...PRONE_ON_ELBOWS,
  trunkDeg: { ...PRONE_ON_ELBOWS.trunkDeg, lumbarSideBend: 4, thoraxSideBend: 4 },
  weakDeg: { shoulderAbduction: -10, pronation: 176, radialDeviation: 6 },
  strongDeg: { shoulderFlexion: 116, shoulderAbduction: 6, elbowFlexion: 8, pronation: 150 },
  contacts: ON_THE_WEAK_FOREARM,
  shift: { toWeakCm: 1.5 },
};
/** The strong arm reaches out to its own side, low over the mat. */
export const STRONG_ARM_OUT: PoseSpecification = {
  ...PRONE_ON_ELBOWS,
  trunkDeg: { ...PRONE_ON_ELBOWS.trunkDeg, lumbarSideBend: 6, thoraxSideBend: 5 },
  weakDeg: { shoulderAbduction: -12, pronation: 172 },
  strongDeg: { shoulderFlexion: 92, shoulderAbduction: 58, elbowFlexion: 10, pronation: 150 },
  contacts: ON_THE_WEAK_FOREARM,
};
/** The strong arm reaches across in front of the face to the weak side; the chest turns after it. */
export const STRONG_ARM_ACROSS: PoseSpecification = {
  ...PRONE_ON_ELBOWS,
  trunkDeg: { ...PRONE_ON_ELBOWS.trunkDeg, thoraxTurn: 12, neckTurn: 15, lumbarSideBend: 4 },
  weakDeg: { shoulderAbduction: -8, pronation: 176, radialDeviation: 10 },
  strongDeg: { shoulderFlexion: 112, shoulderAbduction: -22, elbowFlexion: 10, pronation: 150 },
  contacts: ON_THE_WEAK_FOREARM,
  shift: { toWeakCm: 2.5 },
};
