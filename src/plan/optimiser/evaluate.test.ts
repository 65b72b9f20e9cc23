import { describe, expect, it } from "vitest";
import { evaluate, type RuleName } from "./evaluate.ts";
import { noLocks, type Option, type Plan, type SessionProblem } from "./problem.ts";

const option = (id: string, more: Partial<Option> = {}): Option => ({
  id,
  rung: id,
  activity: id,
  ladderIndex: 0,
  position: "p",
  helperPlace: "x",
  halfMinutes: 4,
  strength: 5,
  units: [{ purpose: "u", units: 1 }],
  worth: 10,
  freshnessLimit: null,
  freshnessCost: 0,
  prerequisite: null,
  substitutes: null,
  change: { kind: "kept", cost: 0 },
  ...more,
});
const PROBLEM: SessionProblem = {
  positions: ["p", "q", "r", "s", "t"].map((id) => ({
    id,
    wayBack: { halfMinutes: 2, strength: 5 },
    canEnd: id !== "t",
    entry: id === "s" ? null : { halfMinutes: 1, strength: 1, cost: 0 },
  })),
  links: ["pq", "qr", "rs", "st", "qp"].map((id) => ({
    id,
    from: id[0] ?? "",
    to: id[1] ?? "",
    halfMinutes: 2,
    strength: 2,
    ease: 0,
    threshold: id === "qr" ? 60 : null,
    kneelDowns: 0,
    sideChange: false,
  })),
  options: [
    ...["a", "b", "c", "d", "e"].map((id) => option(id)),
    option("a2", { rung: "a", strength: 6 }),
    option("l0", { activity: "l" }),
    option("l1", { activity: "l", ladderIndex: 1 }),
    option("l2", { activity: "l", ladderIndex: 2, position: "q" }),
    option("f", { position: "q", freshnessLimit: 3 }),
    option("n", { position: "q", prerequisite: "a" }),
    option("s1", { substitutes: "pair" }),
    option("s2", { substitutes: "pair", position: "q" }),
    ...["q1", "q2", "q3", "q4"].map((id) => option(id, { position: "q" })),
    option("r1", { position: "r" }),
    option("s3", { position: "s" }),
    option("t1", { position: "t" }),
    option("heavy", { position: "q", strength: 93 }),
    option("long", { position: "q", halfMinutes: 80 }),
    option("tiring", { position: "q", strength: 70 }),
  ],
  purposes: [{ id: "u", need: 50 }],
  lastTime: [],
  locks: noLocks,
  prices: { kneelDown: 12, sideChange: 6, helperPlace: 4, movingHalfMinute: 1, itemShort: 5 },
  workingHalfMinutes: 66,
  strength: 100,
};
const GOOD: Plan = {
  blocks: [
    { position: "p", links: [], options: ["a", "b"] },
    { position: "q", links: ["pq"], options: ["q1", "n"] },
  ],
};
const p = (...options: string[]) => ({ position: "p", links: [], options });
const q = (...options: string[]) => ({ position: "q", links: ["pq"], options });

/** For each rule a plan that breaks it and no other, and what is locked meanwhile. */
const BROKEN: readonly (readonly [RuleName, Plan, Partial<SessionProblem["locks"]>?])[] = [
  ["known-names", { blocks: [p("a", "nobody")] }],
  ["at-least-one-position", { blocks: [] }],
  ["position-once", { blocks: [p("a"), q("q1"), { position: "p", links: ["qp"], options: ["b"] }] }],
  ["items-in-position", { blocks: [p("a", "b", "c", "d", "e")] }],
  ["items-at-most", { blocks: [p("a", "b", "c", "d"), q("q1", "q2", "q3", "q4")] }],
  ["position-of-item", { blocks: [p("a", "q1")] }],
  ["rung-once", { blocks: [p("a", "a2")] }],
  ["neighbouring-rungs", { blocks: [p("l0"), q("l2")] }],
  ["one-of-substitutes", { blocks: [p("s1"), q("s2")] }],
  ["prerequisite-first", { blocks: [p("b"), q("n")] }],
  ["moves-join", { blocks: [p("a"), { position: "q", links: [], options: ["q1"] }] }],
  ["session-can-begin", { blocks: [{ position: "s", links: [], options: ["s3"] }] }],
  ["session-can-end", { blocks: [{ position: "t", links: [], options: ["t1"] }] }],
  ["working-minutes", { blocks: [p("a"), q("long")] }],
  ["strength-for-way-back", { blocks: [p("a"), q("heavy")] }],
  [
    "strength-for-move",
    {
      blocks: [q("tiring"), { position: "r", links: ["qr"], options: ["r1"] }].map((block, k) =>
        k === 0 ? { ...block, links: [] } : block,
      ),
    },
  ],
  ["fresh-enough", { blocks: [p("a"), q("f")] }],
  ["must-have", GOOD, { mustHave: ["c"] }],
  ["left-out", GOOD, { leaveOut: ["a"] }],
  ["barred-position", GOOD, { barPositions: ["q"] }],
  ["starts-in", GOOD, { startIn: "q" }],
];

describe("the one judge of a plan", () => {
  it("finds nothing wrong with a plan that keeps the rules, and adds its worth up from its parts", () => {
    const judged = evaluate(PROBLEM, GOOD);
    expect(judged.broken).toEqual([]);
    // By hand: coverage 50 + 30 + 15 + 5, own 40, two helper places 8, one move of two half-minutes 2, one item short 5.
    expect(judged.worth).toMatchObject({ coverage: 100, own: 40, helperPlaces: -8, moves: -2, short: -5, total: 125 });
    // Entry 1, two items, the move, two items, and the way back.
    expect(judged.halfMinutes).toBe(1 + 8 + 2 + 8 + 2);
    expect(judged.strength).toBe(1 + 10 + 2 + 10);
  });
  for (const [rule, plan, locks = {}] of BROKEN)
    it(`refuses a plan that breaks only ${rule}`, () => {
      const { broken } = evaluate({ ...PROBLEM, locks: { ...noLocks, ...locks } }, plan);
      expect([...new Set(broken.map((each) => each.rule))]).toEqual([rule]);
    });
  it("refuses more than two rungs of an activity and more than four positions, whatever else they break", () => {
    const three = evaluate(
      { ...PROBLEM, options: [...PROBLEM.options, option("l1b", { activity: "l", ladderIndex: 1, rung: "other" })] },
      { blocks: [p("l0", "l1", "l1b")] },
    );
    expect(three.broken.map((each) => each.rule)).toContain("rungs-of-activity");
    const five: Plan = {
      blocks: [
        p("a"),
        q("q1"),
        { position: "r", links: ["qr"], options: ["r1"] },
        { position: "s", links: ["rs"], options: ["s3"] },
        { position: "t", links: ["st"], options: ["t1"] },
      ],
    };
    expect(evaluate(PROBLEM, five).broken.map((each) => each.rule)).toContain("positions-at-most");
  });
});
