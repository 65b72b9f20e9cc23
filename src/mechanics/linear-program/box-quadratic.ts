/** Room kept between solves of one size, so that a chain of similar problems starts from the last answer. */
export interface BoxWork {
  readonly size: number;
  readonly x: Float64Array;
  /** -1 at zero, 0 free, 1 at the upper bound. */
  readonly state: Int8Array;
  readonly factor: Float64Array;
  readonly free: Int32Array;
  readonly reduced: Float64Array;
  /** Unknowns that are not zero in the present trial, ascending, and how many. */
  readonly used: Int32Array;
  usedCount: number;
  /** Whether `factor` is that of the present matrix over the present free unknowns; the caller says no when the matrix changes. */
  factored: boolean;
  factoredCount: number;
}

export function boxWork(size: number): BoxWork {
  return {
    size,
    x: new Float64Array(size),
    state: new Int8Array(size).fill(-1),
    factor: new Float64Array(size * size),
    free: new Int32Array(size),
    reduced: new Float64Array(size),
    used: new Int32Array(size),
    usedCount: 0,
    factored: false,
    factoredCount: 0,
  };
}

/**
 * Least of x'Hx / 2 - h'x with 0 <= x <= upper, H positive definite (full storage): active sets exchanged in blocks; where
 * blocks would turn in circles, one at a time downhill, so that it always ends. Starts from the states in `work`; set
 * `work.factored` to false whenever the matrix has changed.
 * @returns rounds used; the answer is in work.x
 */
export function solveBox(matrix: Float64Array, h: Float64Array, upper: Float64Array, work: BoxWork): number {
  const { size: n, x, state, reduced: next } = work;
  let best = n + 1;
  let patience = 3;
  let rounds = 0;
  for (; ; rounds++) {
    solveFree(matrix, h, upper, work);
    let wrong = 0;
    for (let i = 0; i < n; i++) {
      const wanted = judge(matrix, h, upper, work, i);
      next[i] = wanted;
      if (wanted !== state[i]) wrong++;
    }
    if (wrong === 0) break;
    if (wrong < best) {
      best = wrong;
      patience = 3;
    } else if (patience-- <= 0) {
      rounds += descend(matrix, h, upper, work);
      break;
    }
    for (let i = 0; i < n; i++) state[i] = next[i] ?? 0;
  }
  for (let i = 0; i < n; i++) x[i] = Math.min(Math.max(x[i] ?? 0, 0), upper[i] ?? 0);
  return rounds;
}

/** Puts bound unknowns on their bounds and the free ones where they are best. */
function solveFree(matrix: Float64Array, h: Float64Array, upper: Float64Array, work: BoxWork): void {
  const { size: n, x, state, free, reduced, used } = work;
  let count = 0;
  let raised = 0;
  for (let i = 0; i < n; i++) {
    const s = state[i] ?? 0;
    if (s === 0) {
      if (free[count] !== i) {
        free[count] = i;
        work.factored = false;
      }
      count++;
    } else x[i] = s === 1 ? (upper[i] ?? 0) : 0;
    if (s === 1) used[raised++] = i;
  }
  for (let r = 0; r < count; r++) {
    const i = free[r] ?? 0;
    let side = h[i] ?? 0;
    for (let u = 0; u < raised; u++) {
      const k = used[u] ?? 0;
      side -= (matrix[i * n + k] ?? 0) * (x[k] ?? 0);
    }
    reduced[r] = side;
  }
  if (!work.factored || work.factoredCount !== count) factorFree(matrix, work, count);
  work.factored = true;
  work.factoredCount = count;
  solveFactored(work, count);
  for (let r = 0; r < count; r++) x[free[r] ?? 0] = reduced[r] ?? 0;
  let filled = 0;
  for (let i = 0; i < n; i++) if (x[i] !== 0) used[filled++] = i;
  work.usedCount = filled;
}

/** From a point inside the bounds: to the best of the free ones or the first bound on the way, freeing the steepest bound in turn. */
function descend(matrix: Float64Array, h: Float64Array, upper: Float64Array, work: BoxWork): number {
  const { size: n, x, state } = work;
  const at = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const u = upper[i] ?? 0;
    at[i] = Math.min(Math.max(x[i] ?? 0, 0), u);
    if (state[i] === 0 && at[i] === 0) state[i] = -1;
    else if (state[i] === 0 && at[i] === u) state[i] = 1;
    else if (state[i] !== 0) at[i] = state[i] === 1 ? u : 0;
  }
  let rounds = 0;
  for (; rounds < 20 * n; rounds++) {
    solveFree(matrix, h, upper, work);
    let share = 1;
    let blocker = -1;
    for (let i = 0; i < n; i++) {
      if (state[i] !== 0) continue;
      const from = at[i] ?? 0;
      const to = x[i] ?? 0;
      const bound = to < 0 ? 0 : to > (upper[i] ?? 0) ? (upper[i] ?? 0) : null;
      if (bound === null) continue;
      const part = (bound - from) / (to - from);
      if (part < share) {
        share = part;
        blocker = i;
      }
    }
    for (let i = 0; i < n; i++) at[i] = (at[i] ?? 0) + share * ((x[i] ?? 0) - (at[i] ?? 0));
    if (blocker >= 0) {
      state[blocker] = (x[blocker] ?? 0) < 0 ? -1 : 1;
      at[blocker] = state[blocker] === 1 ? (upper[blocker] ?? 0) : 0;
      continue;
    }
    const steepest = steepestBound(matrix, h, upper, work);
    if (steepest < 0) break;
    state[steepest] = 0;
  }
  return rounds;
}

