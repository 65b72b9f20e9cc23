import { gripPull } from "../contact/columns.ts";
import type { Statics } from "../equilibrium/statics.ts";
import { boxWork, solveBox } from "../linear-program/box-quadratic.ts";

/** Nothing is looked for further out than this [m]. */
export const FURTHEST = 0.6;
const BALANCE = 20;
const RIDGE = 1e-9;
/** Pull outward [N.m per m]: far below what balance weighs. */
const PULL = 1;

/**
 * How far the centre of mass can go in a level direction before the contacts, as they stand, can no longer hold the body's
 * weight: muscles aside. Contacts stay put, so this is one small problem a direction.
 * @param grip most pull of each hand on a bar [N] before the share a bar allows
 * @returns [m], at most FURTHEST; zero where the pose itself cannot be held
 */
export function contactReach(
  statics: Statics,
  direction: readonly [number, number],
  grip: Readonly<Record<"weak" | "strong", number>>,
): number {
  const { unknowns, columns, whole, wholeSide, weight } = statics;
  const pushes = columns.length;
  const n = pushes + 1;
  // Moving the weight by s changes its moment about the old centre: (x, y) x down.
  const shift = [0, 0, 0, direction[1] * weight, -direction[0] * weight, 0];
  const entry = (r: number, j: number): number => (j === pushes ? -(shift[r] ?? 0) : (whole[r * unknowns + j] ?? 0));
  const matrix = new Float64Array(n * n);
  for (let r = 0; r < 6; r++) {
    for (let a = 0; a < n; a++) {
      const left = BALANCE * entry(r, a);
      if (left === 0) continue;
      for (let b = 0; b < n; b++) matrix[a * n + b] = (matrix[a * n + b] ?? 0) + left * entry(r, b);
    }
  }
  for (let a = 0; a < n; a++) matrix[a * n + a] = (matrix[a * n + a] ?? 0) + RIDGE;
  const upper = new Float64Array(n);
  columns.forEach((column, j) => {
    upper[j] = typeof column.most === "number" ? column.most : gripPull(grip[column.most.grip]);
  });
  upper[pushes] = FURTHEST;
  const work = boxWork(n);
  const h = new Float64Array(n);
  const multipliers = new Float64Array(6);
  for (let round = 0; round < 40; round++) {
    h.fill(0);
    h[pushes] = PULL;
    for (let r = 0; r < 6; r++) {
      const by = BALANCE * (wholeSide[r] ?? 0) + (multipliers[r] ?? 0);
      for (let j = 0; j < n; j++) h[j] = (h[j] ?? 0) + by * entry(r, j);
    }
    solveBox(matrix, h, upper, work);
    let worst = 0;
    for (let r = 0; r < 6; r++) {
      let error = wholeSide[r] ?? 0;
      for (let j = 0; j < n; j++) error -= entry(r, j) * (work.x[j] ?? 0);
      multipliers[r] = (multipliers[r] ?? 0) + BALANCE * error;
      worst = Math.max(worst, Math.abs(error));
    }
    if (worst < 1e-5 * weight) return work.x[pushes] ?? 0;
  }
  return 0;
}
