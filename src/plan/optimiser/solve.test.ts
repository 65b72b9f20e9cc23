import { describe, expect, it } from "vitest";
import { seededStream } from "../../quantity/random.ts";
import { evaluate } from "./evaluate.ts";
import { dayLike, inventProblem, shuffle } from "./invented-problems.ts";
import { noLocks, type Link, type Option, type PlanBlock, type SessionProblem } from "./problem.ts";
import { solvePlan } from "./solve.ts";

/** Every plan there is, scored by the judge alone: all orders of positions, all ways without a loop, all choices, all orders in a position. */
function bestByBruteForce(problem: SessionProblem): number | null {
  let best: number | null = null;
  const ways = (from: string, to: string): string[][] => {
    const found: string[][] = [];
    const walk = (here: string, seen: string[], path: Link[]): void => {
      if (here === to && path.length > 0) { found.push(path.map((l) => l.id)); return; }
      for (const link of problem.links) if (link.from === here && !seen.includes(link.to)) walk(link.to, [...seen, link.to], [...path, link]);
    };
    walk(from, [from], []);
    return found;
  };
  const subsets = (options: readonly Option[]): string[][] => {
    const orders: string[][] = [];
    const extend = (chosen: Option[]): void => {
      if (chosen.length > 0) orders.push(chosen.map((o) => o.id));
      if (chosen.length === 4) return;
      for (const o of options) {
        const last = chosen.at(-1);
        const bound = chosen.some((c) => c.prerequisite !== null) || o.prerequisite !== null || options.some((x) => chosen.some((c) => c.rung === x.prerequisite));
        if (chosen.some((c) => c.rung === o.rung) || (!bound && last && last.id > o.id)) continue;
        extend([...chosen, o]);
      }
    };
    extend([]);
    return orders;
  };
  const allWays = new Map(problem.positions.flatMap((a) => problem.positions.map((b) => [`${a.id}>${b.id}`, a === b ? [] : ways(a.id, b.id)] as const)));
  const allBlocks = new Map(problem.positions.map((q) => [q.id, subsets(problem.options.filter((o) => o.position === q.id))]));
  const extend = (blocks: PlanBlock[]): void => {
    if (blocks.length > 0) {
      const judged = evaluate(problem, { blocks });
      if (judged.broken.length === 0) best = Math.max(best ?? Number.NEGATIVE_INFINITY, judged.worth.total);
      if (judged.broken.some((b) => !["must-have", "session-can-end", "working-minutes"].includes(b.rule)) || judged.halfMinutes - 8 > problem.workingHalfMinutes) return;
    }
    if (blocks.length === 4) return;
    const last = blocks.at(-1)?.position;
    for (const q of problem.positions) {
      if (blocks.some((b) => b.position === q.id)) continue;
      for (const links of last === undefined ? [[]] : (allWays.get(`${last}>${q.id}`) ?? [])) for (const options of allBlocks.get(q.id) ?? []) extend([...blocks, { position: q.id, links, options }]);
    }
  };
  extend([]);
  return best;
}

function inventSmall(seed: number): SessionProblem {
  const next = seededStream(seed * 7919);
  const whole = (low: number, high: number) => low + Math.floor(next() * (high - low + 1));
  const problem = inventProblem(seed, { positions: whole(2, 4), rungs: whole(3, 7), links: whole(3, 7), purposes: whole(1, 4), doses: whole(1, 2), halfMinutes: whole(10, 60), lastTime: next() < 0.5 });
  const rungs = [...new Set(problem.options.map((o) => o.rung))];
  const some = (share: number, from: readonly string[]) => from.filter(() => next() < share);
  return {
    ...problem,
    strength: whole(15, 100),
    locks: next() < 0.5 ? noLocks : { mustHave: some(0.12, rungs), leaveOut: some(0.12, rungs), barPositions: some(0.1, problem.positions.map((p) => p.id)), startIn: next() < 0.2 ? (problem.positions[0]?.id ?? null) : null },
  };
}

