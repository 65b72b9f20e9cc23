import type { Side } from "../../quantity/sides.ts";

/** Joint directions with a strength of their own on each side, in the order of the case file. */
export const LIMB_KEYS = [
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
export const TRUNK_KEYS = ["flexion", "extension", "lateralFlexion", "rotation"] as const;
export type LimbKey = (typeof LIMB_KEYS)[number];
export type TrunkKey = (typeof TRUNK_KEYS)[number];

/** One strength the person model holds: a joint direction on a side, or of the trunk. */
export type Slot = { readonly side: Side; readonly key: LimbKey } | { readonly side: null; readonly key: TrunkKey };

/** All 46, weak side first. Strengths are kept as fractions of normal in this order. */
export const SLOTS: readonly Slot[] = [
  ...LIMB_KEYS.map((key): Slot => ({ side: "weak", key })),
  ...LIMB_KEYS.map((key): Slot => ({ side: "strong", key })),
  ...TRUNK_KEYS.map((key): Slot => ({ side: null, key })),
];
export const SLOT_COUNT = SLOTS.length;

const ARM_KEYS = LIMB_KEYS.indexOf("grip") + 1;

/** Number of a slot in the vectors. */
export function slotIndex(side: Side | null, key: LimbKey | TrunkKey): number {
  if (side === null) return 2 * LIMB_KEYS.length + TRUNK_KEYS.indexOf(key as TrunkKey);
  return (side === "weak" ? 0 : LIMB_KEYS.length) + LIMB_KEYS.indexOf(key as LimbKey);
}

export type LimbGroup = "weakArm" | "weakLeg" | "strongArm" | "strongLeg" | "trunk";
export function groupOf(index: number): LimbGroup {
  const count = LIMB_KEYS.length;
  if (index >= 2 * count) return "trunk";
  const arm = index % count < ARM_KEYS;
  if (index < count) return arm ? "weakArm" : "weakLeg";
  return arm ? "strongArm" : "strongLeg";
}

/** Joint a slot belongs to, for the correlation within a joint. */
export function jointOf(index: number): string {
  const slot = SLOTS[index];
  if (slot === undefined || slot.side === null) return "trunk";
  const name = /^(shoulder|elbow|wrist|grip|hip|knee|ankle)/.exec(slot.key)?.[0] ?? slot.key;
  return `${name === "grip" ? "wrist" : name}.${slot.side}`;
}
