import type { LimbAngle, MidAngle } from "./names.ts";
import type { LimbStrengthKey, TrunkStrengthKey } from "./strength-keys.ts";
import { TIED_SHARES } from "./strength-norms.data.ts";

/** Which muscle group turns a joint one way: its own norm, or a share of the norm it is tied to (then wide). */
export interface LimbDirection {
  readonly words: string;
  readonly key: LimbStrengthKey;
  /** A share of the key's norm, or a norm of its own by name; neither: the key's norm itself. */
  readonly share?: number;
  readonly own?: "pronation" | "supination" | "radial" | "ulnar" | "toeFlexion";
  /** The share was measured, not judged. */
  readonly measured?: true;
}

/** For each angle of a limb: the muscle group that turns it in its positive direction, then in its negative one. */
export const LIMB_DIRECTIONS: Readonly<Record<LimbAngle, readonly [LimbDirection, LimbDirection]>> = {
  girdleElevation: [
    { words: "elevation", key: "shoulderAbduction", share: TIED_SHARES.girdleElevation },
    { words: "depression", key: "shoulderAdduction", share: TIED_SHARES.girdleDepression },
  ],
  girdleProtraction: [
    { words: "protraction", key: "shoulderFlexion", share: TIED_SHARES.girdleProtraction },
    { words: "retraction", key: "shoulderExtension", share: TIED_SHARES.girdleRetraction },
  ],
  shoulderFlexion: [{ words: "flexion", key: "shoulderFlexion" }, { words: "extension", key: "shoulderExtension" }],
  shoulderAbduction: [{ words: "abduction", key: "shoulderAbduction" }, { words: "adduction", key: "shoulderAdduction" }],
  shoulderExternalRotation: [
    { words: "external rotation", key: "shoulderExternalRotation" },
    { words: "internal rotation", key: "shoulderInternalRotation" },
  ],
  elbowFlexion: [{ words: "flexion", key: "elbowFlexion" }, { words: "extension", key: "elbowExtension" }],
  pronation: [
    { words: "pronation", key: "wristFlexion", own: "pronation" },
    { words: "supination", key: "elbowFlexion", own: "supination" },
  ],
  wristExtension: [{ words: "extension", key: "wristExtension" }, { words: "flexion", key: "wristFlexion" }],
  radialDeviation: [
    { words: "radial deviation", key: "wristExtension", own: "radial" },
    { words: "ulnar deviation", key: "wristFlexion", own: "ulnar" },
  ],
  hipFlexion: [{ words: "flexion", key: "hipFlexion" }, { words: "extension", key: "hipExtension" }],
  hipAbduction: [{ words: "abduction", key: "hipAbduction" }, { words: "adduction", key: "hipAdduction" }],
  hipExternalRotation: [
    { words: "external rotation", key: "hipExternalRotation" },
    { words: "internal rotation", key: "hipInternalRotation" },
  ],
  kneeFlexion: [{ words: "flexion", key: "kneeFlexion" }, { words: "extension", key: "kneeExtension" }],
  kneeExternalRotation: [
    { words: "turn out", key: "kneeFlexion", share: TIED_SHARES.kneeTurn },
    { words: "turn in", key: "kneeFlexion", share: TIED_SHARES.kneeTurn },
  ],
  ankleDorsiflexion: [{ words: "dorsiflexion", key: "ankleDorsiflexion" }, { words: "plantarflexion", key: "anklePlantarflexion" }],
  inversion: [
    { words: "inversion", key: "anklePlantarflexion", share: TIED_SHARES.inversion },
    { words: "eversion", key: "ankleDorsiflexion", share: TIED_SHARES.eversion, measured: true },
  ],
  toeExtension: [
    { words: "extension", key: "ankleDorsiflexion", share: TIED_SHARES.toeExtension },
    { words: "flexion", key: "anklePlantarflexion", own: "toeFlexion" },
  ],
};

/** Trunk: by the trunk's keys. Neck: norms of its own, taken as unaffected because no finding asks for it (wide). */
export const MID_DIRECTIONS: Readonly<
  Record<MidAngle, readonly [{ readonly words: string; readonly trunk?: TrunkStrengthKey; readonly neck?: "flexion" | "extension" | "lateral" | "rotation" }, { readonly words: string; readonly trunk?: TrunkStrengthKey; readonly neck?: "flexion" | "extension" | "lateral" | "rotation" }]>
> = {
  lumbarFlexion: [{ words: "flexion", trunk: "flexion" }, { words: "extension", trunk: "extension" }],
  lumbarSideBend: [{ words: "side bend to the weak side", trunk: "lateralFlexion" }, { words: "side bend to the strong side", trunk: "lateralFlexion" }],
  lumbarTurn: [{ words: "turn to the weak side", trunk: "rotation" }, { words: "turn to the strong side", trunk: "rotation" }],
  thoraxFlexion: [{ words: "flexion", trunk: "flexion" }, { words: "extension", trunk: "extension" }],
  thoraxSideBend: [{ words: "side bend to the weak side", trunk: "lateralFlexion" }, { words: "side bend to the strong side", trunk: "lateralFlexion" }],
  thoraxTurn: [{ words: "turn to the weak side", trunk: "rotation" }, { words: "turn to the strong side", trunk: "rotation" }],
  neckFlexion: [{ words: "flexion", neck: "flexion" }, { words: "extension", neck: "extension" }],
  neckSideBend: [{ words: "side bend to the weak side", neck: "lateral" }, { words: "side bend to the strong side", neck: "lateral" }],
  neckTurn: [{ words: "turn to the weak side", neck: "rotation" }, { words: "turn to the strong side", neck: "rotation" }],
};