/** The bound unknown that would gain most by being freed; -1 where none would. */
function steepestBound(matrix: Float64Array, h: Float64Array, upper: Float64Array, work: BoxWork): number {
  const { size: n, x, state } = work;
  let most = 0;
  let chosen = -1;
  for (let i = 0; i < n; i++) {
    if (state[i] === 0 || judge(matrix, h, upper, work, i) === state[i]) continue;
    let slope = -(h[i] ?? 0);
    for (let k = 0; k < n; k++) slope += (matrix[i * n + k] ?? 0) * (x[k] ?? 0);
    const gain = (slope * slope) / Math.max(matrix[i * n + i] ?? 1, 1e-300);
    if (gain > most) {
      most = gain;
      chosen = i;
    }
  }
  return chosen;
}

/** The state an unknown ought to have, given the present trial. */
function judge(matrix: Float64Array, h: Float64Array, upper: Float64Array, work: BoxWork, i: number): number {
  const { size: n, x, state, used } = work;
  const s = state[i] ?? 0;
  const at = x[i] ?? 0;
  if (s === 0) return at < -1e-10 ? -1 : at > (upper[i] ?? 0) + 1e-10 ? 1 : 0;
  let slope = -(h[i] ?? 0);
  let size = Math.abs(slope);
  const row = i * n;
  for (let u = 0; u < work.usedCount; u++) {
    const k = used[u] ?? 0;
    const part = (matrix[row + k] ?? 0) * (x[k] ?? 0);
    slope += part;
    size += Math.abs(part);
  }
  const tolerance = 1e-12 * size;
  if (s === -1) return slope < -tolerance ? 0 : -1;
  return slope > tolerance ? 0 : 1;
}

/** Factors the free unknowns' part of the matrix by Cholesky's method. */
function factorFree(matrix: Float64Array, work: BoxWork, count: number): void {
  const { size: n, factor: a, free } = work;
  for (let r = 0; r < count; r++) {
    const from = (free[r] ?? 0) * n;
    for (let c = 0; c <= r; c++) a[r * n + c] = matrix[from + (free[c] ?? 0)] ?? 0;
  }
  for (let j = 0; j < count; j++) {
    const rowJ = j * n;
    let diagonal = a[rowJ + j] ?? 0;
    const floor = 1e-13 * diagonal + 1e-300;
    for (let k = 0; k < j; k++) diagonal -= (a[rowJ + k] ?? 0) * (a[rowJ + k] ?? 0);
    const root = Math.sqrt(Math.max(diagonal, floor));
    a[rowJ + j] = root;
    // Three rows at a time: their sums do not wait for each other.
    let i = j + 1;
    for (; i + 2 < count; i += 3) {
      const row0 = i * n;
      const row1 = row0 + n;
      const row2 = row1 + n;
      let sum0 = a[row0 + j] ?? 0;
      let sum1 = a[row1 + j] ?? 0;
      let sum2 = a[row2 + j] ?? 0;
      for (let k = 0; k < j; k++) {
        const by = a[rowJ + k] ?? 0;
        sum0 -= (a[row0 + k] ?? 0) * by;
        sum1 -= (a[row1 + k] ?? 0) * by;
        sum2 -= (a[row2 + k] ?? 0) * by;
      }
      a[row0 + j] = sum0 / root;
      a[row1 + j] = sum1 / root;
      a[row2 + j] = sum2 / root;
    }
    for (; i < count; i++) {
      const rowI = i * n;
      let sum = a[rowI + j] ?? 0;
      for (let k = 0; k < j; k++) sum -= (a[rowI + k] ?? 0) * (a[rowJ + k] ?? 0);
      a[rowI + j] = sum / root;
    }
  }
}

/** Solves with the factor; `reduced` holds the right side and then the answer. */
function solveFactored(work: BoxWork, count: number): void {
  const { size: n, factor: a, reduced: b } = work;
  for (let i = 0; i < count; i++) {
    let sum = b[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= (a[i * n + k] ?? 0) * (b[k] ?? 0);
    b[i] = sum / (a[i * n + i] ?? 1);
  }
  for (let i = count - 1; i >= 0; i--) {
    let sum = b[i] ?? 0;
    for (let k = i + 1; k < count; k++) sum -= (a[k * n + i] ?? 0) * (b[k] ?? 0);
    b[i] = sum / (a[i * n + i] ?? 1);
  }
}
