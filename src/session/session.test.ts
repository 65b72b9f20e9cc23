import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { refuseEvent } from "./admit-event.ts";
import type { SessionEvent } from "./events.ts";
import { foldSession } from "./fold-session.ts";
import { previousEntry } from "./previous-entry.ts";
import { readEvent, readStoredSession, writeStoredSession } from "./stored-form.ts";

const BRIDGE = { activity: "bridge", rung: "both-feet" };
const SIT = { activity: "sit-to-stand", rung: "high-seat" };

type Body = { kind: string } & Record<string, unknown>;
/** Events of one session with their heads put on. */
function session(...bodies: Body[]): SessionEvent[] {
  return bodies.map((body, index) => {
    const read = readEvent({
      id: `e${index + 1}`,
      session: "s1",
      sequence: index + 1,
      at: `2026-03-16T09:${String(index).padStart(2, "0")}:00Z`,
      knowledge: "k1",
      ...body,
    });
    if (!read.ok) throw new Error(read.because);
    return read.value;
  });
}
const START: Body = {
  kind: "sessionStarted",
  person: "p1",
  plan: "plan1",
  items: [
    { ...BRIDGE, sets: 2, repetitions: 8, help: "touching" },
    { ...SIT, sets: 2, repetitions: 5 },
  ],
};
const done = (rung: object, more: object = {}): Body => ({ kind: "setDone", ...rung, asPlanned: true, ...more });

describe("what a session adds up to", () => {
  it("knows before anything is done what comes first", () => {
    expect(foldSession([])).toMatchObject({ phase: "notStarted", next: null, nextSequence: 1 });
    expect(foldSession(session(START))).toMatchObject({
      phase: "running",
      person: "p1",
      plan: "plan1",
      next: { ...BRIDGE, set: 1 },
      nextSequence: 2,
    });
  });

  it("counts sets with one event each and goes on to the next item", () => {
    const state = foldSession(session(START, done(BRIDGE), done(BRIDGE), done(SIT)));
    expect(state.items.map(({ sets }) => sets.length)).toEqual([2, 1]);
    expect(state.next).toEqual({ ...SIT, set: 2 });
  });

  it("takes back what was undone, and brings it back when that is undone", () => {
    const taken = session(START, done(BRIDGE), { kind: "undone", event: "e2" });
    expect(foldSession(taken).next).toEqual({ ...BRIDGE, set: 1 });
    expect(foldSession(taken).undone).toEqual(["e2"]);
    expect(
      foldSession(session(START, done(BRIDGE), { kind: "undone", event: "e2" }, { kind: "undone", event: "e3" })).next,
    ).toEqual({ ...BRIDGE, set: 2 });
  });

  it("stops with the reason and goes on once settled", () => {
    const stopped = session(START, done(BRIDGE), { kind: "stopped", because: "dizziness", ...BRIDGE });
    expect(foldSession(stopped)).toMatchObject({
      phase: "stopped",
      stops: [{ because: "dizziness", activity: "bridge", settledBy: null }],
    });
    const settled = foldSession(
      session(START, done(BRIDGE), { kind: "stopped", because: "dizziness" }, { kind: "settled" }),
    );
    expect(settled).toMatchObject({ phase: "running", stops: [{ settledBy: "e4" }] });
  });

  it("leaves a skipped item and one that was given up", () => {
    expect(foldSession(session(START, { kind: "itemSkipped", ...BRIDGE, because: "no time" })).next).toEqual({
      ...SIT,
      set: 1,
    });
    expect(
      foldSession(session(START, { kind: "setException", ...BRIDGE, what: "gaveWay", next: "leaveItem" })).next,
    ).toEqual({ ...SIT, set: 1 });
  });

  it("keeps words, judgement, incident and signature with their events", () => {
    const state = foldSession(
      session(
        START,
        { kind: "said", words: "my leg feels heavy" },
        { kind: "judgement", words: "steadier than Friday" },
        { kind: "incident", what: "slid to the mat" },
        { kind: "signed", by: "therapist" },
      ),
    );
    expect(state.said[0]?.id).toBe("e2");
    expect(state.judgements[0]?.words).toBe("steadier than Friday");
    expect(state.incidents).toHaveLength(1);
    expect(state).toMatchObject({ phase: "signed", next: null });
  });

  it("gives the same state in any order and with repeats", () => {
    const events = session(
      START,
      done(BRIDGE),
      { kind: "vitalSigns", when: "before", systolic: 130, diastolic: 80 },
      done(SIT),
      { kind: "undone", event: "e2" },
      { kind: "stopped", because: "tired" },
    );
    fc.assert(
      fc.property(fc.shuffledSubarray([...events, ...events], { minLength: events.length * 2 }), (shuffled) => {
        expect(foldSession(shuffled)).toEqual(foldSession(events));
      }),
      { numRuns: 50, seed: 5 },
    );
  });
});

