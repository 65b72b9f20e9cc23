import { AxeBuilder } from "@axe-core/playwright";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { launchBrowser } from "../support/browser.ts";
import { openPage, settle, SIZES } from "../support/page-steps.ts";
import { servePage, type Served } from "../support/served-page.ts";

/** Rules of the Web Content Accessibility Guidelines 2.2, levels A and AA, as far as the axe engine judges them. */
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

let browser: Browser;
let served: Served;
beforeAll(async () => {
  [browser, served] = await Promise.all([launchBrowser(), servePage({ demo: true })]);
});
afterAll(async () => {
  await browser?.close();
  await served?.end();
});

async function judge(page: Page): Promise<string[]> {
  await settle(page);
  const { violations } = await new AxeBuilder({ page }).withTags(RULES).analyze();
  return violations.flatMap(({ id, nodes }) =>
    nodes
      .slice(0, 3)
      .map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary?.slice(0, 200) ?? ""}`),
  );
}

const VIEWS = [
  ["people", "/"],
  ["new person", "/new"],
  ["look", "/person/case-p/look"],
  ["measured", "/person/case-p/measured"],
  ["plan", "/person/case-p/plan"],
  ["plan with a sign that leads", "/person/neglect/plan"],
  ["plan of a later day", "/person/previous-sessions/plan"],
  ["item", "/person/case-p/item/bridge/full-lift"],
  ["why list", "/person/case-p/why"],
  ["argument", "/person/case-p/why/hands-and-knees-rock/over-roll"],
  ["start at the mat", "/person/case-p/mat"],
  ["empty note", "/person/case-p/note"],
  ["papers", "/person/case-p/papers"],
] as const;

describe.each([
  ["light", SIZES[2]],
  ["dark", SIZES[0]],
] as const)("in %s", (colorScheme, viewport) => {
  it("every view is without a finding", { timeout: 180_000 }, async () => {
    const context = await browser.newContext({ viewport, colorScheme });
    const { page, troubles } = await openPage(context);
    const found: string[] = [];
    for (const [name, path] of VIEWS) {
      await page.goto(served.address + path);
      await page.getByRole("heading", { level: 1 }).first().waitFor();
      found.push(...(await judge(page)).map((line) => `${name}: ${line}`));
    }
    expect(found).toEqual([]);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it("so are the live session, its dialogs and the note", { timeout: 180_000 }, async () => {
    const context = await browser.newContext({ viewport, colorScheme });
    const { page } = await openPage(context);
    const found: string[] = [];
    const look = async (name: string) => found.push(...(await judge(page)).map((line) => `${name}: ${line}`));
    await page.goto(`${served.address}/person/case-a/mat`);
    await page.getByRole("button", { name: "Start", exact: true }).click();
    await page.getByRole("button", { name: "Done as planned" }).waitFor();
    await look("one set");
    await page.getByRole("button", { name: "Not quite…" }).click();
    await look("not quite");
    await page.getByRole("button", { name: "Back", exact: true }).click();
    await page.getByRole("button", { name: "Stop", exact: true }).click();
    await look("stop");
    await page.getByRole("button", { name: /emergency card/ }).click();
    await look("emergency card");
    await page.getByRole("button", { name: "Back", exact: true }).click();
    await page.getByRole("button", { name: "Settled, go on" }).click();
    await page.getByRole("button", { name: "All of it from memory" }).click();
    await look("from memory");
    await page.getByRole("button", { name: "Write all of it down" }).click();
    await page.getByRole("heading", { name: /It is written/ }).waitFor();
    await look("note");
    await page.goto(`${served.address}/person/case-a/look`);
    await page.locator('[data-task="bridge"]').getByText("help", { exact: true }).click();
    await page
      .locator('[data-task="bridge"]')
      .getByRole("button", { name: /give way/ })
      .click();
    await look("where it gave way");
    expect(found).toEqual([]);
    await context.close();
  });
});
