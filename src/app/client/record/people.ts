import type { CaseFile } from "../../contract/case-file.ts";
import { createCell } from "../state/cell.ts";
import { database, type KeptPerson } from "./database.ts";
import { newId, now } from "./identifiers.ts";
import { enqueue } from "./outbox.ts";

export interface PersonLine {
  readonly id: string;
  readonly label: string | null;
  readonly at: string;
}

/** The people this device has opened, by identifier. */
export const people = createCell<ReadonlyMap<string, KeptPerson>>(new Map());

/** A usual slot [minute]. */
const USUAL_MINUTES = 45;

function show(person: KeptPerson): void {
  people.set(new Map(people.get()).set(person.id, person));
}

async function write(person: KeptPerson): Promise<void> {
  show(person);
  const db = await database();
  await db.put("people", person);
}

/** A new person of this device and of the record. */
export async function addPerson(caseFile: CaseFile): Promise<string> {
  const id = newId();
  await write({
    id,
    case: caseFile,
    version: null,
    minutes: USUAL_MINUTES,
    wishes: {},
    putIn: [],
    session: null,
    openedAt: now(),
  });
  await writeVersion(id);
  return id;
}

/** Opens a person from this device, else from the record. @returns false where nobody is known by this name. */
export async function openPerson(id: string): Promise<boolean> {
  if (people.get().has(id)) return true;
  const db = await database();
  const here = await db.get("people", id);
  if (here !== undefined) {
    show(here);
    return true;
  }
  const answer = await fetchJson(`/api/people/${id}/case`);
  if (!isKeptCase(answer)) return false;
  await write({
    id,
    case: answer.case,
    version: answer.id,
    minutes: USUAL_MINUTES,
    wishes: {},
    putIn: [],
    session: null,
    openedAt: now(),
  });
  return true;
}

/** Changes what is kept of a person; changed findings count as not yet written down in the record. */
export async function changePerson(id: string, change: Partial<Omit<KeptPerson, "id">>): Promise<void> {
  const person = people.get().get(id);
  if (person === undefined) return;
  await write({ ...person, ...(change.case === undefined ? {} : { version: null }), ...change });
}

/** Writes the findings down as a version of their own, once for each change. @returns its identifier */
export async function writeVersion(id: string): Promise<string | null> {
  const person = people.get().get(id);
  if (person === undefined) return null;
  if (person.version !== null) return person.version;
  const version = newId();
  await write({ ...person, version });
  await enqueue({ method: "PUT", path: `/api/people/${id}/case`, body: { id: version, at: now(), case: person.case } });
  return version;
}

/** Everybody this device or the record knows, newest first; the record may be out of reach. */
export async function listPeople(): Promise<readonly PersonLine[]> {
  const db = await database();
  const here = (await db.getAll("people")).map(({ id, case: file, openedAt }) => ({
    id,
    label: file.label ?? null,
    at: openedAt,
  }));
  const answer = await fetchJson("/api/people");
  const there = isPeople(answer) ? answer.people.map(({ person, label, at }) => ({ id: person, label, at })) : [];
  const known = new Set(here.map(({ id }) => id));
  return [...here, ...there.filter(({ id }) => !known.has(id))].sort((a, b) => b.at.localeCompare(a.at));
}

/** What the record answers, or null where it is out of reach. */
export async function fetchJson(path: string): Promise<unknown> {
  try {
    const response = await fetch(path);
    return response.ok ? await response.json() : null;
  } catch {
    return null;
  }
}

interface PeopleAnswer {
  readonly people: readonly { readonly person: string; readonly label: string | null; readonly at: string }[];
}
function isPeople(value: unknown): value is PeopleAnswer {
  return typeof value === "object" && value !== null && "people" in value && Array.isArray(value.people);
}
function isKeptCase(value: unknown): value is { readonly id: string; readonly case: CaseFile } {
  return typeof value === "object" && value !== null && "id" in value && "case" in value;
}
