import type { Camera } from "./camera.ts";

/** What is nearest in every sample of the picture: the number of its surface kind, and how far away it is. */
export interface DepthBuffer {
  readonly columns: number;
  readonly rows: number;
  /** Samples per unit. */
  readonly density: number;
  readonly kinds: Uint8Array;
  /** Distance [mm]; very far in the background. */
  readonly depth: Float32Array;
  /** Nothing is painted outside these samples: first and last row, first and last column. */
  readonly painted: Painted;
}

export interface Painted {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
  /** First and last painted column of each row; first after last where a row is empty. */
  readonly first: Int16Array;
  readonly last: Int16Array;
}

/** One set of triangles to be painted. */
export interface Solid {
  /** Three numbers a point, in the room [m]. */
  readonly points: Float64Array;
  readonly triangles: Uint16Array;
  /** Kind of each triangle; `kindOffset` is added. */
  readonly triangleKinds: Uint8Array;
  readonly kindOffset: number;
}

export const FAR = 1e6;

/** Paints solids, nearest wins; triangles seen from behind are skipped, as every solid is closed. */
export function paint(
  camera: Camera,
  width: number,
  height: number,
  density: number,
  solids: readonly Solid[],
): DepthBuffer {
  return paintAndKeepFirst(camera, width, height, density, solids).buffer;
}

/** The same, and what the first solid would show if nothing hid it. */
export function paintAndKeepFirst(
  camera: Camera,
  width: number,
  height: number,
  density: number,
  solids: readonly Solid[],
  keep = false,
): { readonly buffer: DepthBuffer; readonly firstKinds: Uint8Array } {
  const columns = Math.ceil(width * density);
  const rows = Math.ceil(height * density);
  const nearness = new Float32Array(columns * rows);
  const kinds = new Uint8Array(columns * rows);
  let firstKinds = kinds;
  const reach = { top: rows, bottom: -1, left: columns, right: -1 };
  solids.forEach((solid, k) => {
    paintSolid(camera, density, solid, columns, rows, nearness, kinds, reach);
    if (keep && k === 0) firstKinds = kinds.slice();
  });
  const top = Math.max(0, reach.top);
  const bottom = Math.min(rows - 1, reach.bottom);
  const left = Math.max(0, reach.left);
  const right = Math.min(columns - 1, reach.right);
  const first = new Int16Array(rows).fill(columns);
  const last = new Int16Array(rows).fill(-1);
  const depth = new Float32Array(columns * rows).fill(FAR);
  for (let row = top; row <= bottom; row++) {
    const at = row * columns;
    let from = left;
    let to = right;
    while (from <= to && nearness[at + from] === 0) from++;
    while (to >= from && nearness[at + to] === 0) to--;
    if (from > to) continue;
    first[row] = from;
    last[row] = to;
    for (let i = at + from; i <= at + to; i++) {
      const n = nearness[i] ?? 0;
      if (n !== 0) depth[i] = 1000 / n;
    }
  }
  const painted: Painted = { top, bottom, left, right, first, last };
  return { buffer: { columns, rows, density, kinds, depth, painted }, firstKinds };
}

function paintSolid(
  camera: Camera,
  density: number,
  solid: Solid,
  columns: number,
  rows: number,
  nearness: Float32Array,
  kinds: Uint8Array,
  reach: { top: number; bottom: number; left: number; right: number },
): void {
  const count = solid.points.length / 3;
  const xs = new Float64Array(count);
  const ys = new Float64Array(count);
  const ws = new Float64Array(count);
  const { eye, right, up, forward } = camera;
  const k = camera.zoom * camera.distance * density;
  const cx = camera.centreX * density;
  const cy = camera.centreY * density;
  const points = solid.points;
  let { top: highest, bottom: lowest, left: leftmost, right: rightmost } = reach;
  for (let i = 0; i < count; i++) {
    const x = (points[3 * i] ?? 0) - eye[0];
    const y = (points[3 * i + 1] ?? 0) - eye[1];
    const z = (points[3 * i + 2] ?? 0) - eye[2];
    const w = 1 / (x * forward[0] + y * forward[1] + z * forward[2]);
    const across = cx + (x * right[0] + y * right[1] + z * right[2]) * k * w;
    const down = cy - (x * up[0] + y * up[1] + z * up[2]) * k * w;
    xs[i] = across;
    ys[i] = down;
    ws[i] = w;
    if (across < leftmost) leftmost = across;
    if (across > rightmost) rightmost = across;
    if (down < highest) highest = down;
    if (down > lowest) lowest = down;
  }
  reach.top = Math.floor(highest);
  reach.bottom = Math.ceil(lowest);
  reach.left = Math.floor(leftmost);
  reach.right = Math.ceil(rightmost);
  const triangles = solid.triangles;
  const tooNear = camera.cutAt === undefined ? Number.MAX_VALUE : 1 / camera.cutAt;
  for (let t = 0; t < solid.triangleKinds.length; t++) {
    const a = triangles[3 * t] ?? 0;
    const b = triangles[3 * t + 1] ?? 0;
    const c = triangles[3 * t + 2] ?? 0;
    if ((ws[a] ?? 0) > tooNear || (ws[b] ?? 0) > tooNear || (ws[c] ?? 0) > tooNear) continue;
    const ax = xs[a] ?? 0;
    const ay = ys[a] ?? 0;
    const bx = xs[b] ?? 0;
    const by = ys[b] ?? 0;
    const dx = xs[c] ?? 0;
    const dy = ys[c] ?? 0;
    // y runs downward, so a triangle facing the eye turns clockwise on the page.
    const area = (bx - ax) * (dy - ay) - (dx - ax) * (by - ay);
    if (area >= 0) continue;
    const top = Math.max(0, Math.ceil(Math.min(ay, by, dy) - 0.5));
    const bottom = Math.min(rows - 1, Math.floor(Math.max(ay, by, dy) - 0.5));
    if (top > bottom) continue;
    const aw = ws[a] ?? 0;
    const bw = (ws[b] ?? 0) - aw;
    const dw = (ws[c] ?? 0) - aw;
    const slopeX = (bw * (dy - ay) - dw * (by - ay)) / area;
    const slopeY = (dw * (bx - ax) - bw * (dx - ax)) / area;
    const kind = (solid.triangleKinds[t] ?? 0) + solid.kindOffset;
    for (let row = top; row <= bottom; row++) {
      const y = row + 0.5;
      let from = Number.MAX_VALUE;
      let to = -Number.MAX_VALUE;
      if (ay <= y !== by <= y) {
        const x = ax + ((y - ay) / (by - ay)) * (bx - ax);
        if (x < from) from = x;
        if (x > to) to = x;
      }
      if (by <= y !== dy <= y) {
        const x = bx + ((y - by) / (dy - by)) * (dx - bx);
        if (x < from) from = x;
        if (x > to) to = x;
      }
      if (dy <= y !== ay <= y) {
        const x = dx + ((y - dy) / (ay - dy)) * (ax - dx);
        if (x < from) from = x;
        if (x > to) to = x;
      }
      const first = Math.max(0, Math.ceil(from - 0.5));
      const last = Math.min(columns - 1, Math.ceil(to - 0.5) - 1);
      let w = aw + (first + 0.5 - ax) * slopeX + (y - ay) * slopeY;
      let at = row * columns + first;
      for (let column = first; column <= last; column++) {
        if (w > (nearness[at] ?? 0)) {
          nearness[at] = w;
          kinds[at] = kind;
        }
        w += slopeX;
        at++;
      }
    }
  }
}
