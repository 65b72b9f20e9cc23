import type { PoseSpecification } from "../../mechanics/pose/specification.ts";
import { WEAK_HAND_ON_THIGH } from "./sitting-poses.data.ts";

/** Side-sitting. Angles: "judgement", adjusted until they closed; a bent knee turns about its own length. */

/** On the strong hip: both knees to the weak side, the strong hand props beside the strong hip, the weak hand on its thigh. */
export const SIDE_SITTING_ON_STRONG: PoseSpecification = {
  pelvis: { pitchDeg: 0, rollToStrongDeg: 14 },
  trunkDeg: { lumbarFlexion: 7, lumbarSideBend: 6, thoraxSideBend: 3, thoraxFlexion: 5, neckSideBend: 4 },
  bothDeg: { kneeFlexion: 110, ankleDorsiflexion: -46 },
  strongDeg: { hipFlexion: 96, hipAbduction: 26, hipExternalRotation: 58, kneeExternalRotation: 16, shoulderFlexion: -3, shoulderAbduction: 27, elbowFlexion: 9, pronation: 80, wristExtension: 76 },
  weakDeg: { hipFlexion: 60, hipAbduction: 21, hipExternalRotation: -44, kneeExternalRotation: -14, shoulderFlexion: 4, shoulderAbduction: 12, shoulderExternalRotation: -17, elbowFlexion: 49, pronation: 165, wristExtension: 27 },
  contacts: [
    { patch: "buttock.strong", on: "mat", role: "both" },
    { patch: "hipSide.strong", on: "mat", role: "bears" },
    { patch: "thighBack.strong", on: "mat", role: "bears" },
    { patch: "knee.strong", on: "mat", role: "both" },
    { patch: "ankleSide.strong", on: "mat", role: "both" },
    { patch: "knee.weak", on: "mat", role: "both" },
    { patch: "ankleSide.weak", on: "mat", role: "both" },
    { patch: "hand.strong", on: "mat", role: "both" },
    WEAK_HAND_ON_THIGH,
  ],
  notCounted: ["hand.weak", "foot.weak", "foot.strong", "toes.weak", "toes.strong"],
};
