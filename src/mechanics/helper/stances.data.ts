import type { PoseSpecification } from "../pose/specification.ts";

export type Stance = "standing" | "strideStanding" | "sitting" | "halfKneeling" | "kneeling";

const ARMS = { shoulderFlexion: 45, shoulderAbduction: 10, elbowFlexion: 40, pronation: 100, wristExtension: 10 } as const;

/**
 * How a helper starts before the hands reach: "weak" and "strong" only number the sides here, the strong one in front where
 * they differ. Judgement; only what touches the ground matters much, the rest follows the hands.
 */
export const HELPER_STANCES: Readonly<Record<Stance, PoseSpecification>> = {
  standing: {
    pelvis: { pitchDeg: 14 },
    trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 6 },
    bothDeg: { ...ARMS, hipFlexion: 30, hipAbduction: 8, kneeFlexion: 28, ankleDorsiflexion: 12 },
    contacts: [
      { patch: "foot.weak", on: "floor", role: "both" },
      { patch: "foot.strong", on: "floor", role: "both" },
    ],
  },
  strideStanding: {
    pelvis: { pitchDeg: 14 },
    trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 6 },
    bothDeg: { ...ARMS, hipAbduction: 6 },
    strongDeg: { hipFlexion: 52, kneeFlexion: 44, ankleDorsiflexion: 8 },
    weakDeg: { hipFlexion: 2, kneeFlexion: 20, ankleDorsiflexion: 18 },
    contacts: [
      { patch: "foot.weak", on: "floor", role: "both" },
      { patch: "foot.strong", on: "floor", role: "both" },
    ],
  },
  sitting: {
    pelvis: { pitchDeg: 8 },
    trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6 },
    bothDeg: { ...ARMS, hipFlexion: 92, hipAbduction: 12, kneeFlexion: 88, ankleDorsiflexion: 4 },
    surfaces: [{ id: "stool", kind: "stool", height: { of: "kneeHollow" } }],
    contacts: [
      { patch: "buttock.weak", on: "stool", role: "both" },
      { patch: "buttock.strong", on: "stool", role: "both" },
      { patch: "foot.weak", on: "floor", role: "both" },
      { patch: "foot.strong", on: "floor", role: "both" },
    ],
  },
  halfKneeling: {
    pelvis: { pitchDeg: 8 },
    trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 6 },
    bothDeg: ARMS,
    strongDeg: { hipFlexion: 97, hipAbduction: 12, kneeFlexion: 95, ankleDorsiflexion: 5 },
    weakDeg: { hipFlexion: 4, hipAbduction: 4, kneeFlexion: 89, ankleDorsiflexion: -48 },
    contacts: [
      { patch: "foot.strong", on: "floor", role: "both" },
      { patch: "shin.weak", on: "floor", role: "both" },
      { patch: "instep.weak", on: "floor", role: "both" },
    ],
  },
  kneeling: {
    pelvis: { pitchDeg: 10 },
    trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 6 },
    bothDeg: { ...ARMS, hipFlexion: 25, hipAbduction: 8, kneeFlexion: 100, ankleDorsiflexion: -50 },
    contacts: [
      { patch: "shin.weak", on: "floor", role: "both" },
      { patch: "instep.weak", on: "floor", role: "both" },
      { patch: "shin.strong", on: "floor", role: "both" },
      { patch: "instep.strong", on: "floor", role: "both" },
    ],
  },
};

/** The palm's skin in the hand's frame at reference stature [mm]: front, down. */
export const PALM_MM = { front: 17, down: 62 } as const;
/** Half the distance between two hands laid on one site [m] (judgement). */
export const HANDS_APART = 0.06;
