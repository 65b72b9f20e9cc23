import { type Kysely, sql } from "kysely";
import type { Tables } from "./tables.ts";

/** The steps from an empty file to the present form, oldest first. A step that was ever released is never changed. */
const MIGRATIONS: readonly ((db: Kysely<Tables>) => Promise<void>)[] = [createFirstTables];

/** Number of the present form of the store. */
export const STORE_FORMAT = MIGRATIONS.length;

/** Brings the store to the present form. @returns the form it had before. */
export async function migrate(db: Kysely<Tables>, at: string): Promise<number> {
  await db.schema
    .createTable("store_format")
    .ifNotExists()
    .addColumn("version", "integer", (column) => column.primaryKey().notNull())
    .addColumn("at", "text", (column) => column.notNull())
    .execute();
  const before = await readFormat(db);
  for (const [index, step] of MIGRATIONS.entries()) {
    if (index < before) continue;
    await db.transaction().execute(async (transaction) => {
      await step(transaction);
      await transaction
        .insertInto("store_format")
        .values({ version: index + 1, at })
        .execute();
    });
  }
  return before;
}

/** The form of an open store; 0 where it is empty. */
export async function readFormat(db: Kysely<Tables>): Promise<number> {
  const { rows } = await sql<{
    name: string;
  }>`select name from sqlite_schema where type = 'table' and name = 'store_format'`.execute(db);
  if (rows.length === 0) return 0;
  const newest = await db
    .selectFrom("store_format")
    .select(({ fn }) => fn.max("version").as("version"))
    .executeTakeFirst();
  return newest?.version ?? 0;
}

async function createFirstTables(db: Kysely<Tables>): Promise<void> {
  const text = ["id", "person", "at", "knowledge", "body"];
  await createAppendOnly(db, "case_version", text);
  await createAppendOnly(db, "plan", [...text, "case_version"]);
  await createAppendOnly(db, "session_event", [...text, "session", "kind"], ["sequence"]);
  await db.schema.createIndex("case_version_person").on("case_version").columns(["person", "row"]).execute();
  await db.schema.createIndex("plan_person").on("plan").columns(["person", "row"]).execute();
  await db.schema
    .createIndex("session_event_place")
    .unique()
    .on("session_event")
    .columns(["session", "sequence"])
    .execute();
}

/** A table whose rows can be added and read, and nothing else. */
async function createAppendOnly(
  db: Kysely<Tables>,
  table: "case_version" | "plan" | "session_event",
  text: readonly string[],
  whole: readonly string[] = [],
) {
  let builder = db.schema
    .createTable(table)
    .addColumn("row", "integer", (column) => column.primaryKey().autoIncrement());
  for (const name of text)
    builder = builder.addColumn(name, "text", (column) =>
      name === "id" ? column.notNull().unique() : column.notNull(),
    );
  for (const name of whole) builder = builder.addColumn(name, "integer", (column) => column.notNull());
  await builder.execute();
  for (const change of ["update", "delete"]) {
    const trigger = sql.ref(`${table}_no_${change}`);
    await sql`create trigger ${trigger} before ${sql.raw(change)} on ${sql.table(table)} begin select raise(abort, 'rows are only added'); end`.execute(
      db,
    );
  }
}
