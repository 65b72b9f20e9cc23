import type { Side } from "../../quantity/sides.ts";

/** Segments on the midline, from the root upwards. */
export type MidSegment = "pelvis" | "abdomen" | "thorax" | "head";
/** Segments that come in pairs. */
export type LimbSegment = "girdle" | "upperArm" | "forearm" | "hand" | "thigh" | "shank" | "foot" | "toes";
export type SegmentId = MidSegment | `${LimbSegment}.${Side}`;

/** Joint angles on the midline: side bend and turn are positive toward the weak side. */
export type MidAngle =
  | "lumbarFlexion"
  | "lumbarSideBend"
  | "lumbarTurn"
  | "thoraxFlexion"
  | "thoraxSideBend"
  | "thoraxTurn"
  | "neckFlexion"
  | "neckSideBend"
  | "neckTurn";
/** Joint angles of a limb; each name states its positive direction. */
export type LimbAngle =
  | "girdleElevation"
  | "girdleProtraction"
  | "shoulderFlexion"
  | "shoulderAbduction"
  | "shoulderExternalRotation"
  | "elbowFlexion"
  | "pronation"
  | "wristExtension"
  | "radialDeviation"
  | "hipFlexion"
  | "hipAbduction"
  | "hipExternalRotation"
  | "kneeFlexion"
  | "kneeExternalRotation"
  | "ankleDorsiflexion"
  | "inversion"
  | "toeExtension";
export type AngleId = MidAngle | `${LimbAngle}.${Side}`;

export const MID_SEGMENTS: readonly MidSegment[] = ["pelvis", "abdomen", "thorax", "head"];
export const LIMB_SEGMENTS: readonly LimbSegment[] = [
  "girdle",
  "upperArm",
  "forearm",
  "hand",
  "thigh",
  "shank",
  "foot",
  "toes",
];
