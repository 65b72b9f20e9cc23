import type { ContactSpecification, PoseSpecification } from "../../mechanics/pose/specification.ts";
import { HEAD_AND_SHOULDERS, HOOK_LYING, SUPINE } from "./lying-poses.data.ts";

/** Key poses of either arm worked on the back. Angles: "judgement", adjusted until they closed. */

const SEAT_AND_FEET: readonly ContactSpecification[] = [
  { patch: "buttock.weak", on: "mat", role: "both" },
  { patch: "buttock.strong", on: "mat", role: "both" },
  { patch: "foot.weak", on: "mat", role: "both" },
  { patch: "foot.strong", on: "mat", role: "both" },
  { patch: "lowBack", on: "mat", role: "bears" },
];
const LEGS_LONG: readonly ContactSpecification[] = [
  { patch: "buttock.weak", on: "mat", role: "both" },
  { patch: "buttock.strong", on: "mat", role: "both" },
  { patch: "heel.weak", on: "mat", role: "both" },
  { patch: "heel.strong", on: "mat", role: "both" },
  { patch: "thighBack.weak", on: "mat", role: "bears" },
  { patch: "thighBack.strong", on: "mat", role: "bears" },
];
const WEAK_ARM_LIES: ContactSpecification = { patch: "forearm.weak", on: "mat", role: "both", effort: "rest" };
const STRONG_ARM_LIES: ContactSpecification = { patch: "forearm.strong", on: "mat", role: "both", effort: "rest" };

const STRONG_ARM_WORKS: PoseSpecification = { ...HOOK_LYING, contacts: [...HEAD_AND_SHOULDERS, WEAK_ARM_LIES, ...SEAT_AND_FEET], notCounted: ["toes.weak", "toes.strong", "hand.weak"] };
/** The strong upper arm upright, the forearm level over the face, on its way to straight. */
export const STRONG_ELBOW_STRAIGHTENS: PoseSpecification = {
  ...STRONG_ARM_WORKS,
  strongDeg: { girdleProtraction: 4, shoulderFlexion: 86, shoulderAbduction: 6, elbowFlexion: 86, pronation: 90, wristExtension: 0 },
};
/** The strong elbow folded beside the ear, before it straightens. */
export const STRONG_ELBOW_FOLDED: PoseSpecification = { ...STRONG_ELBOW_STRAIGHTENS, strongDeg: { ...STRONG_ELBOW_STRAIGHTENS.strongDeg, elbowFlexion: 128 } };
/** The strong arm low over the head, on its way down to the hip. */
export const STRONG_ARM_FROM_OVERHEAD: PoseSpecification = {
  ...STRONG_ARM_WORKS,
  strongDeg: { girdleElevation: 6, shoulderFlexion: 144, shoulderAbduction: 6, elbowFlexion: 8, pronation: 90, wristExtension: 0 },
};
/** The strong arm out to its side, a hand's breadth off the mat, on its way to close. */
export const STRONG_ARM_CLOSES: PoseSpecification = {
  ...STRONG_ARM_WORKS,
  strongDeg: { shoulderFlexion: 28, shoulderAbduction: 70, elbowFlexion: 8, pronation: 90, wristExtension: 0 },
};
/** The strong elbow pressed into the mat until its own shoulder blade is light. */
export const STRONG_ELBOW_PRESSES: PoseSpecification = {
  ...STRONG_ARM_WORKS,
  trunkDeg: { lumbarFlexion: 4, lumbarTurn: 4, thoraxFlexion: 4, thoraxTurn: 12, neckFlexion: 12 },
  strongDeg: { shoulderFlexion: -34, shoulderAbduction: 26, elbowFlexion: 80, pronation: 90, wristExtension: 0 },
  contacts: [
    { patch: "headBack", on: "pillow", role: "both" },
    { patch: "shoulderBlade.weak", on: "mat", role: "both" },
    { patch: "elbow.strong", on: "mat", role: "both" },
    WEAK_ARM_LIES,
    ...SEAT_AND_FEET,
  ],
};

