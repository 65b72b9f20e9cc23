import {
  add,
  compose,
  IDENTITY,
  type Rotation,
  rotate,
  rotationAbout,
  subtract,
  type Vector,
  ZERO,
} from "../../quantity/vectors.ts";
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
export function pointJacobian(
  body: Body,
  frames: Frames,
  segment: number,
  at: Vector,
): readonly [Float64Array, Float64Array, Float64Array] {
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
  for (const i of anglesBelow(body, segment)) {
    const axis = frames.axes[i] ?? ZERO;
    const joint = frames.positions[body.segmentOfAngle[i] ?? 0] ?? ZERO;
    const x = at[0] - joint[0];
    const y = at[1] - joint[1];
    const z = at[2] - joint[2];
    rows[0][ROOT_FREEDOMS + i] = axis[1] * z - axis[2] * y;
    rows[1][ROOT_FREEDOMS + i] = axis[2] * x - axis[0] * z;
    rows[2][ROOT_FREEDOMS + i] = axis[0] * y - axis[1] * x;
  }
  return rows;
}

/** How a point moves along one direction when each unknown moves: pointJacobian's rows put together by the direction. */
export function pointGradient(
  body: Body,
  frames: Frames,
  segment: number,
  at: Vector,
  direction: Vector,
): Float64Array {
  const gradient = new Float64Array(ROOT_FREEDOMS + body.angles.length);
  const arm = subtract(at, frames.positions[0] ?? ZERO);
  for (const k of [0, 1, 2] as const) gradient[k] = direction[k];
  // direction . (e x arm) for the three room axes.
  gradient[3] = direction[2] * arm[1] - direction[1] * arm[2];
  gradient[4] = direction[0] * arm[2] - direction[2] * arm[0];
  gradient[5] = direction[1] * arm[0] - direction[0] * arm[1];
  for (const i of anglesBelow(body, segment)) {
    const axis = frames.axes[i] ?? ZERO;
    const joint = frames.positions[body.segmentOfAngle[i] ?? 0] ?? ZERO;
    const x = at[0] - joint[0];
    const y = at[1] - joint[1];
    const z = at[2] - joint[2];
    gradient[ROOT_FREEDOMS + i] =
      direction[0] * (axis[1] * z - axis[2] * y) +
      direction[1] * (axis[2] * x - axis[0] * z) +
      direction[2] * (axis[0] * y - axis[1] * x);
  }
  return gradient;
}

/** How the whole body's centre of mass moves, as pointJacobian: each angle carries the mass beyond it. */
export function centreJacobian(body: Body, frames: Frames): readonly [Float64Array, Float64Array, Float64Array] {
  const size = ROOT_FREEDOMS + body.angles.length;
  const rows = [new Float64Array(size), new Float64Array(size), new Float64Array(size)] as const;
  const count = body.segments.length;
  const mass = new Float64Array(count);
  const moment = new Float64Array(3 * count);
  for (let s = count - 1; s >= 0; s--) {
    const segment = body.segments[s];
    if (segment === undefined) continue;
    const at = pointInRoom(body, frames, s, segment.centre);
    mass[s] = (mass[s] ?? 0) + segment.mass;
    for (const k of [0, 1, 2] as const) moment[3 * s + k] = (moment[3 * s + k] ?? 0) + segment.mass * at[k];
    const { parent } = segment;
    if (parent === null) continue;
    mass[parent] = (mass[parent] ?? 0) + (mass[s] ?? 0);
    for (const k of [0, 1, 2] as const)
      moment[3 * parent + k] = (moment[3 * parent + k] ?? 0) + (moment[3 * s + k] ?? 0);
  }
  const total = mass[0] ?? 1;
  const root = frames.positions[0] ?? ZERO;
  // Arm of all mass beyond a joint, times that mass.
  const armOf = (s: number, from: Vector): Vector => [
    (moment[3 * s] ?? 0) - (mass[s] ?? 0) * from[0],
    (moment[3 * s + 1] ?? 0) - (mass[s] ?? 0) * from[1],
    (moment[3 * s + 2] ?? 0) - (mass[s] ?? 0) * from[2],
  ];
  const arm = armOf(0, root);
  for (const k of [0, 1, 2] as const) rows[k][k] = 1;
  rows[1][3] = -arm[2] / total;
  rows[2][3] = arm[1] / total;
  rows[0][4] = arm[2] / total;
  rows[2][4] = -arm[0] / total;
  rows[0][5] = -arm[1] / total;
  rows[1][5] = arm[0] / total;
  for (let i = 0; i < body.angles.length; i++) {
    const s = body.segmentOfAngle[i] ?? 0;
    const axis = frames.axes[i] ?? ZERO;
    const [x, y, z] = armOf(s, frames.positions[s] ?? ZERO);
    rows[0][ROOT_FREEDOMS + i] = (axis[1] * z - axis[2] * y) / total;
    rows[1][ROOT_FREEDOMS + i] = (axis[2] * x - axis[0] * z) / total;
    rows[2][ROOT_FREEDOMS + i] = (axis[0] * y - axis[1] * x) / total;
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

const riding = new WeakMap<Body, readonly Int32Array[]>();

/** Angles that move a segment, in ascending order. */
export function anglesBelow(body: Body, segment: number): Int32Array {
  let known = riding.get(body);
  if (known === undefined) {
    known = body.segments.map((each) => {
      const rides = ancestry(body, each.index);
      return Int32Array.from(body.angles.keys()).filter((angle) => rides.has(body.segmentOfAngle[angle] ?? 0));
    });
    riding.set(body, known);
  }
  return known[segment] ?? new Int32Array(0);
}

const reaches = new WeakMap<Body, Map<number, Int32Array>>();

/** Numbers of the unknowns that move a segment: the root's six and the angles on the way to it. */
export function reachOf(body: Body, segment: number): Int32Array {
  const known = reaches.get(body) ?? new Map<number, Int32Array>();
  reaches.set(body, known);
  const reach =
    known.get(segment) ??
    Int32Array.from([0, 1, 2, 3, 4, 5, ...[...anglesBelow(body, segment)].map((angle) => ROOT_FREEDOMS + angle)]);
  known.set(segment, reach);
  return reach;
}
