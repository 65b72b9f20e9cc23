import type { ContactSpecification, PoseSpecification } from "../../src/mechanics/pose/specification.ts";
import type { HelperDrawing } from "../../src/figures/helper/drawing.ts";

/** Poses and helpers for warming up, timing and checking the drawing. Angles: "judgement", adjusted until they closed. */

const pair = (
  name:
    | "foot"
    | "shin"
    | "instep"
    | "hand"
    | "forearm"
    | "shoulderBlade"
    | "buttock"
    | "heel"
    | "pelvisFront"
    | "thighFront"
    | "grip",
  on: ContactSpecification["on"] = "mat",
): readonly ContactSpecification[] => [
  { patch: `${name}.weak`, on, role: "both" },
  { patch: `${name}.strong`, on, role: "both" },
];
const LYING_ARMS = { shoulderFlexion: -22, shoulderAbduction: 17, elbowFlexion: 5, pronation: 90 } as const;

const BRIDGE: PoseSpecification = {
  pelvis: { pitchDeg: -118 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 7, neckFlexion: 18 },
  bothDeg: { ...LYING_ARMS, hipFlexion: 1, kneeFlexion: 117, ankleDorsiflexion: -2 },
  contacts: [
    ...pair("foot"),
    ...pair("shoulderBlade"),
    { patch: "headBack", on: "mat", role: "both" },
    ...pair("forearm"),
  ],
};
const STRONG_FOOT_UP: PoseSpecification = {
  ...BRIDGE,
  strongDeg: { hipFlexion: 32, kneeFlexion: 118, ankleDorsiflexion: -10 },
  contacts: BRIDGE.contacts.filter((contact) => contact.patch !== "foot.strong"),
};
const HANDS_AND_KNEES: PoseSpecification = {
  pelvis: { pitchDeg: 80 },
  trunkDeg: { lumbarFlexion: -2, thoraxFlexion: -1, neckFlexion: -20 },
  bothDeg: {
    hipFlexion: 77,
    kneeFlexion: 90,
    ankleDorsiflexion: -51,
    shoulderFlexion: 79,
    shoulderAbduction: 8,
    shoulderExternalRotation: 12,
    elbowFlexion: 5,
    pronation: 165,
    wristExtension: 82,
  },
  contacts: [...pair("hand"), ...pair("shin"), ...pair("instep")],
};
const PRONE_ON_ELBOWS: PoseSpecification = {
  pelvis: { pitchDeg: 79 },
  trunkDeg: { lumbarFlexion: -23, thoraxFlexion: -3, neckFlexion: -30 },
  bothDeg: {
    hipFlexion: -9,
    hipAbduction: 5,
    kneeFlexion: 7,
    ankleDorsiflexion: -46,
    shoulderFlexion: 55,
    shoulderAbduction: 9,
    elbowFlexion: 85,
    pronation: 120,
  },
  contacts: [...pair("forearm"), ...pair("pelvisFront"), ...pair("thighFront"), ...pair("instep")],
};
const LONG_SITTING: PoseSpecification = {
  pelvis: { pitchDeg: -8 },
  trunkDeg: { lumbarFlexion: 12, thoraxFlexion: 8, neckFlexion: -5 },
  bothDeg: {
    hipFlexion: 79,
    hipAbduction: 6,
    kneeFlexion: 0,
    ankleDorsiflexion: -11,
    shoulderFlexion: 35,
    shoulderAbduction: 6,
    elbowFlexion: 25,
    pronation: 120,
  },
  contacts: [...pair("buttock"), ...pair("heel")],
};
const AT_BENCH: PoseSpecification = {
  pelvis: { pitchDeg: 2 },
  bothDeg: {
    hipFlexion: 3,
    kneeFlexion: 95,
    ankleDorsiflexion: -50,
    shoulderFlexion: 35,
    shoulderAbduction: 8,
    elbowFlexion: 50,
    pronation: 150,
    wristExtension: 10,
  },
  surfaces: [
    {
      id: "bench",
      kind: "bench",
      height: { of: "elbowKneeling", plusCm: -4 },
      under: ["forearm.weak", "forearm.strong"],
      depthCm: 45,
      widthCm: 60,
    },
  ],
  contacts: [...pair("shin"), ...pair("instep"), ...pair("forearm", "bench")],
};
const HALF_KNEELING: PoseSpecification = {
  pelvis: { pitchDeg: 3 },
  trunkDeg: { lumbarFlexion: 5, thoraxFlexion: 1 },
  bothDeg: { shoulderFlexion: 1, shoulderAbduction: 8, elbowFlexion: 8, pronation: 90 },
  weakDeg: { hipFlexion: -1, kneeFlexion: 89, ankleDorsiflexion: -50 },
  strongDeg: { hipFlexion: 95, hipAbduction: 5, kneeFlexion: 95, ankleDorsiflexion: 3 },
  contacts: [
    { patch: "shin.weak", on: "mat", role: "both" },
    { patch: "instep.weak", on: "mat", role: "both" },
    { patch: "foot.strong", on: "mat", role: "both" },
  ],
};
const IN_BARS: PoseSpecification = {
  pelvis: { pitchDeg: 0 },
  bothDeg: {
    hipFlexion: 2,
    hipAbduction: 3,
    kneeFlexion: 4,
    ankleDorsiflexion: 2,
    shoulderFlexion: 10,
    shoulderAbduction: 12,
    elbowFlexion: 35,
    pronation: 90,
  },
  surfaces: [{ id: "bars", kind: "bars", height: { of: "hipStanding", plusCm: 2 } }],
  contacts: [...pair("foot", "floor"), ...pair("grip", "bars")],
};

export const SAMPLE_POSES = {
  bridge: BRIDGE,
  strongFootUp: STRONG_FOOT_UP,
  handsAndKnees: HANDS_AND_KNEES,
  proneOnElbows: PRONE_ON_ELBOWS,
  longSitting: LONG_SITTING,
  atBench: AT_BENCH,
  halfKneeling: HALF_KNEELING,
  inBars: IN_BARS,
} as const satisfies Record<string, PoseSpecification>;

export const SAMPLE_HELPERS = {
  strongFootUp: {
    pose: "kneeling",
    at: { beside: "foot", nearTo: "knee", awayCm: 55 },
    hands: [
      { site: "hipBoneFront.weak", does: "cues" },
      { site: "hipBoneFront.strong", does: "steadies" },
    ],
  },
  handsAndKnees: {
    pose: "halfKneeling",
    at: { beside: "weak", nearTo: "shoulder", awayCm: 5 },
    hands: [
      { site: "aboveElbowBack.weak", does: "blocks" },
      { site: "shoulderBack.weak", does: "steadies" },
    ],
  },
  longSitting: {
    pose: "halfKneeling",
    at: { beside: "weak", nearTo: "chest", awayCm: 5 },
    hands: [
      { site: "shoulderFront.weak", does: "steadies" },
      { site: "shoulderBack.weak", does: "steadies" },
    ],
  },
  inBars: {
    pose: "sitting",
    at: { beside: "front", nearTo: "knee", awayCm: 10 },
    hands: [
      { site: "kneeFront.weak", does: "blocks" },
      { site: "pelvisSide.weak", does: "steadies" },
    ],
  },
} as const satisfies Partial<Record<keyof typeof SAMPLE_POSES, HelperDrawing>>;
