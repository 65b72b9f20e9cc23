import { buildBody } from "../src/mechanics/body/build.ts";
import type { Body } from "../src/mechanics/body/body.ts";
import type { AngleId } from "../src/mechanics/body/names.ts";
import { addForce, gravityMoments } from "../src/mechanics/equilibrium/statics.ts";
import {
  centreOfMass,
  type Configuration,
  type Frames,
  placeFrames,
  pointInRoom,
} from "../src/mechanics/pose/kinematics.ts";
import { radiansOf } from "../src/quantity/angles.ts";
import { rotationAbout, type Vector } from "../src/quantity/vectors.ts";

export type Sex = "female" | "male";
export const SEXES: readonly Sex[] = ["male", "female"];

/** The published reference subjects, so that a derived figure is met on its own body. */
export const referenceBody = (sex: Sex): Body =>
  buildBody({ sex, height: sex === "male" ? 1.741 : 1.735, mass: sex === "male" ? 73 : 61.9 }, 1);

/** A body placed by hand: pitch of the pelvis and angles of both sides [degrees], pelvis at a height [m]. */
export function placed(
  body: Body,
  pitchDeg: number,
  degrees: Readonly<Record<string, number>>,
  height = 0,
): { frames: Frames; configuration: Configuration; centre: Vector } {
  const configuration: Configuration = {
    rootPosition: [0, 0, height],
    rootRotation: rotationAbout([0, 1, 0], radiansOf(pitchDeg)),
    angles: body.angles.map((id) => radiansOf(degrees[id] ?? degrees[id.split(".")[0] ?? ""] ?? 0)),
  };
  const frames = placeFrames(body, configuration);
  return { frames, configuration, centre: centreOfMass(body, frames) };
}

export const at = (
  body: Body,
  frames: Frames,
  segment: keyof Body["segmentIndex"],
  point: Vector = [0, 0, 0],
): Vector => pointInRoom(body, frames, segment, point);

/** Centre of mass of some segments, and their mass. */
export function centreOf(
  body: Body,
  frames: Frames,
  wanted: (id: string) => boolean,
): { mass: number; centre: Vector } {
  let mass = 0;
  const sum: [number, number, number] = [0, 0, 0];
  for (const segment of body.segments) {
    if (!wanted(segment.id)) continue;
    const place = pointInRoom(body, frames, segment.index, segment.centre);
    mass += segment.mass;
    for (const k of [0, 1, 2] as const) sum[k] += segment.mass * place[k];
  }
  return { mass, centre: [sum[0] / mass, sum[1] / mass, sum[2] / mass] };
}

/** Muscle moment about an angle's axis while some forces act on the placed body [N.m]. */
export function momentAbout(
  body: Body,
  frames: Frames,
  angle: AngleId,
  forces: readonly { segment: keyof Body["segmentIndex"]; at: Vector; force: Vector }[],
): number {
  const { own } = gravityMoments(body, { frames }, frames.axes);
  const whole = new Float64Array(6);
  const carried = new Float64Array(body.angles.length);
  for (const each of forces)
    addForce(
      body,
      { frames, centre: [0, 0, 0] },
      frames.axes,
      body.segmentIndex[each.segment],
      each.at,
      each.force,
      whole,
      carried,
      0,
      1,
    );
  const index = body.angleIndex[angle];
  return (own[index] ?? 0) - (carried[index] ?? 0);
}

export interface Compared {
  readonly what: string;
  readonly ours: number;
  readonly theirs: number;
  readonly allowed: number;
}

/** Prints how close each row is, and returns those outside their allowance. */
export function printRows(check: string, rows: readonly Compared[]): readonly Compared[] {
  for (const row of rows) {
    if (!Number.isFinite(row.ours)) throw new Error(`${check}: ${row.what} is not a finite number`);
    console.log(
      `${check}: ${row.what}: ${row.ours.toFixed(4)} against ${row.theirs} (difference ${(row.ours - row.theirs).toFixed(4)}, allowed ${row.allowed})`,
    );
  }
  console.log(`${check}: ${rows.length} rows`);
  return rows.filter((row) => Math.abs(row.ours - row.theirs) > row.allowed);
}
