import loadHighs from "highs";
import type { IntegerProgram } from "./integer-program.ts";

/** `best` is proven; `none`: nothing fits; `open`: the work ran out, the bound holds. */
export interface IntegerAnswer {
  readonly status: "best" | "none" | "open";
  readonly worth: number;
  readonly bound: number;
}

export interface IntegerWay {
  /** Nothing has to be whole. */
  readonly relaxed?: boolean;
  /** A plan in hand: it is not believed, only used to cut off what is worth less. */
  readonly start?: Float64Array;
  /** Branches before it gives up. */
  readonly nodes?: number;
}

/** Solves integer programs, or their relaxation. A new model each: repeated use grows. */
export async function loadIntegerSolver(): Promise<(program: IntegerProgram, way?: IntegerWay) => IntegerAnswer> {
  const highs = await loadHighs();
  const { optimal, infeasible } = highs.constants.modelStatus;
  const { continuous, integer } = highs.constants.variableType;
  return ({ rows, base }, { relaxed = false, start, nodes = 20_000 } = {}) => {
    const { unknowns, rows: lines } = rows;
    const starts = new Int32Array(lines.length + 1);
    const indices: number[] = [];
    const values: number[] = [];
    lines.forEach((row, r) => {
      for (const [unknown, factor] of row.terms) {
        indices.push(unknown);
        values.push(factor);
      }
      starts[r + 1] = indices.length;
    });
    const model = highs.createModel();
    try {
      model.options.set({
        output_flag: false,
        mip_rel_gap: 0,
        // Worths are whole: what is less than one point above cannot be there.
        mip_abs_gap: 0.99,
        mip_heuristic_effort: start === undefined ? 0.05 : 0,
        mip_max_nodes: nodes,
      });
      model.passModel({
        numCols: unknowns.length,
        numRows: lines.length,
        sense: highs.constants.objectiveSense.maximize,
        colCost: Float64Array.from(unknowns, ({ worth }) => worth),
        colLower: Float64Array.from(unknowns, ({ low }) => low),
        colUpper: Float64Array.from(unknowns, ({ high }) => high),
        rowLower: Float64Array.from(lines, ({ low }) => low),
        rowUpper: Float64Array.from(lines, ({ high }) => high),
        ...(relaxed ? {} : { integrality: unknowns.map(({ whole }) => (whole ? integer : continuous)) }),
        matrix: {
          format: "csr",
          numRows: lines.length,
          numCols: unknowns.length,
          starts,
          indices: Int32Array.from(indices),
          values: Float64Array.from(values),
        },
      });
      if (start !== undefined) model.setSolution({ colValue: start });
      model.run();
      const status = model.getModelStatus();
      if (status === infeasible) return { status: "none", worth: 0, bound: Number.NEGATIVE_INFINITY };
      const worth = base + Number(model.info.get("objective_function_value"));
      const bound = relaxed ? worth : base + Number(model.info.get("mip_dual_bound"));
      return status === optimal ? { status: "best", worth, bound } : { status: "open", worth, bound };
    } finally {
      model.dispose();
    }
  };
}
