import Database from "better-sqlite3";
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { EMPTY_PLAN, INVENTED_CASE, inventedSession } from "../../../test/helpers/invented-session.ts";
import { openStore, STORE_FILE, type StoreOptions } from "./open-store.ts";
import type { Store } from "./store.ts";
import { refuseOldSqlite, sayStoreTrouble } from "./trouble.ts";

const now = () => "2026-03-16T09:00:00Z";
const written = (id: string, person: string) => ({ id, person, at: now(), knowledge: "k1", case: INVENTED_CASE });

let folder: string;
let open: Store[] = [];
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "matside-store-"));
});
afterEach(async () => {
  await Promise.all(open.map((store) => store.close()));
  open = [];
  rmSync(folder, { recursive: true, force: true });
});

async function opened(options: Partial<StoreOptions> = {}, at = folder): Promise<Store> {
  const result = await openStore(at, { now, ...options });
  if (!result.ok) throw new Error(result.because);
  open.push(result.store);
  return result.store;
}
async function refused(at = folder): Promise<string> {
  const result = await openStore(at, { now });
  if (result.ok) {
    open.push(result.store);
    throw new Error("was opened");
  }
  return result.because;
}
async function reopened(store: Store): Promise<Store> {
  await store.close();
  open = open.filter((one) => one !== store);
  return opened();
}

describe("what is kept", () => {
  it("gives back a case, its versions, a plan and a session after closing and opening", async () => {
    const first = await opened();
    expect(await first.listPeople()).toEqual([]);
    expect(await first.readCase("p1")).toBeNull();
    await first.writeCase(written("c1", "p1"));
    await first.writeCase({ ...written("c2", "p1"), case: { ...INVENTED_CASE, daysSinceOnset: 13 } });
    await first.writeCase(written("c3", "p2"));
    await first.writePlan({
      id: "plan-1",
      person: "p1",
      caseVersion: "c2",
      at: now(),
      knowledge: "k1",
      plan: EMPTY_PLAN,
    });
    await first.appendEvents("p1", inventedSession("s1", "p1", 3));
    const store = await reopened(first);
    expect(await store.listPeople()).toEqual([
      { person: "p2", label: "Case 9, woman, 71", at: now(), versions: 1 },
      { person: "p1", label: "Case 9, woman, 71", at: now(), versions: 2 },
    ]);
    expect((await store.readCase("p1"))?.case.daysSinceOnset).toBe(13);
    expect(await store.readPlan("plan-1")).toMatchObject({ caseVersion: "c2", plan: EMPTY_PLAN });
    expect((await store.readNewestPlan("p1"))?.id).toBe("plan-1");
    expect(await store.readEvents("s1")).toEqual(inventedSession("s1", "p1", 3));
    expect(await store.listSessions("p1")).toEqual([
      { session: "s1", startedAt: "2026-03-16T09:00:00Z", lastAt: "2026-03-16T09:00:00Z", events: 4 },
    ]);
  });

  it("keeps once what is sent twice, and refuses other content under the same identifier", async () => {
    const store = await opened();
    expect(await store.writeCase(written("c1", "p1"))).toEqual({ ok: true, added: 1 });
    expect(await store.writeCase(written("c1", "p1"))).toEqual({ ok: true, added: 0 });
    expect(await store.writeCase(written("c1", "p2"))).toMatchObject({ ok: false, trouble: "conflict" });
    const events = inventedSession("s1", "p1", 5);
    expect(await store.appendEvents("p1", events.slice(0, 3))).toEqual({ ok: true, added: 3 });
    expect(await store.appendEvents("p1", events)).toEqual({ ok: true, added: 3 });
    expect(await store.appendEvents("p1", events)).toEqual({ ok: true, added: 0 });
    expect(await store.readEvents("s1")).toHaveLength(6);
  });

  it("takes a batch of events whole or not at all", async () => {
    const store = await opened();
    const events = inventedSession("s1", "p1", 3);
    const gap = [...events.slice(0, 2), ...events.slice(3)];
    expect(await store.appendEvents("p1", gap)).toMatchObject({
      ok: false,
      trouble: "conflict",
      because: expect.stringMatching(/missing/),
    });
    expect(await store.readEvents("s1")).toEqual([]);
  });

  it("does not let a session pass to another person", async () => {
    const store = await opened();
    await store.appendEvents("p1", inventedSession("s1", "p1", 1));
    expect(await store.appendEvents("p2", inventedSession("s1", "p1", 2))).toMatchObject({
      ok: false,
      trouble: "conflict",
    });
    expect(await store.appendEvents("p2", inventedSession("s2", "p1", 1))).toMatchObject({
      ok: false,
      trouble: "conflict",
    });
  });

  it("refuses to change or delete a row, even by hand", async () => {
    const store = await opened();
    await store.writeCase(written("c1", "p1"));
    await store.appendEvents("p1", inventedSession("s1", "p1", 1));
    await store.writePlan({
      id: "plan-1",
      person: "p1",
      caseVersion: "c1",
      at: now(),
      knowledge: "k1",
      plan: EMPTY_PLAN,
    });
    await store.close();
    open = [];
    const raw = new Database(join(folder, STORE_FILE));
    for (const table of ["case_version", "session_event", "plan"]) {
      expect(() => raw.exec(`update ${table} set body = 'x'`)).toThrow(/only added/);
      expect(() => raw.exec(`delete from ${table}`)).toThrow(/only added/);
      expect(raw.prepare(`select count(*) from ${table}`).pluck().get()).toBeGreaterThan(0);
    }
    expect(raw.pragma("journal_mode", { simple: true })).toBe("wal");
    raw.close();
  });
});

