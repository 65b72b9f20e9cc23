import type { SessionEvent } from "./events.ts";
import { foldSession } from "./fold-session.ts";

/** What may still be added to a signed session: nothing in it is changed by these. */
const AFTER_SIGNING: readonly SessionEvent["kind"][] = ["said", "incident", "judgement", "nextDay", "signed"];

/**
 * Whether an event can follow the ones that are there.
 *
 * @returns null where it can, else why not, as a sentence. An event that is already there can always be sent again.
 */
export function refuseEvent(there: readonly SessionEvent[], event: SessionEvent): string | null {
  const same = there.find(({ id }) => id === event.id);
  if (same !== undefined)
    return JSON.stringify(sorted(same)) === JSON.stringify(sorted(event))
      ? null
      : `Event ${event.id} is already there with other content.`;
  const first = there[0];
  if (first === undefined)
    return event.kind === "sessionStarted" && event.sequence === 1
      ? null
      : "A session begins with its start, as event 1.";
  if (event.session !== first.session) return `Event ${event.id} belongs to another session.`;
  if (event.kind === "sessionStarted") return "The session has already begun.";
  const state = foldSession(there);
  if (event.sequence < state.nextSequence)
    return `Place ${event.sequence} of the session is already taken; the next is ${state.nextSequence}.`;
  if (event.sequence > state.nextSequence)
    return `Event ${state.nextSequence} of the session is missing before event ${event.sequence}.`;
  if (event.kind === "undone") return refuseUndo(there, event.event, state.signed !== null);
  if (event.kind === "settled" && state.phase !== "stopped") return "Nothing is stopped that could have settled.";
  if (state.signed !== null && !AFTER_SIGNING.includes(event.kind))
    return "The session is signed; only words, a judgement, an incident or the report of the day after can be added.";
  return null;
}

function refuseUndo(there: readonly SessionEvent[], id: string, signed: boolean): string | null {
  const target = there.find((event) => event.id === id);
  if (target === undefined) return `There is no event ${id} to undo.`;
  if (target.kind === "sessionStarted") return "The start of a session is not undone.";
  if (signed) return "The session is signed; what it says is not taken back, only added to.";
  return null;
}

/** The event with its fields in one order, so that two ways of writing it compare equal. */
function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map((entry) => sorted(entry));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, entry]) => [key, sorted(entry)]),
  );
}
