import type { LinearAnswer, LinearProgram, LinearSolver } from "./linear-program.ts";

/** A solver that counts what broke off. */
export interface SteadySolver extends LinearSolver {
  /** Programs left without an answer once, and still after the second attempt. */
  readonly broken: { first: number; twice: number };
}

/**
 * The same solver, for programs of any strengths: now and then (about one in a thousand with nearly every muscle gone) a
 * run breaks off with an exception or without a verdict. It is tried once more with every row brought to the same size; if that breaks off as
 * well the answer is "failed", never an exception.
 */
export function steadySolver(solver: LinearSolver): SteadySolver {
  const broken = { first: 0, twice: 0 };
  const attempt = (run: () => LinearAnswer): LinearAnswer | null => {
    try {
      const answer = run();
      return answer.status === "failed" ? null : answer;
    } catch {
      return null;
    }
  };
  /** Whether the solver holds the last program as it was given, so that it can go on from it. */
  let goesOn = false;
  const solve = (program: LinearProgram): LinearAnswer => {
    const answer = attempt(() => solver.solve(program));
    goesOn = answer !== null;
    if (answer !== null) return answer;
    broken.first++;
    const sizes = rowSizes(program);
    const again = attempt(() => solver.solve(scaleRows(program, sizes)));
    if (again === null) {
      broken.twice++;
      return { status: "failed" };
    }
    // A row made smaller has a dual made larger by as much.
    if (again.status !== "best") return again;
    return { ...again, duals: again.duals.map((dual, r) => dual / (sizes[r] ?? 1)) };
  };
  return {
    record: solver.record,
    broken,
    solve,
    solveAgain(program) {
      return (goesOn ? attempt(() => solver.solveAgain(program)) : null) ?? solve(program);
    },
  };
}

/** Largest entry of every row; 1 where a row is empty. */
function rowSizes({ rowLower, rows, values }: LinearProgram): Float64Array {
  const sizes = new Float64Array(rowLower.length);
  rows.forEach((row, k) => {
    sizes[row] = Math.max(sizes[row] ?? 0, Math.abs(values[k] ?? 0));
  });
  return sizes.map((size) => (size === 0 ? 1 : size));
}

function scaleRows(program: LinearProgram, sizes: Float64Array): LinearProgram {
  return {
    ...program,
    rowLower: program.rowLower.map((value, r) => value / (sizes[r] ?? 1)),
    rowUpper: program.rowUpper.map((value, r) => value / (sizes[r] ?? 1)),
    values: program.values.map((value, k) => value / (sizes[program.rows[k] ?? 0] ?? 1)),
  };
}
