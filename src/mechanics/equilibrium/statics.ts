import { SIDES } from "../../quantity/sides.ts";
import { IDENTITY, rotate, type Vector } from "../../quantity/vectors.ts";
import type { Body } from "../body/body.ts";
import { GRAVITY } from "../body/strength-norms.ts";
import { type Column, contactColumns, type ContactOptions } from "../contact/columns.ts";
import type { ClosedPose } from "../pose/close.ts";
import { ancestry, anglesBelow, pointInRoom } from "../pose/kinematics.ts";
import type { LimpEnd } from "../pose/specification.ts";
import { type Limits, limitsOf } from "../pose/targets.ts";
import { type Joint, jointsOf } from "./joints.ts";
import { sharingRow, type SharingKind } from "./sharing.ts";
import { type Stop, stopsIn } from "./stops.ts";

/** A force that is simply there: a helper's push, a band, a weight in the hand. */
export interface OutsideForce {
  readonly segment: number;
  /** Where it acts, in the room [m]. */
  readonly at: Vector;
  /** [N], room. */
  readonly force: Vector;
}
export interface StaticsOptions extends ContactOptions {
  /** Share of the load on the weak side where the pose says that the person decides it; default published. */
  readonly sharingWeak?: number;
  /** Joint ranges, for what rests on its end. */
  readonly limits?: Limits;
  readonly outside?: readonly OutsideForce[];
}

/**
 * One pose written as equations. Unknowns x >= 0: pushes of contacts [N], then moments of joint ends [N.m]. Balance of the
 * whole body: `whole` x = `wholeSide` (three forces, three moments about the centre of mass). Muscle moment of angle i:
 * `own[i]` - `carried[i]` . x, about the joint's axes; for joints with three axes about the moving part's own axes.
 */
export interface Statics {
  readonly body: Body;
  readonly pose: ClosedPose;
  readonly joints: readonly Joint[];
  readonly columns: readonly Column[];
  readonly stops: readonly Stop[];
  /** Unknowns: columns, then stops. */
  readonly unknowns: number;
  readonly angles: number;
  /** 6 x unknowns. */
  readonly whole: Float64Array;
  readonly wholeSide: Float64Array;
  /** angles x unknowns. */
  readonly carried: Float64Array;
  readonly own: Float64Array;
  /** The same as `carried` and `own`, with the muscles that cross two joints taken into account (see shareTwoJointMuscles). */
  readonly muscle: Float64Array;
  readonly muscleOwn: Float64Array;
  /** The load sharing that is the person's own: row . x = 0; null where the pose decides. */
  readonly sharing: { readonly row: Float64Array; readonly weak: number; readonly kind: SharingKind } | null;
  /** Angles that must not set the verdict. */
  readonly limp: Uint8Array;
  /** Room directions of the axes, and the joint's place, by angle. */
  readonly axes: readonly Vector[];
  readonly weight: number;
  /** What it was written with, for writing it again with something changed. */
  readonly options: StaticsOptions;
}

/** Axis of every angle for moments: as in the tree, but the moving part's own axes where a joint has three. */
export function momentAxes(body: Body, pose: ClosedPose, joints: readonly Joint[]): Vector[] {
  const axes = [...pose.frames.axes];
  for (const joint of joints) {
    if (!joint.ball) continue;
    const rotation = pose.frames.rotations[joint.segment] ?? IDENTITY;
    const turns = body.segments[joint.segment]?.turns ?? [];
    joint.angles.forEach((angle, k) => {
      axes[angle] = rotate(rotation, turns[k]?.axis ?? [1, 0, 0]);
    });
  }
  return axes;
}

