import { radiansOf } from "../../quantity/angles.ts";
import { add, cross, dot, IDENTITY, rotate, scale, subtract, type Vector } from "../../quantity/vectors.ts";
import type { Body } from "../body/body.ts";
import { GRAVITY } from "../body/strength-norms.ts";
import { ancestry, type Frames, pointInRoom } from "../pose/kinematics.ts";
import {
  BACK_MUSCLE_LEVER,
  COMPRESSION_LIMIT,
  COMPRESSION_MOST,
  L5_S1_OF_HIP_TO_SHOULDER,
  PLATE_SLOPE_DEG,
  SHEAR_LIMIT,
  SIDE_MUSCLE_LEVER,
  TURN_MUSCLE_LEVER,
} from "./low-back.data.ts";

/** A force on the body, in the room: where [m], how much [N], and on which part. */
export interface HandForce {
  readonly segment: number;
  readonly at: Vector;
  readonly force: Vector;
}
/** What the lowest joint of the back carries. */
export interface LowBackLoad {
  /** Moments the trunk's muscles hold against what pulls it forward, to the left, and round [N.m]; about the pelvis' own axes. */
  readonly forward: number;
  readonly sideways: number;
  readonly turning: number;
  /** Force square to the joint's plate, muscles included, and along it, both [N]. */
  readonly compression: number;
  readonly shear: number;
  /** "within" 3400 N and 1000 N, "over" one of them, "far over" 6400 N. */
  readonly verdict: "within" | "over" | "far over";
}

/**
 * Moment and force at the joint between the lowest lumbar vertebra and the sacrum, of everything above it: part by part from the
 * head and hands down, a single muscle lever behind it. No support by breath or belly, nothing moves: a lift that is jerked asks
 * more. The tree's own lowest joint lies higher, at the navel; this point is set in the pelvis.
 * @source levers and limits: lifting-lab, arjmand2015, niosh1981
 */
export function lowBackLoad(body: Body, frames: Frames, forces: readonly HandForce[]): LowBackLoad {
  const pelvis = body.segments[0];
  const abdomen = body.segmentIndex.abdomen;
  const rotation = frames.rotations[0] ?? IDENTITY;
  const shoulder = shoulderHeight(body);
  const height = L5_S1_OF_HIP_TO_SHOULDER * shoulder;
  const joint = pointInRoom(body, frames, 0, [0, 0, height]);
  let moment: Vector = [0, 0, 0];
  let force: Vector = [0, 0, 0];
  const pull = (at: Vector, by: Vector): void => {
    moment = add(moment, cross(subtract(at, joint), by));
    force = add(force, by);
  };
  for (const segment of body.segments) {
    if (!ancestry(body, segment.index).has(abdomen)) continue;
    pull(pointInRoom(body, frames, segment.index, segment.centre), [0, 0, -segment.mass * GRAVITY]);
  }
  if (pelvis !== undefined) {
    // The slice of the pelvis' part above the joint, evenly thick.
    const share = Math.max(0, 1 - height / pelvis.length);
    pull(pointInRoom(body, frames, 0, [0, 0, (height + pelvis.length) / 2]), [0, 0, -share * pelvis.mass * GRAVITY]);
  }
  for (const each of forces) if (ancestry(body, each.segment).has(abdomen)) pull(each.at, each.force);
  const axis = (own: Vector): Vector => rotate(rotation, own);
  // Turned about the pelvis' left axis, the trunk tips forward; about its front axis, to its right.
  const forward = dot(moment, axis([0, 1, 0]));
  const sideways = -dot(moment, axis([1, 0, 0]));
  const turning = dot(moment, axis([0, 0, 1]));
  const muscles =
    Math.abs(forward) / BACK_MUSCLE_LEVER +
    Math.abs(sideways) / SIDE_MUSCLE_LEVER +
    Math.abs(turning) / TURN_MUSCLE_LEVER;
  const down = scale(axis([0, 0, 1]), -1);
  const front = axis([1, 0, 0]);
  const slope = radiansOf(PLATE_SLOPE_DEG);
  const along = dot(force, down);
  const ahead = dot(force, front);
  // The plate leans forward and down; the muscles pull along the spine, square to it.
  const compression = along * Math.cos(slope) - ahead * Math.sin(slope) + muscles;
  const shear = Math.abs(along * Math.sin(slope) + ahead * Math.cos(slope));
  const verdict =
    compression > COMPRESSION_MOST
      ? "far over"
      : compression > COMPRESSION_LIMIT || shear > SHEAR_LIMIT
        ? "over"
        : "within";
  return { forward, sideways, turning, compression, shear, verdict };
}

/** Height of the shoulders over the hips, standing [m]. */
function shoulderHeight(body: Body): number {
  let height = 0;
  for (let s: number | null = body.segmentIndex["upperArm.weak"]; s !== null; s = body.segments[s]?.parent ?? null)
    height += body.segments[s]?.joint[2] ?? 0;
  return height;
}
