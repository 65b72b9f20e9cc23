import { describe, expect, it } from "vitest";
import { seededStream } from "../../quantity/random.ts";
import { boxWork, solveBox } from "./box-quadratic.ts";

/** Every way to hold unknowns at a bound or leave them free; the best that is allowed. */
function bruteForce(matrix: Float64Array, h: Float64Array, upper: Float64Array): number {
  const n = h.length;
  const value = (x: number[]): number => {
    let sum = 0;
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) sum += 0.5 * (matrix[i * n + j] ?? 0) * (x[i] ?? 0) * (x[j] ?? 0);
      sum -= (h[i] ?? 0) * (x[i] ?? 0);
    }
    return sum;
  };
  let best = Number.MAX_VALUE;
  for (let code = 0; code < 3 ** n; code++) {
    const state = Array.from({ length: n }, (_, i) => Math.floor(code / 3 ** i) % 3);
    const free = state.flatMap((s, i) => (s === 2 ? [i] : []));
    const x = state.map((s, i) => (s === 1 ? (upper[i] ?? 0) : 0));
    const rows = free.map((i) => [
      ...free.map((j) => matrix[i * n + j] ?? 0),
      (h[i] ?? 0) - x.reduce((sum, xj, j) => sum + (free.includes(j) ? 0 : (matrix[i * n + j] ?? 0) * xj), 0),
    ]);
    for (let p = 0; p < rows.length; p++) {
      const pivot = rows[p]?.[p] ?? 1;
      for (let r = 0; r < rows.length; r++) {
        if (r === p) continue;
        const by = (rows[r]?.[p] ?? 0) / pivot;
        rows[r] = (rows[r] ?? []).map((entry, c) => entry - by * (rows[p]?.[c] ?? 0));
      }
    }
    free.forEach((i, k) => {
      x[i] = (rows[k]?.[free.length] ?? 0) / (rows[k]?.[k] ?? 1);
    });
    if (x.some((xi, i) => xi < -1e-9 || xi > (upper[i] ?? 0) + 1e-9)) continue;
    best = Math.min(best, value(x));
  }
  return best;
}

describe("bounded least squares", () => {
  it("finds the best of all active sets, on 300 small problems", () => {
    const random = seededStream(5);
    let worst = 0;
    for (let trial = 0; trial < 300; trial++) {
      const n = 2 + Math.floor(random() * 4);
      const root = Array.from({ length: n * n }, () => random() * 2 - 1);
      const matrix = new Float64Array(n * n);
      for (let i = 0; i < n; i++)
        for (let j = 0; j < n; j++)
          for (let k = 0; k < n; k++)
            matrix[i * n + j] =
              (matrix[i * n + j] ?? 0) + (root[k * n + i] ?? 0) * (root[k * n + j] ?? 0) + (i === j ? 0.02 / n : 0);
      const h = Float64Array.from({ length: n }, () => random() * 4 - 2);
      const upper = Float64Array.from({ length: n }, () => (random() < 0.5 ? 1e9 : random() * 2));
      const work = boxWork(n);
      work.state.fill(trial % 2 === 0 ? 0 : -1);
      solveBox(matrix, h, upper, work);
      let ours = 0;
      for (let i = 0; i < n; i++) {
        for (let j = 0; j < n; j++) ours += 0.5 * (matrix[i * n + j] ?? 0) * (work.x[i] ?? 0) * (work.x[j] ?? 0);
        ours -= (h[i] ?? 0) * (work.x[i] ?? 0);
      }
      const best = bruteForce(matrix, h, upper);
      worst = Math.max(worst, Math.abs(ours - best) / Math.max(1, Math.abs(best)));
    }
    console.log(`bounded least squares: 300 problems, worst difference ${worst.toExponential(1)}`);
    expect(worst).toBeLessThan(1e-7);
  });
});
