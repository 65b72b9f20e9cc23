import { AxeBuilder } from "@axe-core/playwright";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { launchBrowser } from "../support/browser.ts";
import { openPage, settle, SIZES } from "../support/page-steps.ts";
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

describe("a finding moved on an item", () => {
  it("is followed by effort and words by keyboard alone, and written down only when the therapist says so", {
    timeout: 120_000,
  }, async () => {
    const { page, troubles } = await browser.newContext({ viewport: SIZES[2] }).then(openPage);
    await page.goto(`${served.address}/person/case-p/item/bridge/strong-foot-up`);
    await settle(page);
    await page.getByRole("button", { name: "Move a finding and see" }).press("Enter");
    const finding = page.getByRole("combobox", { name: "Move one finding" });
    await finding.waitFor({ timeout: 60_000 });
    await finding.selectOption({ label: "Weak hip, straightening" });
    const slider = page.getByRole("slider", { name: "Weak hip, straightening" });
    const found = (await slider.getAttribute("aria-valuetext")) ?? "";
    expect(found).toMatch(/^(found: grade|not graded)/);
    const follows = page.locator(".what-if-follows dl");
    const before = await follows.textContent();
    await slider.press("Home");
    expect(await slider.getAttribute("aria-valuetext")).toMatch(/^grade 0, /);
    await expect.poll(() => follows.textContent(), { timeout: 10_000 }).not.toBe(before);
    expect(await follows.textContent()).toMatch(/As found:/);
    await expect
      .poll(() => page.locator(".what-if [role=status]").textContent(), { timeout: 5_000 })
      .toMatch(/^Weak hip, straightening, grade 0\./);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);

    // Nothing is written while it is only moved.
    await page.getByRole("button", { name: "Back to what was found" }).press("Enter");
    expect(await slider.getAttribute("aria-valuetext")).toBe(found);
    await expect.poll(() => follows.textContent()).toBe(before);
    await slider.press("End");
    const write = page.getByRole("button", { name: "I found this: write it down" });
    await expect.poll(() => write.isEnabled(), { timeout: 10_000 }).toBe(true);
    await write.press("Enter");
    await expect.poll(() => slider.getAttribute("aria-valuetext"), { timeout: 20_000 }).toBe("found: grade 5");
    await page.goto(`${served.address}/person/case-p/measured`);
    await page.getByRole("button", { name: /^Strength/ }).click();
    expect(await page.getByLabel("Hip straighten, right").inputValue()).toBe("5");
    expect(troubles).toEqual([]);
  });
});
