import { orderEvents } from "./fold-session.ts";
import { SESSION_EVENT, STORED_FORMAT, STORED_SESSION, type SessionEvent, type StoredSession } from "./events.ts";

export type ReadSession =
  | { readonly ok: true; readonly value: StoredSession }
  | { readonly ok: false; readonly because: string };

/** The session as it is stored or handed over, its events in order. */
export function writeStoredSession(session: string, events: readonly SessionEvent[]): StoredSession {
  return { format: STORED_FORMAT, session, events: [...orderEvents(events)] };
}

/** Reads a stored session of any form that was ever written; where it cannot be read, says why. */
export function readStoredSession(value: unknown): ReadSession {
  const format = typeof value === "object" && value !== null && "format" in value ? value.format : undefined;
  if (typeof format === "number" && format > STORED_FORMAT)
    return {
      ok: false,
      because: `This session was stored by a later version (form ${format}); this one reads up to form ${STORED_FORMAT}.`,
    };
  const result = STORED_SESSION.safeParse(value);
  if (result.success) return { ok: true, value: result.data };
  return {
    ok: false,
    because: `This is not a stored session: ${sayPlace(result.error.issues[0]?.path ?? [])} does not have its form.`,
  };
}

export type ReadEvent =
  | { readonly ok: true; readonly value: SessionEvent }
  | { readonly ok: false; readonly because: string };

/** Reads one event; where it cannot be read, names the field. */
export function readEvent(value: unknown): ReadEvent {
  const result = SESSION_EVENT.safeParse(value);
  if (result.success) return { ok: true, value: result.data };
  const issue = result.error.issues[0];
  const field = issue?.code === "unrecognized_keys" ? issue.keys[0] : sayPlace(issue?.path ?? []);
  return { ok: false, because: `This is not an event of a session: ${field ?? "it"} does not have its form.` };
}

function sayPlace(path: readonly PropertyKey[]): string {
  return path.length === 0 ? "it" : path.map(String).join(".");
}
