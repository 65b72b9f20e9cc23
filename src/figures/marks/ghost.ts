import type { Side } from "../../quantity/sides.ts";
import type { Vector } from "../../quantity/vectors.ts";
import type { SegmentId } from "../../mechanics/body/names.ts";
import { type Configuration, placeFrames, pointInRoom } from "../../mechanics/pose/kinematics.ts";
import { paint } from "../picture/buffer.ts";
import type { Frame } from "../picture/camera.ts";
import { Ink } from "../picture/ink.ts";
import { traceLines } from "../picture/lines.ts";
import { ink as style, type Theme } from "../picture/theme.ts";
import type { PreparedScene } from "../scene.ts";
import { poseSkin } from "../skin/posed.ts";

/** What moves: a limb that leaves its support, or the hips. */
export type FreeLimb = `${"arm" | "leg"}.${Side}` | "hips";

export const MOVING_PARTS: Readonly<Record<"arm" | "leg" | "hips", readonly string[]>> = {
  arm: ["upperArm", "forearm", "hand", "thumb"],
  leg: ["thigh", "shank", "foot"],
  hips: [],
};

/** The moving limb where it starts, dashed; nothing for the hips. */
export function ghostOf(
  prepared: PreparedScene,
  start: Configuration,
  moves: FreeLimb,
  frame: Frame,
  mirrored: boolean,
  theme: Theme,
): string {
  const person = prepared.people[0];
  const [limb, side] = moves.split(".");
  if (person === undefined || side === undefined || (limb !== "arm" && limb !== "leg")) return "";
  const frames = placeFrames(prepared.body, start);
  const points = poseSkin(person.skin, frames, prepared.placed.supports);
  const wanted = person.skin.kinds.map(
    (kind) => kind !== null && kind.side === side && MOVING_PARTS[limb].includes(kind.part),
  );
  const triangles: number[] = [];
  const kinds: number[] = [];
  person.skin.triangleKinds.forEach((kind, t) => {
    if (wanted[kind] !== true) return;
    triangles.push(
      person.skin.triangles[3 * t] ?? 0,
      person.skin.triangles[3 * t + 1] ?? 0,
      person.skin.triangles[3 * t + 2] ?? 0,
    );
    kinds.push(kind);
  });
  const buffer = paint(frame.camera, frame.width, frame.height, 1.2, [
    { points, triangles: Uint16Array.from(triangles), triangleKinds: Uint8Array.from(kinds), kindOffset: 0 },
  ]);
  const outline = traceLines(buffer, person.skin.kinds, frame.camera.zoom, new Ink(frame.width, mirrored)).outline;
  return outline === ""
    ? ""
    : `<path ${style(theme, { stroke: "line", width: 0.9 })} stroke-dasharray="3 2.6" stroke-opacity=".75" d="${outline}"/>`;
}

/** From where to where the end of the moving limb goes. */
export function movedEnd(
  prepared: PreparedScene,
  start: Configuration,
  moves: FreeLimb,
): { readonly from: Vector; readonly to: Vector } {
  const [limb, side] = moves.split(".");
  const before = placeFrames(prepared.body, start);
  const id: SegmentId =
    limb === "arm"
      ? `hand.${side === "weak" ? "weak" : "strong"}`
      : limb === "leg"
        ? `foot.${side === "weak" ? "weak" : "strong"}`
        : "pelvis";
  const point: Vector = limb === "hips" ? [0, 0, 0] : limb === "arm" ? [0, 0, -0.06] : [0.04, 0, -0.02];
  return {
    from: pointInRoom(prepared.body, before, id, point),
    to: pointInRoom(prepared.body, prepared.frames, id, point),
  };
}
