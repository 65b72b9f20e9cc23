import { cross, dot, IDENTITY, rotate, subtract, unit, type Vector } from "../../quantity/vectors.ts";
import type { Body } from "../body/body.ts";
import { anglesBelow } from "../equilibrium/statics.ts";
import { type Frames, ROOT_FREEDOMS } from "../pose/kinematics.ts";

/** One thing to be met, with the unknowns that can move it. */
export interface SparseRow {
  readonly error: number;
  readonly gradient: Float64Array;
  readonly reach: Int32Array;
}

/** Skin of one part that stays where it is: points in the part's frame and their places in the room. */
export interface Pin {
  readonly segment: number;
  readonly points: readonly Vector[];
  readonly places: readonly Vector[];
}

const reaches = new WeakMap<Body, Map<number, Int32Array>>();

/** Numbers of the unknowns that move a segment: the root's six and the angles on the way to it. */
export function reachOf(body: Body, segment: number): Int32Array {
  const known = reaches.get(body) ?? new Map<number, Int32Array>();
  reaches.set(body, known);
  const reach =
    known.get(segment) ??
    Int32Array.from([0, 1, 2, 3, 4, 5, ...[...anglesBelow(body, segment)].map((angle) => ROOT_FREEDOMS + angle)]);
  known.set(segment, reach);
  return reach;
}

/** Rows that hold a pin: of three points of a rigid part six say all there is, of two five, of one three. */
export function pinRows(body: Body, frames: Frames, pin: Pin): SparseRow[] {
  const [first, second, third] = pin.places;
  const rows: SparseRow[] = [];
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

/** How a point moves along a direction when each unknown moves. */
function pointGradient(body: Body, frames: Frames, segment: number, at: Vector, direction: Vector): Float64Array {
  const gradient = new Float64Array(ROOT_FREEDOMS + body.angles.length);
  const arm = subtract(at, frames.positions[0] ?? [0, 0, 0]);
  for (const k of [0, 1, 2] as const) gradient[k] = direction[k];
  // direction . (e x arm) for the three room axes.
  gradient[3] = direction[2] * arm[1] - direction[1] * arm[2];
  gradient[4] = direction[0] * arm[2] - direction[2] * arm[0];
  gradient[5] = direction[1] * arm[0] - direction[0] * arm[1];
  for (const i of anglesBelow(body, segment)) {
    const axis = frames.axes[i] ?? [0, 0, 0];
    const joint = frames.positions[body.segmentOfAngle[i] ?? 0] ?? [0, 0, 0];
    const x = at[0] - joint[0];
    const y = at[1] - joint[1];
    const z = at[2] - joint[2];
    gradient[ROOT_FREEDOMS + i] =
      direction[0] * (axis[1] * z - axis[2] * y) +
      direction[1] * (axis[2] * x - axis[0] * z) +
      direction[2] * (axis[0] * y - axis[1] * x);
  }
  return gradient;
}

/**
 * The step that meets all rows to first order while staying nearest the wished one, as constrainedStep, but over the
 * unknowns each row can move only.
 */
export function sparseStep(rows: readonly SparseRow[], wish: Float64Array, mobility: Float64Array): Float64Array {
  const m = rows.length;
  const matrix = new Float64Array(m * m);
  const side = new Float64Array(m);
  const scaled = new Float64Array(wish.length);
  for (let a = 0; a < m; a++) {
    const row = rows[a];
    if (row === undefined) continue;
    let along = row.error;
    for (const i of row.reach) {
      along += (row.gradient[i] ?? 0) * (wish[i] ?? 0);
      scaled[i] = (row.gradient[i] ?? 0) * (mobility[i] ?? 0);
    }
    side[a] = -along;
    for (let b = 0; b <= a; b++) {
      const other = rows[b];
      if (other === undefined) continue;
      const list = other.reach.length < row.reach.length ? other.reach : row.reach;
      let sum = 0;
      for (let k = 0; k < list.length; k++) {
        const i = list[k] ?? 0;
        sum += (scaled[i] ?? 0) * (other.gradient[i] ?? 0);
      }
      matrix[a * m + b] = sum;
    }
    for (const i of row.reach) scaled[i] = 0;
  }
  for (let a = 0; a < m; a++) matrix[a * m + a] = (matrix[a * m + a] ?? 0) * (1 + 1e-9) + 1e-9;
  solveDefinite(matrix, side, m);
  const step = Float64Array.from(wish);
  for (let a = 0; a < m; a++) {
    const row = rows[a];
    const by = side[a] ?? 0;
    if (row === undefined) continue;
    for (const i of row.reach) step[i] = (step[i] ?? 0) + (mobility[i] ?? 0) * (row.gradient[i] ?? 0) * by;
  }
  return step;
}

/** Cholesky's method on the lower half; both are overwritten, the right side by the answer. */
function solveDefinite(a: Float64Array, b: Float64Array, n: number): void {
  for (let j = 0; j < n; j++) {
    const rowJ = j * n;
    let diagonal = a[rowJ + j] ?? 0;
    for (let k = 0; k < j; k++) diagonal -= (a[rowJ + k] ?? 0) * (a[rowJ + k] ?? 0);
    const root = Math.sqrt(Math.max(diagonal, 1e-12));
    a[rowJ + j] = root;
    for (let i = j + 1; i < n; i++) {
      let sum = a[i * n + j] ?? 0;
      for (let k = 0; k < j; k++) sum -= (a[i * n + k] ?? 0) * (a[rowJ + k] ?? 0);
      a[i * n + j] = sum / root;
    }
  }
  for (let i = 0; i < n; i++) {
    let sum = b[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= (a[i * n + k] ?? 0) * (b[k] ?? 0);
    b[i] = sum / (a[i * n + i] ?? 1);
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i] ?? 0;
    for (let k = i + 1; k < n; k++) sum -= (a[k * n + i] ?? 0) * (b[k] ?? 0);
    b[i] = sum / (a[i * n + i] ?? 1);
  }
}
