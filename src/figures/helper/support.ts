import { add, dot, IDENTITY, rotate, scale, subtract, unit, type Vector } from "../../quantity/vectors.ts";
import { SIDES, type Side } from "../../quantity/sides.ts";
import type { Body } from "../../mechanics/body/body.ts";
import type { LimbSegment, SegmentId } from "../../mechanics/body/names.ts";
import {
  type Configuration,
  type Frames,
  placeFrames,
  pointInRoom,
  pointJacobian,
} from "../../mechanics/pose/kinematics.ts";
import type { Skin } from "../skin/build.ts";
import type { SoftRow } from "./least-squares.ts";
import { nearestOnTriangle } from "../skin/nearest.ts";
import { nearestOnSkin, type SkinPlace } from "./site-place.ts";
import {
  NO_SUPPORT,
  SUPPORT_LIMBS,
  SUPPORT_PARTS,
  SUPPORT_PLACES,
  SUPPORT_SITES,
  SUPPORT_STANDS_OFF,
  SUPPORT_TOUCHES,
  type SupportPart,
  type SupportPlace,
} from "./support-words.data.ts";

/** What the helper's own leg does for the person: which part of it, where, and whether it touches or stands by. */
export interface Support {
  readonly part: SupportPart;
  readonly place: SupportPlace;
  readonly touches: boolean;
}

/**
 * Reads a rung's sentence about the helper's knee, thigh, shin or foot ("The raised thigh is a backrest as high as the
 * shoulder blades").
 * @returns null where the sentence only says how the helper stands, or names no place on the person
 */
export function supportIn(sentence: string | null | undefined): Support | null {
  const words = (sentence ?? "").toLowerCase();
  if (words === "" || NO_SUPPORT.test(words)) return null;
  const part = SUPPORT_PARTS.find((row) => row.when.test(words))?.part;
  const place = SUPPORT_PLACES.find((row) => row.when.test(words))?.place;
  if (part === undefined || place === undefined) return null;
  const touches = !words.includes("not touching") && (SUPPORT_TOUCHES.test(words) || !SUPPORT_STANDS_OFF.test(words));
  return { part, place, touches };
}

/** Where the support goes on this person's skin. */
export function supportOnSkin(
  person: Body,
  frames: Frames,
  skin: Skin,
  points: Float64Array,
  support: Support,
): SkinPlace {
  const { segment, share, up, toward } = SUPPORT_SITES[support.place];
  const paired = segment !== "thorax" && segment !== "pelvis";
  const id: SegmentId = paired ? `${segment}.weak` : segment;
  const length = person.segments[person.segmentIndex[id]]?.length ?? 0;
  const mm = person.stature / 1000;
  const outward: Vector = [toward[0], toward[1] * person.weakAt, toward[2]];
  const from = pointInRoom(person, frames, id, [0, 0, up * mm - share * length]);
  const direction = unit(rotate(frames.rotations[person.segmentIndex[id]] ?? IDENTITY, outward));
  const parts = segment === "thorax" || segment === "pelvis" ? ["trunk", "thigh"] : [segment, "thigh", "shank"];
  const wanted = add(from, scale(direction, 0.1));
  const found = nearestOnSkin(
    skin,
    points,
    wanted,
    (part, side) => parts.includes(part) && (side === null || side === "weak" || !paired),
  );
  return found ?? { at: wanted, outward: direction };
}

/** The helper's leg that is nearest to the place before anything moves; the leading one where one leads. */
export function supportingSide(helper: Body, start: Configuration, lead: Side | null, place: SkinPlace): Side {
  if (lead !== null) return lead;
  const frames = placeFrames(helper, start);
  const away = (side: Side): number => {
    const v = subtract(pointInRoom(helper, frames, `shank.${side}`, [0, 0, 0]), place.at);
    return dot(v, v);
  };
  return SIDES.reduce((best, side) => (away(side) < away(best) ? side : best));
}

