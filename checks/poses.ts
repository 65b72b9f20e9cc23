import type { Body } from "../src/mechanics/body/body.ts";
import { capacitiesOf } from "../src/mechanics/body/strength-capacities.ts";
import type { Strengths } from "../src/mechanics/body/strength-keys.ts";
import { type Balance, solveHabitual } from "../src/mechanics/equilibrium/habitual.ts";
import { prepareStatics, type Statics } from "../src/mechanics/equilibrium/statics.ts";
import { closePose } from "../src/mechanics/pose/close.ts";
import type { PoseSpecification } from "../src/mechanics/pose/specification.ts";
import type { PatchId } from "../src/mechanics/body/patches.ts";

const onMat = (...patches: PatchId[]): PoseSpecification["contacts"] =>
  patches.map((patch) => ({ patch, on: "mat", role: "both" }));

export const HANDS_AND_KNEES: PoseSpecification = {
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
  contacts: onMat("hand.weak", "hand.strong", "shin.weak", "shin.strong", "instep.weak", "instep.strong"),
};
export const BRIDGE: PoseSpecification = {
  pelvis: { pitchDeg: -118 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 7, neckFlexion: 18 },
  bothDeg: {
    hipFlexion: 1,
    kneeFlexion: 117,
    ankleDorsiflexion: -2,
    shoulderFlexion: -22,
    shoulderAbduction: 17,
    elbowFlexion: 5,
    pronation: 90,
  },
  contacts: onMat(
    "foot.weak",
    "foot.strong",
    "shoulderBlade.weak",
    "shoulderBlade.strong",
    "headBack",
    "forearm.weak",
    "forearm.strong",
  ),
};
export const BRIDGE_STRONG_FOOT_UP: PoseSpecification = {
  ...BRIDGE,
  strongDeg: { hipFlexion: 32, kneeFlexion: 118, ankleDorsiflexion: -10 },
  contacts: BRIDGE.contacts.filter((contact) => contact.patch !== "foot.strong"),
  notCounted: ["foot.strong"],
};
export const BRIDGE_WEAK_FOOT_UP: PoseSpecification = {
  ...BRIDGE,
  weakDeg: { hipFlexion: 32, kneeFlexion: 118, ankleDorsiflexion: -10 },
  contacts: BRIDGE.contacts.filter((contact) => contact.patch !== "foot.weak"),
  notCounted: ["foot.weak"],
};
export const PRONE_ON_ELBOWS: PoseSpecification = {
  pelvis: { pitchDeg: 79 },
  trunkDeg: { lumbarFlexion: -23, thoraxFlexion: -3, neckFlexion: -30 },
  bothDeg: {
    hipFlexion: -9,
    kneeFlexion: 7,
    ankleDorsiflexion: -46,
    shoulderFlexion: 55,
    shoulderAbduction: 9,
    shoulderExternalRotation: -1,
    elbowFlexion: 85,
    pronation: 120,
  },
  contacts: onMat(
    "forearm.weak",
    "forearm.strong",
    "pelvisFront.weak",
    "pelvisFront.strong",
    "thighFront.weak",
    "thighFront.strong",
    "instep.weak",
    "instep.strong",
  ),
};
export const TALL_KNEELING: PoseSpecification = {
  pelvis: { pitchDeg: 2 },
  bothDeg: {
    hipFlexion: 3,
    kneeFlexion: 95,
    ankleDorsiflexion: -50,
    shoulderAbduction: 6,
    elbowFlexion: 8,
    pronation: 90,
  },
  contacts: onMat("shin.weak", "shin.strong", "instep.weak", "instep.strong"),
  sharing: "kneeling",
};
export const STANDING: PoseSpecification = {
  pelvis: { pitchDeg: 2 },
  bothDeg: { hipFlexion: 2, kneeFlexion: 4, hipAbduction: 4, ankleDorsiflexion: 4 },
  contacts: [
    { patch: "foot.weak", on: "floor", role: "both" },
    { patch: "foot.strong", on: "floor", role: "both" },
  ],
  sharing: "standing",
};
export const PUSH_UP_ON_TOES: PoseSpecification = {
  pelvis: { pitchDeg: 73 },
  trunkDeg: { lumbarFlexion: 0, thoraxFlexion: -3, neckFlexion: -15 },
  bothDeg: {
    hipFlexion: 0,
    kneeFlexion: 0,
    ankleDorsiflexion: 4,
    toeExtension: 64,
    shoulderFlexion: 72,
    shoulderAbduction: 11,
    shoulderExternalRotation: 12,
    elbowFlexion: 6,
    pronation: 165,
    wristExtension: 81,
  },
  contacts: onMat("hand.weak", "hand.strong", "toes.weak", "toes.strong"),
};
export const PUSH_UP_ON_KNEES: PoseSpecification = {
  pelvis: { pitchDeg: 59 },
  trunkDeg: { lumbarFlexion: -5, thoraxFlexion: -1, neckFlexion: -15 },
  bothDeg: {
    hipFlexion: 0,
    kneeFlexion: 36,
    ankleDorsiflexion: -47,
    shoulderFlexion: 63,
    shoulderAbduction: 10,
    shoulderExternalRotation: 12,
    elbowFlexion: 2,
    pronation: 166,
    wristExtension: 77,
  },
  contacts: onMat("hand.weak", "hand.strong", "knee.weak", "knee.strong", "instep.weak", "instep.strong"),
};

export function closed(body: Body, specification: PoseSpecification): Statics {
  const pose = closePose(body, specification);
  if (!pose.closed) throw new Error(pose.because);
  return prepareStatics(body, pose);
}

/** A pose held by habitual sharing; a pose that cannot be held fails the check. */
export function holdPose(body: Body, specification: PoseSpecification, age: number, strengths: Strengths): Balance {
  const statics = closed(body, specification);
  const balance = solveHabitual(statics, capacitiesOf(body, age, statics.pose.configuration.angles, strengths));
  if (!balance.balanced) throw new Error(balance.because);
  return balance;
}
