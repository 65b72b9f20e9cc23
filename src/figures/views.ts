import { IDENTITY, rotate, type Vector } from "../quantity/vectors.ts";
import type { Body } from "../mechanics/body/body.ts";
import type { SegmentId } from "../mechanics/body/names.ts";
import type { Frames } from "../mechanics/pose/kinematics.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import type { View } from "./picture/camera.ts";

const AT = {
  onBack: { azimuthDeg: 62, elevationDeg: 17 },
  onBackWithHelper: { azimuthDeg: 84, elevationDeg: 17 },
  faceDown: { azimuthDeg: 48, elevationDeg: 20 },
  allFours: { azimuthDeg: 130, elevationDeg: 15 },
  longSitting: { azimuthDeg: 56, elevationDeg: 16 },
  atBench: { azimuthDeg: 122, elevationDeg: 14 },
  kneeling: { azimuthDeg: 50, elevationDeg: 15 },
  halfKneeling: { azimuthDeg: 42, elevationDeg: 16 },
  standing: { azimuthDeg: 56, elevationDeg: 10 },
  inBars: { azimuthDeg: 104, elevationDeg: 10 },
} as const satisfies Record<string, View>;

/** From where a pose is usually seen: weak side toward the viewer, the working parts in sight. */
export function usualView(body: Body, frames: Frames, pose: PoseSpecification | null, withHelper: boolean): View {
  const pelvis = frames.rotations[0] ?? IDENTITY;
  const up = rotate(pelvis, [0, 0, 1]);
  const front = rotate(pelvis, [1, 0, 0]);
  const at = (id: SegmentId): Vector => frames.positions[body.segmentIndex[id]] ?? [0, 0, 0];
  const hips = at("pelvis")[2];
  const has = (kind: string): boolean => pose?.surfaces?.some((surface) => surface.kind === kind) ?? false;
  if (Math.abs(up[2]) < 0.6 && Math.hypot(front[0], front[1]) > 0.75 && hips < 0.35) {
    // On the side: from where the face is, a little toward the feet.
    const facing = (Math.atan2(front[1], front[0]) * 180) / Math.PI;
    const feet = at("shank.weak")[0] + at("shank.strong")[0] > 2 * at("pelvis")[0] ? 0 : 180;
    return {
      azimuthDeg: Math.round(facing) + (feet === 0 ? -Math.sign(facing) * 25 : Math.sign(facing) * 25),
      elevationDeg: 22,
    };
  }
  if (front[2] > 0.55) return withHelper ? AT.onBackWithHelper : AT.onBack;
  if (front[2] < -0.55) {
    const armsUpright = at("hand.weak")[2] < 0.3 && hips > 0.35;
    if (hips < 0.3) return AT.faceDown;
    return armsUpright ? AT.allFours : AT.atBench;
  }
  if (has("bars")) return AT.inBars;
  if (hips < 0.25) return AT.longSitting;
  const shanks = (["weak", "strong"] as const).map((side) => at(`shank.${side}`)[2] < 0.16);
  if (shanks[0] === true && shanks[1] === true)
    return has("bench") || has("table") || has("stool") ? AT.atBench : AT.kneeling;
  if (shanks[0] === true || shanks[1] === true) return AT.halfKneeling;
  if (has("table") || has("bench")) return AT.atBench;
  if (has("seat")) return AT.longSitting;
  return AT.standing;
}
