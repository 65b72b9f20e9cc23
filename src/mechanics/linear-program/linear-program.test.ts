import { beforeAll, describe, expect, it } from "vitest";
import { seededStream } from "../../quantity/random.ts";
import { type LinearSolver, loadLinearSolver, ProgramBuilder } from "./linear-program.ts";

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadLinearSolver();
});

describe("linear programs", () => {
  it("are solved as enumerating every corner solves them, each with its certificate", () => {
    const random = seededStream(11);
    let compared = 0;
    for (let trial = 0; trial < 200; trial++) {
      // Two unknowns in a box under three rows: corners are crossings of two of the lines.
      const cost = [random() * 2 - 1, random() * 2 - 1] as const;
      const rows = Array.from({ length: 3 }, () => [random() * 2 - 1, random() * 2 - 1, random() * 3] as const);
      const builder = new ProgramBuilder(3);
      rows.forEach((row, r) => {
        builder.rowLower[r] = Number.NEGATIVE_INFINITY;
        builder.rowUpper[r] = row[2];
      });
      for (const k of [0, 1] as const)
        builder.add(
          cost[k],
          0,
          4,
          rows.map((row, r) => [r, row[k]] as const),
        );
      const answer = solver.solve(builder.build());
      const lines = [...rows, [1, 0, 0], [0, 1, 0], [1, 0, 4], [0, 1, 4]] as const;
      let best = Number.MAX_VALUE;
      for (const a of lines) {
        for (const b of lines) {
          const d = a[0] * b[1] - a[1] * b[0];
          if (Math.abs(d) < 1e-9) continue;
          const x = (a[2] * b[1] - a[1] * b[2]) / d;
          const y = (a[0] * b[2] - a[2] * b[0]) / d;
          const inside =
            x > -1e-9 &&
            y > -1e-9 &&
            x < 4 + 1e-9 &&
            y < 4 + 1e-9 &&
            rows.every((row) => row[0] * x + row[1] * y < row[2] + 1e-9);
          if (inside) best = Math.min(best, cost[0] * x + cost[1] * y);
        }
      }
      if (answer.status !== "best") throw new Error(answer.status);
      expect(answer.value).toBeCloseTo(best, 6);
      expect(answer.certificate.primal).toBeLessThan(1e-7);
      expect(answer.certificate.dual).toBeLessThan(1e-7);
      expect(answer.certificate.gap).toBeLessThan(1e-7);
      compared++;
    }
    console.log(`linear programs: ${compared} against all corners`);
  });

  it("says when there is no answer", () => {
    const builder = new ProgramBuilder(1);
    builder.rowLower[0] = 3;
    builder.rowUpper[0] = 5;
    builder.add(1, 0, 2, [[0, 1]]);
    expect(solver.solve(builder.build()).status).toBe("infeasible");
  });
});
