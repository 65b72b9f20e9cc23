import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { launchBrowser } from "../support/browser.ts";
import { addPerson, fillLook, openPage, settle, showPlan, SIZES, station, wordsOf } from "../support/page-steps.ts";
import { servePage, type Served } from "../support/served-page.ts";

let browser: Browser;
let served: Served;
beforeAll(async () => {
  [browser, served] = await Promise.all([launchBrowser(), servePage()]);
});
afterAll(async () => {
  await browser?.close();
  await served?.end();
});

describe("once loaded", () => {
  it("works without a network, survives a reload, and sends everything once it is back", {
    timeout: 180_000,
  }, async () => {
    const context = await browser.newContext({ viewport: SIZES[0] });
    const { page, troubles } = await openPage(context);
    await page.goto(served.address);
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.waitForFunction(async () => {
      const names = await caches.keys();
      const all = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
      return all.flat().some(({ url }) => url.includes(".wasm"));
    });
    await page.reload();
    await context.setOffline(true);

    await addPerson(page, served.address);
    await fillLook(page);
    await showPlan(page);
    await page.getByText("Saved here. Not sent yet.").first().waitFor();
    await station(page, "At the mat");
    await page.getByRole("button", { name: "Start", exact: true }).click();
    await page.getByRole("button", { name: "Done as planned" }).click();
    await page.getByRole("button", { name: "Undo", exact: true }).waitFor();
    const before = await wordsOf(page.getByText(/set \d of \d/));

    // A closed lid, a dead battery: the page comes back where it was.
    await page.reload();
    await page.getByRole("button", { name: "Done as planned" }).waitFor();
    const after = await wordsOf(page.getByText(/set \d of \d/));
    expect(after.replace(/^rest.*then /, "").slice(0, 12)).toBe(before.replace(/^rest.*then /, "").slice(0, 12));
    await page.getByRole("button", { name: "Done as planned" }).click();
    await page.getByRole("button", { name: "All of it from memory" }).click();
    await page.getByRole("button", { name: "Write all of it down" }).click();
    await page.getByRole("heading", { name: /It is written/ }).waitFor();
    await page.getByText("Saved here. Not sent yet.").first().waitFor();
    await station(page, "Papers");
    await settle(page);
    await page.getByText("Therapist's sheet").click();
    await settle(page);
    await page.getByText("Ways out").first().waitFor();

    const record = await (await fetch(`${served.address}/api/people`)).json();
    expect(record).toEqual({ ok: true, people: [] });
    await context.setOffline(false);
    await page.evaluate(() => dispatchEvent(new Event("online")));
    await station(page, "Note");
    await page.getByText("In the record.").waitFor();
    const { people }: { people: { person: string }[] } = await (await fetch(`${served.address}/api/people`)).json();
    expect(people).toHaveLength(1);
    const { sessions }: { sessions: { events: number }[] } = await (
      await fetch(`${served.address}/api/people/${people[0]?.person}/sessions`)
    ).json();
    expect(sessions[0]?.events).toBeGreaterThan(5);
    expect(troubles).toEqual([]);
    await context.close();
  });
});
