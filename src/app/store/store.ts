import type { Kysely } from "kysely";
import type { CaseFile } from "../contract/case-file.ts";
import type { PlanAnswer } from "../contract/plan-answer.ts";
import { refuseEvent } from "../../session/admit-event.ts";
import type { SessionEvent } from "../../session/events.ts";
import { readKept } from "./kept.ts";
import type { Tables } from "./tables.ts";
import { sayStoreTrouble } from "./trouble.ts";

/** One version of a person's findings. */
export interface CaseVersion {
  /** Identifier made by the one who writes; sent again, it is written once. */
  readonly id: string;
  readonly person: string;
  readonly at: string;
  readonly knowledge: string;
  readonly case: CaseFile;
}

export interface KeptPlan {
  readonly id: string;
  readonly person: string;
  readonly caseVersion: string;
  readonly at: string;
  readonly knowledge: string;
  readonly plan: PlanAnswer;
}

export interface PersonEntry {
  readonly person: string;
  readonly label: string | null;
  /** Time of the newest version of the findings. */
  readonly at: string;
  readonly versions: number;
}

export interface SessionEntry {
  readonly session: string;
  readonly startedAt: string;
  readonly lastAt: string;
  readonly events: number;
}

/** Kept for good, or why not: the entry itself does not fit, or the disk does not take it. */
export type Kept =
  | { readonly ok: true; readonly added: number }
  | { readonly ok: false; readonly trouble: "conflict" | "storage"; readonly because: string };

export interface Store {
  readonly listPeople: () => Promise<readonly PersonEntry[]>;
  readonly writeCase: (version: CaseVersion) => Promise<Kept>;
  /** The newest version, or null for an unknown person. */
  readonly readCase: (person: string) => Promise<CaseVersion | null>;
  readonly writePlan: (plan: KeptPlan) => Promise<Kept>;
  readonly readPlan: (id: string) => Promise<KeptPlan | null>;
  readonly readNewestPlan: (person: string) => Promise<KeptPlan | null>;
  /** Adds events of one session, all or none; those already there are passed over. */
  readonly appendEvents: (person: string, events: readonly SessionEvent[]) => Promise<Kept>;
  readonly readEvents: (session: string) => Promise<readonly SessionEvent[]>;
  readonly listSessions: (person: string) => Promise<readonly SessionEntry[]>;
  readonly close: () => Promise<void>;
}

/** Ends a transaction with a sentence instead of an entry. */
class Conflict extends Error {}

/** The records over one open connection. */
export function createStore(db: Kysely<Tables>, folder: string): Store {
  const keep = async (write: (transaction: Kysely<Tables>) => Promise<number>): Promise<Kept> => {
    // A full disk ends the transaction by itself; the rollback that follows must not hide why.
    let cause: unknown = null;
    try {
      const added = await db.transaction().execute(async (transaction) => {
        try {
          return await write(transaction);
        } catch (error) {
          cause = error;
          throw error;
        }
      });
      return { ok: true, added };
    } catch (error) {
      if (cause instanceof Conflict) return { ok: false, trouble: "conflict", because: cause.message };
      const because = sayStoreTrouble(cause ?? error, folder);
      if (because === null) throw cause ?? error;
      return { ok: false, trouble: "storage", because };
    }
  };
  return {
    ...readKept(db),
    writeCase: ({ case: file, ...row }) =>
      keep((transaction) => addOnce(transaction, "case_version", { ...row, body: JSON.stringify(file) })),
    writePlan: ({ plan, caseVersion, ...row }) =>
      keep((transaction) =>
        addOnce(transaction, "plan", { ...row, case_version: caseVersion, body: JSON.stringify(plan) }),
      ),
    appendEvents: (person, events) => keep((transaction) => addEvents(transaction, person, events)),
    close: () => db.destroy(),
  };
}

interface NewRow {
  readonly id: string;
  readonly person: string;
  readonly at: string;
  readonly knowledge: string;
  readonly body: string;
}

/** The same entry sent twice is kept once; another one under its identifier is refused. */
async function addOnce(db: Kysely<Tables>, table: "case_version", row: NewRow): Promise<number>;
async function addOnce(
  db: Kysely<Tables>,
  table: "plan",
  row: NewRow & { readonly case_version: string },
): Promise<number>;
async function addOnce(
  db: Kysely<Tables>,
  table: "case_version" | "plan",
  row: NewRow & { readonly case_version?: string },
): Promise<number> {
  const there = await db.selectFrom(table).select(["person", "body"]).where("id", "=", row.id).executeTakeFirst();
  if (there !== undefined) {
    if (there.person === row.person && there.body === row.body) return 0;
    throw new Conflict(`Entry ${row.id} is already there with other content.`);
  }
  if (table === "plan")
    await db
      .insertInto("plan")
      .values({ ...row, case_version: row.case_version ?? "" })
      .execute();
  else await db.insertInto("case_version").values(row).execute();
  return 1;
}

async function addEvents(db: Kysely<Tables>, person: string, events: readonly SessionEvent[]): Promise<number> {
  const [first] = events;
  if (first === undefined) return 0;
  const there = [...(await readKept(db).readEvents(first.session))];
  await refuseOtherOwner(db, person, first.session, events);
  let added = 0;
  for (const event of events) {
    const refused = refuseEvent(there, event);
    if (refused !== null) throw new Conflict(refused);
    if (there.some(({ id }) => id === event.id)) continue;
    const { id, session, sequence, kind, at, knowledge } = event;
    await db
      .insertInto("session_event")
      .values({ id, session, person, sequence, kind, at, knowledge, body: JSON.stringify(event) })
      .execute();
    there.push(event);
    added += 1;
  }
  return added;
}

/** An identifier of one session or person never names something of another. */
async function refuseOtherOwner(
  db: Kysely<Tables>,
  person: string,
  session: string,
  events: readonly SessionEvent[],
): Promise<void> {
  const ids = events.map(({ id }) => id);
  const foreign = await db
    .selectFrom("session_event")
    .select("id")
    .where((where) =>
      where.or([
        where.and([where("id", "in", ids), where("session", "!=", session)]),
        where.and([where("session", "=", session), where("person", "!=", person)]),
      ]),
    )
    .executeTakeFirst();
  if (foreign !== undefined) throw new Conflict(`Event ${foreign.id} is already there with another session or person.`);
  const start = events.find(({ kind }) => kind === "sessionStarted");
  if (start?.kind === "sessionStarted" && start.person !== person)
    throw new Conflict("The session's start names another person.");
}
