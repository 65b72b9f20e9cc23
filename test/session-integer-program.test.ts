import { beforeAll, describe, expect, it } from "vitest";
import { EXAMPLES, readExample } from "./helpers/example-cases.ts";
import { dayLike, inventProblem } from "./helpers/session-judge/invented-problems.ts";
import {
  type IntegerProgram,
  judgeValues,
  valuesOf,
  writeIntegerProgram,
} from "./helpers/session-judge/integer-program.ts";
import {
  type IntegerAnswer,
  type IntegerWay,
  loadIntegerSolver,
} from "./helpers/session-judge/solve-integer-program.ts";
import { loadLinearSolver } from "../src/mechanics/linear-program/linear-program.ts";
import { keepPeople, type People } from "../src/app/engine/person-today.ts";
import { evaluate } from "../src/plan/optimiser/evaluate.ts";
import { noLocks, type SessionProblem } from "../src/plan/optimiser/problem.ts";
import { type SolvedPlan, solveSession } from "../src/plan/optimiser/solve-session.ts";
import { ACTIVITIES } from "../src/practice/catalogue.ts";
import { buildProblem } from "../src/plan/session/build-problem.ts";

/** The written definition, an integer program, solved by HiGHS (an open solver of linear and integer programs). */
let solve: (program: IntegerProgram, way?: IntegerWay) => IntegerAnswer;
let people: People;
beforeAll(async () => {
  solve = await loadIntegerSolver();
  people = keepPeople(await loadLinearSolver());
}, 30_000);

/**
 * The search's plan stands in the program with the same worth and breaks no row; the relaxation is not below it; the
 * program finds nothing better. With a start the search's plan is handed over first, so that only the proof is left to do.
 */
function compare(problem: SessionProblem, name: string, withStart: boolean): { solved: SolvedPlan; bound: number } {
  const solved = solveSession(problem);
  const program = writeIntegerProgram(problem);
  if (program === null || solved.plan === null) {
    expect(solved.plan, name).toBeNull();
    if (program !== null) expect(solve(program).status, name).toBe("none");
    return { solved, bound: 0 };
  }
  expect(solved.status, name).toBe("proven");
  expect(evaluate(problem, solved.plan).broken, name).toEqual([]);
  const values = valuesOf(program, solved.plan);
  if (values === null) throw new Error(`${name}: a plan the program does not know`);
  const judged = judgeValues(program, values);
  expect(judged.broken, name).toEqual([]);
  expect(judged.worth, name).toBe(solved.worth);
  const relaxed = solve(program, { relaxed: true });
  expect(relaxed.bound, name).toBeGreaterThanOrEqual(solved.worth - 1e-6);
  const whole = solve(program, withStart ? { start: values } : {});
  expect(whole.status, name).toBe("best");
  expect(whole.worth, name).toBeCloseTo(solved.worth, 5);
  expect(whole.bound, name).toBeLessThan(solved.worth + 1);
  return { solved, bound: relaxed.bound };
}

describe("the session search beside the integer program", () => {
  it("finds the same worth on 64 invented problems, found by each on its own", () => {
    let none = 0;
    for (let seed = 1; seed <= 64; seed++) {
      const problem = inventProblem(seed, {
        ...dayLike,
        positions: 3 + (seed % 4),
        links: 8 + (seed % 5),
        rungs: 8 + (seed % 3) * 4,
        purposes: 4,
        halfMinutes: 24 + (seed % 4) * 10,
        lastTime: seed % 2 === 0,
      });
      const rung = problem.options[seed % problem.options.length]?.rung ?? "";
      const place = problem.positions[seed % problem.positions.length]?.id ?? "";
      const locks = {
        ...noLocks,
        ...(seed % 5 === 0 ? { mustHave: [rung] } : {}),
        ...(seed % 7 === 0 ? { startIn: place } : {}),
        ...(seed % 8 === 0 ? { barPositions: [place] } : {}),
        ...(seed % 9 === 0 ? { leaveOut: [rung] } : {}),
      };
      if (compare({ ...problem, locks }, `seed ${seed}`, false).solved.plan === null) none++;
    }
    console.log(`integer program, 64 invented problems: same worth, ${none} of them with nothing that fits in both`);
    expect(none).toBeGreaterThan(0);
    expect(none).toBeLessThan(20);
  }, 120_000);

  it("proves the search's worth on at least 20 whole problems of the nine examples, each with a third of the catalogue", () => {
    let loosest = 0;
    let count = 0;
    EXAMPLES.forEach((example, third) => {
      const person = people.today(readExample(example));
      // The program grows faster than the catalogue: every third ladder of it is as much as fits a test.
      const ladders = ACTIVITIES.filter((_, k) => k % 3 === third % 3);
      const rungs = ladders.flatMap((activity) =>
        activity.rungs.flatMap((rung) => person.rung({ activity: activity.id, rung: rung.id }) ?? []),
      );
      for (const minutes of [18, 20, 23]) {
        const { problem } = buildProblem(person.findings, person.precautions, rungs, person.ways, minutes, noLocks);
        const { solved, bound } = compare(problem, `${example}, ${minutes} minutes`, true);
        if (solved.plan === null) continue;
        loosest = Math.max(loosest, bound - solved.worth);
        count++;
      }
    });
    console.log(
      `integer program, ${count} whole problems: proven; the relaxation lies at most ${Math.round(loosest)} points above`,
    );
    expect(count).toBeGreaterThanOrEqual(20);
  }, 180_000);
});
