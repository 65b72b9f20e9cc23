import type { ContactSpecification, PoseSpecification } from "../../mechanics/pose/specification.ts";
import {
  ARM_ON_PILLOW_ONLY,
  ARM_PILLOW,
  KNEE_PILLOW,
  SIDE_LYING_ON_STRONG,
  SIDE_PILLOW,
  STRONG_SIDE_DOWN,
  WEAK_KNEE_OPENS,
} from "./side-lying-poses.data.ts";

/** More key poses on either side: the weak thigh turned, the pelvis hiked, the blade set. Angles: "judgement", adjusted until they closed. */

const LEG_ON_PILLOW: readonly ContactSpecification[] = [
  { patch: "knee.weak", on: "bolster", role: "both" },
  { patch: "ankleSide.weak", on: "bolster", role: "both" },
];

/** Knees together, the weak foot lifted from the strong one: the thigh turned in. */
export const WEAK_FOOT_LIFTS_KNEES_TOGETHER: PoseSpecification = {
  ...WEAK_KNEE_OPENS,
  weakDeg: { ...WEAK_KNEE_OPENS.weakDeg, hipAbduction: -8, hipExternalRotation: -24 },
  contacts: [...ARM_ON_PILLOW_ONLY, { patch: "knee.weak", on: { body: "knee.strong" }, role: "both" }],
};
/** Heels together with the hips bent further, the weak knee held open half way. */
export const WEAK_KNEE_HELD_HIPS_BENT: PoseSpecification = {
  ...WEAK_KNEE_OPENS,
  weakDeg: { ...WEAK_KNEE_OPENS.weakDeg, hipFlexion: 64, hipAbduction: 8, hipExternalRotation: 22, kneeFlexion: 84 },
  strongDeg: { ...WEAK_KNEE_OPENS.strongDeg, hipFlexion: 64, kneeFlexion: 86 },
};
/** Knee and foot both off the strong leg, the thigh open. */
export const WEAK_KNEE_AND_FOOT_UP: PoseSpecification = {
  ...WEAK_KNEE_OPENS,
  weakDeg: { ...WEAK_KNEE_OPENS.weakDeg, hipAbduction: 10, hipExternalRotation: 14 },
  contacts: ARM_ON_PILLOW_ONLY,
};

/** The weak side of the pelvis drawn up toward the ribs, the leg sliding on its pillow. */
export const WEAK_HIP_HIKED: PoseSpecification = {
  ...SIDE_LYING_ON_STRONG,
  pelvis: { pitchDeg: 0, rollToStrongDeg: 100, turnToWeakDeg: -90 },
  trunkDeg: { lumbarFlexion: 6, lumbarSideBend: 13, thoraxFlexion: 8, thoraxSideBend: 5, neckFlexion: 12 },
  weakDeg: { ...SIDE_LYING_ON_STRONG.weakDeg, hipFlexion: 48, hipAbduction: 2, kneeFlexion: 62 },
};
/** The same with the weak leg almost straight: more of it to move. */
export const WEAK_HIP_HIKED_LEG_LONG: PoseSpecification = {
  ...WEAK_HIP_HIKED,
  weakDeg: { ...SIDE_LYING_ON_STRONG.weakDeg, hipFlexion: 14, hipAbduction: 2, kneeFlexion: 12 },
};
/** The straight weak leg held level off its pillow, the hip hiked. */
export const WEAK_HIP_HIKED_LEG_FREE: PoseSpecification = {
  ...WEAK_HIP_HIKED_LEG_LONG,
  weakDeg: { ...WEAK_HIP_HIKED_LEG_LONG.weakDeg, hipFlexion: 4, hipAbduction: 8, kneeFlexion: 6 },
  surfaces: [SIDE_PILLOW, ARM_PILLOW],
  contacts: ARM_ON_PILLOW_ONLY,
};

/** The weak blade slid forward, the arm riding on its pillow. */
export const WEAK_BLADE_FORWARD: PoseSpecification = {
  ...SIDE_LYING_ON_STRONG,
  weakDeg: { ...SIDE_LYING_ON_STRONG.weakDeg, girdleProtraction: 22, shoulderFlexion: 72, shoulderAbduction: -14 },
};
/** The weak blade drawn back and down toward the far back pocket. */
export const WEAK_BLADE_BACK_AND_DOWN: PoseSpecification = {
  ...SIDE_LYING_ON_STRONG,
  weakDeg: { ...SIDE_LYING_ON_STRONG.weakDeg, girdleProtraction: -10, girdleElevation: -6, shoulderFlexion: 52, shoulderExternalRotation: 22 },
};
/** The blade set and the whole weak arm held a little off its pillow. */
export const WEAK_BLADE_SET_ARM_LIGHT: PoseSpecification = {
  ...SIDE_LYING_ON_STRONG,
  weakDeg: { ...SIDE_LYING_ON_STRONG.weakDeg, girdleProtraction: -6, shoulderFlexion: 52, shoulderAbduction: -18, elbowFlexion: 40 },
  surfaces: [SIDE_PILLOW, KNEE_PILLOW],
  contacts: [...STRONG_SIDE_DOWN, ...LEG_ON_PILLOW],
};
