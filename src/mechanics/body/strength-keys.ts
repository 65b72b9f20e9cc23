import type { Side } from "../../quantity/sides.ts";

/** Muscle groups of a limb whose strength can be found by hand or by dynamometer. */
export const LIMB_STRENGTH_KEYS = [
  "shoulderFlexion",
  "shoulderExtension",
  "shoulderAbduction",
  "shoulderAdduction",
  "shoulderExternalRotation",
  "shoulderInternalRotation",
  "elbowFlexion",
  "elbowExtension",
  "wristFlexion",
  "wristExtension",
  "grip",
  "hipFlexion",
  "hipExtension",
  "hipAbduction",
  "hipAdduction",
  "hipExternalRotation",
  "hipInternalRotation",
  "kneeFlexion",
  "kneeExtension",
  "anklePlantarflexion",
  "ankleDorsiflexion",
] as const;
export type LimbStrengthKey = (typeof LIMB_STRENGTH_KEYS)[number];

/** Muscle groups of the trunk. */
export const TRUNK_STRENGTH_KEYS = ["flexion", "extension", "lateralFlexion", "rotation"] as const;
export type TrunkStrengthKey = (typeof TRUNK_STRENGTH_KEYS)[number];

/** A muscle group with its side; the trunk has none. 46 in all. */
export type StrengthId = `${LimbStrengthKey}.${Side}` | `trunk.${TrunkStrengthKey}`;

export const STRENGTH_IDS: readonly StrengthId[] = [
  ...LIMB_STRENGTH_KEYS.map((key): StrengthId => `${key}.weak`),
  ...LIMB_STRENGTH_KEYS.map((key): StrengthId => `${key}.strong`),
  ...TRUNK_STRENGTH_KEYS.map((key): StrengthId => `trunk.${key}`),
];

/** Strength of every muscle group as a fraction of normal for sex, age and size: 1 is normal, 0 is none. */
export type Strengths = Readonly<Record<StrengthId, number>>;

/** The same fraction everywhere. */
export function evenStrengths(fraction: number): Strengths {
  return strengthsFrom(() => fraction);
}

/** Strengths filled in by a rule, one muscle group at a time. */
export function strengthsFrom(fractionOf: (id: StrengthId) => number): Strengths {
  const filled: Partial<Record<StrengthId, number>> = {};
  for (const id of STRENGTH_IDS) filled[id] = fractionOf(id);
  return filled as Strengths;
}
