import type { Row } from "./rows.ts";

/**
 * The step that meets all rows to first order while staying as near as it can to the wished step: minimises
 * (d - wish)' W (d - wish) subject to J d = -error, with frozen unknowns taking just their wish. Works only over the
 * unknowns that each row can move.
 * @param mobility inverse weight of each unknown; with zero it takes its wish and no more
 * @returns the step and the multiplier of each row (positive pulls the row's quantity up)
 */
export function constrainedStep(
  rows: readonly Row[],
  wish: Float64Array,
  mobility: Float64Array,
): { step: Float64Array; multipliers: Float64Array } {
  const m = rows.length;
  const n = wish.length;
  const matrix = new Float64Array(m * m);
  const multipliers = new Float64Array(m);
  const scaled = new Float64Array(n);
  for (let a = 0; a < m; a++) {
    const row = rows[a];
    if (row === undefined) continue;
    const { gradient, reach } = row;
    let along = row.error;
    for (const i of reach) {
      along += (gradient[i] ?? 0) * (wish[i] ?? 0);
      scaled[i] = (gradient[i] ?? 0) * (mobility[i] ?? 0);
    }
    multipliers[a] = -along;
    for (let b = 0; b <= a; b++) {
      const other = rows[b];
      if (other !== undefined) matrix[a * m + b] = product(scaled, other.gradient, reach, other.reach);
    }
    for (const i of reach) scaled[i] = 0;
  }
  // Rows may repeat each other (three balls of a flat foot): a whisper of damping keeps the system solvable.
  for (let a = 0; a < m; a++) matrix[a * m + a] = (matrix[a * m + a] ?? 0) * (1 + 1e-9) + 1e-9;
  solveDefinite(matrix, multipliers, m);
  const step = new Float64Array(n);
  rows.forEach(({ gradient, reach }, a) => {
    const by = multipliers[a] ?? 0;
    for (const i of reach) step[i] = (step[i] ?? 0) + (gradient[i] ?? 0) * by;
  });
  for (let i = 0; i < n; i++) step[i] = (wish[i] ?? 0) + (mobility[i] ?? 0) * (step[i] ?? 0);
  return { step, multipliers };
}

/** Product of two rows over the unknowns that both reach; the first is zero outside its own. */
function product(a: Float64Array, b: Float64Array, reachA: Int32Array, reachB: Int32Array): number {
  const list = reachB.length < reachA.length ? reachB : reachA;
  let sum = 0;
  for (const i of list) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}

/** Cholesky's method on the lower half; both are overwritten, the second by the answer. */
function solveDefinite(a: Float64Array, b: Float64Array, n: number): void {
  for (let j = 0; j < n; j++) {
    const rowJ = j * n;
    let diagonal = a[rowJ + j] ?? 0;
    for (let k = 0; k < j; k++) diagonal -= (a[rowJ + k] ?? 0) * (a[rowJ + k] ?? 0);
    const root = Math.sqrt(Math.max(diagonal, 1e-12));
    a[rowJ + j] = root;
    for (let i = j + 1; i < n; i++) {
      const rowI = i * n;
      let sum = a[rowI + j] ?? 0;
      for (let k = 0; k < j; k++) sum -= (a[rowI + k] ?? 0) * (a[rowJ + k] ?? 0);
      a[rowI + j] = sum / root;
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
