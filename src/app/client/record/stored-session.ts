import type { SessionEvent } from "../../../session/events.ts";
import { foldSession, orderEvents } from "../../../session/fold-session.ts";
import type { PlanAnswer } from "../../contract/plan-answer.ts";
import { database, type KeptPerson, type Waiting } from "./database.ts";
import { followEvents } from "./outbox.ts";
import { changePerson, fetchJson } from "./people.ts";
import { showSession } from "./sessions.ts";

/** An unsigned session of the record that was begun on another device. */
export interface StoredElsewhere {
  readonly session: string;
  readonly startedAt: string;
  readonly lastAt: string;
  readonly sets: number;
}

/** Looks in the record for the person's newest session; null where it is signed, already open here, or out of reach. */
export async function findStoredSession(person: KeptPerson): Promise<StoredElsewhere | null> {
  const answer = await fetchJson(`/api/people/${person.id}/sessions`);
  const newest = isSessions(answer) ? answer.sessions.at(-1) : undefined;
  if (newest === undefined || newest.session === person.session) return null;
  const events = await fetchEvents(person.id, newest.session);
  const state = foldSession(events);
  if (state.startedAt === null || state.signed !== null) return null;
  const here = person.session === null ? null : await startOf(person.session);
  if (here !== null && here >= state.startedAt) return null;
  return {
    session: newest.session,
    startedAt: state.startedAt,
    lastAt: state.lastAt ?? state.startedAt,
    sets: state.items.reduce((sum, { sets }) => sum + sets.length, 0),
  };
}

async function startOf(session: string): Promise<string | null> {
  const db = await database();
  return foldSession(await db.getAllFromIndex("events", "session", session)).startedAt;
}

/** Opens a session of the record on this device, with its plan, to go on where the other one stopped. */
export async function openStoredSession(person: string, session: string): Promise<boolean> {
  const merged = await bringTogether(person, session);
  const plan = merged === null ? null : foldSession(merged).plan;
  if (merged === null || plan === null) return false;
  const answer = await fetchJson(`/api/people/${person}/plans/${plan}`);
  if (isKeptPlan(answer)) {
    const db = await database();
    await db.put("sessionPlans", { person, id: plan, from: "", at: answer.at, plan: answer.plan });
  }
  await changePerson(person, { session });
  return true;
}

/**
 * Puts what the record holds of a session and what this device holds of it together: the record's events keep their
 * places, those it has not yet seen come behind them.
 * @returns all events; null where the record is out of reach or does not know the session
 */
export async function bringTogether(person: string, session: string): Promise<readonly SessionEvent[] | null> {
  const there = await fetchEvents(person, session);
  if (there.length === 0) return null;
  const db = await database();
  const writing = db.transaction("events", "readwrite", { durability: "strict" });
  const here = orderEvents(await writing.store.index("session").getAll(session));
  const known = new Set(there.map(({ id }) => id));
  const last = there.at(-1)?.sequence ?? 0;
  const own = here.filter(({ id }) => !known.has(id)).map((event, index) => ({ ...event, sequence: last + 1 + index }));
  const merged = [...there, ...own];
  await Promise.all([...merged.map((event) => writing.store.put(event)), writing.done]);
  showSession(session, merged);
  return merged;
}

async function fetchEvents(person: string, session: string): Promise<readonly SessionEvent[]> {
  const answer = await fetchJson(`/api/people/${person}/sessions/${session}/events`);
  return isEvents(answer) ? orderEvents(answer.events) : [];
}

const EVENTS = /^\/api\/people\/([^/]+)\/sessions\/([^/]+)\/events$/;

/** Events wait by what they were; what is sent is what they are now, after another device's were put before them. */
async function eventsNow(entry: Waiting): Promise<Waiting> {
  if (!EVENTS.test(entry.path) || !isEvents(entry.body)) return entry;
  const db = await database();
  const events = await Promise.all(entry.body.events.map(async (event) => (await db.get("events", event.id)) ?? event));
  return { ...entry, body: { events } };
}

async function behindTheOthers(entry: Waiting): Promise<Waiting | null> {
  const [, person, session] = EVENTS.exec(entry.path) ?? [];
  if (person === undefined || session === undefined) return null;
  return (await bringTogether(person, session)) === null ? null : eventsNow(entry);
}

followEvents(eventsNow, behindTheOthers);

function isEvents(value: unknown): value is { readonly events: readonly SessionEvent[] } {
  return typeof value === "object" && value !== null && "events" in value && Array.isArray(value.events);
}
function isSessions(value: unknown): value is { readonly sessions: readonly { readonly session: string }[] } {
  return typeof value === "object" && value !== null && "sessions" in value && Array.isArray(value.sessions);
}
function isKeptPlan(value: unknown): value is { readonly at: string; readonly plan: PlanAnswer } {
  return typeof value === "object" && value !== null && "at" in value && "plan" in value;
}
