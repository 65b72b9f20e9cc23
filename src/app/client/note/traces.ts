import type { SessionEvent } from "../../../session/events.ts";
import type { Trace } from "../../../sheets/note/note.ts";

const KINDS: Readonly<Record<SessionEvent["kind"], string>> = {
  sessionStarted: "start",
  vitalSigns: "vital signs",
  setDone: "set",
  setException: "not quite",
  itemSkipped: "not done",
  stopped: "stop",
  settled: "settled",
  therapistCalled: "call",
  nextDay: "the day after",
  said: "said",
  judgement: "you",
  signed: "signed",
  incident: "incident",
  undone: "undone",
};

/** "vital signs, 10:01" or "12 entries, 10:04 to 10:31". */
export function sayTrace(from: readonly Trace[], events: readonly SessionEvent[]): string {
  const found = from.flatMap((trace) =>
    trace.kind === "event" ? (events.find(({ id }) => id === trace.id) ?? []) : [],
  );
  const others = from.filter(({ kind }) => kind !== "event");
  const parts: string[] = [];
  const [first, last] = [found[0], found.at(-1)];
  if (first !== undefined && last !== undefined) {
    const kinds = [...new Set(found.map(({ kind }) => KINDS[kind]))];
    const what =
      found.length === 1
        ? (kinds[0] ?? "")
        : `${found.length} ${kinds.length === 1 ? `${kinds[0]}${kinds[0]?.endsWith("s") === true ? "" : "s"}` : "entries"}`;
    const [start, end] = [clockOf(first.at), clockOf(last.at)];
    parts.push(`${what}, ${start === end ? start : `${start} to ${end}`}`);
  }
  if (others.some(({ kind }) => kind === "plan")) parts.push("the plan");
  if (others.some(({ kind }) => kind === "previous")) parts.push("the session before");
  return parts.join("; ");
}

function clockOf(at: string): string {
  const date = new Date(at);
  return `${String(date.getHours()).padStart(2, "0")}:${String(date.getMinutes()).padStart(2, "0")}`;
}
