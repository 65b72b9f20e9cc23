import type { Kysely } from "kysely";
import { ProgrammingError } from "../../quantity/programming-error.ts";
import { readEvent } from "../../session/stored-form.ts";
import { isPlanAnswer } from "../contract/plan-answer.ts";
import { validateCase } from "../contract/parse-case.ts";
import type { CaseVersion, KeptPlan, Store } from "./store.ts";
import type { Tables } from "./tables.ts";

type Reading = Pick<Store, "listPeople" | "readCase" | "readPlan" | "readNewestPlan" | "readEvents" | "listSessions">;

/** Everything that reads. Each row goes through its schema again, so that a store of an earlier form is never trusted blindly. */
export function readKept(db: Kysely<Tables>): Reading {
  return {
    listPeople: async () => {
      const rows = await db
        .selectFrom("case_version")
        .select(({ fn }) => ["person", fn.countAll<number>().as("versions"), fn.max("row").as("newest")])
        .groupBy("person")
        .orderBy("newest", "desc")
        .execute();
      const newest = await db
        .selectFrom("case_version")
        .select(["row", "at", "body"])
        .where(
          "row",
          "in",
          rows.map((row) => row.newest),
        )
        .execute();
      return rows.map(({ person, versions, newest: row }) => {
        const found = newest.find((one) => one.row === row);
        return { person, versions, at: found?.at ?? "", label: labelOf(found?.body ?? "{}") };
      });
    },
    readCase: async (person) => {
      const row = await db
        .selectFrom("case_version")
        .selectAll()
        .where("person", "=", person)
        .orderBy("row", "desc")
        .limit(1)
        .executeTakeFirst();
      return row === undefined ? null : readCaseRow(row);
    },
    readPlan: async (id) => {
      const row = await db.selectFrom("plan").selectAll().where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : readPlanRow(row);
    },
    readNewestPlan: async (person) => {
      const row = await db
        .selectFrom("plan")
        .selectAll()
        .where("person", "=", person)
        .orderBy("row", "desc")
        .limit(1)
        .executeTakeFirst();
      return row === undefined ? null : readPlanRow(row);
    },
    readEvents: async (session) => {
      const rows = await db
        .selectFrom("session_event")
        .select(["id", "body"])
        .where("session", "=", session)
        .orderBy("sequence")
        .execute();
      return rows.map(({ id, body }) => {
        const read = readEvent(JSON.parse(body));
        if (!read.ok) throw new ProgrammingError(`stored event ${id}: ${read.because}`);
        return read.value;
      });
    },
    listSessions: (person) =>
      db
        .selectFrom("session_event")
        .select(({ fn }) => [
          "session",
          fn.min("at").as("startedAt"),
          fn.max("at").as("lastAt"),
          fn.countAll<number>().as("events"),
        ])
        .where("person", "=", person)
        .groupBy("session")
        .orderBy(({ fn }) => fn.min("row"))
        .execute(),
  };
}

interface Row {
  readonly id: string;
  readonly person: string;
  readonly at: string;
  readonly knowledge: string;
  readonly body: string;
}

function readCaseRow({ id, person, at, knowledge, body }: Row): CaseVersion {
  const read = validateCase(JSON.parse(body));
  if (!read.ok) throw new ProgrammingError(`stored case ${id}: ${read.faults.map(({ path }) => path).join(", ")}`);
  return { id, person, at, knowledge, case: read.value };
}

function readPlanRow({
  id,
  person,
  at,
  knowledge,
  body,
  case_version,
}: Row & { readonly case_version: string }): KeptPlan {
  const plan: unknown = JSON.parse(body);
  if (!isPlanAnswer(plan)) throw new ProgrammingError(`stored plan ${id} does not have the form of a plan`);
  return { id, person, at, knowledge, caseVersion: case_version, plan };
}

function labelOf(body: string): string | null {
  const value: unknown = JSON.parse(body);
  return typeof value === "object" && value !== null && "label" in value && typeof value.label === "string"
    ? value.label
    : null;
}
