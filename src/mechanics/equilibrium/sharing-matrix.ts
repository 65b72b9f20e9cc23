import { type BoxWork, boxWork } from "../linear-program/box-quadratic.ts";
import { type Measure, measureRoom } from "./effort-measure.ts";
import type { Joint } from "./joints.ts";
import type { Statics } from "./statics.ts";

/** Room and fixed parts for sharing the load of one pose. */
export interface Work {
  readonly box: BoxWork;
  readonly matrix: Float64Array;
  readonly h: Float64Array;
  readonly upper: Float64Array;
  readonly measure: Measure;
  /** Moments each round starts from, and what the bend makes of them. */
  readonly from: Float64Array;
  readonly pull: Float64Array;
  readonly last: Float64Array;
  readonly ratio: Float64Array;
  readonly row: Float64Array;
  /** The part of the matrix that is the same for all efforts (lower half): the whole body's balance. */
  readonly balance: Float64Array;
  /** Unknowns that reach each angle's row, and their entries there. */
  readonly reach: readonly Int32Array[];
  readonly entries: readonly Float64Array[];
  /** The same joint by joint: unknowns that reach any of its angles, and the entries of each angle. */
  readonly blocks: readonly {
    readonly joint: Joint;
    readonly list: Int32Array;
    readonly rows: readonly Float64Array[];
  }[];
}
const works = new WeakMap<Float64Array, Work>();

/** Room for one pose; kept by its matrix, which the pose shares with itself under other outside forces. */
export function workOf(statics: Statics): Work {
  let work = works.get(statics.muscle);
  if (work === undefined) {
    const { unknowns: n, angles, muscle } = statics;
    const reach: Int32Array[] = [];
    const entries: Float64Array[] = [];
    const found = new Int32Array(n);
    for (let i = 0; i < angles; i++) {
      let count = 0;
      for (let j = 0; j < n; j++) if (muscle[i * n + j] !== 0) found[count++] = j;
      const list = found.slice(0, count);
      reach.push(list);
      entries.push(rowAt(muscle, i * n, list));
    }
    const blocks = statics.joints.map((joint) => {
      let count = 0;
      for (let j = 0; j < n; j++) if (joint.angles.some((i) => muscle[i * n + j] !== 0)) found[count++] = j;
      const list = found.slice(0, count);
      const none = new Float64Array(count);
      const rows = [0, 1, 2].map((k) => {
        const i = joint.angles[k];
        return i === undefined ? none : rowAt(muscle, i * n, list);
      });
      return { joint, list, rows };
    });
    const balance = new Float64Array(n * n);
    for (let r = 0; r < 6; r++) addOuter(statics.whole, r * n, n, BALANCE, balance);
    work = {
      balance,
      box: boxWork(n),
      matrix: new Float64Array(n * n),
      h: new Float64Array(n),
      upper: new Float64Array(n),
      measure: measureRoom(statics.joints, angles, statics.body.segments.length),
      from: new Float64Array(angles),
      pull: new Float64Array(angles),
      last: new Float64Array(angles),
      ratio: new Float64Array(angles),
      row: new Float64Array(n),
      reach,
      entries,
      blocks,
    };
    works.set(statics.muscle, work);
  }
  return work;
}

function rowAt(matrix: Float64Array, from: number, list: Int32Array): Float64Array {
  const row = new Float64Array(list.length);
  for (let a = 0; a < list.length; a++) row[a] = matrix[from + (list[a] ?? 0)] ?? 0;
  return row;
}

/** Keeps the answer one where joints leave it open, and spreads it; far below what any joint asks. */
const RIDGE = 1e-9;
/** Weight of the whole body's balance against the joints' efforts; the multipliers do the rest. */
export const BALANCE = 20;
/** Weight of a sharing that balance does not allow in full: over the efforts, under the balance. */
export const NEAR = 0.05;
/** Weight of a joint's end against its most [1/N.m^2]: it is used where muscle would have to work, not for nothing. */
const STOP_WEIGHT = 0.02;
/** Muscle moment of every angle, by the unknowns that reach it. */
export function momentsOf(statics: Statics, work: Work, x: Float64Array, out: Float64Array): void {
  for (let i = 0; i < out.length; i++) {
    let moment = statics.muscleOwn[i] ?? 0;
    const list = work.reach[i];
    const row = work.entries[i];
    if (list !== undefined && row !== undefined)
      for (let a = 0; a < list.length; a++) moment -= (row[a] ?? 0) * (x[list[a] ?? 0] ?? 0);
    out[i] = moment;
  }
}

/** The square of the sharing problem at the bends in `measure`, both halves. */
export function buildMatrix(statics: Statics, work: Work, share: Float64Array | null, shareWeight: number): void {
  const { unknowns: n, angles, columns, stops } = statics;
  const { matrix, reach, entries, measure, blocks, row: sum } = work;
  matrix.set(work.balance);
  if (share !== null) addOuter(share, 0, n, shareWeight, matrix);
  for (const { joint, list, rows } of blocks) addJoint(measure, joint, list, rows, n, matrix);
  const chain = measure.chain;
  if (measure.chainWeight !== 0) {
    sum.fill(0);
    for (let i = 0; i < angles; i++) {
      const by = chain[i] ?? 0;
      const list = reach[i];
      const row = entries[i];
      if (by === 0 || list === undefined || row === undefined) continue;
      for (let a = 0; a < list.length; a++) {
        const j = list[a] ?? 0;
        sum[j] = (sum[j] ?? 0) + by * (row[a] ?? 0);
      }
    }
    addOuter(sum, 0, n, measure.chainWeight, matrix);
  }
  for (let j = 0; j < n; j++) {
    const most = stops[j - columns.length]?.most;
    matrix[j * n + j] = (matrix[j * n + j] ?? 0) + RIDGE + (most === undefined ? 0 : STOP_WEIGHT / (most * most));
    for (let k = 0; k < j; k++) matrix[k * n + j] = matrix[j * n + k] ?? 0;
  }
}

