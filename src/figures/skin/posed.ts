import type { Frames } from "../../mechanics/pose/kinematics.ts";
import { IDENTITY } from "../../quantity/vectors.ts";
import type { Skin } from "./build.ts";

/** A level or upright solid that skin may not enter: its top, and its outline seen from above. */
export interface Support {
  /** Height of the top [m]. */
  readonly top: number;
  /** Footprint [m]; the mat has none and reaches everywhere. */
  readonly footprint: {
    readonly fromX: number;
    readonly toX: number;
    readonly fromY: number;
    readonly toY: number;
  } | null;
  /** Height of a slope or a round top over a place [m]; without it the top is level. */
  readonly topAt?: (x: number, y: number) => number;
  /** Skin up to this far under the top is brought up to it [m]. */
  readonly depth: number;
}

/** Where every point of the skin is in the room [m], three numbers a point; what sank under a support is pushed up to it. */
export function poseSkin(skin: Skin, frames: Frames, supports: readonly Support[]): Float64Array {
  const count = skin.share.length;
  const out = new Float64Array(3 * count);
  const segments = frames.positions.length;
  const table = new Float64Array(12 * segments);
  for (let s = 0; s < segments; s++) {
    const r = frames.rotations[s] ?? IDENTITY;
    const p = frames.positions[s] ?? [0, 0, 0];
    for (let k = 0; k < 9; k++) table[12 * s + k] = r[k] ?? 0;
    for (let k = 0; k < 3; k++) table[12 * s + 9 + k] = p[k] ?? 0;
  }
  for (let i = 0; i < count; i++) {
    place(table, 12 * (skin.firstSegment[i] ?? 0), skin.inFirst, 3 * i, out, 1 - (skin.share[i] ?? 0));
    if ((skin.share[i] ?? 0) > 0)
      place(table, 12 * (skin.secondSegment[i] ?? 0), skin.inSecond, 3 * i, out, skin.share[i] ?? 0);
  }
  for (const support of supports) pushUp(out, support);
  return out;
}

function place(
  table: Float64Array,
  t: number,
  local: Float64Array,
  i: number,
  out: Float64Array,
  weight: number,
): void {
  const x = local[i] ?? 0;
  const y = local[i + 1] ?? 0;
  const z = local[i + 2] ?? 0;
  for (let k = 0; k < 3; k++) {
    out[i + k] =
      (out[i + k] ?? 0) +
      weight *
        ((table[t + 3 * k] ?? 0) * x +
          (table[t + 3 * k + 1] ?? 0) * y +
          (table[t + 3 * k + 2] ?? 0) * z +
          (table[t + 9 + k] ?? 0));
  }
}

function pushUp(points: Float64Array, support: Support): void {
  const area = support.footprint;
  for (let i = 0; i < points.length; i += 3) {
    const z = points[i + 2] ?? 0;
    if (z >= support.top || (support.topAt === undefined && z < support.top - support.depth)) continue;
    const x = points[i] ?? 0;
    const y = points[i + 1] ?? 0;
    if (area !== null && (x < area.fromX || x > area.toX || y < area.fromY || y > area.toY)) continue;
    const top = support.topAt?.(x, y) ?? support.top;
    if (z < top && z >= top - support.depth) points[i + 2] = top;
  }
}
