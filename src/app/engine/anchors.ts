import type { Figure } from "../../figures/index.ts";
import type { SegmentId } from "../../mechanics/body/names.ts";
import { centreOfMass, pointInRoom } from "../../mechanics/pose/kinematics.ts";
import type { Vector } from "../../quantity/vectors.ts";
import { project } from "../../figures/picture/camera.ts";
import type { Picture } from "./engine.ts";

/** The joints a look asks about, each at the origin of the segment beyond it. */
const JOINT_SEGMENTS: readonly (readonly [string, SegmentId])[] = [
  ["shoulder", "upperArm.weak"],
  ["elbow", "forearm.weak"],
  ["wrist", "hand.weak"],
  ["trunk", "abdomen"],
  ["hip", "thigh.weak"],
  ["knee", "shank.weak"],
  ["ankle", "foot.weak"],
];

/** Where a point of the room is in the drawing as it is seen, turned over where the drawing is. */
function placeInDrawing(figure: Figure, at: Vector, mirrored: boolean): { readonly x: number; readonly y: number } {
  const { frame, width } = figure.bodyLayer;
  const [x, y] = project(frame.camera, at);
  return { x: Math.round(mirrored ? width - x : x), y: Math.round(y) };
}

/** The seven joints of the weak side in the drawing. */
export function jointsOf(figure: Figure, mirrored: boolean): NonNullable<Picture["joints"]> {
  const { body, frames } = figure.prepared;
  return JOINT_SEGMENTS.map(([joint, segment]) => ({
    joint,
    ...placeInDrawing(figure, pointInRoom(body, frames, segment, [0, 0, 0]), mirrored),
  }));
}

/** Scale and centre of the body in the drawing, so that it can ride on the session line. */
export function scaleOf(figure: Figure, mirrored: boolean): NonNullable<Picture["scale"]> {
  const { body, frames } = figure.prepared;
  const centre = centreOfMass(body, frames);
  const at = placeInDrawing(figure, centre, mirrored);
  const ground = placeInDrawing(figure, [centre[0], centre[1], 0], mirrored);
  return { perMetre: figure.bodyLayer.frame.camera.zoom, centreX: at.x, centreY: at.y, groundY: ground.y };
}
