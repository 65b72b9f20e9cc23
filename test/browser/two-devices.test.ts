import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { launchBrowser } from "../support/browser.ts";
import { openPage, SIZES } from "../support/page-steps.ts";
import { servePage, type Served } from "../support/served-page.ts";

let browser: Browser;
let served: Served;
beforeAll(async () => {
  [browser, served] = await Promise.all([launchBrowser(), servePage({ demo: true })]);
});
afterAll(async () => {
  await browser?.close();
  await served?.end();
});

interface Told {
  readonly sessions?: readonly { readonly session: string }[];
  readonly events?: readonly { readonly id: string; readonly sequence: number; readonly kind: string }[];
}
const tell = async (path: string): Promise<Told> => (await fetch(`${served.address}${path}`)).json();

describe("one session on two devices", () => {
  it("goes on where the other device stopped, and loses nothing when both write", { timeout: 120_000 }, async () => {
    const [tablet, laptop] = await Promise.all([
      browser.newContext({ viewport: SIZES[0] }).then(openPage),
      browser.newContext({ viewport: SIZES[2] }).then(openPage),
    ]);
    const address = `${served.address}/person/previous-sessions/mat`;
    await tablet.page.goto(address);
    await tablet.page.getByRole("button", { name: "Start", exact: true }).click({ timeout: 60_000 });
    await tablet.page.getByRole("button", { name: "Done as planned" }).click();
    await tablet.page.getByText(/set 2 of/).waitFor();

    await laptop.page.goto(address);
    await laptop.page.getByRole("heading", { name: "A session is open on another device." }).waitFor();
    await laptop.page.getByText(/one set written/).waitFor();
    await laptop.page.getByRole("button", { name: "Go on with it here" }).click();
    await laptop.page.getByText(/set 2 of/).waitFor();
    const sent = laptop.page.waitForResponse((response) => response.request().method() === "POST" && response.ok());
    await laptop.page.getByRole("button", { name: "Done as planned" }).click();
    await sent;

    // The tablet has not looked since: its next set takes the same place and is put behind the other one.
    const answers: number[] = [];
    tablet.page.on("response", (response) => {
      if (response.request().method() === "POST") answers.push(response.status());
    });
    await tablet.page.getByRole("button", { name: "Done as planned" }).click();
    await expect.poll(() => answers, { timeout: 10_000 }).toEqual([409, 200]);
    const { sessions } = await tell("/api/people/previous-sessions/sessions");
    const session = sessions?.at(-1)?.session ?? "";
    const { events } = await tell(`/api/people/previous-sessions/sessions/${session}/events`);
    expect(events?.map(({ sequence, kind }) => `${sequence} ${kind}`)).toEqual([
      "1 sessionStarted",
      "2 setDone",
      "3 setDone",
      "4 setDone",
    ]);
    expect(new Set(events?.map(({ id }) => id)).size).toBe(4);
    expect(await tablet.page.getByText(/did not take an entry/).count()).toBe(0);
    expect([...tablet.troubles, ...laptop.troubles]).toEqual([]);
  });
});
