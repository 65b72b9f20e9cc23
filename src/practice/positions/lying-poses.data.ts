import type { ContactSpecification, LimbAngles, PoseSpecification } from "../../mechanics/pose/specification.ts";

/** Poses on the back and on either side that positions, rungs and transitions start from. Angles: "judgement", adjusted until they closed. */

/** A thin pillow under the head. */
export const HEAD_PILLOW = { id: "pillow", kind: "pillow", height: { cm: 4 }, under: ["headBack"], depthCm: 40, widthCm: 55 } as const;

/** Arms alongside on the mat, a little away from the trunk, palms toward the body. */
export const ARM_ALONGSIDE = { shoulderFlexion: -14, shoulderAbduction: 17, elbowFlexion: 6, pronation: 90, wristExtension: 0 } as const satisfies LimbAngles;

export const HEAD_AND_SHOULDERS: readonly ContactSpecification[] = [
  { patch: "headBack", on: "pillow", role: "both" },
  { patch: "shoulderBlade.weak", on: "mat", role: "both" },
  { patch: "shoulderBlade.strong", on: "mat", role: "both" },
];

export const ARMS_RESTING: readonly ContactSpecification[] = [
  { patch: "forearm.weak", on: "mat", role: "both", effort: "rest" },
  { patch: "forearm.strong", on: "mat", role: "both", effort: "rest" },
];

/** On the back, legs straight. */
export const SUPINE: PoseSpecification = {
  pelvis: { pitchDeg: -90 },
  trunkDeg: { lumbarFlexion: 0, thoraxFlexion: 2, neckFlexion: 8 },
  bothDeg: { ...ARM_ALONGSIDE, hipFlexion: -6, hipAbduction: 6, hipExternalRotation: 12, kneeFlexion: -1, ankleDorsiflexion: -22 },
  surfaces: [HEAD_PILLOW],
  contacts: [
    ...HEAD_AND_SHOULDERS,
    ...ARMS_RESTING,
    { patch: "buttock.weak", on: "mat", role: "both" },
    { patch: "buttock.strong", on: "mat", role: "both" },
    { patch: "heel.weak", on: "mat", role: "both" },
    { patch: "heel.strong", on: "mat", role: "both" },
    { patch: "thighBack.weak", on: "mat", role: "bears" },
    { patch: "thighBack.strong", on: "mat", role: "bears" },
    { patch: "calf.weak", on: "mat", role: "bears" },
    { patch: "calf.strong", on: "mat", role: "bears" },
  ],
  notCounted: ["foot.weak", "foot.strong", "toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};

/** On the back, both knees up, feet flat and hip-wide. */
export const HOOK_LYING: PoseSpecification = {
  pelvis: { pitchDeg: -92 },
  trunkDeg: { lumbarFlexion: 2, thoraxFlexion: 2, neckFlexion: 8 },
  bothDeg: { ...ARM_ALONGSIDE, hipFlexion: 58, hipAbduction: 2, kneeFlexion: 124, ankleDorsiflexion: -24 },
  surfaces: [HEAD_PILLOW],
  contacts: [
    ...HEAD_AND_SHOULDERS,
    ...ARMS_RESTING,
    { patch: "buttock.weak", on: "mat", role: "both" },
    { patch: "buttock.strong", on: "mat", role: "both" },
    { patch: "foot.weak", on: "mat", role: "both" },
    { patch: "foot.strong", on: "mat", role: "both" },
    { patch: "lowBack", on: "mat", role: "bears" },
  ],
  notCounted: ["toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};

/** Seat at full height, feet under the knees, shoulders, hips and knees in one line. */
export const BRIDGE: PoseSpecification = {
  pelvis: { pitchDeg: -118 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 7, neckFlexion: 18 },
  bothDeg: { shoulderFlexion: -22, shoulderAbduction: 17, elbowFlexion: 5, pronation: 90, hipFlexion: 6, kneeFlexion: 117, ankleDorsiflexion: -2 },
  surfaces: [HEAD_PILLOW],
  contacts: [
    ...HEAD_AND_SHOULDERS,
    ...ARMS_RESTING,
    { patch: "foot.weak", on: "mat", role: "both" },
    { patch: "foot.strong", on: "mat", role: "both" },
  ],
  notCounted: ["toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};