/** Writes a closed pose as equations of balance. */
export function prepareStatics(body: Body, pose: ClosedPose, options: StaticsOptions = {}): Statics {
  const joints = jointsOf(body);
  const columns = contactColumns(body, pose, options);
  const stops = stopsIn(body, pose.configuration.angles, options.limits ?? limitsOf(body));
  const unknowns = columns.length + stops.length;
  const angles = body.angles.length;
  const axes = momentAxes(body, pose, joints);
  const { own, weight } = gravityMoments(body, pose, axes);
  const whole = new Float64Array(6 * unknowns);
  const wholeSide = new Float64Array(6);
  wholeSide[2] = weight;
  const carried = new Float64Array(angles * unknowns);
  columns.forEach((column, j) => {
    addForce(body, pose, axes, column.segment, column.at, column.force, whole, carried, j, unknowns);
    if (column.other === null) return;
    const { force, other } = column;
    addForce(body, pose, axes, other.segment, other.at, [-force[0], -force[1], -force[2]], whole, carried, j, unknowns);
  });
  stops.forEach((stop, k) => {
    carried[stop.angle * unknowns + columns.length + k] = stop.sign;
  });
  for (const { segment, at, force } of options.outside ?? []) {
    const sumWhole = new Float64Array(6);
    const sumCarried = new Float64Array(angles);
    addForce(body, pose, axes, segment, at, force, sumWhole, sumCarried, 0, 1);
    for (let r = 0; r < 6; r++) wholeSide[r] = (wholeSide[r] ?? 0) - (sumWhole[r] ?? 0);
    for (let i = 0; i < angles; i++) own[i] = (own[i] ?? 0) - (sumCarried[i] ?? 0);
  }
  const muscle = Float64Array.from(carried);
  const muscleOwn = Float64Array.from(own);
  shareTwoJointMuscles(body, muscle, unknowns);
  shareTwoJointMuscles(body, muscleOwn, 1);
  return {
    body,
    pose,
    joints,
    columns,
    stops,
    unknowns,
    angles,
    whole,
    wholeSide,
    carried,
    own,
    muscle,
    muscleOwn,
    sharing: sharingRow(pose, columns, body, unknowns, options.sharingWeak),
    limp: limpAngles(body, pose.specification.notCounted ?? []),
    axes,
    weight,
    options,
  };
}

/** The same pose with further forces from outside: only what it must hold changes, so it shares its matrices. */
export function withOutside(statics: Statics, forces: readonly OutsideForce[]): Statics {
  const { body, pose, axes, angles, options } = statics;
  const wholeSide = Float64Array.from(statics.wholeSide);
  const own = Float64Array.from(statics.own);
  const added = new Float64Array(angles);
  const sumWhole = new Float64Array(6);
  for (const { segment, at, force } of forces) addForce(body, pose, axes, segment, at, force, sumWhole, added, 0, 1);
  for (let r = 0; r < 6; r++) wholeSide[r] = (wholeSide[r] ?? 0) - (sumWhole[r] ?? 0);
  for (let i = 0; i < angles; i++) own[i] = (own[i] ?? 0) - (added[i] ?? 0);
  const muscleOwn = Float64Array.from(own);
  shareTwoJointMuscles(body, muscleOwn, 1);
  return {
    ...statics,
    wholeSide,
    own,
    muscleOwn,
    options: { ...options, outside: [...(options.outside ?? []), ...forces] },
  };
}

/** Part of the hip's moment that its two-joint muscles pass on to the knee, and of the ankle's (judgement from moment arms). */
const HIP_TO_KNEE = 0.2;
const ANKLE_TO_KNEE = 0.15;

/**
 * Muscles that cross two joints, the simple way: when all extensors of the hip work alike, the hamstrings bend the knee
 * with a fifth of the hip's moment, which the knee's own muscles must undo; the thigh's front muscle does the reverse in
 * hip flexion, the calf's in pointing the foot. So the knee's muscles carry: knee flexion moment + 0.2 hip flexion moment
 * + 0.15 dorsiflexion moment (decision record 0006).
 */
export function shareTwoJointMuscles(body: Body, rows: Float64Array, width: number): void {
  for (const side of SIDES) {
    const knee = body.angleIndex[`kneeFlexion.${side}`];
    for (const [angle, share] of [
      [body.angleIndex[`hipFlexion.${side}`], HIP_TO_KNEE],
      [body.angleIndex[`ankleDorsiflexion.${side}`], ANKLE_TO_KNEE],
    ] as const) {
      for (let j = 0; j < width; j++)
        rows[knee * width + j] = (rows[knee * width + j] ?? 0) + share * (rows[angle * width + j] ?? 0);
    }
  }
}

