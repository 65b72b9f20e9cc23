import { describe, expect, it } from "vitest";
import { seededStream } from "../../quantity/random.ts";
import { evaluate } from "./evaluate.ts";
import { noLocks, type Option, type Plan, type SessionProblem } from "./problem.ts";
import { solveSession } from "./solve-session.ts";

/** A small invented problem: few positions and options, so that every plan can be looked at. */
function invent(seed: number, optionCount: number): SessionProblem {
  const next = seededStream(seed);
  const whole = (most: number) => Math.floor(next() * (most + 1));
  const positions = ["p", "q", "r"].map((id) => ({
    id,
    wayBack: { halfMinutes: whole(4), strength: whole(12) },
    canEnd: next() > 0.1,
    entry: next() > 0.15 ? { halfMinutes: whole(3), strength: whole(6), cost: whole(8) } : null,
  }));
  const links = ["pq", "qp", "qr", "rq"].map((id) => ({
    id,
    from: id[0] ?? "",
    to: id[1] ?? "",
    halfMinutes: 1 + whole(4),
    strength: whole(8),
    ease: 0,
    threshold: next() > 0.8 ? 30 : null,
    kneelDowns: whole(1),
    sideChange: next() > 0.5,
  }));
  const options = Array.from({ length: optionCount }, (_, k): Option => {
    const rung = `a${k % 3}/${Math.floor(k / 3) % 3}`;
    return {
      id: `o${k}`,
      rung,
      activity: `a${k % 3}`,
      ladderIndex: Math.floor(k / 3) % 3,
      position: ["p", "q", "r"][k % 3] ?? "p",
      helperPlace: ["x", "y"][whole(1)] ?? "x",
      halfMinutes: 3 + whole(9),
      strength: 2 + whole(18),
      units: [{ purpose: ["u", "v"][whole(1)] ?? "u", units: 1 + whole(1) }],
      worth: whole(24) - 6,
      freshnessLimit: next() > 0.7 ? 30 : null,
      freshnessCost: whole(6),
      prerequisite: next() > 0.85 ? "a0/0" : null,
      substitutes: next() > 0.85 ? "s" : null,
      change: next() > 0.5 ? { kind: "kept", cost: 0 } : { kind: "new", cost: whole(20) },
    };
  });
  return {
    positions,
    links,
    options,
    purposes: [
      { id: "u", need: 60 },
      { id: "v", need: 30 },
    ],
    lastTime: [{ rung: "a1/0", dropCost: whole(20) }],
    locks: {
      ...noLocks,
      mustHave: next() > 0.8 ? ["a1/1"] : [],
      startIn: next() > 0.85 ? "q" : null,
      leaveOut: next() > 0.8 ? ["a2/0"] : [],
      barPositions: next() > 0.9 ? ["r"] : [],
    },
    prices: { kneelDown: 12, sideChange: 6, helperPlace: 4, movingHalfMinute: 1, itemShort: 5 },
    workingHalfMinutes: 30 + whole(16),
    strength: 60 + whole(40),
  };
}

