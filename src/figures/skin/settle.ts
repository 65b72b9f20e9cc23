import type { Body } from "../../mechanics/body/body.ts";
import { patchOn } from "../../mechanics/body/patches.ts";
import { type Frames, pointInRoom } from "../../mechanics/pose/kinematics.ts";
import type { PoseSpecification } from "../../mechanics/pose/specification.ts";

/** How far around a contact skin is looked for, and how far around it gives [m]. */
const NEAR = 0.06;
const GIVES = 0.13;
/** Skin higher above the surface than this does not follow [m]. */
const THICKNESS = 0.045;
const MOST = 0.035;

/**
 * Lets flesh spread onto what it rests on: where the computation has a contact and the drawn skin hangs a little above
 * the surface, the skin around it is drawn down. Changes the points.
 */
export function settleSkin(
  body: Body,
  frames: Frames,
  pose: PoseSpecification,
  tops: Readonly<Partial<Record<string, number>>>,
  points: Float64Array,
): void {
  for (const contact of pose.contacts) {
    if (contact.role === "bears" || typeof contact.on !== "string" || contact.on === "bars") continue;
    const top = tops[contact.on];
    if (top === undefined) continue;
    const patch = patchOn(body, contact.patch);
    for (const ball of patch.balls) {
      const at = pointInRoom(body, frames, patch.segment, ball.centre);
      const gap = leastHeight(points, at[0], at[1], top);
      if (gap > 0.0005 && gap < MOST) lower(points, at[0], at[1], top, gap);
    }
  }
}

function leastHeight(points: Float64Array, x: number, y: number, top: number): number {
  let least = Number.MAX_VALUE;
  for (let i = 0; i < points.length; i += 3) {
    const height = (points[i + 2] ?? 0) - top;
    if (height > -0.001 && height < least && Math.hypot((points[i] ?? 0) - x, (points[i + 1] ?? 0) - y) < NEAR)
      least = height;
  }
  return least;
}

function lower(points: Float64Array, x: number, y: number, top: number, gap: number): void {
  for (let i = 0; i < points.length; i += 3) {
    const height = (points[i + 2] ?? 0) - top;
    if (height < 0 || height > gap + THICKNESS) continue;
    const away = Math.hypot((points[i] ?? 0) - x, (points[i + 1] ?? 0) - y) / GIVES;
    if (away >= 1) continue;
    const share = (1 - Math.max(0, away - NEAR / GIVES) ** 2 * 3) * (1 - Math.max(0, height - gap) / THICKNESS);
    points[i + 2] = Math.max(top, top + height - gap * Math.max(0, share));
  }
}
