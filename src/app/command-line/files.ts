import {
  closeSync,
  fsyncSync,
  openSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import type { CaseFile } from "../contract/case-file.ts";
import type { Fault } from "../contract/faults.ts";
import { LARGEST_CASE, parseCase } from "../contract/parse-case.ts";

export type ReadCase =
  | { readonly ok: true; readonly file: CaseFile; readonly warnings: readonly Fault[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Reads a case file from the disk, or lists everything that is wrong with it. */
export function readCaseFile(name: string): ReadCase {
  const refuse = (found: string, expected: string): ReadCase => ({
    ok: false,
    faults: [{ path: name, found, expected }],
  });
  try {
    const { size } = statSync(name);
    if (size > LARGEST_CASE)
      return refuse(
        `${Math.round(size / 1_000_000)} million bytes`,
        `a case file of at most ${LARGEST_CASE / 1_000_000} million`,
      );
    const parsed = parseCase(readFileSync(name, "utf8"));
    if (parsed.ok) return { ok: true, file: parsed.value, warnings: parsed.warnings };
    return {
      ok: false,
      faults: parsed.faults.map((fault) => (fault.path === "the file" ? { ...fault, path: name } : fault)),
    };
  } catch (error) {
    const found = sayFileTrouble(error);
    if (found === null) throw error;
    return refuse(found, "a case file that can be read");
  }
}

export interface NewFile {
  readonly name: string;
  readonly body: string | Uint8Array;
}

/**
 * Writes files so that each is there whole or not at all: all are written beside their place first, then take it.
 *
 * @returns null when all are written, else what was wrong with which.
 */
export function writeFiles(files: readonly NewFile[]): Fault | null {
  const ready: { readonly name: string; readonly waiting: string }[] = [];
  for (const { name, body } of files) {
    try {
      const place = placeOf(name);
      const waiting = join(dirname(place), `.${basename(place)}.${process.pid}.part`);
      ready.push({ name: place, waiting });
      writeWhole(waiting, body);
    } catch (error) {
      for (const one of ready) rmSync(one.waiting, { force: true });
      const found = sayFileTrouble(error);
      if (found === null) throw error;
      return { path: name, found, expected: "a file that can be written" };
    }
  }
  for (const { name, waiting } of ready) renameSync(waiting, name);
  return null;
}

/** What is wrong with a place to write to, found by writing nothing of any use there; null where it can be written. */
export function refuseToWrite(name: string): Fault | null {
  try {
    const place = placeOf(name);
    const waiting = join(dirname(place), `.${basename(place)}.${process.pid}.part`);
    try {
      writeWhole(waiting, "");
    } finally {
      rmSync(waiting, { force: true });
    }
    return null;
  } catch (error) {
    const found = sayFileTrouble(error);
    if (found === null) throw error;
    return { path: name, found, expected: "a file that can be written" };
  }
}

/** The file itself where the name is a link to it. Folders and devices are not written over. */
function placeOf(name: string): string {
  const there = statSync(name, { throwIfNoEntry: false });
  if (there === undefined) return name;
  if (!there.isFile())
    throw Object.assign(new Error("not a file"), { code: there.isDirectory() ? "EISDIR" : "ENOTFILE" });
  return realpathSync(name);
}

function writeWhole(waiting: string, body: string | Uint8Array): void {
  const handle = openSync(waiting, "wx", 0o600);
  try {
    writeFileSync(handle, body);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

const FILE_TROUBLE: Readonly<Record<string, string>> = {
  ENOENT: "no such file or folder",
  ENOTDIR: "no such folder",
  EISDIR: "a folder",
  ENOTFILE: "something that is not an ordinary file",
  EACCES: "no permission",
  EPERM: "no permission",
  EROFS: "a place that can only be read",
  ENOSPC: "no space on the disk",
  EDQUOT: "no space on the disk",
  ENAMETOOLONG: "a name that is too long",
  ELOOP: "links that go in a circle",
  EEXIST: "an unfinished file of an earlier attempt beside it",
  EIO: "a disk that failed",
};

function sayFileTrouble(error: unknown): string | null {
  if (!(error instanceof Error) || !("code" in error) || typeof error.code !== "string") return null;
  if (error.code === "ERR_INVALID_ARG_VALUE") return "a name that cannot be one";
  return FILE_TROUBLE[error.code] ?? null;
}
