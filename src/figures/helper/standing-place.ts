import { add, dot, norm, rotate, scale, subtract, unit, type Vector } from "../../quantity/vectors.ts";
import { IDENTITY } from "../../quantity/vectors.ts";
import type { Body } from "../../mechanics/body/body.ts";
import type { SegmentId } from "../../mechanics/body/names.ts";
import type { Frames } from "../../mechanics/pose/kinematics.ts";
import type { HelperPlace } from "./drawing.ts";

const level = (v: Vector): Vector => [v[0], v[1], 0];

/** Directions over the ground, seen from the person: toward the weak side, the front, the head end. */
export function groundDirections(
  body: Body,
  frames: Frames,
): { readonly weak: Vector; readonly front: Vector; readonly head: Vector } {
  const pelvis = frames.rotations[0] ?? IDENTITY;
  const at = (id: SegmentId): Vector => frames.positions[body.segmentIndex[id]] ?? [0, 0, 0];
  const feet = scale(add(at("shank.weak"), at("shank.strong")), 0.5);
  const lying = level(subtract(at("head"), feet));
  const head: Vector = norm(lying) > 0.25 ? unit(lying) : [-1, 0, 0];
  const across = level(rotate(pelvis, [0, body.weakAt, 0]));
  const facing = level(rotate(pelvis, [1, 0, 0]));
  const front: Vector = norm(facing) > 0.6 ? unit(facing) : scale(head, -1);
  const weak: Vector = norm(across) > 0.6 ? unit(across) : [0, body.weakAt, 0];
  return { weak, front, head };
}

/** Where on the ground the helper's hips go, and which way they face, before the hands reach. */
export function helperGround(
  body: Body,
  frames: Frames,
  place: HelperPlace,
): { readonly at: Vector; readonly toward: Vector } {
  const side = place.beside === "strong" ? "strong" : "weak";
  const named: Readonly<Record<HelperPlace["nearTo"], SegmentId>> = {
    shoulder: `upperArm.${side}`,
    chest: "thorax",
    hip: `thigh.${side}`,
    knee: `shank.${side}`,
    foot: `foot.${side}`,
    head: "head",
  };
  const directions = groundDirections(body, frames);
  const away: Readonly<Record<HelperPlace["beside"], Vector>> = {
    weak: directions.weak,
    strong: scale(directions.weak, -1),
    front: directions.front,
    behind: scale(directions.front, -1),
    foot: scale(directions.head, -1),
    head: directions.head,
  };
  const near = frames.positions[body.segmentIndex[named[place.nearTo]]] ?? [0, 0, 0];
  const direction = away[place.beside];
  let beyond = 0.34 + place.awayCm / 100;
  if (place.beside === "foot" || place.beside === "head") {
    // At an end the helper is past whatever of the person reaches furthest that way.
    const ends: readonly SegmentId[] =
      place.beside === "foot" ? ["foot.weak", "foot.strong"] : ["head", "hand.weak", "hand.strong"];
    for (const end of ends)
      beyond = Math.max(
        beyond,
        dot(subtract(frames.positions[body.segmentIndex[end]] ?? near, near), direction) + 0.16 + place.awayCm / 200,
      );
  }
  return { at: add(level(near), scale(direction, beyond)), toward: scale(direction, -1) };
}
