import { AxeBuilder } from "@axe-core/playwright";
import type { Browser } from "playwright-core";
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

describe("a rung of the therapist's own", () => {
  it("is made from another, refused where it cannot be posed, planned today and kept in the record with who and when", {
    timeout: 150_000,
  }, async () => {
    const { page, troubles } = await browser.newContext({ viewport: SIZES[2] }).then(openPage);
    await page.goto(`${served.address}/person/case-p/item/bridge/full-lift`);
    await settle(page);
    await page.getByRole("button", { name: "Make a rung of your own from it" }).click();
    const joint = page.getByLabel("A joint is set");
    await joint.waitFor({ timeout: 60_000 });
    const knee = (await joint.locator("option").allInnerTexts()).find((text) => text.startsWith("Strong knee"));
    await joint.selectOption({ label: knee ?? "" });
    const slider = page.getByRole("slider", { name: /^Strong knee/ });
    await slider.fill("10");
    await page.getByRole("heading", { name: "It cannot be posed so." }).waitFor({ timeout: 20_000 });
    await page.getByText(/^Strong knee, bent comes out at \d+ degrees, not 10/).waitFor();
    const keep = page.getByRole("button", { name: "Keep it for this person" });
    expect(await keep.isDisabled()).toBe(true);
    await slider.fill("90");
    await page.getByText(/It may be done today\./).waitFor({ timeout: 20_000 });
    await page.getByLabel("Name").fill("Strong foot further out");
    await page.getByLabel("Say, at most six words").fill("Weak foot heavy, seat up");
    await page.getByLabel("Written by").fill("T1");
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    await keep.click();
    await page.getByRole("heading", { name: "Own rungs of this person" }).waitFor({ timeout: 60_000 });
    await page.getByRole("tab", { name: /^Bridge, own/ }).click({ timeout: 60_000 });
    await page.getByRole("heading", { name: "Bridge, own: strong foot further out" }).waitFor();
    await page.getByText("“Weak foot heavy, seat up”").waitFor();

    const kept = await (await fetch(`${served.address}/api/people/case-p/case`)).json();
    expect(kept.case.ownRungs).toMatchObject([
      { from: { activity: "bridge", rung: "full-lift" }, name: "Strong foot further out", by: "T1" },
    ]);
    expect(kept.case.ownRungs[0].at).toMatch(/^\d{4}-\d\d-\d\dT/);

    // It is logged by its own name.
    await settle(page);
    await page.getByRole("link", { name: "Start at the mat" }).click();
    await page.getByRole("button", { name: "Write it down from memory" }).click({ timeout: 60_000 });
    await page.getByRole("button", { name: "Write all of it down" }).click();
    await station(page, "Note");
    await page.getByText(/Bridge, own, left foot further out: \d of \d sets?/).waitFor();
    expect(troubles).toEqual([]);
  });
});
