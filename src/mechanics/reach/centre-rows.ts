import type { Vector } from "../../quantity/vectors.ts";
import type { Body } from "../body/body.ts";
import { type Frames, pointInRoom, ROOT_FREEDOMS } from "../pose/kinematics.ts";

/** Centre of mass and how each unknown moves it sideways and forward, part by part from the ends inward. */
export function centreRows(
  body: Body,
  frames: Frames,
): { at: Vector; jacobian: readonly [Float64Array, Float64Array] } {
  const count = body.segments.length;
  const mass = new Float64Array(count);
  const sums = [new Float64Array(count), new Float64Array(count), new Float64Array(count)] as const;
  for (let s = count - 1; s >= 0; s--) {
    const segment = body.segments[s];
    if (segment === undefined) continue;
    const at = pointInRoom(body, frames, s, segment.centre);
    mass[s] = (mass[s] ?? 0) + segment.mass;
    for (const k of [0, 1, 2] as const) sums[k][s] = (sums[k][s] ?? 0) + segment.mass * at[k];
    if (segment.parent === null) continue;
    mass[segment.parent] = (mass[segment.parent] ?? 0) + (mass[s] ?? 0);
    for (const k of [0, 1, 2] as const) sums[k][segment.parent] = (sums[k][segment.parent] ?? 0) + (sums[k][s] ?? 0);
  }
  const total = mass[0] ?? 1;
  const at: Vector = [(sums[0][0] ?? 0) / total, (sums[1][0] ?? 0) / total, (sums[2][0] ?? 0) / total];
  const x = new Float64Array(ROOT_FREEDOMS + body.angles.length);
  const y = new Float64Array(ROOT_FREEDOMS + body.angles.length);
  const root = frames.positions[0] ?? [0, 0, 0];
  x[0] = 1;
  y[1] = 1;
  y[3] = -(at[2] - root[2]);
  x[4] = at[2] - root[2];
  x[5] = -(at[1] - root[1]);
  y[5] = at[0] - root[0];
  for (let i = 0; i < body.angles.length; i++) {
    const s = body.segmentOfAngle[i] ?? 0;
    const joint = frames.positions[s] ?? [0, 0, 0];
    const axis = frames.axes[i] ?? [0, 0, 0];
    const m = mass[s] ?? 0;
    const ax = (sums[0][s] ?? 0) - m * joint[0];
    const ay = (sums[1][s] ?? 0) - m * joint[1];
    const az = (sums[2][s] ?? 0) - m * joint[2];
    x[ROOT_FREEDOMS + i] = (axis[1] * az - axis[2] * ay) / total;
    y[ROOT_FREEDOMS + i] = (axis[2] * ax - axis[0] * az) / total;
  }
  return { at, jacobian: [x, y] };
}
