import type { Body } from "../../mechanics/body/body.ts";
import { type Configuration, placeFrames, pointInRoom } from "../../mechanics/pose/kinematics.ts";
import type { PositionId } from "../../practice/codes.ts";
import { add, rotate, scale, subtract, unit, type Vector } from "../../quantity/vectors.ts";
import { type Towards, WAYS_OUT } from "./ways-out.data.ts";

/** How far an arrow goes from the centre of the body [m]. */
const LENGTH = 0.62;
/** Flatter than this a direction of the pelvis says nothing about the mat. */
const UPRIGHT = 0.25;

interface Arrow {
  readonly from: Vector;
  readonly to: Vector;
}

export interface WaysOutMarks {
  readonly planned: Arrow | null;
  /** Null where it is the planned one, or where there is none. */
  readonly hurry: Arrow | null;
  readonly same: boolean;
}

/** The way out of a position on the mat from above, planned and in a hurry, from the body's centre [m]. */
export function waysOutOf(
  body: Body,
  configuration: Configuration,
  centre: Vector,
  position: PositionId,
): WaysOutMarks {
  const ways = WAYS_OUT[position];
  const from: Vector = [centre[0], centre[1], 0];
  const arrow = (towards: Towards): Arrow | null => {
    if (towards === null) return null;
    const way = directionOf(body, configuration, towards);
    return way === null ? null : { from, to: add(from, scale(way, LENGTH)) };
  };
  const planned = arrow(ways?.planned ?? null);
  const same = ways !== undefined && ways.planned === ways.hurry;
  return { planned, hurry: same ? null : arrow(ways?.hurry ?? null), same };
}

function directionOf(body: Body, configuration: Configuration, towards: Exclude<Towards, null>): Vector | null {
  const frames = placeFrames(body, configuration);
  const along = flat(rotate(configuration.rootRotation, [1, 0, 0]));
  const aside = flat(rotate(configuration.rootRotation, [0, -body.weakAt, 0]));
  const head = flat(
    subtract(pointInRoom(body, frames, "head", [0, 0, 0]), pointInRoom(body, frames, "pelvis", [0, 0, 0])),
  );
  if (towards === "strong") return aside;
  if (towards === "foot") return head === null ? null : scale(head, -1);
  // Face down the front is where the head is; the back is where the feet are.
  const front = along ?? head;
  if (front === null) return null;
  if (towards === "ahead") return front;
  if (towards === "behind") return scale(front, -1);
  return aside === null ? scale(front, -1) : unit(subtract(aside, front));
}

function flat(v: Vector): Vector | null {
  const level: Vector = [v[0], v[1], 0];
  return Math.hypot(level[0], level[1]) < UPRIGHT ? null : unit(level);
}
