import { radiansOf } from "../../quantity/angles.ts";
import type { Body } from "../body/body.ts";
import type { LimbAngle, MidAngle } from "../body/names.ts";
import type { Limits } from "../pose/targets.ts";
import { LIMB_STOPS, MID_STOPS } from "./stops.data.ts";

/** A joint resting on the end of its range in this pose. */
export interface Stop {
  readonly angle: number;
  /** +1 pushes the angle up, -1 down. */
  readonly sign: 1 | -1;
  /** Most it may carry [N.m]. */
  readonly most: number;
  readonly words: string;
}

/** The joints that stand at an end of their range. */
export function stopsIn(body: Body, angles: readonly number[], limits: Limits): Stop[] {
  const stops: Stop[] = [];
  body.angles.forEach((id, angle) => {
    const [name, side] = id.split(".");
    const rows = side === undefined ? MID_STOPS[name as MidAngle] : LIMB_STOPS[name as LimbAngle];
    for (const row of rows ?? []) {
      const at = angles[angle] ?? 0;
      const short = row.end === "least" ? at - (limits.least[angle] ?? 0) : (limits.most[angle] ?? 0) - at;
      if (short <= radiansOf(row.withinDeg))
        stops.push({ angle, sign: row.end === "least" ? 1 : -1, most: row.most, words: row.words });
    }
  });
  return stops;
}