const WEAK_ARM_WORKS: PoseSpecification = { ...SUPINE, contacts: [...HEAD_AND_SHOULDERS, STRONG_ARM_LIES, ...LEGS_LONG], notCounted: ["foot.weak", "foot.strong", "toes.weak", "toes.strong", "hand.weak", "hand.strong"] };
/** The weak arm upright in the helper's hands, its blade pushed forward. */
export const WEAK_BLADE_REACHES_CARRIED: PoseSpecification = {
  ...WEAK_ARM_WORKS,
  weakDeg: { girdleProtraction: 18, shoulderFlexion: 84, shoulderAbduction: 4, shoulderExternalRotation: -10, elbowFlexion: 10, pronation: 90 },
  notCounted: [...(WEAK_ARM_WORKS.notCounted ?? []), "forearm.weak", "upperArm.weak"],
};
/** The same arm before the blade goes forward. */
export const WEAK_ARM_STOOD_UP: PoseSpecification = { ...WEAK_BLADE_REACHES_CARRIED, weakDeg: { ...WEAK_BLADE_REACHES_CARRIED.weakDeg, girdleProtraction: 0 } };
/** The weak fist pushed up from a bent elbow. */
export const WEAK_FIST_PUSHED_UP: PoseSpecification = {
  ...WEAK_ARM_WORKS,
  weakDeg: { girdleProtraction: 14, shoulderFlexion: 58, shoulderAbduction: 12, shoulderExternalRotation: 0, elbowFlexion: 62, pronation: 90 },
};
/** The weak arm held up straight by itself, the blade forward. */
export const WEAK_ARM_REACHES_UP: PoseSpecification = {
  ...WEAK_ARM_WORKS,
  weakDeg: { girdleProtraction: 20, shoulderFlexion: 74, shoulderAbduction: 6, shoulderExternalRotation: 0, elbowFlexion: 8, pronation: 90 },
};

const WEAK_ELBOW_DOWN: PoseSpecification = { ...WEAK_ARM_WORKS, contacts: [...HEAD_AND_SHOULDERS, STRONG_ARM_LIES, { patch: "elbow.weak", on: "mat", role: "both" }, ...LEGS_LONG] };
/** The weak elbow on the mat, the forearm a little short of upright. */
export const WEAK_FOREARM_NEAR_UPRIGHT: PoseSpecification = {
  ...WEAK_ELBOW_DOWN,
  weakDeg: { shoulderFlexion: -14, shoulderAbduction: 18, elbowFlexion: 62, pronation: 90 },
};
/** The weak forearm upright on its elbow. */
export const WEAK_FOREARM_STOOD_UP: PoseSpecification = { ...WEAK_ELBOW_DOWN, weakDeg: { ...WEAK_FOREARM_NEAR_UPRIGHT.weakDeg, elbowFlexion: 92 } };
/** The weak forearm low over the mat, coming up or going down. */
export const WEAK_FOREARM_LOW: PoseSpecification = { ...WEAK_ELBOW_DOWN, weakDeg: { ...WEAK_FOREARM_NEAR_UPRIGHT.weakDeg, elbowFlexion: 24 } };
/** The weak upper arm held upright by the helper, the forearm level over the chest, on its way to straight. */
export const WEAK_ELBOW_STRAIGHTENS: PoseSpecification = {
  ...WEAK_ARM_WORKS,
  weakDeg: { girdleProtraction: 10, shoulderFlexion: 82, shoulderAbduction: 6, shoulderExternalRotation: -50, elbowFlexion: 80, pronation: 90 },
};
/** The weak elbow folded, the hand over the chest. */
export const WEAK_ELBOW_FOLDED: PoseSpecification = { ...WEAK_ELBOW_STRAIGHTENS, weakDeg: { ...WEAK_ELBOW_STRAIGHTENS.weakDeg, elbowFlexion: 122 } };