/** Every plan there is: all walks over the positions by direct or two-step ways, all selections, all orders inside a position. */
function bruteForce(problem: SessionProblem): number | null {
  let best: number | null = null;
  const walks: string[][] = [];
  const grow = (walk: string[]): void => {
    if (walk.length > 0) walks.push(walk);
    for (const { id } of problem.positions) if (!walk.includes(id)) grow([...walk, id]);
  };
  grow([]);
  const waysBetween = (from: string, to: string): string[][] =>
    problem.links.flatMap((first) =>
      first.from !== from
        ? []
        : first.to === to
          ? [[first.id]]
          : problem.links
              .filter((second) => second.from === first.to && second.to === to)
              .map((second) => [first.id, second.id]),
    );
  const permute = (ids: readonly string[]): string[][] =>
    ids.length <= 1
      ? [[...ids]]
      : ids.flatMap((id) => permute(ids.filter((each) => each !== id)).map((rest) => [id, ...rest]));
  for (const walk of walks) {
    let links: string[][][] = [[]];
    links = walk
      .slice(1)
      .reduce<string[][][]>(
        (all, to, k) => all.flatMap((before) => waysBetween(walk[k] ?? "", to).map((way) => [...before, way])),
        [[]],
      );
    const options = problem.options.filter((option) => walk.includes(option.position));
    for (let mask = 1; mask < 1 << options.length; mask++) {
      const chosen = options.filter((_, k) => (mask >> k) & 1);
      if (chosen.length > 7 || walk.some((position) => !chosen.some((option) => option.position === position)))
        continue;
      for (const way of links) {
        let orders: Plan[] = [{ blocks: [] }];
        walk.forEach((position, k) => {
          const inside = permute(chosen.filter((option) => option.position === position).map((option) => option.id));
          orders = orders.flatMap((plan) =>
            inside.map((ids) => ({
              blocks: [...plan.blocks, { position, links: k === 0 ? [] : (way[k - 1] ?? []), options: ids }],
            })),
          );
        });
        for (const plan of orders) {
          const judged = evaluate(problem, plan);
          if (judged.broken.length === 0 && (best === null || judged.worth.total > best)) best = judged.worth.total;
        }
      }
    }
  }
  return best;
}

describe("the session search", () => {
  it("finds what looking at every plan finds, on invented problems with locks, thresholds and none that fits", () => {
    let empty = 0;
    for (let seed = 1; seed <= 250; seed++) {
      const problem = invent(seed, seed % 5 === 0 ? 8 : 6);
      const best = bruteForce(problem);
      const solved = solveSession(problem);
      if (best === null) {
        empty++;
        expect(solved.status, `seed ${seed}`).toBe("empty");
        continue;
      }
      expect(solved.status, `seed ${seed}`).toBe("proven");
      expect(solved.worth, `seed ${seed}`).toBe(best);
      const judged = evaluate(problem, solved.plan ?? { blocks: [] });
      expect(judged.broken, `seed ${seed}`).toEqual([]);
      expect(judged.worth.total, `seed ${seed}`).toBe(solved.worth);
    }
    expect(empty).toBeGreaterThan(3);
  });
  it("gives the same plan whatever the order of options and positions", () => {
    for (let seed = 300; seed < 330; seed++) {
      const problem = invent(seed, 9);
      const turned = {
        ...problem,
        options: [...problem.options].reverse(),
        positions: [...problem.positions].reverse(),
        links: [...problem.links].reverse(),
      };
      expect(solveSession(turned).worth).toBe(solveSession(problem).worth);
    }
  });
  it("is never worth less with more minutes, more strength or one option more", () => {
    for (let seed = 400; seed < 440; seed++) {
      const problem = invent(seed, 8);
      const base = solveSession(problem);
      if (base.status === "empty") continue;
      expect(
        solveSession({ ...problem, workingHalfMinutes: problem.workingHalfMinutes + 5 }).worth,
      ).toBeGreaterThanOrEqual(base.worth);
      expect(solveSession({ ...problem, strength: problem.strength + 10 }).worth).toBeGreaterThanOrEqual(base.worth);
      const fewer = solveSession({ ...problem, options: problem.options.slice(0, -1) });
      if (fewer.status !== "empty") expect(fewer.worth).toBeLessThanOrEqual(base.worth);
    }
  });
  it("putting a rung in by force or leaving one out never raises the worth", () => {
    for (let seed = 500; seed < 530; seed++) {
      const problem = { ...invent(seed, 8), locks: noLocks };
      const base = solveSession(problem);
      if (base.status === "empty") continue;
      for (const option of problem.options) {
        const forced = solveSession({ ...problem, locks: { ...noLocks, mustHave: [option.rung] } });
        if (forced.status !== "empty") expect(forced.worth).toBeLessThanOrEqual(base.worth);
        expect(solveSession({ ...problem, locks: { ...noLocks, leaveOut: [option.rung] } }).worth).toBeLessThanOrEqual(
          base.worth,
        );
      }
    }
  });
});
