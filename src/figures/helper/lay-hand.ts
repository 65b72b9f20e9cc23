import { cross, dot, norm, subtract, type Vector } from "../../quantity/vectors.ts";
import type { Skin } from "../skin/build.ts";
import type { PalmOnSite } from "./pose-helper.ts";
import { nearestOnTriangle } from "../skin/nearest.ts";

/** Skin this near a site can meet the hand; a finger deeper in than this is not on the skin at all [m]. */
const AROUND = 0.2;
const DEEPEST = 0.04;
/** Where the palm side of a finger ends up outside the skin, and where its back does [m]. */
const PALM_LIES = 0.002;
const BACK_LIES = 0.013;

interface Patch {
  readonly a: Vector;
  readonly b: Vector;
  readonly c: Vector;
  readonly outward: Vector;
}

/** Lays fingers that sank into the person onto the skin. Changes the helper's points. */
export function layHands(
  helper: Skin,
  helperPoints: Float64Array,
  person: Skin,
  personPoints: Float64Array,
  palms: readonly PalmOnSite[],
): void {
  for (const palm of palms) {
    if (palm.ready) continue;
    const patches = patchesNear(person, personPoints, palm.site.at);
    const own = helper.kinds.map((kind) => kind?.hand === true && kind.side === palm.hand);
    const seen = new Set<number>();
    helper.triangleKinds.forEach((kind, t) => {
      if (own[kind] !== true) return;
      for (let k = 0; k < 3; k++) seen.add(helper.triangles[3 * t + k] ?? 0);
    });
    for (const i of seen) {
      const at: Vector = [helperPoints[3 * i] ?? 0, helperPoints[3 * i + 1] ?? 0, helperPoints[3 * i + 2] ?? 0];
      const found = nearestPatch(patches, at);
      if (found === null) continue;
      const height = dot(subtract(at, found.at), found.outward);
      if (height >= 0 || height < -DEEPEST) continue;
      const lies = (helper.inFirst[3 * i] ?? 0) > 0.006 ? PALM_LIES : BACK_LIES;
      for (let k = 0; k < 3; k++) helperPoints[3 * i + k] = (found.at[k] ?? 0) + (found.outward[k] ?? 0) * lies;
    }
  }
}

function patchesNear(skin: Skin, points: Float64Array, centre: Vector): Patch[] {
  const corner = (i: number): Vector => [points[3 * i] ?? 0, points[3 * i + 1] ?? 0, points[3 * i + 2] ?? 0];
  const patches: Patch[] = [];
  for (let t = 0; t < skin.triangleKinds.length; t++) {
    const a = corner(skin.triangles[3 * t] ?? 0);
    if (norm(subtract(a, centre)) > AROUND) continue;
    const b = corner(skin.triangles[3 * t + 1] ?? 0);
    const c = corner(skin.triangles[3 * t + 2] ?? 0);
    const normal = cross(subtract(b, a), subtract(c, a));
    const size = norm(normal);
    if (size > 0) patches.push({ a, b, c, outward: [normal[0] / size, normal[1] / size, normal[2] / size] });
  }
  return patches;
}

function nearestPatch(patches: readonly Patch[], at: Vector): { readonly at: Vector; readonly outward: Vector } | null {
  let best: { at: Vector; outward: Vector } | null = null;
  let least = 0.0036;
  for (const patch of patches) {
    const near = subtract(patch.a, at);
    if (dot(near, near) > 0.01) continue;
    const point = nearestOnTriangle(patch.a, patch.b, patch.c, at);
    const away = subtract(point, at);
    const distance = dot(away, away);
    if (distance < least) {
      least = distance;
      best = { at: point, outward: patch.outward };
    }
  }
  return best;
}
