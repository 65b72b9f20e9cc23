import type { ContactSpecification, LimbAngles, PoseSpecification } from "../../mechanics/pose/specification.ts";

/** Poses face down that positions, rungs and transitions start from. Angles: "judgement", adjusted until they closed. */

/** Both legs long on the mat, the tops of the feet down. */
export const LEGS_FACE_DOWN: readonly ContactSpecification[] = [
  { patch: "pelvisFront.weak", on: "mat", role: "both" },
  { patch: "pelvisFront.strong", on: "mat", role: "both" },
  { patch: "thighFront.weak", on: "mat", role: "both" },
  { patch: "thighFront.strong", on: "mat", role: "both" },
  { patch: "knee.weak", on: "mat", role: "bears" },
  { patch: "knee.strong", on: "mat", role: "bears" },
  { patch: "instep.weak", on: "mat", role: "both" },
  { patch: "instep.strong", on: "mat", role: "both" },
  { patch: "belly", on: "mat", role: "bears" },
];

/** Face down, the head turned to the strong side on a flat pillow, arms alongside with the palms down. */
export const PRONE: PoseSpecification = {
  pelvis: { pitchDeg: 87 },
  trunkDeg: { lumbarFlexion: -2, thoraxFlexion: -2, neckFlexion: 20, neckTurn: -62 },
  bothDeg: { hipFlexion: 1, hipAbduction: 5, kneeFlexion: 6, ankleDorsiflexion: -50, shoulderFlexion: 8, shoulderAbduction: 16, elbowFlexion: 4, pronation: 20, wristExtension: 0 },
  surfaces: [{ id: "pillow", kind: "pillow", height: { cm: 3 }, under: ["headSide"], depthCm: 35, widthCm: 50 }],
  contacts: [
    ...LEGS_FACE_DOWN,
    { patch: "chestFront", on: "mat", role: "both" },
    { patch: "headSide", on: "pillow", role: "both" },
    { patch: "forearm.weak", on: "mat", role: "bears", effort: "rest" },
    { patch: "forearm.strong", on: "mat", role: "bears", effort: "rest" },
    { patch: "hand.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "hand.strong", on: "mat", role: "both", effort: "rest" },
  ],
  notCounted: ["hand.weak", "hand.strong", "foot.weak", "foot.strong", "toes.weak", "toes.strong", "head"],
};

/** Upper arms upright, elbows bent square and straight under the shoulders. */
export const ARM_ON_ELBOW = { shoulderFlexion: 55, shoulderAbduction: 8, shoulderExternalRotation: 0, elbowFlexion: 85, pronation: 150, wristExtension: 0, girdleProtraction: 6 } as const satisfies LimbAngles;
export const LEG_FACE_DOWN = { hipFlexion: -9, hipAbduction: 5, kneeFlexion: 7, ankleDorsiflexion: -50 } as const satisfies LimbAngles;

/** Prone on elbows: elbows under the shoulders, blades wide, eyes on the mat. */
export const PRONE_ON_ELBOWS: PoseSpecification = {
  pelvis: { pitchDeg: 79 },
  trunkDeg: { lumbarFlexion: -22, thoraxFlexion: -4, neckFlexion: -18 },
  bothDeg: { ...ARM_ON_ELBOW, ...LEG_FACE_DOWN },
  contacts: [
    ...LEGS_FACE_DOWN,
    { patch: "forearm.weak", on: "mat", role: "both" },
    { patch: "forearm.strong", on: "mat", role: "both" },
  ],
  notCounted: ["hand.weak", "hand.strong", "foot.weak", "foot.strong", "toes.weak", "toes.strong"],
};
