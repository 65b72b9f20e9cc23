import loadHighs from "highs";
import { ProgrammingError } from "../../quantity/programming-error.ts";

/** Least of cost . x with rowLower <= A x <= rowUpper and lower <= x <= upper; A by columns. */
export interface LinearProgram {
  readonly cost: Float64Array;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
  readonly starts: Int32Array;
  readonly rows: Int32Array;
  readonly values: Float64Array;
}

/** Proof that an answer is the best: by how much it breaks a bound or row, its duals a sign, and the two values differ. */
export interface Certificate {
  readonly primal: number;
  readonly dual: number;
  /** Difference of the two values, relative to their size where that is over 1. */
  readonly gap: number;
}
export type LinearAnswer =
  | {
      readonly status: "best";
      readonly value: number;
      readonly x: Float64Array;
      readonly duals: Float64Array;
      readonly certificate: Certificate;
    }
  | { readonly status: "infeasible" | "unbounded" | "failed" };

/** Solves linear programs; every best answer carries its certificate. */
export interface LinearSolver {
  solve(program: LinearProgram): LinearAnswer;
  /** The program solved last with other row limits, and nothing else changed: goes on from its answer. */
  solveAgain(program: LinearProgram): LinearAnswer;
  /** Programs solved to a certified best answer so far, and the worst of each certificate. */
  readonly record: { solved: number; worst: { primal: number; dual: number; gap: number } };
}

/** Loads the solver once; solving is then immediate. Deterministic: no clock, one thread. */
export async function loadLinearSolver(): Promise<LinearSolver> {
  const highs = await loadHighs();
  const { optimal, infeasible, unbounded, unboundedOrInfeasible } = highs.constants.modelStatus;
  const model = highs.createModel();
  model.options.set({ output_flag: false, presolve: "off" });
  const record = { solved: 0, worst: { primal: 0, dual: 0, gap: 0 } };
  const answer = (program: LinearProgram): LinearAnswer => {
    model.run();
    const status = model.getModelStatus();
    if (status === infeasible || status === unboundedOrInfeasible) return { status: "infeasible" };
    if (status === unbounded) return { status: "unbounded" };
    if (status !== optimal) return { status: "failed" };
    const { colValue, rowDual } = model.getSolution();
    const certificate = certify(program, colValue, rowDual);
    record.solved++;
    record.worst.primal = Math.max(record.worst.primal, certificate.primal);
    record.worst.dual = Math.max(record.worst.dual, certificate.dual);
    record.worst.gap = Math.max(record.worst.gap, certificate.gap);
    let value = 0;
    for (let j = 0; j < program.cost.length; j++) value += (program.cost[j] ?? 0) * (colValue[j] ?? 0);
    return { status: "best", value, x: colValue, duals: rowDual, certificate };
  };
  return {
    record,
    solve(program) {
      const columns = program.cost.length;
      const rows = program.rowLower.length;
      model.passModel({
        numCols: columns,
        numRows: rows,
        colCost: program.cost,
        colLower: program.lower,
        colUpper: program.upper,
        rowLower: program.rowLower,
        rowUpper: program.rowUpper,
        matrix: {
          format: "csc",
          numRows: rows,
          numCols: columns,
          starts: program.starts,
          indices: program.rows,
          values: program.values,
        },
      });
      return answer(program);
    },
    solveAgain(program) {
      model.changeRowsBounds(
        { kind: "range", from: 0, to: program.rowLower.length - 1 },
        program.rowLower,
        program.rowUpper,
      );
      return answer(program);
    },
  };
}

/** Checks an answer against its program without trusting the solver. */
export function certify(program: LinearProgram, x: Float64Array, y: Float64Array): Certificate {
  const { cost, lower, upper, rowLower, rowUpper, starts, rows, values } = program;
  const activity = new Float64Array(rowLower.length);
  let primal = 0;
  let dual = 0;
  let value = 0;
  let other = 0;
  for (let j = 0; j < cost.length; j++) {
    const xj = x[j] ?? 0;
    value += (cost[j] ?? 0) * xj;
    primal = Math.max(primal, (lower[j] ?? 0) - xj, xj - (upper[j] ?? 0));
    let reduced = cost[j] ?? 0;
    for (let k = starts[j] ?? 0; k < (starts[j + 1] ?? 0); k++) {
      const r = rows[k] ?? 0;
      activity[r] = (activity[r] ?? 0) + (values[k] ?? 0) * xj;
      reduced -= (values[k] ?? 0) * (y[r] ?? 0);
    }
    const bound = reduced > 0 ? (lower[j] ?? 0) : (upper[j] ?? 0);
    if (Number.isFinite(bound)) other += reduced * bound;
    else dual = Math.max(dual, Math.abs(reduced));
  }
  for (let r = 0; r < activity.length; r++) {
    const a = activity[r] ?? 0;
    primal = Math.max(primal, (rowLower[r] ?? 0) - a, a - (rowUpper[r] ?? 0));
    const yr = y[r] ?? 0;
    const bound = yr > 0 ? (rowLower[r] ?? 0) : (rowUpper[r] ?? 0);
    if (yr === 0) continue;
    if (Number.isFinite(bound)) other += yr * bound;
    else dual = Math.max(dual, Math.abs(yr));
  }
  return { primal, dual, gap: Math.abs(value - other) / Math.max(1, Math.abs(value)) };
}

/** Collects a program column by column. */
export class ProgramBuilder {
  private readonly cost: number[] = [];
  private readonly lower: number[] = [];
  private readonly upper: number[] = [];
  private readonly starts: number[] = [0];
  private readonly rows: number[] = [];
  private readonly values: number[] = [];
  readonly rowLower: number[];
  readonly rowUpper: number[];

  constructor(rows: number) {
    this.rowLower = new Array<number>(rows).fill(0);
    this.rowUpper = new Array<number>(rows).fill(0);
  }

  /** Adds an unknown with its entries (row, value); zeros are skipped. */
  add(cost: number, lower: number, upper: number, entries: Iterable<readonly [number, number]>): number {
    for (const [row, value] of entries) this.entry(row, value);
    return this.close(cost, lower, upper);
  }

  /** One entry of the unknown that `close` will add; zeros are skipped. */
  entry(row: number, value: number): void {
    if (value === 0) return;
    if (row >= this.rowLower.length) throw new ProgrammingError("an entry lies outside the program");
    this.rows.push(row);
    this.values.push(value);
  }

  /** Adds the unknown whose entries were given since the last. */
  close(cost: number, lower: number, upper: number): number {
    this.cost.push(cost);
    this.lower.push(lower);
    this.upper.push(upper);
    this.starts.push(this.rows.length);
    return this.cost.length - 1;
  }

  build(): LinearProgram {
    return {
      cost: Float64Array.from(this.cost),
      lower: Float64Array.from(this.lower),
      upper: Float64Array.from(this.upper),
      rowLower: Float64Array.from(this.rowLower),
      rowUpper: Float64Array.from(this.rowUpper),
      starts: Int32Array.from(this.starts),
      rows: Int32Array.from(this.rows),
      values: Float64Array.from(this.values),
    };
  }
}
