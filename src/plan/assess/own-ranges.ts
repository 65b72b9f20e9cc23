import type { AngleId, LimbAngle } from "../../mechanics/body/names.ts";
import { LIMB_LIMITS_DEG } from "../../mechanics/pose/joint-limits.data.ts";
import { radiansOf } from "../../quantity/angles.ts";
import { SIDES } from "../../quantity/sides.ts";
import type { Findings } from "../findings.ts";

/** Which end of which angle a measured joint direction limits. */
const ENDS: Readonly<Record<string, { readonly angle: LimbAngle; readonly end: "most" | "least" }>> = {
  shoulderFlexion: { angle: "shoulderFlexion", end: "most" },
  shoulderExtension: { angle: "shoulderFlexion", end: "least" },
  shoulderAbduction: { angle: "shoulderAbduction", end: "most" },
  shoulderAdduction: { angle: "shoulderAbduction", end: "least" },
  shoulderExternalRotation: { angle: "shoulderExternalRotation", end: "most" },
  shoulderInternalRotation: { angle: "shoulderExternalRotation", end: "least" },
  elbowFlexion: { angle: "elbowFlexion", end: "most" },
  elbowExtension: { angle: "elbowFlexion", end: "least" },
  wristExtension: { angle: "wristExtension", end: "most" },
  wristFlexion: { angle: "wristExtension", end: "least" },
  hipFlexion: { angle: "hipFlexion", end: "most" },
  hipExtension: { angle: "hipFlexion", end: "least" },
  hipAbduction: { angle: "hipAbduction", end: "most" },
  hipAdduction: { angle: "hipAbduction", end: "least" },
  hipExternalRotation: { angle: "hipExternalRotation", end: "most" },
  hipInternalRotation: { angle: "hipExternalRotation", end: "least" },
  kneeFlexion: { angle: "kneeFlexion", end: "most" },
  kneeExtension: { angle: "kneeFlexion", end: "least" },
  ankleDorsiflexion: { angle: "ankleDorsiflexion", end: "most" },
  anklePlantarflexion: { angle: "ankleDorsiflexion", end: "least" },
};

/** The person's own joint ranges [rad], where measured; a measured extension of 5 degrees ends the flexion at -5. */
export function ownRanges(findings: Findings): Partial<Record<AngleId, readonly [number, number]>> {
  const ranges: Partial<Record<AngleId, [number, number]>> = {};
  for (const side of SIDES) {
    for (const [key, degrees] of Object.entries(findings.rangeDeg[side])) {
      const end = ENDS[key];
      if (end === undefined) continue;
      const id: AngleId = `${end.angle}.${side}`;
      const general = LIMB_LIMITS_DEG[end.angle];
      const now = ranges[id] ?? [radiansOf(general[0]), radiansOf(general[1])];
      // Under load the wrist and a weight-bearing ankle go a little further than the free range.
      if (end.end === "most")
        now[1] = Math.min(
          now[1],
          radiansOf(degrees + (end.angle === "wristExtension" || end.angle === "ankleDorsiflexion" ? 8 : 0)),
        );
      else now[0] = Math.max(now[0], radiansOf(-degrees));
      if (now[0] > now[1]) now[0] = now[1];
      ranges[id] = now;
    }
  }
  return ranges;
}
