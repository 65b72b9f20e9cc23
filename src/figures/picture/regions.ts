import type { SurfaceKind, Tone } from "../skin/kinds.ts";
import type { DepthBuffer, Painted } from "./buffer.ts";
import { fitCubics, smoothLine } from "./curves.ts";
import type { Ink } from "./ink.ts";

const SMALLEST_LOOP = 12;

/** Outlines of every area of one tone, as path text by tone. */
export function traceTones(
  buffer: DepthBuffer,
  kinds: readonly (SurfaceKind | null)[],
  tones: readonly Tone[],
  ink: Ink,
): ReadonlyMap<Tone, string> {
  const { columns, painted } = buffer;
  const toneOfKind = new Uint8Array(kinds.length);
  kinds.forEach((kind, i) => {
    toneOfKind[i] = kind === null ? 0 : tones.indexOf(kind.tone) + 1;
  });
  const paths = new Map<Tone, string>();
  if (painted.bottom < painted.top || painted.right < painted.left) return paths;
  // One empty sample all round, so that every loop closes inside.
  const w = painted.right - painted.left + 3;
  const field = new Uint8Array(w * (painted.bottom - painted.top + 3));
  for (let r = painted.top; r <= painted.bottom; r++) {
    const from = r * columns;
    const to = (r - painted.top + 1) * w + 1 - painted.left;
    const last = painted.last[r] ?? -1;
    for (let c = painted.first[r] ?? 0; c <= last; c++) field[to + c] = toneOfKind[buffer.kinds[from + c] ?? 0] ?? 0;
  }
  const seen = new Uint8Array(field.length);
  for (let r = painted.top; r <= painted.bottom; r++) {
    const start = (r - painted.top + 1) * w + 1 - painted.left;
    const end = start + (painted.last[r] ?? -1);
    for (let at = start + (painted.first[r] ?? 0); at <= end; at++) {
      const tone = field[at] ?? 0;
      if (tone === 0 || field[at - w] === tone || seen[at] === 1) continue;
      const loop = followLoop(field, seen, w, at, tone, painted);
      const name = tones[tone - 1];
      if (loop.length < 2 * SMALLEST_LOOP || name === undefined) continue;
      const smoothed = smoothLine(Float64Array.from(loop), true, 3);
      const closing = new Float64Array(smoothed.length + 2);
      closing.set(smoothed);
      closing[smoothed.length] = smoothed[0] ?? 0;
      closing[smoothed.length + 1] = smoothed[1] ?? 0;
      paths.set(name, (paths.get(name) ?? "") + ink.cubics(fitCubics(closing, 0.9), buffer.density, true));
    }
  }
  return paths;
}

/** Walks round an area, the area to the walker's own right-hand side, from the upper edge of a sample; returns edge middles. */
function followLoop(
  field: Uint8Array,
  seen: Uint8Array,
  w: number,
  start: number,
  tone: number,
  painted: Painted,
): number[] {
  const points: number[] = [];
  let cell = start;
  // Direction of walking along the cell's edge: 0 east on its upper edge, 1 south on its east edge, 2 west, 3 north.
  let heading = 0;
  const ahead = [1, w, -1, -w];
  const outside = [-w, 1, w, -1];
  for (let guard = 0; guard < 40000; guard++) {
    const row = Math.floor(cell / w) - 1 + painted.top;
    const column = (cell % w) - 1 + painted.left;
    if (heading === 0) seen[cell] = 1;
    points.push(
      column + (heading === 1 ? 1 : heading === 3 ? 0 : 0.5),
      row + (heading === 0 ? 0 : heading === 2 ? 1 : 0.5),
    );
    const next = cell + (ahead[heading] ?? 0);
    const diagonal = next + (outside[heading] ?? 0);
    if (field[next] !== tone) {
      heading = (heading + 1) % 4;
    } else if (field[diagonal] === tone) {
      cell = diagonal;
      heading = (heading + 3) % 4;
    } else {
      cell = next;
    }
    if (cell === start && heading === 0) break;
  }
  return points;
}
