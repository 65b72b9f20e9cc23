import { describe, expect, it } from "vitest";
import type { PreviousItem, PreviousSession } from "../findings.ts";
import type { EffortModel } from "./evidence.ts";
import { readLogs } from "./log-evidence.ts";
import { LOG_READINGS } from "./log-reading.data.ts";
import { readLoggedItem } from "./log-reading.ts";

const ITEM: PreviousItem = {
  activity: "bridge",
  rung: "full-lift",
  done: "asPlanned",
  sets: 2,
  repetitions: 8,
  help: "alone",
  faults: [],
  pain: null,
  exertion: null,
  gaveWay: null,
};
const session = (...items: PreviousItem[]): PreviousSession => ({ date: null, items, stopped: null });
const read = (more: Partial<PreviousItem>) => {
  const item = { ...ITEM, ...more };
  return readLoggedItem(session(item), item);
};

// Common practice, no source: what a practitioner reads from a set.
describe("what held a logged set back", () => {
  it.each([
    ["strength", { gaveWay: { joint: "knee", side: "weak", how: "folds" } }],
    ["tired", { worse: "withinSet" }],
    ["tired", { worse: "laterSets", help: "minimal" }],
    ["quality", { faults: ["rolls-back"], exertion: 3 }],
    ["hard", { faults: ["rolls-back"], exertion: 8 }],
    ["hard", { exertion: 7 }],
    ["pain", { pain: 5, exertion: 8 }],
    ["plain", { faults: ["rolls-back"] }],
    ["plain", { help: "moderate" }],
  ] as const)("%s: %j", (id, more) => {
    expect(read(more)?.id).toBe(id);
  });

  it("reads help late in a long session as tiredness, early as it stands, and only after a good beginning", () => {
    const helped = { ...ITEM, rung: "weak-foot-up", done: "changed", help: "minimal" } as const;
    const others = [1, 2, 3].map((k) => ({ ...ITEM, rung: `other-${k}` }));
    expect(readLoggedItem(session(...others, helped), helped)?.id).toBe("tired");
    expect(readLoggedItem(session(helped, ...others), helped)?.id).toBe("plain");
    const bad = others.map((each) => ({ ...each, done: "changed" as const }));
    expect(readLoggedItem(session(...bad, helped), helped)?.id).toBe("plain");
  });

  it("says nothing of what was not done, and cannot where a joint gave way", () => {
    expect(read({ done: "notDone" })).toBeNull();
    expect(read({ done: "notDone", gaveWay: { joint: "hip", side: "weak", how: null } })?.result).toBe("cannot");
  });
});

describe("logged sets as evidence", () => {
  const task: EffortModel = { logEffort: () => 0, logGradient: () => {}, jointShare: () => 0.5 };
  const likelihood = (sessions: readonly PreviousSession[]): ((x: number) => number) => {
    const [only] = readLogs(
      { previous: sessions },
      () => task,
      () => [],
    );
    if (only === undefined) throw new Error("no evidence");
    return only.logLikelihood;
  };
  const of = (more: Partial<PreviousItem>, times = 1) =>
    likelihood(Array.from({ length: times }, () => session({ ...ITEM, ...more })));
  /** How much better it fits a strong body (effort 0.4) than a weak one (effort 1.3). */
  const speaks = (f: (x: number) => number): number => f(Math.log(0.4)) - f(Math.log(1.3));

  it("lets help that came with tiredness, faults of control or pain speak less against strength than plain help", () => {
    const plain = -speaks(of({ help: "minimal", done: "changed" }));
    expect(plain).toBeGreaterThan(1);
    for (const more of [{ worse: "laterSets" }, { faults: ["a"], exertion: 2 }, { pain: 6 }] as const)
      expect(-speaks(of({ help: "minimal", done: "changed", ...more })), JSON.stringify(more)).toBeLessThan(
        0.7 * plain,
      );
  });

  it("still lets what was done alone with faults of control speak for strength, a little less", () => {
    const clean = speaks(of({}));
    const faulty = speaks(of({ faults: ["a"], exertion: 2 }));
    expect(faulty).toBeGreaterThan(0.2);
    expect(faulty).toBeLessThan(clean);
  });

  it("reads a set felt to be very hard as near all there is: no proof of plenty", () => {
    const hard = of({ exertion: 8 });
    expect(hard(Math.log(0.75))).toBeGreaterThan(hard(Math.log(0.3)) + 0.5);
    const easy = of({});
    expect(easy(Math.log(0.3))).toBeGreaterThanOrEqual(easy(Math.log(0.75)));
  });

  it("narrows with every further day of one rung, but never past what the model does not know of it", () => {
    const one = speaks(of({}));
    const three = speaks(of({}, 3));
    const ten = speaks(of({}, 10));
    expect(three).toBeGreaterThan(one);
    expect(ten).toBeGreaterThan(three);
    expect(ten).toBeLessThan(4 * one);
  });

  it("is one finding a rung, named with its sessions", () => {
    const found = readLogs(
      { previous: [session(ITEM, { ...ITEM, rung: "weak-foot-up" }), session({ ...ITEM, worse: "withinSet" })] },
      () => task,
      () => [],
    );
    expect(found.map(({ id }) => id)).toEqual(["log.bridge.full-lift", "log.bridge.weak-foot-up"]);
    expect(found[0]?.words).toBe(`logged bridge, full-lift (2 sessions): alone, ${LOG_READINGS.tired.words}`);
  });
});
