/** One thing that should be zero: how far it is, how it changes with the unknowns, how much it matters. */
export interface SoftRow {
  readonly error: number;
  readonly gradient: Float64Array;
  readonly weight: number;
}

/**
 * One damped step of least squares.
 * @param pull per unknown: how strongly it is drawn by `wish` (the step it would like)
 * @returns the step, or null if the system cannot be solved
 */
export function dampedStep(
  rows: readonly SoftRow[],
  pull: Float64Array,
  wish: Float64Array,
  damping: number,
): Float64Array | null {
  const n = pull.length;
  const matrix = new Float64Array(n * n);
  const side = new Float64Array(n);
  for (const row of rows) {
    const w = row.weight * row.weight;
    const used: number[] = [];
    for (let i = 0; i < n; i++) if (row.gradient[i] !== 0) used.push(i);
    for (const i of used) {
      const g = (row.gradient[i] ?? 0) * w;
      side[i] = (side[i] ?? 0) - g * row.error;
      for (const j of used) {
        if (j > i) break;
        matrix[i * n + j] = (matrix[i * n + j] ?? 0) + g * (row.gradient[j] ?? 0);
      }
    }
  }
  for (let i = 0; i < n; i++) {
    const p = pull[i] ?? 0;
    matrix[i * n + i] = (matrix[i * n + i] ?? 0) + p + damping;
    side[i] = (side[i] ?? 0) + p * (wish[i] ?? 0);
  }
  // Cholesky, lower triangle.
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j] ?? 0;
      for (let k = 0; k < j; k++) sum -= (matrix[i * n + k] ?? 0) * (matrix[j * n + k] ?? 0);
      if (i === j) {
        if (sum <= 0) return null;
        matrix[i * n + i] = Math.sqrt(sum);
      } else {
        matrix[i * n + j] = sum / (matrix[j * n + j] ?? 1);
      }
    }
  }
  for (let i = 0; i < n; i++) {
    let sum = side[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= (matrix[i * n + k] ?? 0) * (side[k] ?? 0);
    side[i] = sum / (matrix[i * n + i] ?? 1);
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = side[i] ?? 0;
    for (let k = i + 1; k < n; k++) sum -= (matrix[k * n + i] ?? 0) * (side[k] ?? 0);
    side[i] = sum / (matrix[i * n + i] ?? 1);
  }
  return side;
}