describe("the search for the session worth most", () => {
  it("equals brute force on 300 small problems, some of which have no answer", () => {
    let empty = 0;
    for (let seed = 1; seed <= 300; seed += 1) {
      const problem = inventSmall(seed);
      const best = bestByBruteForce(problem);
      const solved = solvePlan(problem);
      expect([seed, solved.judged?.worth.total ?? null, solved.status]).toEqual([seed, best, best === null ? "empty" : "proven"]);
      if (best === null) empty += 1;
    }
    expect(empty).toBeGreaterThanOrEqual(10);
    expect(empty).toBeLessThan(200);
  }, 120_000);

  it("gives the same plan whatever the order of the input and whatever prices it starts from", () => {
    for (let seed = 1; seed <= 2; seed += 1) {
      const problem = inventProblem(seed, { ...dayLike, rungs: 36, lastTime: seed % 2 === 0 });
      const solved = solvePlan(problem);
      expect(solved.status).toBe("proven");
      const mixed: SessionProblem = { ...problem, positions: shuffle(problem.positions, seed), links: shuffle(problem.links, seed + 1), options: shuffle(problem.options, seed + 2), purposes: shuffle(problem.purposes, seed + 3) };
      expect(JSON.stringify(solvePlan(mixed))).toBe(JSON.stringify(solved));
      const next = seededStream(seed);
      const other = solvePlan(problem, { startPrices: (n) => ({ units: Array.from({ length: n }, () => Math.floor(next() * 9000)), halfMinute: Math.floor(next() * 400), strength: Math.floor(next() * 400) }) });
      expect(other.status).toBe("proven");
      expect(other.plan).toEqual(solved.plan);
    }
  }, 120_000);

  it("never loses worth by more minutes, strength or rungs, and never gains by a wish", () => {
    for (let seed = 11; seed <= 12; seed += 1) {
      const problem = inventProblem(seed, { ...dayLike, rungs: 30, halfMinutes: 44 });
      const total = (changed: Partial<SessionProblem>) => solvePlan({ ...problem, ...changed }).judged?.worth.total ?? Number.NEGATIVE_INFINITY;
      const plain = total({});
      expect(total({ workingHalfMinutes: 60 })).toBeGreaterThanOrEqual(plain);
      expect(total({ strength: 120 })).toBeGreaterThanOrEqual(plain);
      expect(total({ options: problem.options.slice(0, 40) })).toBeLessThanOrEqual(plain);
      const chosen = solvePlan(problem).plan?.blocks.flatMap((b) => b.options) ?? [];
      const inside = problem.options.find((o) => o.id === chosen[0])?.rung ?? "";
      const outside = problem.options.find((o) => !chosen.some((id) => id.startsWith(o.rung)))?.rung ?? "";
      expect(total({ locks: { ...noLocks, leaveOut: [inside] } })).toBeLessThanOrEqual(plain);
      expect(total({ locks: { ...noLocks, leaveOut: [outside] } })).toBe(plain);
      expect(total({ locks: { ...noLocks, mustHave: [outside] } })).toBeLessThanOrEqual(plain);
    }
  }, 120_000);

  it("keeps the way back affordable at every point, and its bound above its answer when stopped early", () => {
    for (let seed = 21; seed <= 22; seed += 1) {
      const problem = inventProblem(seed, { ...dayLike, rungs: 36 });
      const full = solvePlan(problem);
      for (const point of full.judged?.points ?? []) expect(point.spent + point.wayBack).toBeLessThanOrEqual(problem.strength);
      const early = solvePlan(problem, { mostNodes: 60 });
      expect(early.bestBound).toBeGreaterThanOrEqual(full.judged?.worth.total ?? 0);
      expect(early.work.nodes).toBeLessThanOrEqual(60 + 1);
      if (early.judged) expect(early.gap).toBe(early.bestBound - early.judged.worth.total);
    }
  }, 120_000);
});

