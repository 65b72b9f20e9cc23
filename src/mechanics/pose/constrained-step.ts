import type { Row } from "./rows.ts";

/**
 * The step that meets all rows to first order while staying as near as it can to the wished step: minimises
 * (d - wish)' W (d - wish) subject to J d = -error, with frozen unknowns taking just their wish.
 * @param mobility inverse weight of each unknown; with zero it takes its wish and no more
 * @returns the step and the multiplier of each row (positive pulls the row's quantity up)
 */
export function constrainedStep(rows: readonly Row[], wish: Float64Array, mobility: Float64Array): { step: Float64Array; multipliers: Float64Array } {
  const m = rows.length;
  const n = wish.length;
  const matrix = new Float64Array(m * m);
  const side = new Float64Array(m);
  for (let a = 0; a < m; a++) {
    const rowA = rows[a];
    if (rowA === undefined) continue;
    let along = rowA.error;
    for (let i = 0; i < n; i++) along += (rowA.gradient[i] ?? 0) * (wish[i] ?? 0);
    side[a] = -along;
    for (let b = 0; b <= a; b++) {
      const gradientB = rows[b]?.gradient;
      if (gradientB === undefined) continue;
      let sum = 0;
      for (let i = 0; i < n; i++) sum += (rowA.gradient[i] ?? 0) * (mobility[i] ?? 0) * (gradientB[i] ?? 0);
      matrix[a * m + b] = sum;
    }
  }
  // Rows may repeat each other (three balls of a flat foot): a whisper of damping keeps the system solvable.
  for (let a = 0; a < m; a++) matrix[a * m + a] = (matrix[a * m + a] ?? 0) * (1 + 1e-9) + 1e-9;
  const multipliers = solveSymmetric(matrix, side, m);
  const step = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let push = 0;
    for (let a = 0; a < m; a++) push += (rows[a]?.gradient[i] ?? 0) * (multipliers[a] ?? 0);
    step[i] = (wish[i] ?? 0) + (mobility[i] ?? 0) * push;
  }
  return { step, multipliers };
}

/** Solves a symmetric positive definite system given by its lower half, by Cholesky's method; the matrix is overwritten. */
function solveSymmetric(a: Float64Array, b: Float64Array, n: number): Float64Array {
  for (let j = 0; j < n; j++) {
    let diagonal = a[j * n + j] ?? 0;
    for (let k = 0; k < j; k++) diagonal -= (a[j * n + k] ?? 0) ** 2;
    const root = Math.sqrt(Math.max(diagonal, 1e-12));
    a[j * n + j] = root;
    for (let i = j + 1; i < n; i++) {
      let sum = a[i * n + j] ?? 0;
      for (let k = 0; k < j; k++) sum -= (a[i * n + k] ?? 0) * (a[j * n + k] ?? 0);
      a[i * n + j] = sum / root;
    }
  }
  const x = Float64Array.from(b);
  for (let i = 0; i < n; i++) {
    let sum = x[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= (a[i * n + k] ?? 0) * (x[k] ?? 0);
    x[i] = sum / (a[i * n + i] ?? 1);
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i] ?? 0;
    for (let k = i + 1; k < n; k++) sum -= (a[k * n + i] ?? 0) * (x[k] ?? 0);
    x[i] = sum / (a[i * n + i] ?? 1);
  }
  return x;
}
