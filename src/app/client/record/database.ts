import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { SessionEvent } from "../../../session/events.ts";
import type { CaseFile } from "../../contract/case-file.ts";
import type { PlanAnswer } from "../../contract/plan-answer.ts";
import type { RungName, Wishes } from "../../engine/engine.ts";

/** One person as this device knows them. */
export interface KeptPerson {
  readonly id: string;
  readonly case: CaseFile;
  /** Identifier of the version of the findings that is written down; null while they have changed since. */
  readonly version: string | null;
  /** The whole slot [minute]. */
  readonly minutes: number;
  readonly wishes: Wishes;
  /** Rungs put in by hand against a reason, with the therapist's own. */
  readonly putIn: readonly (RungName & { readonly why: string })[];
  /** Rungs ("activity/rung") that were shown back twice for home. */
  readonly shown?: readonly string[];
  /** The session that is open or was last open. */
  readonly session: string | null;
  readonly openedAt: string;
}

export interface KeptPlan {
  readonly person: string;
  readonly id: string;
  /** What the plan was computed from, as text, to see whether it still holds. */
  readonly from: string;
  readonly at: string;
  readonly plan: PlanAnswer;
}

/** One request that still has to reach the record. */
export interface Waiting {
  readonly method: "PUT" | "POST";
  readonly path: string;
  readonly body: unknown;
  readonly refused?: string;
}

interface Tables extends DBSchema {
  people: { key: string; value: KeptPerson };
  plans: { key: string; value: KeptPlan };
  /** Plans a session was started with, by their own identifier. */
  sessionPlans: { key: string; value: KeptPlan };
  events: { key: string; value: SessionEvent; indexes: { session: string } };
  waiting: { key: number; value: Waiting };
}

let opened: Promise<IDBPDatabase<Tables>> | null = null;

/** The record on this device: written first, sent afterwards. */
export function database(): Promise<IDBPDatabase<Tables>> {
  opened ??= openDB<Tables>("matside", 1, {
    upgrade: (db) => {
      db.createObjectStore("people", { keyPath: "id" });
      db.createObjectStore("plans", { keyPath: "person" });
      db.createObjectStore("sessionPlans", { keyPath: "id" });
      db.createObjectStore("events", { keyPath: "id" }).createIndex("session", "session");
      db.createObjectStore("waiting", { autoIncrement: true });
    },
  });
  return opened;
}
