import type { ContactSpecification, PoseSpecification } from "../../mechanics/pose/specification.ts";
import { ARMS_RESTING, BRIDGE, HEAD_AND_SHOULDERS, HOOK_LYING } from "./lying-poses.data.ts";

/** Key poses of the bridge ladder, from the tail tilt to the weak leg carrying all. Angles: "judgement", adjusted until they closed. */

/** The strong forearm may press into the mat; the weak one only lies there. */
const STRONG_ARM_MAY_PRESS: readonly ContactSpecification[] = [
  { patch: "forearm.weak", on: "mat", role: "both", effort: "rest" },
  { patch: "forearm.strong", on: "mat", role: "both", effort: "press" },
];

/** Feet drawn in until the heels are a hand's length from the seat. */
export const BRIDGE_START: PoseSpecification = {
  ...HOOK_LYING,
  bothDeg: { ...HOOK_LYING.bothDeg, hipFlexion: 62, kneeFlexion: 136, ankleDorsiflexion: -15 },
};

export const TAIL_TILT: PoseSpecification = {
  ...BRIDGE_START,
  pelvis: { pitchDeg: -104 },
  trunkDeg: { lumbarFlexion: 14, thoraxFlexion: 2, neckFlexion: 8 },
  contacts: [
    ...HEAD_AND_SHOULDERS,
    ...ARMS_RESTING,
    { patch: "buttock.weak", on: "mat", role: "both" },
    { patch: "buttock.strong", on: "mat", role: "both" },
    { patch: "lowBack", on: "mat", role: "both" },
    { patch: "foot.weak", on: "mat", role: "both" },
    { patch: "foot.strong", on: "mat", role: "both" },
  ],
};

export const HALF_BRIDGE: PoseSpecification = {
  ...BRIDGE,
  pelvis: { pitchDeg: -108 },
  trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, neckFlexion: 14 },
  bothDeg: { ...BRIDGE.bothDeg, hipFlexion: 26, kneeFlexion: 122, ankleDorsiflexion: -4 },
};

/** The weak foot only touches; the body has gone a little over the strong foot. */
export const BRIDGE_WEAK_FOOT_LIGHT: PoseSpecification = {
  ...BRIDGE,
  contacts: [
    ...HEAD_AND_SHOULDERS,
    ...STRONG_ARM_MAY_PRESS,
    { patch: "foot.weak", on: "mat", role: "both", effort: "light" },
    { patch: "foot.strong", on: "mat", role: "both" },
  ],
  shift: { toWeakCm: -2 },
};

export const BRIDGE_WEAK_FOOT_UP: PoseSpecification = {
  ...BRIDGE,
  weakDeg: { hipFlexion: 32, kneeFlexion: 118, ankleDorsiflexion: -10 },
  contacts: [...HEAD_AND_SHOULDERS, ...STRONG_ARM_MAY_PRESS, { patch: "foot.strong", on: "mat", role: "both" }],
  shift: { toWeakCm: -2 },
  notCounted: ["foot.weak", "toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};

/** The weak leg hangs over the strong knee, which brings its weight over that foot; the strong leg lifts alone. */
export const BRIDGE_WEAK_OVER_STRONG: PoseSpecification = {
  ...BRIDGE,
  weakDeg: { hipFlexion: 22, hipAbduction: -22, hipExternalRotation: -4, kneeFlexion: 88, ankleDorsiflexion: -18 },
  strongDeg: { hipFlexion: 8, hipAbduction: -4, kneeFlexion: 117 },
  contacts: [
    ...HEAD_AND_SHOULDERS,
    ...STRONG_ARM_MAY_PRESS,
    { patch: "foot.strong", on: "mat", role: "both" },
    { patch: "kneeHollow.weak", on: { body: "knee.strong" }, role: "both", effort: "rest" },
  ],
  notCounted: ["foot.weak", "toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};

/** Both feet down, the strong heel a foot's length further from the seat. */
export const BRIDGE_STRONG_FOOT_FURTHER: PoseSpecification = {
  ...BRIDGE,
  strongDeg: { hipFlexion: 4, kneeFlexion: 76, ankleDorsiflexion: -32 },
};

/** The strong heel is up and its forefoot only touches. */
export const BRIDGE_STRONG_HEEL_LIGHT: PoseSpecification = {
  ...BRIDGE,
  strongDeg: { hipFlexion: 8, kneeFlexion: 122, ankleDorsiflexion: -24 },
  contacts: [
    ...HEAD_AND_SHOULDERS,
    ...STRONG_ARM_MAY_PRESS,
    { patch: "foot.weak", on: "mat", role: "both" },
    { patch: "forefoot.strong", on: "mat", role: "both", effort: "light" },
  ],
  shift: { toWeakCm: 2 },
};

export const BRIDGE_STRONG_FOOT_UP: PoseSpecification = {
  ...BRIDGE,
  strongDeg: { hipFlexion: 32, kneeFlexion: 118, ankleDorsiflexion: -10 },
  contacts: [...HEAD_AND_SHOULDERS, ...STRONG_ARM_MAY_PRESS, { patch: "foot.weak", on: "mat", role: "both" }],
  shift: { toWeakCm: 2 },
  notCounted: ["foot.strong", "toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};

/** The strong leg hangs over the weak knee; the weak leg carries all. */
export const BRIDGE_STRONG_OVER_WEAK: PoseSpecification = {
  ...BRIDGE,
  strongDeg: { hipFlexion: 22, hipAbduction: -22, hipExternalRotation: -4, kneeFlexion: 88, ankleDorsiflexion: -18 },
  weakDeg: { hipFlexion: 8, hipAbduction: -4, kneeFlexion: 117 },
  contacts: [
    ...HEAD_AND_SHOULDERS,
    ...STRONG_ARM_MAY_PRESS,
    { patch: "foot.weak", on: "mat", role: "both" },
    { patch: "kneeHollow.strong", on: { body: "knee.weak" }, role: "both", effort: "rest" },
  ],
  notCounted: ["foot.strong", "toes.weak", "toes.strong", "hand.weak", "hand.strong"],
};

/** The same with nothing to press on: the strong hand lies on the belly, the weak arm on the mat. */
export const BRIDGE_STRONG_OVER_WEAK_HAND_ON_BELLY: PoseSpecification = {
  ...BRIDGE_STRONG_OVER_WEAK,
  strongDeg: { ...BRIDGE_STRONG_OVER_WEAK.strongDeg, shoulderFlexion: -16, shoulderAbduction: 20, shoulderExternalRotation: -66, elbowFlexion: 80, pronation: 100 },
  contacts: [
    ...HEAD_AND_SHOULDERS,
    { patch: "foot.weak", on: "mat", role: "both" },
    { patch: "kneeHollow.strong", on: { body: "knee.weak" }, role: "both", effort: "rest" },
    { patch: "forearm.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "elbow.strong", on: "mat", role: "both", effort: "rest" },
    { patch: "wrist.strong", on: { body: "belly" }, role: "both" },
  ],
};
