import type { SurfaceKind } from "../skin/kinds.ts";
import type { DepthBuffer } from "./buffer.ts";
import type { Ink } from "./ink.ts";

const SPACING = 4.2;
const SHORTEST = 1.6;

/** Parallel strokes over the weak limbs, cut from the picture itself. */
export function traceHatch(
  buffer: DepthBuffer,
  kinds: readonly (SurfaceKind | null)[],
  angle: number,
  ink: Ink,
): string {
  const { columns, rows, density } = buffer;
  const hatched = Uint8Array.from(kinds, (kind) => (kind?.hatched === true ? 1 : 0));
  const dx = Math.cos(angle);
  const dy = Math.sin(angle);
  const width = columns / density;
  const height = rows / density;
  const corners = [0, width * -dy, height * dx, width * -dy + height * dx];
  const from = Math.floor(Math.min(...corners) / SPACING);
  const to = Math.ceil(Math.max(...corners) / SPACING);
  const step = 0.5;
  let out = "";
  for (let k = from; k <= to; k++) {
    const ox = -dy * k * SPACING;
    const oy = dx * k * SPACING;
    // The stretch of this stroke that lies in the picture.
    let low = -1e9;
    let high = 1e9;
    if (Math.abs(dx) > 1e-9) {
      const a = (0 - ox) / dx;
      const b = (width - ox) / dx;
      low = Math.max(low, Math.min(a, b));
      high = Math.min(high, Math.max(a, b));
    }
    if (Math.abs(dy) > 1e-9) {
      const a = (0 - oy) / dy;
      const b = (height - oy) / dy;
      low = Math.max(low, Math.min(a, b));
      high = Math.min(high, Math.max(a, b));
    }
    let begun = Number.NaN;
    for (let s = low; s <= high + step; s += step) {
      const column = Math.floor((ox + dx * s) * density);
      const row = Math.floor((oy + dy * s) * density);
      const inside =
        s <= high &&
        column >= 0 &&
        row >= 0 &&
        column < columns &&
        row < rows &&
        hatched[buffer.kinds[row * columns + column] ?? 0] === 1;
      if (inside && Number.isNaN(begun)) begun = s;
      if (!inside && !Number.isNaN(begun)) {
        const end = s - step;
        if (end - begun >= SHORTEST)
          out += `M${ink.point(ox + dx * begun, oy + dy * begun)}L${ink.point(ox + dx * end, oy + dy * end)}`;
        begun = Number.NaN;
      }
    }
  }
  return out;
}
