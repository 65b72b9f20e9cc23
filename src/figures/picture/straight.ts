import type { Vector } from "../../quantity/vectors.ts";
import type { DepthBuffer } from "./buffer.ts";
import { type Camera, project } from "./camera.ts";
import type { Ink } from "./ink.ts";

/** Draws straight edges of furniture where nothing nearer hides them. */
export function straightEdges(
  buffer: DepthBuffer,
  camera: Camera,
  edges: readonly (readonly [Vector, Vector])[],
  ink: Ink,
  tolerance = 10,
): string {
  let out = "";
  for (const [a, b] of edges) {
    const [ax, ay, az] = project(camera, a);
    const [bx, by, bz] = project(camera, b);
    const length = Math.hypot(bx - ax, by - ay);
    const steps = Math.max(1, Math.ceil(length * buffer.density));
    let begun = -1;
    for (let k = 0; k <= steps + 1; k++) {
      const t = Math.min(1, k / steps);
      const visible =
        k <= steps && seen(buffer, ax + (bx - ax) * t, ay + (by - ay) * t, 1000 / ((1 - t) / az + t / bz), tolerance);
      if (visible && begun < 0) begun = t;
      if (!visible && begun >= 0) {
        const end = Math.min(1, (k - 1) / steps);
        if ((end - begun) * length > 1.5)
          out += `M${ink.point(ax + (bx - ax) * begun, ay + (by - ay) * begun)}L${ink.point(ax + (bx - ax) * end, ay + (by - ay) * end)}`;
        begun = -1;
      }
    }
  }
  return out;
}

/** Whether a point at this distance [mm] is the nearest thing there; on a silhouette a sample beside it may show it. */
export function seen(buffer: DepthBuffer, x: number, y: number, distance: number, tolerance: number): boolean {
  const column = Math.floor(x * buffer.density);
  const row = Math.floor(y * buffer.density);
  if (column < 1 || row < 1 || column >= buffer.columns - 1 || row >= buffer.rows - 1) return false;
  for (let r = row - 1; r <= row + 1; r++) {
    for (let c = column - 1; c <= column + 1; c++)
      if (
        (buffer.depth[r * buffer.columns + c] ?? 0) > distance - tolerance &&
        thingOrNothing(buffer, r * buffer.columns + c)
      )
        return true;
  }
  return false;
}

/** Things are numbered first: a person in front hides an edge for sure. */
const thingOrNothing = (buffer: DepthBuffer, at: number): boolean => (buffer.kinds[at] ?? 0) <= 4;
