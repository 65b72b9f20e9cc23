import type { EventOf, SessionEvent, SessionEventKind } from "./events.ts";
import type { ItemRecord, SessionState, Stop } from "./state.ts";

/**
 * What a session's events add up to. The same events give the same state in whatever order they arrive; a repeated
 * event counts once; what was undone counts no more. Nothing is computed anew: the record says what was seen.
 */
export function foldSession(events: readonly SessionEvent[]): SessionState {
  const all = orderEvents(events);
  const undone = undoneEvents(all);
  const kept = all.filter(({ id, kind }) => kind !== "undone" && !undone.has(id));
  const of = <K extends SessionEventKind>(kind: K) => kept.filter((event): event is EventOf<K> => event.kind === kind);
  const start = of("sessionStarted")[0] ?? null;
  const items = recordItems(start, kept);
  const stops = recordStops(kept);
  const signed = of("signed").at(-1) ?? null;
  const standing = stops.at(-1);
  const phase =
    start === null
      ? "notStarted"
      : signed !== null
        ? "signed"
        : standing !== undefined && standing.settledBy === null
          ? "stopped"
          : "running";
  return {
    session: all[0]?.session ?? null,
    person: start?.person ?? null,
    plan: start?.plan ?? null,
    startedAt: start?.at ?? null,
    lastAt: all.at(-1)?.at ?? null,
    knowledge: start?.knowledge ?? null,
    phase,
    items,
    next: phase === "running" || phase === "stopped" ? nextSet(items) : null,
    vitals: of("vitalSigns"),
    stops,
    said: of("said"),
    judgements: of("judgement"),
    incidents: of("incident"),
    calls: of("therapistCalled"),
    nextDay: of("nextDay").at(-1) ?? null,
    signed,
    undone: [...undone],
    nextSequence: (all.at(-1)?.sequence ?? 0) + 1,
  };
}

/** By place in the session, each event once. */
export function orderEvents(events: readonly SessionEvent[]): readonly SessionEvent[] {
  const once = new Map(events.map((event) => [event.id, event]));
  return [...once.values()].sort((a, b) => a.sequence - b.sequence || (a.id < b.id ? -1 : 1));
}

/** Taking back an "undone" brings back what it took. */
function undoneEvents(events: readonly SessionEvent[]): ReadonlySet<string> {
  const undone = new Set<string>();
  for (const event of [...events].reverse())
    if (event.kind === "undone" && !undone.has(event.id)) undone.add(event.event);
  return undone;
}

function recordItems(start: EventOf<"sessionStarted"> | null, events: readonly SessionEvent[]): readonly ItemRecord[] {
  const rungs = new Map<string, ItemRecord>();
  const key = (activity: string, rung: string) => `${activity}/${rung}`;
  const record = (activity: string, rung: string): ItemRecord =>
    rungs.get(key(activity, rung)) ?? { activity, rung, planned: null, sets: [], exceptions: [], skipped: null };
  for (const planned of start?.items ?? [])
    rungs.set(key(planned.activity, planned.rung), { ...record(planned.activity, planned.rung), planned });
  for (const event of events) {
    if (event.kind !== "setDone" && event.kind !== "setException" && event.kind !== "itemSkipped") continue;
    const { activity, rung } = event;
    rungs.set(key(activity, rung), addToItem(record(activity, rung), event));
  }
  return [...rungs.values()];
}

function addToItem(item: ItemRecord, event: EventOf<"setDone" | "setException" | "itemSkipped">): ItemRecord {
  if (event.kind === "itemSkipped") return { ...item, skipped: { event: event.id, because: event.because } };
  if (event.kind === "setDone") {
    const { asPlanned, repetitions = null, help = null, pain = null, exertion = null } = event;
    return { ...item, sets: [...item.sets, { event: event.id, asPlanned, repetitions, help, pain, exertion }] };
  }
  const { what, which = null, howOften = 1, value = null, gaveWay = null, next = null } = event;
  return {
    ...item,
    exceptions: [...item.exceptions, { event: event.id, what, which, howOften, value, gaveWay, next }],
  };
}

function recordStops(events: readonly SessionEvent[]): readonly Stop[] {
  const stops: Stop[] = [];
  for (const event of events) {
    const last = stops.at(-1);
    if (event.kind === "stopped")
      stops.push({
        event: event.id,
        because: event.because,
        at: event.at,
        activity: event.activity ?? null,
        rung: event.rung ?? null,
        words: event.words ?? null,
        settledBy: null,
      });
    if (event.kind === "settled" && last !== undefined && last.settledBy === null)
      stops[stops.length - 1] = { ...last, settledBy: event.id };
  }
  return stops;
}

/** The first planned item that is neither skipped nor left nor full. */
function nextSet(items: readonly ItemRecord[]): SessionState["next"] {
  for (const { activity, rung, planned, sets, skipped, exceptions } of items) {
    const leftOut = skipped !== null || exceptions.some(({ next }) => next === "leaveItem" || next === "rungDown");
    if (planned !== null && !leftOut && sets.length < planned.sets) return { activity, rung, set: sets.length + 1 };
  }
  return null;
}
