import { describe, expect, it } from "vitest";
import { ACTIVITIES } from "../../practice/catalogue.ts";
import { foldSession } from "../../session/fold-session.ts";
import type { SessionEvent } from "../../session/events.ts";
import { readEvent } from "../../session/stored-form.ts";
import { NOTE_LINES, type Note, refuseSigning, writeNote } from "./note.ts";
import { nameTrace, noteHtml, noteText } from "./note-forms.ts";

const BRIDGE = { activity: "bridge", rung: "full-lift" };
const HEEL = {
  activity: "heel-slide-weak",
  rung: ACTIVITIES.find(({ id }) => id === "heel-slide-weak")?.rungs[1]?.id ?? "",
};

type Body = { kind: string } & Record<string, unknown>;
function events(...bodies: Body[]): SessionEvent[] {
  return bodies.map((body, index) => {
    const read = readEvent({
      id: `e${index + 1}`,
      session: "s1",
      sequence: index + 1,
      at: "2026-03-16T09:00:00Z",
      knowledge: "k1",
      ...body,
    });
    if (!read.ok) throw new Error(read.because);
    return read.value;
  });
}

const BODIES: readonly Body[] = [
  {
    kind: "sessionStarted",
    person: "p1",
    plan: "plan1",
    items: [
      { ...BRIDGE, sets: 2, repetitions: 8 },
      { ...HEEL, sets: 1, repetitions: 6 },
    ],
  },
  { kind: "said", words: "Slept well, the shoulder is quiet." },
  { kind: "vitalSigns", when: "before", systolic: 138, diastolic: 82, heartRate: 76, painNow: 0 },
  { kind: "setDone", ...BRIDGE, asPlanned: true, help: "touching", pain: 1 },
  { kind: "setDone", ...BRIDGE, asPlanned: false, repetitions: 5, help: "minimal", exertion: 6 },
  { kind: "setException", ...BRIDGE, what: "fault", which: "weak-knee-falls-out", howOften: 2, next: "rungDown" },
  { kind: "setException", ...BRIDGE, what: "gaveWay", gaveWay: { joint: "knee", side: "weak", how: "folds" } },
  { kind: "itemSkipped", ...HEEL, because: "tired" },
  { kind: "vitalSigns", when: "after", systolic: 142, diastolic: 84 },
  { kind: "stopped", because: "tired", ...BRIDGE, words: "after the second set" },
  { kind: "settled" },
  { kind: "incident", what: "slid to the mat", done: "rested, nothing hurt" },
];
const DAY = events(...BODIES);

const CHANGES = [{ change: "One rung up in the bridge", because: "every set as planned on Friday" }];
const PREVIOUS = {
  date: "2026-03-13",
  items: [
    { activity: "bridge", rung: "half-lift", done: "asPlanned" as const, sets: 2, help: "moderate" as const, pain: 3 },
  ],
};

function noteOf(
  day: readonly SessionEvent[],
  more: { changes?: typeof CHANGES; previous?: typeof PREVIOUS | null; weak?: "left" | "right" } = {},
): Note {
  return writeNote({
    label: "Case 1, woman, 67",
    person: { weak: more.weak ?? "left" },
    state: foldSession(day),
    changes: more.changes ?? CHANGES,
    catalogue: ACTIVITIES,
    previous: more.previous === undefined ? PREVIOUS : more.previous,
    lastDay: "Friday",
  });
}

const sentencesOf = (note: Note) => note.lines.flatMap(({ sentences }) => sentences);
const tracesOf = (note: Note) => new Set(sentencesOf(note).flatMap(({ from }) => from.map(nameTrace)));

