import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { launchBrowser } from "../support/browser.ts";
import { choose, openPage, settle, SIZES, wordsOf } from "../support/page-steps.ts";
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

describe("what is not as usual", () => {
  it("refuses metres for centimetres, says what was found and what it may be, and keeps the rest", {
    timeout: 60_000,
  }, async () => {
    const context = await browser.newContext({ viewport: SIZES[2] });
    const { page, troubles } = await openPage(context);
    await page.goto(`${served.address}/new`);
    await page.getByRole("textbox", { name: /^Height/ }).fill("1.63");
    await page.getByRole("textbox", { name: /^Mass/ }).fill("66");
    await page.getByRole("button", { name: "On to the look" }).click();
    const text = () => wordsOf(page.getByRole("main"));
    await page.getByText(/this looks like metres: write 163/).waitFor();
    expect(await text()).toMatch(/Choose the weak side/);
    expect(await page.getByRole("textbox", { name: /^Mass/ }).inputValue()).toBe("66");
    await choose(page, "Weak side", "right");
    await page.goto(`${served.address}/person/case-p/measured`);
    await page.getByLabel(/Pressure, upper/).fill("1360");
    await page.getByLabel(/Pressure, upper/).blur();
    await page.getByText(/Found 1360/).waitFor();
    await page.getByText("One field is refused and not kept.").waitFor();
    await page.reload();
    expect(await page.getByLabel(/Pressure, upper/).inputValue()).toBe("136");
    expect(troubles).toEqual([]);
    await context.close();
  });

  it("holds the day where the pressure is too high, with the limit, what to do and a record of the call", {
    timeout: 90_000,
  }, async () => {
    const context = await browser.newContext({ viewport: SIZES[0] });
    const { page, troubles } = await openPage(context);
    await page.goto(`${served.address}/person/case-a/measured`);
    await page.getByLabel(/Pressure, upper/).fill("230");
    await page.getByLabel(/Pressure, lower/).fill("126");
    await page.getByLabel(/Pressure, lower/).blur();
    await page.getByRole("button", { name: "Show the plan" }).click();
    await page.getByRole("heading", { level: 1, name: /^Not today/ }).waitFor({ timeout: 60_000 });
    await settle(page);
    const text = await wordsOf(page.getByRole("main"));
    expect(text).toContain("230");
    expect(text).toMatch(/Do now/);
    expect(await page.getByRole("tab").count()).toBe(0);
    await page.goto(page.url().replace("/plan", "/mat"));
    await page.getByText("Nothing at the mat today: see the plan.").waitFor();
    await page.goBack();
    await page.getByRole("button", { name: "Call, and record it" }).click();
    await page.getByRole("textbox", { name: "What was done" }).fill("Ward physician called.");
    await page.getByRole("button", { name: "Record it", exact: true }).click();
    await page.getByRole("heading", { name: /It is written/ }).waitFor();
    expect(troubles).toEqual([]);
    await context.close();
  });

  it("names two findings that disagree and which one is believed", { timeout: 90_000 }, async () => {
    const context = await browser.newContext({ viewport: SIZES[2] });
    const { page } = await openPage(context);
    await page.goto(`${served.address}/`);
    const file = {
      person: { sex: "female", ageYears: 67, heightCm: 163, massKg: 68 },
      weakSide: "right",
      daysSinceOnset: 14,
      label: "Case 10, woman, 67",
      look: [{ task: "bridge", result: "aloneWell" }],
      strength: { right: { hipExtension: "0", kneeExtension: "0" } },
    };
    const chooser = page.waitForEvent("filechooser");
    await page.getByRole("button", { name: "Open a case file…" }).click();
    await (await chooser).setFiles({
      name: "case.json",
      mimeType: "application/json",
      buffer: Buffer.from(JSON.stringify(file)),
    });
    await page.getByRole("heading", { name: "Two findings disagree" }).first().waitFor({ timeout: 60_000 });
    expect(await wordsOf(page.getByRole("main"))).toMatch(/Believed:/);
    await context.close();
  });

  it("refuses a broken file with its faults and keeps nothing of it", { timeout: 60_000 }, async () => {
    const context = await browser.newContext({ viewport: SIZES[2] });
    const { page } = await openPage(context);
    await page.goto(`${served.address}/`);
    const chooser = page.waitForEvent("filechooser");
    await page.getByRole("button", { name: "Open a case file…" }).click();
    await (await chooser).setFiles({
      name: "case.json",
      mimeType: "application/json",
      buffer: Buffer.from('{"weakSide":"lft"}'),
    });
    await page.getByText("This file cannot be used as it is.").waitFor();
    expect(await wordsOf(page.getByRole("alert"))).toMatch(/weakSide[\s\S]*lft[\s\S]*left/);
    await context.close();
  });
});
