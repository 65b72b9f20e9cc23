import { describe, expect, it } from "vitest";
import { refuseEvent } from "./admit-event.ts";
import type { SessionEvent } from "./events.ts";
import { foldSession } from "./fold-session.ts";
import { previousEntry } from "./previous-entry.ts";
import { readEvent } from "./stored-form.ts";

const BRIDGE = { activity: "bridge", rung: "full-lift" };
type Body = { kind: string } & Record<string, unknown>;
function events(...bodies: Body[]): SessionEvent[] {
  const start = { kind: "sessionStarted", person: "p1", plan: "d1", items: [{ ...BRIDGE, sets: 2, repetitions: 8 }] };
  return [start, ...bodies].map((body, index) => {
    const at = `2026-03-16T09:0${index}:00Z`;
    const read = readEvent({ id: `e${index}`, session: "s1", sequence: index + 1, at, knowledge: "k1", ...body });
    if (!read.ok) throw new Error(read.because);
    return read.value;
  });
}
const set = (more: object): Body => ({ kind: "setDone", ...BRIDGE, asPlanned: false, ...more });
const full = { kind: "setDone", ...BRIDGE, asPlanned: true };
const worse = (...bodies: Body[]) => previousEntry(foldSession(events(...bodies))).items[0]?.worse;

// Common practice, no source: tiredness shows in the later set, or at the end of one.
describe("where an item got worse", () => {
  it("is not said of sets that went as planned, or alike", () => {
    expect(worse(full, full)).toBeUndefined();
    expect(worse(set({ repetitions: 7 }), set({ repetitions: 8 }))).toBeUndefined();
    expect(worse(set({ repetitions: 8, exertion: 4 }), set({ repetitions: 8, exertion: 5 }))).toBeUndefined();
  });

  it("is the later set where it had fewer repetitions, more help or was felt harder by two", () => {
    expect(worse(full, set({ repetitions: 6 }))).toBe("laterSets");
    expect(worse(set({ repetitions: 6 }), full)).toBe("withinSet");
    expect(worse(set({ help: "touching", repetitions: 8 }), set({ help: "minimal", repetitions: 8 }))).toBe(
      "laterSets",
    );
    expect(worse(set({ exertion: 4, repetitions: 8 }), set({ exertion: 6, repetitions: 8 }))).toBe("laterSets");
  });

  it("is within the set where it was broken off past its middle, not where it was hardly begun or a joint gave way", () => {
    const fewer = (value: number, more: object = {}): Body => ({
      kind: "setException",
      ...BRIDGE,
      what: "fewer",
      value,
      ...more,
    });
    expect(worse(full, fewer(5))).toBe("withinSet");
    expect(worse(full, fewer(2))).toBeUndefined();
    expect(worse(full, fewer(5, { gaveWay: { joint: "hip", side: "weak" } }))).toBeUndefined();
  });
});

describe("the report of the day after", () => {
  it("can be added to a signed session, the last one counts, and the next case file carries it", () => {
    const signed = events(full, full, { kind: "signed", by: "a therapist" });
    const [, , , , report] = events(full, full, full, { kind: "nextDay", pain: 5, tired: "stillThere" });
    expect(report?.kind).toBe("nextDay");
    if (report === undefined) return;
    expect(refuseEvent(signed, report)).toBeNull();
    expect(previousEntry(foldSession([...signed, report])).nextDay).toEqual({ pain: 5, tired: "stillThere" });
    expect(previousEntry(foldSession(signed))).not.toHaveProperty("nextDay");
  });
});