/** Adds one joint's bend to the lower half of the matrix: its (at most three) angles and their common row at once. */
function addJoint(
  measure: Measure,
  joint: Joint,
  list: Int32Array,
  rows: readonly Float64Array[],
  n: number,
  matrix: Float64Array,
): void {
  const { bend, along } = measure;
  const [i0 = 0, i1 = i0, i2 = i0] = joint.angles;
  const [row0, row1, row2] = rows;
  if (row0 === undefined || row1 === undefined || row2 === undefined) return;
  const weight = measure.alongWeight[joint.segment] ?? 0;
  const many = joint.angles.length;
  const w0 = bend[i0] ?? 0;
  const w1 = many > 1 ? (bend[i1] ?? 0) : 0;
  const w2 = many > 2 ? (bend[i2] ?? 0) : 0;
  const f0 = along[i0] ?? 0;
  const f1 = many > 1 ? (along[i1] ?? 0) : 0;
  const f2 = many > 2 ? (along[i2] ?? 0) : 0;
  for (let a = 0; a < list.length; a++) {
    const r0 = row0[a] ?? 0;
    const r1 = row1[a] ?? 0;
    const r2 = row2[a] ?? 0;
    const common = weight * (f0 * r0 + f1 * r1 + f2 * r2);
    const u0 = w0 * r0 + common * f0;
    const u1 = w1 * r1 + common * f1;
    const u2 = w2 * r2 + common * f2;
    const out = (list[a] ?? 0) * n;
    if (many === 1)
      for (let b = 0; b <= a; b++) {
        const k = out + (list[b] ?? 0);
        matrix[k] = (matrix[k] ?? 0) + u0 * (row0[b] ?? 0);
      }
    else
      for (let b = 0; b <= a; b++) {
        const k = out + (list[b] ?? 0);
        matrix[k] = (matrix[k] ?? 0) + u0 * (row0[b] ?? 0) + u1 * (row1[b] ?? 0) + u2 * (row2[b] ?? 0);
      }
  }
}

/** By angle: the slope at the last moments, and the bend times what is between them and the moments without any push. */
export function buildPull(statics: Statics, work: Work): void {
  const { angles, muscleOwn } = statics;
  const { pull, from, measure } = work;
  for (let i = 0; i < angles; i++)
    pull[i] = (measure.slope[i] ?? 0) + (measure.bend[i] ?? 0) * ((muscleOwn[i] ?? 0) - (from[i] ?? 0));
  for (const { joint } of work.blocks) {
    const weight = measure.alongWeight[joint.segment] ?? 0;
    if (weight === 0) continue;
    let off = 0;
    for (const i of joint.angles) off += (measure.along[i] ?? 0) * ((muscleOwn[i] ?? 0) - (from[i] ?? 0));
    for (const i of joint.angles) pull[i] = (pull[i] ?? 0) + weight * off * (measure.along[i] ?? 0);
  }
  if (measure.chainWeight === 0) return;
  let off = 0;
  for (let i = 0; i < angles; i++) off += (measure.chain[i] ?? 0) * ((muscleOwn[i] ?? 0) - (from[i] ?? 0));
  for (let i = 0; i < angles; i++) pull[i] = (pull[i] ?? 0) + measure.chainWeight * off * (measure.chain[i] ?? 0);
}

function addOuter(rows: Float64Array, from: number, n: number, weight: number, matrix: Float64Array): void {
  for (let a = 0; a < n; a++) {
    const left = weight * (rows[from + a] ?? 0);
    if (left === 0) continue;
    const out = a * n;
    for (let b = 0; b <= a; b++) matrix[out + b] = (matrix[out + b] ?? 0) + left * (rows[from + b] ?? 0);
  }
}

/** The right side that goes with it, at the present multipliers. */
export function buildSide(statics: Statics, work: Work, multipliers: Float64Array, share: Float64Array | null): void {
  const { unknowns: n, angles, whole, wholeSide } = statics;
  const { h, reach, entries, pull } = work;
  h.fill(0);
  for (let i = 0; i < angles; i++) {
    const by = pull[i] ?? 0;
    const list = reach[i];
    const row = entries[i];
    if (by === 0 || list === undefined || row === undefined) continue;
    for (let a = 0; a < list.length; a++) {
      const j = list[a] ?? 0;
      h[j] = (h[j] ?? 0) + by * (row[a] ?? 0);
    }
  }
  for (let r = 0; r < 6; r++) {
    const by = BALANCE * (wholeSide[r] ?? 0) + (multipliers[r] ?? 0);
    for (let j = 0; j < n; j++) h[j] = (h[j] ?? 0) + by * (whole[r * n + j] ?? 0);
  }
  if (share === null) return;
  const by = multipliers[6] ?? 0;
  for (let j = 0; j < n; j++) h[j] = (h[j] ?? 0) + by * (share[j] ?? 0);
}
