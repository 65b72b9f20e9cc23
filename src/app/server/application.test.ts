import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Hono } from "hono";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { INVENTED_ENGINE } from "../../../test/helpers/invented-engine.ts";
import { EMPTY_PLAN, INVENTED_CASE, inventedSession } from "../../../test/helpers/invented-session.ts";
import { openStore } from "../store/open-store.ts";
import type { Store } from "../store/store.ts";
import { createApplication } from "./application.ts";
import { startServer } from "./start-server.ts";

const AT = "2026-03-16T09:00:00Z";
let folder: string;
let store: Store;
let app: Hono;
let reported: unknown[] = [];

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "matside-server-"));
  const page = join(folder, "page");
  mkdirSync(join(page, "assets"), { recursive: true });
  writeFileSync(join(page, "index.html"), "<!doctype html><title>Matside</title>");
  writeFileSync(join(page, "assets", "planner-a1b2c3d4.wasm"), "\0asm");
  writeFileSync(join(page, "assets", "page-a1b2c3d4.js"), "1");
  writeFileSync(join(folder, "secret.txt"), "secret");
  const opened = await openStore(join(folder, "records"), { now: () => AT });
  if (!opened.ok) throw new Error(opened.because);
  store = opened.store;
  reported = [];
  app = createApplication({
    store,
    version: INVENTED_ENGINE.version,
    computePlan: INVENTED_ENGINE.makePlan,
    makeSheet: INVENTED_ENGINE.makeSheet,
    pageFolder: page,
    report: (error) => void reported.push(error),
  });
});
afterEach(async () => {
  await store.close();
  rmSync(folder, { recursive: true, force: true });
});

const HOST = "127.0.0.1:4175";
function ask(path: string, init: { method?: string; body?: unknown; headers?: Record<string, string> } = {}) {
  const { method = "GET", body, headers = {} } = init;
  const sent =
    body === undefined
      ? {}
      : {
          body: typeof body === "string" ? body : JSON.stringify(body),
          headers: { "content-type": "application/json", host: HOST, ...headers },
        };
  return Promise.resolve(
    app.request(`http://${HOST}${path}`, { method, headers: { host: HOST, ...headers }, ...sent }),
  );
}
const writeCase = (person: string, id = "c1") =>
  ask(`/api/people/${person}/case`, { method: "PUT", body: { id, at: AT, case: INVENTED_CASE } });

