import { accessSync, constants, mkdirSync, statSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import type Database from "better-sqlite3";
import { Kysely, SqliteDialect } from "kysely";
import { migrate, readFormat, STORE_FORMAT } from "./migrations.ts";
import { createStore, type Store } from "./store.ts";
import type { Tables } from "./tables.ts";
import { refuseOldSqlite, sayStoreTrouble } from "./trouble.ts";

export const STORE_FILE = "matside.sqlite";
/** Marks a file as ours ("Mats"). */
const APPLICATION_ID = 0x4d617473;
/** How long a store that another program is just closing is waited for [millisecond]. */
const WAIT = 400;

export type OpenedStore =
  | { readonly ok: true; readonly store: Store }
  | { readonly ok: false; readonly because: string };

export interface StoreOptions {
  /** The time now, told from outside. */
  readonly now: () => string;
  /** Most pages the file may grow to, for a folder with a quota. */
  readonly mostPages?: number;
}

/**
 * Opens the records in a folder, making it where it is missing. One program at a time works with a folder: the lock is
 * the operating system's and goes with the program, however that ends. What is confirmed is on the disk.
 *
 * @returns the store, or why it could not be opened, as a sentence.
 */
export async function openStore(folder: string, options: StoreOptions): Promise<OpenedStore> {
  let database: Database.Database | null = null;
  try {
    makeFolder(resolve(folder));
    accessSync(folder, constants.W_OK | constants.X_OK);
    const { default: Sqlite } = await import("better-sqlite3");
    database = new Sqlite(join(folder, STORE_FILE), { timeout: WAIT });
    const refused = refuseOldSqlite(sqliteVersion(database)) ?? prepare(database, folder, options);
    if (refused !== null) return giveUp(database, refused);
    const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database }) });
    if ((await readFormat(db)) > STORE_FORMAT)
      return giveUp(
        database,
        `The records in ${folder} were made by a later version of Matside. Nothing was changed; use that version.`,
      );
    await migrate(db, options.now());
    return { ok: true, store: createStore(db, folder) };
  } catch (error) {
    const because = sayStoreTrouble(error, folder);
    if (because === null) throw error;
    return giveUp(database, because);
  }
}

/** Makes a folder and what is missing above it, one by one: where none can be made it ends with the reason. */
function makeFolder(folder: string): void {
  const there = statSync(folder, { throwIfNoEntry: false });
  if (there?.isDirectory() === true) return;
  const above = dirname(folder);
  if (above !== folder) makeFolder(above);
  mkdirSync(folder, { mode: 0o700 });
}

function giveUp(database: Database.Database | null, because: string): OpenedStore {
  database?.close();
  return { ok: false, because };
}

/** Takes the lock and sets how safely is written. @returns why the file is refused, or null. */
function prepare(database: Database.Database, folder: string, { mostPages }: StoreOptions): string | null {
  database.pragma("locking_mode = EXCLUSIVE");
  database.pragma("mmap_size = 0");
  const id = database.pragma("application_id", { simple: true });
  const isEmpty = database.prepare("select count(*) as tables from sqlite_schema").pluck().get() === 0;
  if (id !== APPLICATION_ID && !isEmpty)
    return `The file of records in ${folder} is damaged or not Matside's. Nothing was changed; give another folder with --data.`;
  database.pragma("journal_mode = WAL");
  database.pragma("synchronous = FULL");
  database.pragma("fullfsync = ON");
  database.pragma("checkpoint_fullfsync = ON");
  if (mostPages !== undefined) database.pragma(`max_page_count = ${Math.round(mostPages)}`);
  database.exec("begin immediate");
  if (isEmpty) database.pragma(`application_id = ${APPLICATION_ID}`);
  database.exec("commit");
  return null;
}

function sqliteVersion(database: Database.Database): string {
  return String(database.prepare("select sqlite_version()").pluck().get());
}
