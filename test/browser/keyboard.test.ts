import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { launchBrowser } from "../support/browser.ts";
import { openPage, settle, SIZES, wordsOf } from "../support/page-steps.ts";
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

/** Presses Tab until the focus is on what is wanted; a user without a pointer has no other way. */
async function tabTo(page: Page, wanted: RegExp): Promise<void> {
  for (let press = 0; press < 120; press++) {
    await page.keyboard.press("Tab");
    const focused = await page.evaluate(() => {
      const element = document.activeElement;
      return element === null ? "" : `${element.getAttribute("aria-label") ?? ""} ${element.textContent ?? ""}`.trim();
    });
    if (wanted.test(focused)) return;
  }
  throw new Error(`The keyboard does not reach ${wanted}.`);
}
const focusedText = (page: Page): Promise<string> => page.evaluate(() => document.activeElement?.textContent ?? "");

describe("with the keyboard alone", () => {
  it("leads from the look through the plan to the note", { timeout: 180_000 }, async () => {
    const context = await browser.newContext({ viewport: SIZES[2] });
    const { page } = await openPage(context);
    await page.goto(`${served.address}/person/look-only/look`);
    await settle(page);

    // The look: 1 to 5 answer, 0 clears, arrows move.
    const bridge = page.locator('[data-task="bridge"]');
    await page.evaluate(() => document.querySelector<HTMLElement>('[data-task="rollToWeak"] button')?.focus());
    await page.keyboard.press("Tab");
    for (let press = 0; press < 8 && !(await bridge.evaluate((cell) => cell.contains(document.activeElement))); press++)
      await page.keyboard.press("Tab");
    await page.keyboard.press("3");
    expect(await wordsOf(bridge.locator("button[data-selected]"))).toBe("touch");
    await page.keyboard.press("0");
    expect(await wordsOf(bridge)).toContain("not tried");
    await page.keyboard.press("4");
    expect(await wordsOf(bridge.locator("button[data-selected]"))).toBe("alone");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Enter");
    expect(await bridge.locator("button[data-selected]").count()).toBe(1);

    await tabTo(page, /^Show the plan$/);
    await page.keyboard.press("Enter");
    await page.getByRole("tab").first().waitFor();
    await settle(page);

    // The line: arrows, Home and End.
    await tabTo(page, /minutes \d+ to \d+/);
    await page.keyboard.press("End");
    expect(await focusedText(page)).toContain("Way back");
    await page.keyboard.press("Home");
    expect(await focusedText(page)).toContain("Arrive");
    await page.keyboard.press("ArrowRight");
    await settle(page);
    await tabTo(page, /^All of it$/);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: /What it asks of/ }).waitFor();
    await settle(page);
    await tabTo(page, /^Back to the plan$/);
    await page.keyboard.press("Enter");
    await page.getByRole("tab").first().waitFor();
    await tabTo(page, /^Start at the mat$/);
    await page.keyboard.press("Enter");
    await tabTo(page, /^Start$/);
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Done as planned" }).waitFor();

    // At the mat: space is done, S is stop, wherever nothing is focused.
    await page.evaluate(() => document.querySelector<HTMLElement>("#main")?.focus());
    await page.keyboard.press("Space");
    await page.getByRole("button", { name: "Undo", exact: true }).waitFor();
    await page.evaluate(() => document.querySelector<HTMLElement>("#main")?.focus());
    await page.keyboard.press("s");
    await page.getByRole("alertdialog").waitFor();
    await tabTo(page, /^pain$/);
    await page.keyboard.press("Enter");
    await tabTo(page, /^Settled, go on$/);
    await page.keyboard.press("Enter");
    await page.getByRole("alertdialog").waitFor({ state: "detached" });
    await tabTo(page, /^All of it from memory$/);
    await page.keyboard.press("Enter");
    await tabTo(page, /^Write all of it down$/);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: /It is written/ }).waitFor();
    await settle(page);
    await tabTo(page, /^Where “Done” comes from/);
    await page.keyboard.press("Enter");
    await page.getByRole("dialog").waitFor();
    await page.keyboard.press("Escape");
    await page.getByRole("dialog").waitFor({ state: "detached" });
    await context.close();
  });
});
