import { cross, dot, IDENTITY, rotate, subtract, unit, type Vector } from "../../quantity/vectors.ts";
import type { Body } from "../body/body.ts";
import { type Frames, pointGradient, reachOf } from "../pose/kinematics.ts";
import type { Row } from "../pose/rows.ts";

/** Skin of one part that stays where it is: points in the part's frame and their places in the room. */
export interface Pin {
  readonly segment: number;
  readonly points: readonly Vector[];
  readonly places: readonly Vector[];
}

/** Rows that hold a pin: of three points of a rigid part six say all there is, of two five, of one three. */
export function pinRows(body: Body, frames: Frames, pin: Pin): Row[] {
  const [first, second, third] = pin.places;
  const rows: Row[] = [];
  const add = (k: number, directions: readonly Vector[]): void => {
    const own = pin.points[k];
    const place = pin.places[k];
    if (own === undefined || place === undefined) return;
    const at = movedPoint(frames, pin.segment, own);
    const apart = subtract(at, place);
    for (const direction of directions)
      rows.push({
        error: dot(direction, apart),
        gradient: pointGradient(body, frames, pin.segment, at, direction),
        reach: reachOf(body, pin.segment),
      });
  };
  add(0, [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ]);
  if (first === undefined || second === undefined) return rows;
  const line = unit(subtract(second, first));
  const side = unit(cross(line, Math.abs(line[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0]));
  add(1, [side, cross(side, line)]);
  if (third !== undefined) add(2, [unit(cross(line, subtract(third, first)))]);
  return rows;
}

function movedPoint(frames: Frames, segment: number, own: Vector): Vector {
  const from = frames.positions[segment] ?? [0, 0, 0];
  const turned = rotate(frames.rotations[segment] ?? IDENTITY, own);
  return [from[0] + turned[0], from[1] + turned[1], from[2] + turned[2]];
}
