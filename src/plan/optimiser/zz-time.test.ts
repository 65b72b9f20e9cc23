import { it } from "vitest";
import { dayLike, inventProblem } from "/work/main/src/plan/optimiser/invented-problems.ts";
import { solvePlan } from "/work/main/src/plan/optimiser/solve.ts";
it("t", () => {
  for (const lastTime of [false, true]) for (const rungs of [45, 75]) {
    const ts: number[] = []; const bad: unknown[] = []; let nodes = 0;
    for (let s = 1; s <= 40; s++) { const p = inventProblem(s, { ...dayLike, rungs, lastTime }); const t = performance.now(); const r = solvePlan(p); ts.push(performance.now() - t); nodes = Math.max(nodes, r.work.nodes); if (r.status !== "proven") bad.push([s, r.status, r.gap, r.work.nodes]); }
    ts.sort((a, b) => a - b); console.log(lastTime, rungs, ts[20], ts[37], ts[39], nodes, JSON.stringify(bad));
  }
}, 300000);
