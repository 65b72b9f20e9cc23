import type { ContactSpecification, LimbAngles, PoseSpecification, SurfaceSpecification } from "../../mechanics/pose/specification.ts";

/** Poses on hands and knees and kneeling that positions, rungs and transitions start from. Angles: "judgement", adjusted until they closed. */

/** A bench at the height of the forearm of someone kneeling upright and leaning a little. */
export const BENCH: SurfaceSpecification = { id: "bench", kind: "bench", height: { of: "elbowKneeling", times: 0.9 }, under: ["forearm.weak", "forearm.strong"], depthCm: 45, widthCm: 110 };
/** A stool in front of the knees. */
export const STOOL: SurfaceSpecification = { id: "stool", kind: "stool", height: { cm: 42 }, under: ["hand.strong"], depthCm: 36, widthCm: 36 };
/** A firm roll across the mat, under the chest. */
export const ROLL: SurfaceSpecification = { id: "bolster", kind: "bolster", height: { cm: 30 }, under: ["chestFront"], depthCm: 30, widthCm: 90 };

export const HAND_WEAK: ContactSpecification = { patch: "hand.weak", on: "mat", role: "both" };
export const HAND_STRONG: ContactSpecification = { patch: "hand.strong", on: "mat", role: "both" };
export const LEG_WEAK: readonly ContactSpecification[] = [
  { patch: "shin.weak", on: "mat", role: "both" },
  { patch: "instep.weak", on: "mat", role: "both" },
];
export const LEG_STRONG: readonly ContactSpecification[] = [
  { patch: "shin.strong", on: "mat", role: "both" },
  { patch: "instep.strong", on: "mat", role: "both" },
];

/** The arm as a straight post, hand flat under the shoulder. */
export const POST_ARM = { shoulderFlexion: 79, shoulderAbduction: 8, shoulderExternalRotation: 12, elbowFlexion: 5, pronation: 165, wristExtension: 82 } as const satisfies LimbAngles;
export const LEG_ON_ALL_FOURS = { hipFlexion: 77, kneeFlexion: 90, ankleDorsiflexion: -58 } as const satisfies LimbAngles;

/** Hands and knees, square: hands under the shoulders, knees under the hips. */
export const HANDS_AND_KNEES: PoseSpecification = {
  pelvis: { pitchDeg: 80 },
  trunkDeg: { lumbarFlexion: -2, thoraxFlexion: -1, neckFlexion: -20 },
  bothDeg: { ...LEG_ON_ALL_FOURS, ...POST_ARM },
  contacts: [HAND_WEAK, HAND_STRONG, ...LEG_WEAK, ...LEG_STRONG],
  notCounted: ["toes.weak", "toes.strong", "foot.weak", "foot.strong"],
};

export const ARM_HANGING = { shoulderFlexion: 0, shoulderAbduction: 6, elbowFlexion: 8, pronation: 90 } as const satisfies LimbAngles;
export const LEG_KNEELING = { hipFlexion: 3, kneeFlexion: 95, ankleDorsiflexion: -62 } as const satisfies LimbAngles;

/** Kneeling upright, hips straight, arms hanging. */
export const TALL_KNEELING: PoseSpecification = {
  pelvis: { pitchDeg: 2 },
  trunkDeg: {},
  bothDeg: { ...LEG_KNEELING, ...ARM_HANGING },
  contacts: [...LEG_WEAK, ...LEG_STRONG],
  sharing: "kneeling",
  notCounted: ["toes.weak", "toes.strong", "foot.weak", "foot.strong", "hand.weak", "hand.strong"],
};

/** The forearm lying on a bench in front of the chest. */
export const FOREARM_ON_BENCH = { shoulderFlexion: 46, shoulderAbduction: 6, elbowFlexion: 62, pronation: 150, wristExtension: 5 } as const satisfies LimbAngles;
/** The hand lying flat on a bench in front of the hip, elbow a little bent. */
export const HAND_ON_BENCH = { shoulderFlexion: 40, shoulderAbduction: 6, elbowFlexion: 52, pronation: 165, wristExtension: 40 } as const satisfies LimbAngles;

/** Kneeling upright at a bench, both forearms on it. */
export const KNEELING_AT_BENCH: PoseSpecification = {
  pelvis: { pitchDeg: 8 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 4, neckFlexion: -8 },
  bothDeg: { ...LEG_KNEELING, hipFlexion: 8, ...FOREARM_ON_BENCH },
  surfaces: [BENCH],
  contacts: [
    ...LEG_WEAK,
    ...LEG_STRONG,
    { patch: "forearm.weak", on: "bench", role: "both", effort: "rest" },
    { patch: "forearm.strong", on: "bench", role: "both" },
  ],
  notCounted: ["toes.weak", "toes.strong", "foot.weak", "foot.strong", "hand.weak", "hand.strong"],
};

export const REAR_LEG = { hipFlexion: -1, kneeFlexion: 89, ankleDorsiflexion: -62 } as const satisfies LimbAngles;
export const FRONT_LEG = { hipFlexion: 95, hipAbduction: 5, kneeFlexion: 95, ankleDorsiflexion: 3 } as const satisfies LimbAngles;

/** Half kneeling with the weak foot in front, the strong knee down; the strong hand on a bench. */
export const HALF_KNEELING_WEAK_FORWARD: PoseSpecification = {
  pelvis: { pitchDeg: 4 },
  trunkDeg: { lumbarFlexion: 3, thoraxFlexion: 2 },
  weakDeg: { ...FRONT_LEG, ...ARM_HANGING },
  strongDeg: { ...REAR_LEG, ...HAND_ON_BENCH },
  surfaces: [{ ...BENCH, under: ["hand.strong"], depthCm: 35, widthCm: 40 }],
  contacts: [{ patch: "foot.weak", on: "mat", role: "both" }, ...LEG_STRONG, { patch: "hand.strong", on: "bench", role: "both" }],
  shift: { forwardCm: 4, toWeakCm: 1 },
  notCounted: ["toes.weak", "toes.strong", "foot.strong", "hand.weak"],
};
/** Half kneeling with the strong foot in front, the weak knee down; the strong hand on a bench. */
export const HALF_KNEELING_STRONG_FORWARD: PoseSpecification = {
  pelvis: { pitchDeg: 4 },
  trunkDeg: { lumbarFlexion: 3, thoraxFlexion: 2 },
  weakDeg: { ...REAR_LEG, ...ARM_HANGING },
  strongDeg: { ...FRONT_LEG, ...HAND_ON_BENCH },
  surfaces: [{ ...BENCH, under: ["hand.strong"], depthCm: 35, widthCm: 40 }],
  contacts: [{ patch: "foot.strong", on: "mat", role: "both" }, ...LEG_WEAK, { patch: "hand.strong", on: "bench", role: "both" }],
  shift: { forwardCm: 4, toWeakCm: -1 },
  notCounted: ["toes.weak", "toes.strong", "foot.weak", "hand.weak"],
};
