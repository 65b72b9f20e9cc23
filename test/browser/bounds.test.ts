import { AxeBuilder } from "@axe-core/playwright";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { launchBrowser } from "../support/browser.ts";
import { openPage, settle, SIZES, station } from "../support/page-steps.ts";
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

async function expectClean(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
}

describe("bounds for an assistant", () => {
  it("hold at the mat until the therapist was called, and stand in the note and on the sheet", {
    timeout: 120_000,
  }, async () => {
    const { page, troubles } = await browser.newContext({ viewport: SIZES[0] }).then(openPage);
    await page.goto(`${served.address}/person/previous-sessions/plan`);
    await settle(page);
    await page.getByRole("button", { name: "Set bounds for an assistant" }).click();
    const to = page.getByLabel("To rung");
    await to.waitFor();
    // The first item's own rung is the highest an assistant may go to: one up is out of bounds.
    const name = (await page.getByRole("tabpanel").getByRole("heading", { level: 2 }).textContent()) ?? "";
    const own = name.slice(name.indexOf(": ") + 2);
    const options = await to.locator("option").allInnerTexts();
    const at = options.findIndex((option) => option.toLowerCase() === own.toLowerCase());
    expect(at).toBeGreaterThan(0);
    await to.selectOption({ index: at });
    await page.getByLabel("Most help").selectOption({ label: "touching" });
    await page.getByLabel(/Stop if/).fill("the foot slides");
    await expectClean(page);
    await page.getByRole("button", { name: "Set these bounds" }).click();
    await page
      .getByText(/at most touching; stop if the foot slides/)
      .first()
      .waitFor();
    await settle(page);

    await page.getByRole("link", { name: "Start at the mat" }).click();
    await page.getByRole("button", { name: "Start", exact: true }).click();
    await page.getByText(/^Bounds: .*at most touching/).waitFor();
    await page.getByRole("button", { name: "Not quite…" }).click();
    const leaf = page.getByRole("dialog");
    await leaf.getByRole("button", { name: "more help" }).click();
    await leaf.getByRole("button", { name: "moderate help" }).click();
    await leaf.getByText(/Out of bounds: moderate help is more help/).waitFor();
    expect(await leaf.getByRole("button", { name: "Noted, go on" }).count()).toBe(0);
    await leaf.getByRole("button", { name: "it was easy" }).click();
    await leaf.getByText(/is above the bounds\. Call the therapist\./).waitFor();
    await expectClean(page);
    await leaf.getByRole("button", { name: "Call the therapist…" }).click();
    const goOn = page.getByRole("button", { name: "It may go on" });
    expect(await goOn.isDisabled()).toBe(true);
    await page.getByLabel("Who came, and what was said").fill("T1, one set while I watch");
    await expectClean(page);
    await goOn.click();
    await page.getByText(/^Bounds, lifted by the therapist today/).waitFor();
    await station(page, "Note");
    await page
      .getByText(/Therapist called at .* is above the bounds; may go on \(T1, one set while I watch\)\./)
      .waitFor();
    await page.goto(`${served.address}/person/previous-sessions/papers#therapist`);
    await page
      .getByText(/Assistant:/)
      .first()
      .waitFor();
    expect(troubles).toEqual([]);
  });
});
