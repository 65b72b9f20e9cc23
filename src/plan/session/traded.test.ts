import { describe, expect, it } from "vitest";
import { noLocks, type Option, type SessionProblem } from "../optimiser/problem.ts";
import { solveSession } from "../optimiser/solve-session.ts";
import { tradedIn } from "./traded.ts";

function option(id: string, position: string, purpose: string, more: Partial<Option> = {}): Option {
  return {
    id,
    rung: id,
    activity: id,
    ladderIndex: 0,
    position,
    helperPlace: `beside ${position}`,
    halfMinutes: 8,
    strength: 5,
    units: [{ purpose, units: 1 }],
    worth: 4,
    freshnessLimit: null,
    freshnessCost: 0,
    prerequisite: null,
    substitutes: null,
    change: { kind: "new", cost: 0 },
    ...more,
  };
}
const node = (id: string) => ({
  id,
  wayBack: { halfMinutes: 2, strength: 1 },
  canEnd: true,
  entry: { halfMinutes: 1, strength: 1, cost: 3 },
});
const PROBLEM: SessionProblem = {
  positions: [node("hook-lying")],
  links: [],
  options: [option("bridge", "hook-lying", "liftSeat"), option("roll", "hook-lying", "bedMobility")],
  purposes: [
    { id: "liftSeat", need: 40 },
    { id: "bedMobility", need: 30 },
    { id: "stepping", need: 20 },
  ],
  lastTime: [],
  locks: noLocks,
  prices: { kneelDown: 8, sideChange: 6, helperPlace: 2, movingHalfMinute: 1, itemShort: 5 },
  workingHalfMinutes: 40,
  strength: 100,
};

// Figures by hand from the small problem above.
describe("what was traded against what", () => {
  const { plan } = solveSession(PROBLEM);
  it("says what was gained, what it cost, what is not reached and what is left", () => {
    if (plan === null) throw new Error("no plan");
    const lines = tradedIn(PROBLEM, plan);
    // 40 + 30 for the purposes, 4 + 4 for the two activities; three items short of five at 5 points each.
    expect(lines[0]).toBe("Gained: 70 points for what the session is for, 8 points for the activities themselves.");
    expect(lines).toContain("Given up: 15 points for having fewer items than a full session.");
    expect(lines).toContain("Wanted and not reached today: stepping.");
    // 40 half-minutes less 8 + 8 of work, 1 to begin and 2 to come back.
    expect(lines.at(-1)).toBe("Still free: 10.5 minutes.");
  });
  it("refuses a plan that breaks a rule", () => {
    if (plan === null) throw new Error("no plan");
    expect(() => tradedIn({ ...PROBLEM, workingHalfMinutes: 10 }, plan)).toThrow(/working-minutes/);
  });
});
