import { chmodSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { seededStream } from "../../src/quantity/random.ts";
import { INVENTED_CASE, inventedSession } from "../helpers/invented-session.ts";
import { bundleProgram, startProgram, startServing } from "./running-program.ts";

const KILLS = 20;
/** Sessions written at the same time. */
const WRITERS = 4;

let bundle: string;
let folder: string;
beforeAll(async () => {
  bundle = await bundleProgram();
  folder = mkdtempSync(join(tmpdir(), "matside-records-"));
}, 60_000);
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
  rmSync(bundle, { force: true });
});

const send = (address: string, path: string, method: string, body: unknown) =>
  fetch(`${address}api/people/${path}`, {
    method,
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  });

/** Writes events of one session, one request each, until the server is gone; keeps what was confirmed. */
async function writeUntilGone(address: string, session: string, confirmed: Set<string>): Promise<number> {
  let sent = 0;
  for (const event of inventedSession(session, "p1", 5000)) {
    sent++;
    try {
      const answer = await send(address, `p1/sessions/${session}/events`, "POST", { events: [event] });
      const told: unknown = await answer.json();
      if (answer.status === 200 && JSON.stringify(told) === '{"ok":true,"added":1}') confirmed.add(event.id);
      else throw new Error(JSON.stringify(told));
    } catch (error) {
      if (error instanceof TypeError || (error instanceof Error && /fetch|socket|terminated/i.test(error.message)))
        return sent;
      throw error;
    }
  }
  return sent;
}

async function readIds(address: string, session: string): Promise<readonly string[]> {
  const told: { events: { id: string }[] } = JSON.parse(
    await (await fetch(`${address}api/people/p1/sessions/${session}/events`)).text(),
  );
  return told.events.map(({ id }) => id);
}

describe("a server that is killed while it writes", () => {
  it(`has every confirmed event after each of ${KILLS} kills`, { timeout: 120_000 }, async () => {
    const random = seededStream(2026);
    const records = join(folder, "killed");
    const confirmed = new Set<string>();
    let sent = 0;
    let slowestStart = 0;
    let server = await startServing(bundle, records);
    for (let kill = 1; kill <= KILLS; kill++) {
      const writing = Array.from({ length: WRITERS }, (_, writer) =>
        writeUntilGone(server.address, `k${kill}-w${writer}`, confirmed),
      );
      await wait(20 + Math.floor(random() * 250));
      server.child.kill("SIGKILL");
      sent += (await Promise.all(writing)).reduce((sum, one) => sum + one, 0);
      await server.ended;
      server = await startServing(bundle, records);
      slowestStart = Math.max(slowestStart, server.startSeconds);
      for (let writer = 0; writer < WRITERS; writer++) {
        const session = `k${kill}-w${writer}`;
        const there = await readIds(server.address, session);
        const missing = [...confirmed].filter((id) => id.startsWith(`${session}-`) && !there.includes(id));
        expect(missing).toEqual([]);
        expect(there).toEqual(
          inventedSession(session, "p1", 5000)
            .slice(0, there.length)
            .map(({ id }) => id),
        );
      }
    }
    // Once more at the end, when nineteen further kills could have undone what was there.
    let there = 0;
    for (let kill = 1; kill <= KILLS; kill++)
      for (let writer = 0; writer < WRITERS; writer++) {
        const ids = new Set(await readIds(server.address, `k${kill}-w${writer}`));
        there += ids.size;
        for (const id of confirmed) if (id.startsWith(`k${kill}-w${writer}-`)) expect(ids.has(id)).toBe(true);
      }
    server.child.kill("SIGTERM");
    expect(await server.ended).toBe(0);
    console.log(
      `${KILLS} kills: ${sent} events sent, ${confirmed.size} confirmed, ${there} there, 0 confirmed and lost; slowest start ${slowestStart.toFixed(2)} s`,
    );
    // A slow machine confirms fewer in the same moments; one a kill is the least that says anything.
    expect(confirmed.size).toBeGreaterThanOrEqual(KILLS);
    expect(there).toBeGreaterThanOrEqual(confirmed.size);
    expect(sent - there).toBeLessThanOrEqual(KILLS * WRITERS);
  });
});

describe("a program that cannot start", () => {
  it("refuses a second one on the same records, and the first goes on", async () => {
    const records = join(folder, "shared");
    const first = await startServing(bundle, records);
    const second = startProgram(bundle, ["serve", "--port", "0", "--data", records]);
    expect(await second.ended).toBe(2);
    expect(second.said()).toEqual({
      out: "",
      err: `Another Matside already works with the records in ${records}. Close that one first, or give another folder with --data.\n`,
    });
    expect(
      (await send(first.address, "p1/case", "PUT", { id: "c1", at: "2026-03-16T09:00:00Z", case: INVENTED_CASE }))
        .status,
    ).toBe(200);
    const port = new URL(first.address).port;
    const third = startProgram(bundle, ["serve", "--port", port, "--data", join(folder, "other"), "--json"]);
    expect(await third.ended).toBe(2);
    expect(JSON.parse(third.said().err)).toMatchObject({
      ok: false,
      message: expect.stringMatching(`^Port ${port} is already in use`),
    });
    first.child.kill("SIGTERM");
    expect(await first.ended).toBe(0);
  });

  it("says that a folder can only be read, and leaves nothing in it", async () => {
    const shut = join(folder, "shut");
    chmodSync(folder, 0o755);
    mkdirSync(shut, { mode: 0o555 });
    const isRoot = process.getuid?.() === 0;
    const program = startProgram(bundle, ["serve", "--port", "0", "--data", shut], isRoot ? 65_534 : undefined);
    expect(await program.ended).toBe(2);
    expect(program.said().err).toBe(
      `The folder ${shut} cannot be written to. Allow writing there, or give another folder with --data.\n`,
    );
    expect(existsSync(join(shut, "matside.sqlite"))).toBe(false);
  });

  it("ends with status 2 and one sentence a fault for a spoiled case", async () => {
    const spoiled = join(folder, "spoiled.json");
    writeFileSync(
      spoiled,
      '{"person": {"sex": "f", "ageYears": 60, "heightCm": 1.75, "massKg": 70}, "weakSide": "left"}',
    );
    const program = startProgram(bundle, ["plan", spoiled]);
    expect(await program.ended).toBe(2);
    expect(program.said().out).toBe("");
    expect(
      program
        .said()
        .err.trim()
        .split("\n")
        .map((line) => line.split(":")[0]),
    ).toEqual(["person.sex", "person.heightCm", "daysSinceOnset"]);
  });
});
