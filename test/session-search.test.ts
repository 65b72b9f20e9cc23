import { describe, expect, it } from "vitest";
import { evaluate } from "../src/plan/optimiser/evaluate.ts";
import { solveSession } from "../src/plan/optimiser/solve-session.ts";
import { dayLike, inventProblem, shuffle } from "./helpers/session-judge/invented-problems.ts";
import { solvePlan } from "./helpers/session-judge/solve.ts";

/** A second method, written apart from the first: prices tried on every set of positions, every unbeaten path, other tie rules. */
describe("the session search beside a second method", () => {
  it("proves the same worth on day-sized problems, with and without a last session", () => {
    let compared = 0;
    for (const lastTime of [true, false]) {
      for (let seed = 1; seed <= 6; seed++) {
        const problem = inventProblem(seed, { ...dayLike, rungs: seed === 3 ? 45 : 28, lastTime });
        const ours = solveSession(problem);
        const theirs = solvePlan(problem);
        expect(ours.status, `seed ${seed}`).toBe("proven");
        expect(theirs.status, `seed ${seed}`).toBe("proven");
        expect(ours.worth, `seed ${seed}`).toBe(theirs.judged?.worth.total);
        const judged = evaluate(problem, ours.plan ?? { blocks: [] });
        expect(judged.broken).toEqual([]);
        expect(judged.worth.total).toBe(ours.worth);
        for (const point of judged.points) expect(point.spent + point.wayBack).toBeLessThanOrEqual(problem.strength);
        compared++;
      }
    }
    console.log(`two methods, ${compared} problems, same worth and both proven`);
  }, 60_000);
  it("gives the same worth for shuffled input", () => {
    for (let seed = 20; seed < 24; seed++) {
      const problem = inventProblem(seed, { ...dayLike, rungs: 28, lastTime: true });
      const shuffled = {
        ...problem,
        options: shuffle([...problem.options], seed),
        links: shuffle([...problem.links], seed),
        positions: shuffle([...problem.positions], seed),
      };
      expect(solveSession(shuffled).worth).toBe(solveSession(problem).worth);
    }
  }, 60_000);
  it("takes the same steps every time: the count is frozen for one problem", () => {
    const problem = inventProblem(7, { ...dayLike, rungs: 28, lastTime: false });
    const first = solveSession(problem);
    expect(solveSession(problem).nodes).toBe(first.nodes);
    expect(first.nodes).toBeLessThan(400_000);
  }, 60_000);
});