describe("people, plans and sessions", () => {
  it("keeps a case in versions and gives back the newest", async () => {
    expect(await (await ask("/api/people")).json()).toEqual({ ok: true, people: [] });
    expect((await ask("/api/people/p1/case")).status).toBe(404);
    expect(await (await writeCase("p1")).json()).toEqual({ ok: true, added: 1 });
    expect(await (await writeCase("p1")).json()).toEqual({ ok: true, added: 0 });
    const newer = { id: "c2", at: AT, case: { ...INVENTED_CASE, daysSinceOnset: 13 } };
    await ask("/api/people/p1/case", { method: "PUT", body: newer });
    expect(await (await ask("/api/people/p1/case")).json()).toMatchObject({
      ok: true,
      id: "c2",
      case: { daysSinceOnset: 13 },
    });
    expect(await (await ask("/api/people")).json()).toMatchObject({
      people: [{ person: "p1", versions: 2, label: INVENTED_CASE.label }],
    });
    expect((await writeCase("p2", "c1")).status).toBe(409);
  });

  it("lists every fault of a case and keeps nothing of it", async () => {
    const answer = await ask("/api/people/p1/case", {
      method: "PUT",
      body: {
        id: "c1",
        at: AT,
        case: { ...INVENTED_CASE, weakSide: "lft", person: { ...INVENTED_CASE.person, heightCm: 1.6 } },
      },
    });
    expect(answer.status).toBe(400);
    expect(await answer.json()).toMatchObject({
      ok: false,
      faults: [{ path: "person.heightCm" }, { path: "weakSide" }],
    });
    expect((await ask("/api/people/p1/case")).status).toBe(404);
  });

  it("plans the kept case or one that is sent, and keeps a plan", async () => {
    expect((await ask("/api/people/p1/plan", { method: "POST", body: { minutes: 45 } })).status).toBe(404);
    await writeCase("p1");
    expect(await (await ask("/api/people/p1/plan", { method: "POST", body: { minutes: 45 } })).json()).toMatchObject({
      plan: { workingMinutes: 33 },
    });
    expect(
      await (await ask("/api/people/new/plan", { method: "POST", body: { minutes: 30, case: INVENTED_CASE } })).json(),
    ).toMatchObject({ plan: { workingMinutes: 18 } });
    expect((await ask("/api/people/p1/plan", { method: "POST", body: { minutes: "45" } })).status).toBe(400);
    const put = await ask("/api/people/p1/plans/plan-1", {
      method: "PUT",
      body: { at: AT, caseVersion: "c1", plan: EMPTY_PLAN },
    });
    expect(await put.json()).toEqual({ ok: true, added: 1 });
    expect(await (await ask("/api/people/p1/plans/newest")).json()).toMatchObject({ id: "plan-1", plan: EMPTY_PLAN });
    expect((await ask("/api/people/p2/plans/plan-1")).status).toBe(404);
    expect(
      (await ask("/api/people/p1/plans/plan-2", { method: "PUT", body: { at: AT, caseVersion: "c1", plan: {} } }))
        .status,
    ).toBe(400);
  });

  it("adds events, again without harm, and gives them back", async () => {
    const events = inventedSession("s1", "p1", 3);
    const add = (some: unknown) => ask("/api/people/p1/sessions/s1/events", { method: "POST", body: { events: some } });
    expect(await (await add(events.slice(0, 2))).json()).toEqual({ ok: true, added: 2 });
    expect(await (await add(events)).json()).toEqual({ ok: true, added: 2 });
    expect(await (await ask("/api/people/p1/sessions/s1/events")).json()).toEqual({ ok: true, events });
    expect(await (await ask("/api/people/p2/sessions/s1/events")).json()).toEqual({ ok: true, events: [] });
    expect(await (await ask("/api/people/p1/sessions")).json()).toMatchObject({
      sessions: [{ session: "s1", events: 4 }],
    });
    expect(await (await ask("/api/people/p1/sessions/s1/previous-entry")).json()).toMatchObject({
      previous: { date: "2026-03-16", items: [{ activity: "bridge", done: "asPlanned", sets: 3 }] },
    });
    expect((await add([{ ...events[1], id: "other" }])).status).toBe(409);
    expect((await add([{ kind: "setDone" }])).status).toBe(400);
    expect((await add(inventedSession("s2", "p1", 0))).status).toBe(400);
  });

  it("hands out sheets that run nothing", async () => {
    await writeCase("p1");
    const sheet = await ask("/api/people/p1/sheets/home?form=html&language=en");
    expect(sheet.status).toBe(200);
    expect(sheet.headers.get("content-security-policy")).toMatch(/^default-src 'none'; style-src 'unsafe-inline'/);
    expect((await ask("/api/people/p1/sheets/nothing")).status).toBe(404);
    expect((await ask("/api/people/p1/sheets/home?form=exe")).status).toBe(400);
  });
});

