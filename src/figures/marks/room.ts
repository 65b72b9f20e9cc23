import type { LimbSegment, SegmentId } from "../../mechanics/body/names.ts";
import { patchOn } from "../../mechanics/body/patches.ts";
import { type Configuration, placeFrames, pointInRoom } from "../../mechanics/pose/kinematics.ts";
import type { PoseSpecification } from "../../mechanics/pose/specification.ts";
import { SIDES } from "../../quantity/sides.ts";
import type { Vector } from "../../quantity/vectors.ts";
import type { PreparedScene } from "../scene.ts";
import { discRadius } from "./draw-marks.ts";
import { type FreeLimb, movedEnd } from "./ghost.ts";

/** The largest disc that a picture leaves room for carries this share of the body. */
const LARGEST_SHARE = 0.6;
/** A push ends on the skin and begins this far outside it [m]. */
const PUSH = 0.16;
/** An arrow's head and bend reach this far round its ends [m]. */
const ARROW = 0.1;
/** Half a limb's thickness [m]. */
const HALF_LIMB = 0.08;
const LIMB_SEGMENTS: Readonly<Record<"arm" | "leg", readonly LimbSegment[]>> = {
  arm: ["upperArm", "forearm", "hand"],
  leg: ["thigh", "shank", "foot"],
};

/** Points that have to be on the sheet so that no mark runs off it: discs, pushes, the ghost of the moving limb. */
export function roomForMarks(
  prepared: PreparedScene,
  pose: PoseSpecification | null,
  start: { readonly configuration: Configuration; readonly moves: FreeLimb } | null,
): Float64Array {
  const { body, frames, helper } = prepared;
  const room: number[] = [];
  const around = (at: Vector, level: number, up: number): void => {
    for (let k = 0; k < 8; k++) {
      const x = at[0] + Math.cos((k * Math.PI) / 4) * level;
      const y = at[1] + Math.sin((k * Math.PI) / 4) * level;
      room.push(x, y, at[2] + up, x, y, at[2] - up);
    }
  };
  for (const contact of pose?.contacts ?? []) {
    if (typeof contact.on !== "string") continue;
    const { segment, balls } = patchOn(body, contact.patch);
    for (const ball of balls) {
      const [x, y, z] = pointInRoom(body, frames, segment, ball.centre);
      around([x, y, z - ball.radius], discRadius(LARGEST_SHARE), 0);
    }
  }
  for (const { site } of helper?.palms ?? []) {
    const { at, outward } = site;
    room.push(at[0] + outward[0] * PUSH, at[1] + outward[1] * PUSH, at[2] + outward[2] * PUSH);
  }
  if (start !== null) {
    const { from, to } = movedEnd(prepared, start.configuration, start.moves);
    around(from, ARROW, ARROW);
    around(to, ARROW, ARROW);
  }
  const [limb] = start?.moves.split(".") ?? [];
  if (start !== null && (limb === "arm" || limb === "leg")) {
    const before = placeFrames(body, start.configuration);
    for (const side of SIDES.filter((each) => start.moves.endsWith(each)))
      for (const name of LIMB_SEGMENTS[limb]) {
        const id: SegmentId = `${name}.${side}`;
        around(pointInRoom(body, before, id, [0, 0, 0]), HALF_LIMB, HALF_LIMB);
        around(pointInRoom(body, before, id, name === "foot" ? [0.2, 0, -0.05] : [0, 0, -0.18]), HALF_LIMB, HALF_LIMB);
      }
  }
  return Float64Array.from(room);
}