describe("a store that cannot be used", () => {
  it("is refused to a second one while the first works, and free afterwards", async () => {
    const first = await opened();
    expect(await refused()).toMatch(/^Another Matside already works with the records in .*--data\.$/);
    await first.writeCase(written("c1", "p1"));
    const second = await reopened(first);
    expect(await second.listPeople()).toHaveLength(1);
  });

  it("makes the folders above it", async () => {
    const store = await opened({}, join(folder, "a", "b"));
    expect(await store.listPeople()).toEqual([]);
  });

  it("says that the folder is none", async () => {
    const file = join(folder, "a-file");
    writeFileSync(file, "x");
    expect(await refused(file)).toMatch(/cannot be opened/);
    expect(await refused(join(file, "below"))).toMatch(/cannot be opened/);
  });

  it("leaves a file alone that is not its own", async () => {
    writeFileSync(
      join(folder, STORE_FILE),
      "This is a shopping list, long enough to be taken for something. ".repeat(20),
    );
    const before = readFileSync(join(folder, STORE_FILE));
    expect(await refused()).toMatch(/damaged or not Matside's/);
    expect(readFileSync(join(folder, STORE_FILE)).equals(before)).toBe(true);
    rmSync(join(folder, STORE_FILE));
    const other = new Database(join(folder, STORE_FILE));
    other.exec("create table recipes (name text)");
    other.close();
    expect(await refused()).toMatch(/not Matside's/);
  });

  it("does not open a store of a later version", async () => {
    await (await opened()).close();
    open = [];
    const raw = new Database(join(folder, STORE_FILE));
    raw.exec("insert into store_format values (99, '2030-01-01T00:00:00Z')");
    raw.close();
    expect(await refused()).toMatch(/later version/);
  });

  it("says when there is no space, keeps what was confirmed, and goes on reading", async () => {
    const store = await opened({ mostPages: 40 });
    let confirmed = 0;
    let because = "";
    for (let index = 0; index < 400 && because === ""; index++) {
      const kept = await store.writeCase({
        ...written(`c${index}`, `p${index}`),
        case: { ...INVENTED_CASE, goals: ["walk to the table ".repeat(15)] },
      });
      if (kept.ok) confirmed += kept.added;
      else because = kept.because;
    }
    expect(because).toMatch(/^There is no space/);
    expect(confirmed).toBeGreaterThan(5);
    expect(await store.listPeople()).toHaveLength(confirmed);
    expect(await (await reopened(store)).listPeople()).toHaveLength(confirmed);
  });

  it.each([
    ["SQLITE_READONLY_DIRECTORY", /cannot be written/],
    ["EACCES", /cannot be written/],
    ["EROFS", /cannot be written/],
    ["ENOSPC", /no space/],
    ["SQLITE_IOERR_FSYNC", /disk failed/],
    ["SQLITE_BUSY_RECOVERY", /Another Matside/],
  ])("has a sentence for %s", (code, sentence) => {
    expect(sayStoreTrouble(Object.assign(new Error("x"), { code }), "records")).toMatch(sentence);
  });

  it("does not hide a fault of its own behind a sentence", () => {
    expect(sayStoreTrouble(new TypeError("x"), "records")).toBeNull();
  });

  it.each([
    ["3.51.2", true],
    ["3.50.9", true],
    ["2.99.9", true],
    ["3.51.3", false],
    ["3.53.2", false],
    ["4.0.0", false],
  ])("judges SQLite %s", (version, isOld) => {
    expect(refuseOldSqlite(version) !== null).toBe(isOld);
  });
});

describe("stores of earlier versions", () => {
  it("opens the store saved in form 1 and reads all of it", async () => {
    copyFileSync(new URL("../../../test/stored/store-form-1.sqlite", import.meta.url), join(folder, STORE_FILE));
    const store = await opened();
    expect(await store.listPeople()).toEqual([{ person: "p1", label: "Case 9, woman, 71", at: now(), versions: 1 }]);
    expect((await store.readCase("p1"))?.case).toEqual(INVENTED_CASE);
    expect(await store.readEvents("s1")).toEqual(inventedSession("s1", "p1", 3));
    expect((await store.readPlan("plan-1"))?.plan).toEqual(EMPTY_PLAN);
    expect(await store.appendEvents("p1", inventedSession("s1", "p1", 4))).toEqual({ ok: true, added: 1 });
  });
});
