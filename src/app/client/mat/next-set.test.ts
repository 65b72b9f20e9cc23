import { describe, expect, it } from "vitest";
import { foldSession } from "../../../session/fold-session.ts";
import { readEvent } from "../../../session/stored-form.ts";
import type { SessionEvent } from "../../../session/events.ts";
import type { CatalogueAnswer } from "../../contract/catalogue-answer.ts";
import { nextSetOf } from "./next-set.ts";

const rung = (id: string): CatalogueAnswer["activities"][number]["rungs"][number] => ({
  id,
  name: id,
  changes: "",
  demands: [],
  helper: {},
  words: "",
  cue: "",
  good: "",
  faults: [],
  purpose: "",
  icf: "",
  substitutes: [],
  dose: {},
  notAtHome: null,
  sources: [],
});
const CATALOGUE: CatalogueAnswer = {
  version: { product: "0", knowledge: "k" },
  positions: [],
  transitions: [],
  activities: [{ id: "bridge", name: "Bridge", position: "hook-lying", rungs: [rung("low"), rung("high")] }],
};

function fold(...bodies: readonly object[]) {
  const start = {
    kind: "sessionStarted",
    person: "p",
    plan: "plan",
    items: [{ activity: "bridge", rung: "high", sets: 2, repetitions: 8 }],
  };
  const events = [start, ...bodies].map((body, index): SessionEvent => {
    const read = readEvent({
      id: `e${index}`,
      session: "s",
      sequence: index + 1,
      at: "2026-03-16T09:00:00Z",
      knowledge: "k",
      ...body,
    });
    if (!read.ok) throw new Error(read.because);
    return read.value;
  });
  return foldSession(events);
}
const set = (rungId: string) => ({ kind: "setDone", activity: "bridge", rung: rungId, asPlanned: true });
const exception = (next: string) => ({ kind: "setException", activity: "bridge", rung: "high", what: "gaveWay", next });

describe("the set that comes next", () => {
  it("counts through the planned sets and then has nothing", () => {
    expect(nextSetOf(fold(), CATALOGUE)).toMatchObject({ rung: "high", set: 1, of: 2 });
    expect(nextSetOf(fold(set("high")), CATALOGUE)).toMatchObject({ rung: "high", set: 2, of: 2 });
    expect(nextSetOf(fold(set("high"), set("high")), CATALOGUE)).toBeNull();
  });

  it("goes on one rung down with the sets still due, at the planned dose", () => {
    const taken = fold(set("high"), exception("rungDown"));
    expect(nextSetOf(taken, CATALOGUE)).toMatchObject({
      rung: "low",
      set: 1,
      of: 1,
      plannedRung: "high",
      planned: { repetitions: 8 },
    });
    expect(nextSetOf(fold(set("high"), exception("rungDown"), set("low")), CATALOGUE)).toBeNull();
  });

  it("has nothing lower than the lowest rung, and leaves what is left", () => {
    expect(nextSetOf(fold(exception("rungDown")), null)).toBeNull();
    expect(nextSetOf(fold(exception("leaveItem")), CATALOGUE)).toBeNull();
  });

  it("goes on one rung up, and comes back to the planned rung where that was too much", () => {
    const up = { ...exception("rungUp"), rung: "high", what: "other" };
    const taken = [set("high"), up];
    const three = {
      ...CATALOGUE,
      activities: CATALOGUE.activities.map((each) => ({ ...each, rungs: [...each.rungs, rung("top")] })),
    };
    expect(nextSetOf(fold(...taken), three)).toMatchObject({ rung: "top", set: 1, of: 1, plannedRung: "high" });
    // There is nothing above the highest rung: it goes on where it is.
    expect(nextSetOf(fold(...taken), CATALOGUE)).toMatchObject({ rung: "high", set: 2, of: 2 });
    const back = { ...up, rung: "top", what: "gaveWay", next: "rungDown" };
    expect(nextSetOf(fold(up, back), three)).toMatchObject({ rung: "high", set: 1, of: 2 });
    expect(nextSetOf(fold(...taken, set("top")), three)).toBeNull();
  });
});
