import type { SessionEvent } from "../../../session/events.ts";
import { foldSession } from "../../../session/fold-session.ts";
import { createCell } from "../state/cell.ts";
import { database } from "./database.ts";
import { newId, now } from "./identifiers.ts";
import { enqueue } from "./outbox.ts";

/** An event without the head that every event gets here. */
type Headless<E> = E extends SessionEvent ? Omit<E, "id" | "session" | "sequence" | "at" | "knowledge"> : never;
export type NewEvent = Headless<SessionEvent>;

/** Events of the sessions this device has opened. */
export const sessions = createCell<ReadonlyMap<string, readonly SessionEvent[]>>(new Map());

export function showSession(session: string, events: readonly SessionEvent[]): void {
  sessions.set(new Map(sessions.get()).set(session, events));
}

/** Brings a session back after a reload: all that was written on this device. */
export async function openSession(session: string): Promise<void> {
  if (sessions.get().has(session)) return;
  const db = await database();
  const events = await db.getAllFromIndex("events", "session", session);
  if (!sessions.get().has(session)) showSession(session, events);
}

let last: Promise<unknown> = Promise.resolve();

/** Adds events to a session: on this device first, then to the record. Several come in one writing. @returns their identifiers */
export function addEvents(
  person: string,
  session: string,
  knowledge: string,
  added: readonly NewEvent[],
): Promise<readonly string[]> {
  const written = last.then(async () => {
    const db = await database();
    const writing = db.transaction("events", "readwrite", { durability: "strict" });
    // What is written counts, not what is shown: another window may have added to the session.
    const there = await writing.store.index("session").getAll(session);
    const first = foldSession(there).nextSequence;
    const at = now();
    const events = added.map(
      (event, index): SessionEvent => ({ ...event, id: newId(), session, sequence: first + index, at, knowledge }),
    );
    await Promise.all([...events.map((event) => writing.store.put(event)), writing.done]);
    showSession(session, [...there, ...events]);
    await enqueue({ method: "POST", path: `/api/people/${person}/sessions/${session}/events`, body: { events } });
    return events.map(({ id }) => id);
  });
  last = written.catch(() => undefined);
  return written;
}
