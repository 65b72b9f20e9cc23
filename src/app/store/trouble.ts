/** Why a store could not be opened or written, as a sentence for the person at the keyboard; null where it is our own fault. */
export function sayStoreTrouble(error: unknown, folder: string): string | null {
  const code = codeOf(error);
  if (code === null) return null;
  // The commit failed and took the transaction with it.
  if (error instanceof Error && error.message.startsWith("cannot rollback"))
    return `The disk did not take the entry for ${folder}. What was confirmed before is kept; make space and try again.`;
  const known = SENTENCES.find(([pattern]) => pattern.test(code));
  return known === undefined ? null : known[1](folder);
}

const SENTENCES: readonly (readonly [RegExp, (folder: string) => string])[] = [
  [
    /^SQLITE_(BUSY|LOCKED)/,
    (folder) =>
      `Another Matside already works with the records in ${folder}. Close that one first, or give another folder with --data.`,
  ],
  [
    /^(SQLITE_READONLY|SQLITE_PERM|EACCES|EPERM|EROFS)/,
    (folder) => `The folder ${folder} cannot be written to. Allow writing there, or give another folder with --data.`,
  ],
  [
    /^(SQLITE_FULL|ENOSPC|EDQUOT)/,
    (folder) =>
      `There is no space for the records in ${folder}. What was confirmed before is kept; make space and try again.`,
  ],
  [
    /^(SQLITE_CANTOPEN|ENOTDIR|EEXIST|ENOENT|EISDIR|ENAMETOOLONG|ELOOP)/,
    (folder) =>
      `The records in ${folder} cannot be opened: it is not a folder that can be used. Give another folder with --data.`,
  ],
  [
    /^(SQLITE_NOTADB|SQLITE_CORRUPT)/,
    (folder) =>
      `The file of records in ${folder} is damaged or not Matside's. Nothing was changed; put back the last backup, or give another folder with --data.`,
  ],
  [
    /^(SQLITE_IOERR|EIO)/,
    (folder) => `The disk failed while working with the records in ${folder}. What was confirmed before is kept.`,
  ],
];

function codeOf(error: unknown): string | null {
  return error instanceof Error && "code" in error && typeof error.code === "string" ? error.code : null;
}

/** Oldest SQLite whose write-ahead log loses nothing when two connections meet. */
const OLDEST_SQLITE = [3, 51, 3] as const;

/** Null for a SQLite that keeps what it confirmed, else why it is refused. */
export function refuseOldSqlite(version: string): string | null {
  const parts = version.split(".").map(Number);
  for (const [index, least] of OLDEST_SQLITE.entries()) {
    const part = parts[index] ?? 0;
    if (part > least) return null;
    if (part < least || Number.isNaN(part))
      return `The database library here is SQLite ${version}; Matside needs ${OLDEST_SQLITE.join(".")} or later, because earlier ones can lose a confirmed entry. Run npm ci again.`;
  }
  return null;
}