/** Moment that holding every part up against gravity asks about each angle's axis [N.m], and the body's weight [N]. */
export function gravityMoments(
  body: Body,
  pose: Pick<ClosedPose, "frames">,
  axes: readonly Vector[],
): { own: Float64Array; weight: number } {
  const n = body.segments.length;
  const mass = new Float64Array(n);
  const x = new Float64Array(n);
  const y = new Float64Array(n);
  for (let s = n - 1; s >= 0; s--) {
    const segment = body.segments[s];
    if (segment === undefined) continue;
    const at = pointInRoom(body, pose.frames, s, segment.centre);
    const below = mass[s] ?? 0;
    mass[s] = below + segment.mass;
    x[s] = (x[s] ?? 0) + segment.mass * at[0];
    y[s] = (y[s] ?? 0) + segment.mass * at[1];
    const parent = segment.parent;
    if (parent !== null) {
      mass[parent] = (mass[parent] ?? 0) + (mass[s] ?? 0);
      x[parent] = (x[parent] ?? 0) + (x[s] ?? 0);
      y[parent] = (y[parent] ?? 0) + (y[s] ?? 0);
    }
  }
  const own = new Float64Array(body.angles.length);
  for (let i = 0; i < own.length; i++) {
    const s = body.segmentOfAngle[i] ?? 0;
    const joint = pose.frames.positions[s] ?? [0, 0, 0];
    const axis = axes[i] ?? [0, 0, 0];
    const m = mass[s] ?? 0;
    // axis . (arm x up) x m g, the weight's moment turned round.
    own[i] = GRAVITY * (axis[0] * ((y[s] ?? 0) - m * joint[1]) - axis[1] * ((x[s] ?? 0) - m * joint[0]));
  }
  return { own, weight: (mass[0] ?? 0) * GRAVITY };
}

/** Adds a force on a segment to the equations: to the whole body's balance and to every joint it passes through. */
export function addForce(
  body: Body,
  pose: Pick<ClosedPose, "frames" | "centre">,
  axes: readonly Vector[],
  segment: number,
  at: Vector,
  force: Vector,
  whole: Float64Array,
  carried: Float64Array,
  column: number,
  width: number,
): void {
  const add = (r: number, value: number): void => {
    whole[r * width + column] = (whole[r * width + column] ?? 0) + value;
  };
  const ax = at[0] - pose.centre[0];
  const ay = at[1] - pose.centre[1];
  const az = at[2] - pose.centre[2];
  add(0, force[0]);
  add(1, force[1]);
  add(2, force[2]);
  add(3, ay * force[2] - az * force[1]);
  add(4, az * force[0] - ax * force[2]);
  add(5, ax * force[1] - ay * force[0]);
  for (const i of anglesBelow(body, segment)) {
    const moved = body.segmentOfAngle[i] ?? 0;
    const joint = pose.frames.positions[moved] ?? [0, 0, 0];
    const axis = axes[i] ?? [0, 0, 0];
    const bx = at[0] - joint[0];
    const by = at[1] - joint[1];
    const bz = at[2] - joint[2];
    const k = i * width + column;
    carried[k] =
      (carried[k] ?? 0) +
      axis[0] * (by * force[2] - bz * force[1]) +
      axis[1] * (bz * force[0] - bx * force[2]) +
      axis[2] * (bx * force[1] - by * force[0]);
  }
}

function limpAngles(body: Body, ends: readonly LimpEnd[]): Uint8Array {
  const limp = new Uint8Array(body.angles.length);
  for (const end of ends) {
    const first = body.segmentIndex[end];
    body.segmentOfAngle.forEach((segment, angle) => {
      // A limp forearm or foot takes what hangs on it along; a sagging girdle does not make the arm limp.
      if (segment === first || (!end.startsWith("girdle") && ancestry(body, segment).has(first))) limp[angle] = 1;
    });
  }
  return limp;
}