describe("the entry for the next case file", () => {
  it("says as planned where every set went as planned", () => {
    const entry = previousEntry(foldSession(session(START, done(BRIDGE), done(BRIDGE))));
    expect(entry).toEqual({
      date: "2026-03-16",
      items: [
        { ...BRIDGE, done: "asPlanned", sets: 2, repetitions: 8, help: "touching" },
        { ...SIT, done: "notDone" },
      ],
    });
  });

  it("carries faults once, the worst pain, the most help, the fewest repetitions and where it gave way", () => {
    const entry = previousEntry(
      foldSession(
        session(
          START,
          done(BRIDGE, { pain: 1 }),
          { kind: "setException", ...BRIDGE, what: "fault", which: "pelvis-rolls-back", howOften: 2 },
          { kind: "setException", ...BRIDGE, what: "fault", which: "pelvis-rolls-back" },
          { kind: "setException", ...BRIDGE, what: "help", which: "minimal" },
          { kind: "setException", ...BRIDGE, what: "gaveWay", gaveWay: { joint: "hip", side: "weak", how: "folds" } },
          { kind: "setException", ...BRIDGE, what: "pain", value: 4 },
          done(BRIDGE, { asPlanned: false, repetitions: 5 }),
          { kind: "stopped", because: "pain" },
        ),
      ),
    );
    expect(entry.items[0]).toEqual({
      ...BRIDGE,
      done: "changed",
      sets: 2,
      repetitions: 5,
      help: "minimal",
      faults: ["pelvis-rolls-back"],
      pain: 4,
      gaveWay: { joint: "hip", side: "weak", how: "folds" },
    });
    expect(entry.stopped).toEqual({ because: "pain" });
  });
});

describe("what may follow", () => {
  const there = session(START, done(BRIDGE));
  const next = (body: Body, head: object = {}) => {
    const read = readEvent({
      id: "new",
      session: "s1",
      sequence: 3,
      at: "2026-03-16T10:00:00Z",
      knowledge: "k1",
      ...body,
      ...head,
    });
    if (!read.ok) throw new Error(read.because);
    return refuseEvent(there, read.value);
  };
  it("takes the next event, and one that is already there", () => {
    expect(next(done(BRIDGE))).toBeNull();
    expect(there.every((event) => refuseEvent(there, event) === null)).toBe(true);
  });
  it.each([
    ["another event with the same identifier", done(SIT), { id: "e2", sequence: 2 }, /already there/],
    ["a place that is taken", done(SIT), { sequence: 2 }, /already taken; the next is 3/],
    ["a gap", done(SIT), { sequence: 5 }, /Event 3 of the session is missing/],
    ["a second start", START, {}, /already begun/],
    ["an unknown event to undo", { kind: "undone", event: "e9" }, {}, /no event e9/],
    ["undoing the start", { kind: "undone", event: "e1" }, {}, /not undone/],
    ["settling nothing", { kind: "settled" }, {}, /Nothing is stopped/],
    ["another session", done(SIT), { session: "s2" }, /another session/],
  ])("refuses %s with a sentence", (_what, body, head, sentence) => {
    expect(next(body, head)).toMatch(sentence);
  });
  it("adds only words to a signed session", () => {
    const signed = session(START, done(BRIDGE), { kind: "signed", by: "therapist" });
    const [set, said, undo] = session(
      START,
      done(BRIDGE),
      { kind: "said", words: "x" },
      done(BRIDGE),
      { kind: "said", words: "later" },
      { kind: "undone", event: "e2" },
    ).slice(3);
    if (set === undefined || said === undefined || undo === undefined) throw new Error("three events");
    expect(refuseEvent(signed, set)).toMatch(/signed/);
    expect(refuseEvent(signed, { ...said, sequence: 4 })).toBeNull();
    expect(refuseEvent(signed, { ...undo, sequence: 4 })).toMatch(/not taken back/);
  });
});

describe("the stored form", () => {
  it("comes back as it was written", () => {
    const events = session(START, done(BRIDGE), { kind: "said", words: "good" });
    const read = readStoredSession(JSON.parse(JSON.stringify(writeStoredSession("s1", events))));
    expect(read).toEqual({ ok: true, value: { format: 1, session: "s1", events } });
  });
  it("reads the session saved in form 1", () => {
    const saved = JSON.parse(readFileSync(new URL("../../test/stored/session-form-1.json", import.meta.url), "utf8"));
    const read = readStoredSession(saved);
    if (!read.ok) throw new Error(read.because);
    expect(new Set(read.value.events.map(({ kind }) => kind)).size).toBe(12);
    expect(foldSession(read.value.events)).toMatchObject({
      phase: "signed",
      undone: ["e6"],
      items: [{ sets: [{ event: "e3" }] }, { skipped: { event: "e5" } }],
    });
  });
  it("refuses a later form and a spoiled one with a sentence", () => {
    expect(readStoredSession({ format: 2 })).toMatchObject({
      ok: false,
      because: expect.stringMatching(/later version/),
    });
    expect(readStoredSession({ format: 1, session: "s1", events: [{ kind: "setDone" }] })).toMatchObject({
      ok: false,
      because: expect.stringMatching(/events\.0/),
    });
    expect(readEvent(null)).toMatchObject({ ok: false });
    expect(readEvent({ ...session(START)[0], extra: 1 })).toMatchObject({
      ok: false,
      because: expect.stringMatching(/extra/),
    });
  });
});
