import { gripPull } from "../contact/columns.ts";
import type { Capacities } from "../body/strength-capacities.ts";
import { ProgramBuilder } from "../linear-program/linear-program.ts";
import { type Allowed, allowedMoments } from "./efforts.ts";
import type { Statics } from "./statics.ts";

/** Extra pushes in a program: a helper's, with their rows already worked out. */
export interface ExtraColumns {
  readonly count: number;
  /** 6 x count. */
  readonly whole: Float64Array;
  /** angles x count, two-joint muscles counted. */
  readonly muscle: Float64Array;
  readonly cost: number;
  readonly most: number;
}

export interface EffortProgram {
  readonly builder: ProgramBuilder;
  readonly allowed: Allowed;
  /** Number of the unknown for the largest effort, or null where efforts are bounded by a figure. */
  readonly effort: number | null;
  /** First extra column. */
  readonly extra: number;
  /** Row of each joint's effort, by joint. */
  readonly effortRow: readonly number[];
}

/**
 * Writes balance and efforts as a linear program: every joint's effort (three axes as one) stays under one unknown, which
 * is to be least, or under a given figure with the extra pushes to be least.
 */
export function effortProgram(
  statics: Statics,
  capacities: Capacities,
  bound: number | null,
  extra: ExtraColumns | null = null,
): EffortProgram {
  const { unknowns: n, angles, columns, stops, joints, whole, wholeSide, muscle, muscleOwn, sharing } = statics;
  const allowed = allowedMoments(statics, capacities);
  const effortRow: number[] = [];
  const angleJoint = new Int32Array(angles);
  let rows = 6 + (sharing === null ? 0 : 1);
  const firstAngle = rows;
  rows += angles;
  joints.forEach((joint, k) => {
    for (const i of joint.angles) angleJoint[i] = joint.ball ? rows : rows + joint.angles.indexOf(i);
    effortRow[k] = rows;
    rows += joint.ball ? 1 : joint.angles.length;
  });
  const builder = new ProgramBuilder(rows);
  for (let r = 0; r < 6; r++) {
    builder.rowLower[r] = wholeSide[r] ?? 0;
    builder.rowUpper[r] = wholeSide[r] ?? 0;
  }
  for (let i = 0; i < angles; i++) {
    builder.rowLower[firstAngle + i] = muscleOwn[i] ?? 0;
    builder.rowUpper[firstAngle + i] = muscleOwn[i] ?? 0;
  }
  for (let r = firstAngle + angles; r < rows; r++) {
    builder.rowLower[r] = Number.NEGATIVE_INFINITY;
    builder.rowUpper[r] = bound ?? 0;
  }
  for (let j = 0; j < n; j++) {
    const column = columns[j];
    const most =
      column === undefined
        ? (stops[j - columns.length]?.most ?? 0)
        : typeof column.most === "number"
          ? column.most
          : gripPull(capacities.grip[column.most.grip]);
    for (let r = 0; r < 6; r++) builder.entry(r, whole[r * n + j] ?? 0);
    if (sharing !== null) builder.entry(6, sharing.row[j] ?? 0);
    for (let i = 0; i < angles; i++) builder.entry(firstAngle + i, muscle[i * n + j] ?? 0);
    builder.close(0, 0, most > 1e9 ? Number.POSITIVE_INFINITY : most);
  }
  for (let i = 0; i < angles; i++) {
    const counts = allowed.counted[i] === 1;
    // What does not count may hang and be held, but does not carry.
    const most = counts
      ? Number.POSITIVE_INFINITY
      : Math.max(allowed.up[i] ?? 0, 1 + 1.5 * Math.abs(muscleOwn[i] ?? 0));
    const row = angleJoint[i] ?? 0;
    for (const way of [1, -1] as const) {
      builder.entry(firstAngle + i, way);
      if (counts) builder.entry(row, 1 / ((way === 1 ? allowed.up[i] : allowed.down[i]) ?? 1));
      builder.close(0, 0, most);
    }
  }
  let effort: number | null = null;
  if (bound === null) {
    for (let r = firstAngle + angles; r < rows; r++) builder.entry(r, -1);
    effort = builder.close(1, 0, Number.POSITIVE_INFINITY);
  }
  const first = n + 2 * angles + (bound === null ? 1 : 0);
  for (let h = 0; extra !== null && h < extra.count; h++) {
    for (let r = 0; r < 6; r++) builder.entry(r, extra.whole[r * extra.count + h] ?? 0);
    for (let i = 0; i < angles; i++) builder.entry(firstAngle + i, extra.muscle[i * extra.count + h] ?? 0);
    builder.close(extra.cost, 0, extra.most);
  }
  return { builder, allowed, effort, extra: first, effortRow };
}
