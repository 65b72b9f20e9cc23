import { add, cross, dot, IDENTITY, norm, rotate, scale, subtract, unit, type Vector } from "../../quantity/vectors.ts";
import type { Side } from "../../quantity/sides.ts";
import type { Body } from "../../mechanics/body/body.ts";
import type { SegmentId } from "../../mechanics/body/names.ts";
import { sitePushes } from "../../mechanics/help/points.ts";
import type { SiteId } from "../../mechanics/help/sites.ts";
import { type Frames, pointInRoom } from "../../mechanics/pose/kinematics.ts";
import { ProgrammingError } from "../../quantity/programming-error.ts";
import type { Skin } from "../skin/build.ts";
import { nearestOnTriangle } from "../skin/nearest.ts";

/** A place on the posed skin: where, and which way is out of the body. */
export interface SkinPlace {
  readonly at: Vector;
  readonly outward: Vector;
}

/** The site's point in the room before it is put on the skin, and the segment it belongs to. */
export function siteGuess(
  body: Body,
  frames: Frames,
  id: SiteId,
): { readonly at: Vector; readonly segment: SegmentId; readonly side: Side | null } {
  const push = sitePushes(body, frames, id)[0];
  if (push === undefined) throw new ProgrammingError(`the site ${id} has no direction`);
  const segment = body.segments[push.segment]?.id ?? "pelvis";
  return {
    at: besideArm(body, frames, id, push.at, push.side),
    segment,
    side: push.side,
  };
}

/** An upper arm nearer than this leaves no room for a hand: then the hand goes this way instead [m; mm forward, out, up]. */
const CLEAR_OF_ARM = {
  ribSide: { near: 0.17, move: [-75, 0, -25] },
} as const;

/** A hand on the ribs goes behind an arm that hangs beside them, not between the two. */
function besideArm(body: Body, frames: Frames, id: SiteId, at: Vector, side: Side | null): Vector {
  const [name] = id.split(".");
  if (side === null || name !== "ribSide") return at;
  const { near, move } = CLEAR_OF_ARM[name];
  const shoulder = pointInRoom(body, frames, `upperArm.${side}`, [0, 0, 0]);
  const elbow = pointInRoom(body, frames, `forearm.${side}`, [0, 0, 0]);
  const along = subtract(elbow, shoulder);
  const share = Math.min(1, Math.max(0, dot(subtract(at, shoulder), along) / dot(along, along)));
  if (norm(subtract(at, add(shoulder, scale(along, share)))) > near) return at;
  const mm = body.stature / 1000;
  const out = side === "weak" ? body.weakAt : -body.weakAt;
  const turned = rotate(frames.rotations[body.segmentIndex.thorax] ?? IDENTITY, [
    move[0] * mm,
    move[1] * mm * out,
    move[2] * mm,
  ]);
  return add(at, turned);
}

/** Parts of the skin on which a site of a segment can lie. */
const PARTS_OF: Readonly<Partial<Record<string, readonly string[]>>> = {
  pelvis: ["trunk", "thigh"],
  abdomen: ["trunk"],
  thorax: ["trunk", "upperArm"],
  head: ["head", "hair"],
  girdle: ["trunk", "upperArm"],
  upperArm: ["upperArm"],
  forearm: ["forearm"],
  hand: ["hand"],
  thigh: ["thigh"],
  shank: ["shank"],
  foot: ["foot"],
};

/** The nearest place on the posed skin to a site's stated point. */
export function siteOnSkin(body: Body, frames: Frames, skin: Skin, points: Float64Array, id: SiteId): SkinPlace {
  const guess = siteGuess(body, frames, id);
  const [segment] = guess.segment.split(".");
  const parts = PARTS_OF[segment ?? ""] ?? [];
  const place = nearestOnSkin(
    skin,
    points,
    guess.at,
    (part, side) => parts.includes(part) && (side === null || guess.side === null || side === guess.side),
  );
  return place ?? { at: guess.at, outward: [0, 0, 1] };
}

/** The nearest point of the skin, over the parts that count; the outward direction there is evened out over a hand's breadth. */
export function nearestOnSkin(
  skin: Skin,
  points: Float64Array,
  to: Vector,
  counts: (part: string, side: Side | null) => boolean,
): (SkinPlace & { readonly distance: number }) | null {
  const allowed = skin.kinds.map((kind) => kind !== null && counts(kind.part, kind.side));
  const corner = (i: number): Vector => [points[3 * i] ?? 0, points[3 * i + 1] ?? 0, points[3 * i + 2] ?? 0];
  let best = Number.MAX_VALUE;
  let at: Vector = to;
  let found = false;
  for (let t = 0; t < skin.triangleKinds.length; t++) {
    if (allowed[skin.triangleKinds[t] ?? 0] !== true) continue;
    const a = corner(skin.triangles[3 * t] ?? 0);
    const d = subtract(a, to);
    if (dot(d, d) > 0.09) continue;
    const candidate = nearestOnTriangle(
      a,
      corner(skin.triangles[3 * t + 1] ?? 0),
      corner(skin.triangles[3 * t + 2] ?? 0),
      to,
    );
    const away = subtract(candidate, to);
    const distance = dot(away, away);
    if (distance < best) {
      best = distance;
      at = candidate;
      found = true;
    }
  }
  if (!found) return null;
  let sum: Vector = [0, 0, 0];
  for (let t = 0; t < skin.triangleKinds.length; t++) {
    if (allowed[skin.triangleKinds[t] ?? 0] !== true) continue;
    const a = corner(skin.triangles[3 * t] ?? 0);
    const away = norm(subtract(a, at));
    if (away > 0.05) continue;
    const normal = cross(
      subtract(corner(skin.triangles[3 * t + 1] ?? 0), a),
      subtract(corner(skin.triangles[3 * t + 2] ?? 0), a),
    );
    sum = add(sum, scale(normal, 1 - away / 0.06));
  }
  return { at, outward: norm(sum) === 0 ? [0, 0, 1] : unit(sum), distance: Math.sqrt(best) };
}
