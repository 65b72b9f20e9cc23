import { add, compose, cross, IDENTITY, type Rotation, rotate, rotationAbout, subtract, type Vector } from "../../quantity/vectors.ts";
import type { Body } from "../body/body.ts";
import type { SegmentId } from "../body/names.ts";

/** Where a body is: pelvis position [m] and orientation in the room, and every joint angle [rad] in the body's order. */
export interface Configuration {
  readonly rootPosition: Vector;
  readonly rootRotation: Rotation;
  readonly angles: readonly number[];
}

/** A configuration worked out: every segment's frame and every joint axis, in the room. */
export interface Frames {
  readonly configuration: Configuration;
  /** Joint position of each segment [m]. */
  readonly positions: readonly Vector[];
  /** Orientation of each segment. */
  readonly rotations: readonly Rotation[];
  /** Axis of each joint angle, a unit vector in the room. */
  readonly axes: readonly Vector[];
}

/** Number of root unknowns that stand before the joint angles: three of position, three of turning about room axes. */
export const ROOT_FREEDOMS = 6;

/** The person standing upright at the origin, arms hanging, palms forward; the hip joints are at height zero. */
export function neutralConfiguration(body: Body): Configuration {
  return { rootPosition: [0, 0, 0], rootRotation: IDENTITY, angles: body.angles.map(() => 0) };
}

/** Works out where every part of the body is. */
export function placeFrames(body: Body, configuration: Configuration): Frames {
  const positions: Vector[] = [];
  const rotations: Rotation[] = [];
  const axes: Vector[] = [];
  for (const segment of body.segments) {
    if (segment.parent === null) {
      positions.push(configuration.rootPosition);
      rotations.push(configuration.rootRotation);
      continue;
    }
    const parentRotation = rotations[segment.parent] ?? IDENTITY;
    positions.push(add(positions[segment.parent] ?? [0, 0, 0], rotate(parentRotation, segment.joint)));
    let rotation = parentRotation;
    for (const turn of segment.turns) {
      axes.push(rotate(rotation, turn.axis));
      rotation = compose(rotation, rotationAbout(turn.axis, configuration.angles[axes.length - 1] ?? 0));
    }
    rotations.push(rotation);
  }
  return { configuration, positions, rotations, axes };
}

/** A point fixed in a segment [m, its frame], in the room. */
export function pointInRoom(body: Body, frames: Frames, segment: SegmentId | number, point: Vector): Vector {
  const index = typeof segment === "number" ? segment : body.segmentIndex[segment];
  return add(frames.positions[index] ?? [0, 0, 0], rotate(frames.rotations[index] ?? IDENTITY, point));
}

/** Centre of mass of the whole body in the room [m]. */
export function centreOfMass(body: Body, frames: Frames): Vector {
  let x = 0;
  let y = 0;
  let z = 0;
  let mass = 0;
  for (const segment of body.segments) {
    const at = pointInRoom(body, frames, segment.index, segment.centre);
    x += segment.mass * at[0];
    y += segment.mass * at[1];
    z += segment.mass * at[2];
    mass += segment.mass;
  }
  return [x / mass, y / mass, z / mass];
}

/**
 * How a point of the body moves when one unknown moves.
 * @param at the point in the room [m]; it rides on the given segment
 * @returns three rows (x, y, z) of 6 + angles entries, in m per m and m per rad
 */
export function pointJacobian(body: Body, frames: Frames, segment: number, at: Vector): readonly [Float64Array, Float64Array, Float64Array] {
  const size = ROOT_FREEDOMS + body.angles.length;
  const rows: [Float64Array, Float64Array, Float64Array] = [
    new Float64Array(size),
    new Float64Array(size),
    new Float64Array(size),
  ];
  rows[0][0] = 1;
  rows[1][1] = 1;
  rows[2][2] = 1;
  const arm = subtract(at, frames.positions[0] ?? [0, 0, 0]);
  // A turn of the root about a room axis e moves the point by e x arm.
  rows[1][3] = -arm[2];
  rows[2][3] = arm[1];
  rows[0][4] = arm[2];
  rows[2][4] = -arm[0];
  rows[0][5] = -arm[1];
  rows[1][5] = arm[0];
  const rides = ancestry(body, segment);
  for (let i = 0; i < body.angles.length; i++) {
    const moved = body.segmentOfAngle[i] ?? 0;
    if (!rides.has(moved)) continue;
    const motion = cross(frames.axes[i] ?? [0, 0, 0], subtract(at, frames.positions[moved] ?? [0, 0, 0]));
    rows[0][ROOT_FREEDOMS + i] = motion[0];
    rows[1][ROOT_FREEDOMS + i] = motion[1];
    rows[2][ROOT_FREEDOMS + i] = motion[2];
  }
  return rows;
}

/** How the whole body's centre of mass moves, as pointJacobian. */
export function centreJacobian(body: Body, frames: Frames): readonly [Float64Array, Float64Array, Float64Array] {
  const size = ROOT_FREEDOMS + body.angles.length;
  const rows: [Float64Array, Float64Array, Float64Array] = [
    new Float64Array(size),
    new Float64Array(size),
    new Float64Array(size),
  ];
  let total = 0;
  for (const segment of body.segments) total += segment.mass;
  for (const segment of body.segments) {
    const at = pointInRoom(body, frames, segment.index, segment.centre);
    const part = pointJacobian(body, frames, segment.index, at);
    for (let k = 0; k < 3; k++) {
      const row = rows[k];
      const add = part[k];
      if (row === undefined || add === undefined) continue;
      for (let i = 0; i < size; i++) row[i] = (row[i] ?? 0) + ((add[i] ?? 0) * segment.mass) / total;
    }
  }
  return rows;
}

const ancestries = new WeakMap<Body, readonly ReadonlySet<number>[]>();

/** The segments whose joints carry a segment, itself included. */
export function ancestry(body: Body, segment: number): ReadonlySet<number> {
  let known = ancestries.get(body);
  if (known === undefined) {
    known = body.segments.map((start) => {
      const set = new Set<number>();
      for (let at: number | null = start.index; at !== null; at = body.segments[at]?.parent ?? null) set.add(at);
      return set;
    });
    ancestries.set(body, known);
  }
  return known[segment] ?? new Set();
}