describe("the treatment note", () => {
  it("has six lines in their order, whatever happened", () => {
    expect(noteOf(DAY).lines.map(({ id }) => id)).toEqual([...NOTE_LINES]);
    expect(noteOf([]).lines.map(({ id }) => id)).toEqual([...NOTE_LINES]);
    expect(sentencesOf(noteOf([], { changes: [], previous: null }))).toEqual([]);
  });

  it("says what happened, with this person's sides", () => {
    expect(noteText(noteOf(DAY))).toBe(
      [
        "Treatment note, Case 1, woman, 67, 16 March 2026",
        "Said: “Slept well, the shoulder is quiet.”",
        "Before: Blood pressure 138 over 82 mmHg, pulse 76 a minute, pain 0 of 10.",
        `Done: Bridge, full lift into a touch: 2 of 2 sets of 8 and 5, changed. ${heelName("left")}: not done, tired.`,
        "Help: Bridge: minimal help (code 3).",
        "Seen: Bridge: the left knee drops outward, twice; one rung down. Bridge: the left knee folded, once. Bridge: pain 1 of 10. Bridge: exertion 6 of 10. Stopped at bridge, full lift into a touch: tired, after the second set; settled, went on. Incident: slid to the mat; done: rested, nothing hurt. After: blood pressure 142 over 84 mmHg.",
        "Since Friday: Changed: one rung up in the bridge (every set as planned on Friday). Bridge: full lift into a touch, Friday half lift, helped from below. Bridge: minimal help, Friday moderate help. Bridge: pain 1 of 10, Friday 3.",
        "Judgement: (to be written by the therapist)",
        "Not signed.",
        "",
      ].join("\n"),
    );
  });

  it("gives every sentence something it comes from", () => {
    expect(sentencesOf(noteOf(DAY)).length).toBeGreaterThan(12);
    for (const { from, text } of sentencesOf(noteOf(DAY))) expect(from.length, text).toBeGreaterThan(0);
  });

  const traced = DAY.filter(({ kind }) => kind !== "sessionStarted" && kind !== "settled");
  it.each(traced.map((event) => [event.kind, event.id, event] as const))(
    "loses the sentence of an event that goes: %s, %s",
    (_kind, id, event) => {
      const whole = noteOf(DAY);
      expect(tracesOf(whole)).toContain(`event:${id}`);
      const without = noteOf(DAY.filter((one) => one !== event));
      expect(tracesOf(without)).not.toContain(`event:${id}`);
      const lost = sentencesOf(whole).filter(
        ({ from }) => from.length === 1 && from.some((trace) => nameTrace(trace) === `event:${id}`),
      );
      for (const { text } of lost) expect(noteText(without)).not.toContain(text);
      expect(noteText(without)).not.toBe(noteText(whole));
    },
  );

  it("says of a stop that it did not settle once the settling is gone", () => {
    expect(noteText(noteOf(DAY.filter(({ kind }) => kind !== "settled")))).toContain("did not settle");
  });

  it("loses the sentence of an event that was undone", () => {
    const undone = events(...BODIES, { kind: "undone", event: "e6" });
    expect(noteText(noteOf(undone))).not.toContain("drops outward");
  });

  it("loses a sentence with the plan's field or the earlier session it comes from", () => {
    expect(noteText(noteOf(DAY, { changes: [] }))).not.toContain("Changed:");
    expect(noteText(noteOf(DAY, { previous: null }))).not.toMatch(/Friday (half lift|moderate|3)/);
    expect(tracesOf(noteOf(DAY))).toContain("previous:items.0");
    expect(tracesOf(noteOf(DAY))).toContain("plan:changesSinceLast.0");
  });

  it("is the same note with the sides exchanged for the other side", () => {
    const swapped = noteText(noteOf(DAY, { weak: "right" })).replace(
      /\b([Ll]eft|[Rr]ight)\b/g,
      (side) => ({ left: "right", right: "left", Left: "Right", Right: "Left" })[side] ?? side,
    );
    expect(swapped).toBe(noteText(noteOf(DAY)));
  });

  it("asks for the judgement, keeps it empty, and does not let a suggestion stand in for it", () => {
    const note = noteOf(DAY);
    expect(note.judgement).toEqual([]);
    expect(note.suggestions.length).toBeGreaterThan(0);
    for (const { text } of note.suggestions) expect(noteText(note)).not.toContain(text);
    expect(refuseSigning(note)).toMatch(/judgement/);
    const judged = noteOf(events(...BODIES, { kind: "judgement", words: "Hip stronger, knee still late." }));
    expect(refuseSigning(judged)).toBeNull();
    expect(noteText(judged)).toContain("Judgement: Hip stronger, knee still late.");
  });

  it("names in the HTML what each sentence comes from, and escapes what was said", () => {
    const html = noteHtml(
      noteOf(
        events(
          { kind: "sessionStarted", person: "p", plan: "q", items: [] },
          { kind: "said", words: '<b>"ouch" & so on' },
        ),
        { previous: null, changes: [] },
      ),
    );
    expect(html).toContain('<span data-from="event:e2">“&lt;b&gt;&quot;ouch&quot; &amp; so on”</span>');
    expect(html).not.toContain("<b>");
  });
});

function heelName(side: string): string {
  const activity = ACTIVITIES.find(({ id }) => id === HEEL.activity);
  const rung = activity?.rungs.find(({ id }) => id === HEEL.rung);
  const text = `${activity?.name}, ${rung?.name.charAt(0).toLowerCase()}${rung?.name.slice(1)}`;
  return text.replace(/\bweak\b/g, side).replace(/\bWeak\b/g, "Left");
}
