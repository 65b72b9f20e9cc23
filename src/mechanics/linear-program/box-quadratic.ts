/** Room kept between solves of one size, so that a chain of similar problems starts from the last answer. */
export interface BoxWork {
  readonly size: number;
  readonly x: Float64Array;
  /** -1 at zero, 0 free, 1 at the upper bound. */
  readonly state: Int8Array;
  readonly factor: Float64Array;
  readonly free: Int32Array;
  readonly reduced: Float64Array;
}

export function boxWork(size: number): BoxWork {
  return {
    size,
    x: new Float64Array(size),
    state: new Int8Array(size).fill(-1),
    factor: new Float64Array(size * size),
    free: new Int32Array(size),
    reduced: new Float64Array(size),
  };
}

/**
 * Least of x'Hx / 2 - h'x with 0 <= x <= upper, H positive definite (full storage): active sets exchanged in blocks; where
 * blocks would turn in circles, one at a time downhill, so that it always ends. Starts from the states in `work`.
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
      const wanted = judge(matrix, h, upper, x, state, i, n);
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
  const { size: n, x, state, factor, free, reduced } = work;
  let count = 0;
  for (let i = 0; i < n; i++) {
    const s = state[i] ?? 0;
    if (s === 0) free[count++] = i;
    else x[i] = s === 1 ? (upper[i] ?? 0) : 0;
  }
  factorFree(matrix, h, x, state, factor, free, reduced, count, n);
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
    if (state[i] === 0 || judge(matrix, h, upper, x, state, i, n) === state[i]) continue;
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
function judge(
  matrix: Float64Array,
  h: Float64Array,
  upper: Float64Array,
  x: Float64Array,
  state: Int8Array,
  i: number,
  n: number,
): number {
  const s = state[i] ?? 0;
  const at = x[i] ?? 0;
  if (s === 0) return at < -1e-10 ? -1 : at > (upper[i] ?? 0) + 1e-10 ? 1 : 0;
  let slope = -(h[i] ?? 0);
  let size = Math.abs(slope);
  const row = i * n;
  for (let k = 0; k < n; k++) {
    const xk = x[k] ?? 0;
    if (xk !== 0) {
      const part = (matrix[row + k] ?? 0) * xk;
      slope += part;
      size += Math.abs(part);
    }
  }
  const tolerance = 1e-12 * size;
  if (s === -1) return slope < -tolerance ? 0 : -1;
  return slope > tolerance ? 0 : 1;
}

function factorFree(
  matrix: Float64Array,
  h: Float64Array,
  x: Float64Array,
  state: Int8Array,
  a: Float64Array,
  free: Int32Array,
  b: Float64Array,
  count: number,
  n: number,
): void {
  for (let r = 0; r < count; r++) {
    const i = free[r] ?? 0;
    let side = h[i] ?? 0;
    for (let k = 0; k < n; k++) if (state[k] === 1) side -= (matrix[i * n + k] ?? 0) * (x[k] ?? 0);
    b[r] = side;
    for (let c = 0; c <= r; c++) a[r * n + c] = matrix[i * n + (free[c] ?? 0)] ?? 0;
  }
  for (let j = 0; j < count; j++) {
    const rowJ = j * n;
    let diagonal = a[rowJ + j] ?? 0;
    const floor = 1e-13 * diagonal + 1e-300;
    for (let k = 0; k < j; k++) diagonal -= (a[rowJ + k] ?? 0) * (a[rowJ + k] ?? 0);
    const root = Math.sqrt(Math.max(diagonal, floor));
    a[rowJ + j] = root;
    for (let i = j + 1; i < count; i++) {
      const rowI = i * n;
      let sum = a[rowI + j] ?? 0;
      for (let k = 0; k < j; k++) sum -= (a[rowI + k] ?? 0) * (a[rowJ + k] ?? 0);
      a[rowI + j] = sum / root;
    }
  }
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
  for (let r = 0; r < count; r++) x[free[r] ?? 0] = b[r] ?? 0;
}