/** Brings the helper's limb beside the place: firmly in the direction out of the skin, loosely along it. */
export function supportRows(
  helper: Body,
  frames: Frames,
  support: Support,
  side: Side,
  place: SkinPlace,
  extra: number,
): SoftRow[] {
  const { at, radius, segment } = nearestOnLimb(helper, frames, support.part, side, place.at);
  const off = radius + extra + (support.touches ? 0.002 : STANDS_OFF);
  const target = add(place.at, scale(place.outward, off));
  const jacobian = pointJacobian(helper, frames, segment, at);
  const n = place.outward;
  const across = unit(Math.abs(n[2]) < 0.8 ? [n[1], -n[0], 0] : [0, n[2], -n[1]]);
  const along: Vector = [
    n[1] * across[2] - n[2] * across[1],
    n[2] * across[0] - n[0] * across[2],
    n[0] * across[1] - n[1] * across[0],
  ];
  const miss = subtract(at, target);
  return (
    [
      [n, 2.2],
      [across, 0.4],
      [along, 0.4],
    ] as const
  ).map(([axis, weight]) => {
    const gradient = new Float64Array(jacobian[0].length);
    for (let i = 0; i < gradient.length; i++)
      gradient[i] = axis[0] * (jacobian[0][i] ?? 0) + axis[1] * (jacobian[1][i] ?? 0) + axis[2] * (jacobian[2][i] ?? 0);
    return { error: dot(miss, axis), gradient, weight };
  });
}

/** Skin about the place that may be met [m]. */
const AROUND = 0.15;
/** A part that is ready stays this far off [m]. */
const STANDS_OFF = 0.03;

function nearestOnLimb(
  helper: Body,
  frames: Frames,
  part: SupportPart,
  side: Side,
  to: Vector,
): { readonly at: Vector; readonly radius: number; readonly segment: number } {
  const row = SUPPORT_LIMBS[part];
  const name: LimbSegment = row.segment;
  const id: SegmentId = `${name}.${side}`;
  const length = helper.segments[helper.segmentIndex[id]]?.length ?? 0;
  const mm = helper.stature / 1000;
  const point = (share: number): Vector =>
    pointInRoom(helper, frames, id, name === "foot" ? [0.06, 0, -0.045] : [0, 0, -share * length]);
  const from = point(row.from);
  const along = subtract(point(row.to), from);
  const t = Math.min(1, Math.max(0, dot(subtract(to, from), along) / Math.max(1e-9, dot(along, along))));
  return {
    at: add(from, scale(along, t)),
    radius: (row.radiusFrom + (row.radiusTo - row.radiusFrom) * t) * mm,
    segment: helper.segmentIndex[id],
  };
}

/** Least distance from the helper's limb to the person's skin about the place [m]. */
export function supportGap(
  helper: { readonly skin: Skin; readonly points: Float64Array },
  person: { readonly skin: Skin; readonly points: Float64Array },
  support: Support,
  side: Side,
  place: SkinPlace,
): number {
  const names: readonly string[] =
    support.part === "knee" ? ["shank", "thigh"] : support.part === "shin" ? ["shank"] : [support.part];
  const own = helper.skin.kinds.map((kind) => kind !== null && kind.side === side && names.includes(kind.part));
  const seen = new Set<number>();
  helper.skin.triangleKinds.forEach((kind, t) => {
    if (own[kind] !== true) return;
    for (let k = 0; k < 3; k++) seen.add(helper.skin.triangles[3 * t + k] ?? 0);
  });
  const corner = (i: number): Vector => [
    person.points[3 * i] ?? 0,
    person.points[3 * i + 1] ?? 0,
    person.points[3 * i + 2] ?? 0,
  ];
  const near: (readonly [Vector, Vector, Vector])[] = [];
  for (let t = 0; t < person.skin.triangleKinds.length; t++) {
    const [a, b, c] = [0, 1, 2].map((k) => corner(person.skin.triangles[3 * t + k] ?? 0));
    if (a === undefined || b === undefined || c === undefined) continue;
    const v = subtract(a, place.at);
    if (dot(v, v) < AROUND * AROUND) near.push([a, b, c]);
  }
  let least = 1;
  for (const i of seen) {
    const at: Vector = [helper.points[3 * i] ?? 0, helper.points[3 * i + 1] ?? 0, helper.points[3 * i + 2] ?? 0];
    const from = subtract(at, place.at);
    if (dot(from, from) > 4 * AROUND * AROUND) continue;
    for (const [a, b, c] of near) {
      const v = subtract(nearestOnTriangle(a, b, c, at), at);
      least = Math.min(least, dot(v, v));
    }
  }
  return Math.sqrt(least);
}