describe("what is not let in", () => {
  it.each([
    ["another host name", { host: "example.org" }],
    ["a name that begins like ours", { host: "localhost.example.org:4175" }],
    ["another page", { origin: "http://example.org" }],
    ["another port's page", { origin: "http://127.0.0.1:9999" }],
    ["a hidden page", { origin: "null" }],
    ["a page of another site by its own word", { "sec-fetch-site": "cross-site", "sec-fetch-mode": "cors" }],
  ])("%s", async (_what, headers: Record<string, string>) => {
    expect((await ask("/api/people", { headers })).status).toBe(403);
    expect(
      (await ask("/api/people/p1/case", { method: "PUT", body: { id: "c1", at: AT, case: INVENTED_CASE }, headers }))
        .status,
    ).toBe(403);
    expect(await store.listPeople()).toEqual([]);
  });

  it("lets a link from elsewhere open the page, and nothing else", async () => {
    const headers = { "sec-fetch-site": "cross-site", "sec-fetch-mode": "navigate" };
    expect((await ask("/", { headers })).status).toBe(200);
    expect((await ask("/api/people", { headers })).status).toBe(403);
  });

  it.each([
    ["no JSON", { body: "x=1", headers: { "content-type": "application/x-www-form-urlencoded" } }, 415],
    ["broken JSON", { body: "{" }, 400],
    ["too much", { body: `{"id": "${"x".repeat(5_200_000)}"}` }, 413],
    ["an unknown field", { body: { id: "c1", at: AT, case: INVENTED_CASE, more: 1 } }, 400],
    ["no time", { body: { id: "c1", case: INVENTED_CASE } }, 400],
  ])("%s", async (_what, init, status) => {
    const answer = await ask("/api/people/p1/case", { method: "PUT", ...init });
    expect(answer.status).toBe(status);
    expect(await answer.json()).toMatchObject({ ok: false, because: expect.stringMatching(/\w/) });
    expect(await store.listPeople()).toEqual([]);
  });

  it("tells nothing of its insides when it fails itself", async () => {
    await store.close();
    const answer = await ask("/api/people");
    expect(answer.status).toBe(500);
    expect(await answer.text()).not.toMatch(/\n\s+at |\.ts\b|\.js\b|sqlite|Kysely|node_modules/i);
    expect(reported).toHaveLength(1);
    const opened = await openStore(join(folder, "records"), { now: () => AT });
    if (opened.ok) store = opened.store;
  });
});

describe("the page", () => {
  it("comes with its types and a policy that loads nothing from elsewhere", async () => {
    const page = await ask("/");
    expect(page.headers.get("content-type")).toMatch(/^text\/html/);
    expect(page.headers.get("content-security-policy")).toMatch(
      /script-src 'self' 'wasm-unsafe-eval'; worker-src 'self'/,
    );
    expect(page.headers.get("content-security-policy")).not.toMatch(/unsafe-inline|https?:|\*/);
    const wasm = await ask("/assets/planner-a1b2c3d4.wasm");
    expect(wasm.headers.get("content-type")).toBe("application/wasm");
    expect(wasm.headers.get("cache-control")).toMatch(/immutable/);
    expect((await ask("/assets/page-a1b2c3d4.js")).headers.get("content-type")).toMatch(/^text\/javascript/);
    expect(await (await ask("/people/p1/plan")).text()).toMatch(/<title>Matside/);
  });
  it.each([
    "/../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/assets/..%5c..%5c..%5csecret.txt",
    "/%00.txt",
    "/%zz.txt",
    "/nothing.js",
  ])("gives nothing at %s", async (path) => {
    const answer = await ask(path);
    expect(answer.status).toBe(404);
    expect(await answer.text()).not.toContain("secret");
  });
  it("keeps answers about people out of every cache", async () => {
    expect((await ask("/api/people")).headers.get("cache-control")).toBe("no-store");
    expect((await ask("/api/nothing")).status).toBe(404);
    expect((await ask("/", { method: "DELETE" })).status).toBe(405);
  });
});

describe("starting", () => {
  it("listens on this computer only and says so when the port is taken", async () => {
    const taken = createServer();
    const port = await new Promise<number>((resolve) => {
      taken.listen(0, "127.0.0.1", () => {
        const bound = taken.address();
        resolve(typeof bound === "object" && bound !== null ? bound.port : 0);
      });
    });
    expect(await startServer(app, port)).toEqual({
      ok: false,
      because: `Port ${port} is already in use. Close what uses it, or give another one with --port.`,
    });
    taken.close();
    const started = await startServer(app, 0);
    if (!started.ok) throw new Error(started.because);
    expect(started.server.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
    expect(await (await fetch(`${started.server.address}api/state`)).json()).toMatchObject({
      ok: true,
      version: { product: "0" },
    });
    await started.server.close();
  });
});
