import { cross, dot, subtract, type Vector } from "../quantity/vectors.ts";
import type { Body } from "../mechanics/body/body.ts";
import { type PatchId, patchOn } from "../mechanics/body/patches.ts";
import { type Frames, pointInRoom } from "../mechanics/pose/kinematics.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import type { DepthBuffer } from "./picture/buffer.ts";
import { type Camera, project } from "./picture/camera.ts";
import type { PosedHelper } from "./helper/pose-helper.ts";
import type { PlacedThings } from "./props/place.ts";
import type { Skin } from "./skin/build.ts";

/** How true a picture is to what was computed. */
export interface FigureChecks {
  /** Distance of each of the helper's touching palms from the skin [m], negative where it sinks in. */
  readonly palmGaps: readonly number[];
  /** Distance of each touching palm from its own place on the skin [m]. */
  readonly siteMisses: readonly number[];
  /** Share of each of the helper's hands, at its site, that can be seen. */
  readonly siteVisible: readonly number[];
  /** For every contact that shapes the pose: how far the drawn skin stays above what it rests on [m]. */
  readonly contactGaps: readonly { readonly patch: PatchId; readonly gap: number }[];
  /** Deepest the helper passes into the person [m]. */
  readonly overlap: number;
  /** Distance of the helper's supporting knee, thigh, shin or foot from the person's skin [m]; null where it touches nothing. */
  readonly supportGap: number | null;
}

const AROUND = 0.06;

/** Gap between the drawn skin and the surface, at each contact with a level surface. */
export function contactGapsOf(
  body: Body,
  frames: Frames,
  pose: PoseSpecification | null,
  points: Float64Array,
  placed: PlacedThings,
): { patch: PatchId; gap: number }[] {
  const gaps: { patch: PatchId; gap: number }[] = [];
  for (const contact of pose?.contacts ?? []) {
    if (contact.role === "bears" || typeof contact.on !== "string") continue;
    if (["wall", "bars", "rail", "cane"].includes(contact.on)) continue;
    const top = placed.tops[contact.on];
    if (top === undefined) continue;
    const patch = patchOn(body, contact.patch);
    let worst = 0;
    for (const ball of patch.balls) {
      const at = pointInRoom(body, frames, patch.segment, ball.centre);
      let least = Number.MAX_VALUE;
      for (let i = 0; i < points.length; i += 3) {
        if (Math.hypot((points[i] ?? 0) - at[0], (points[i + 1] ?? 0) - at[1]) < AROUND)
          least = Math.min(least, Math.abs((points[i + 2] ?? 0) - top));
      }
      worst = Math.max(worst, least);
    }
    gaps.push({ patch: contact.patch, gap: worst });
  }
  return gaps;
}

/** Share of a hand's surface turned to the eye that nothing hides; fingers that go round a limb are meant to be hidden and do not count. */
export function handVisibility(
  buffer: DepthBuffer,
  camera: Camera,
  skin: Skin,
  points: Float64Array,
  side: "weak" | "strong",
): number {
  const corner = (i: number): Vector => [points[3 * i] ?? 0, points[3 * i + 1] ?? 0, points[3 * i + 2] ?? 0];
  const own = skin.kinds.map(
    (kind) => kind !== null && (kind.part === "hand" || kind.part === "thumb") && kind.side === side,
  );
  let all = 0;
  let shown = 0;
  for (let t = 0; t < skin.triangleKinds.length; t++) {
    if (own[skin.triangleKinds[t] ?? 0] !== true) continue;
    const a = corner(skin.triangles[3 * t] ?? 0);
    const b = corner(skin.triangles[3 * t + 1] ?? 0);
    const c = corner(skin.triangles[3 * t + 2] ?? 0);
    const area = -dot(cross(subtract(b, a), subtract(c, a)), camera.forward);
    if (area <= 0) continue;
    const [x, y, depth] = project(camera, [
      (a[0] + b[0] + c[0]) / 3,
      (a[1] + b[1] + c[1]) / 3,
      (a[2] + b[2] + c[2]) / 3,
    ]);
    const column = Math.floor(x * buffer.density);
    const row = Math.floor(y * buffer.density);
    all += area;
    if (column < 0 || row < 0 || column >= buffer.columns || row >= buffer.rows) continue;
    // The hand's own fingers may cover one another; that still shows the hand.
    if ((buffer.depth[row * buffer.columns + column] ?? 0) > depth * 1000 - 25) shown += area;
  }
  return all === 0 ? 0 : shown / all;
}

export const palmGapsOf = (helper: PosedHelper | null): number[] =>
  helper === null ? [] : helper.palms.filter((palm) => !palm.ready).map((palm) => palm.signedGap);

export const siteMissesOf = (helper: PosedHelper | null): number[] =>
  helper === null ? [] : helper.palms.filter((palm) => !palm.ready).map((palm) => palm.siteMiss);
