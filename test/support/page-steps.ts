import type { BrowserContext, Locator, Page } from "playwright-core";

/** The sizes the page is drawn for: a tablet either way and a laptop. */
export const SIZES = [
  { width: 834, height: 1112 },
  { width: 1112, height: 834 },
  { width: 1366, height: 768 },
] as const;

/** What the console said of trouble, and every page that was opened. */
export interface Watched {
  readonly page: Page;
  readonly troubles: string[];
}

export async function openPage(context: BrowserContext): Promise<Watched> {
  const page = await context.newPage();
  page.setDefaultTimeout(30_000);
  const troubles: string[] = [];
  page.on("pageerror", (error) => void troubles.push(error.message));
  page.on("console", (message) => {
    // A network that is gone says so in the console; the page says it in its own words.
    if (message.type() === "error" && !/Failed to load resource|ERR_/.test(message.text()))
      troubles.push(message.text());
  });
  return { page, troubles };
}

/** Waits until every answer and picture of the view is there. */
export async function settle(page: Page): Promise<void> {
  await page.waitForFunction(
    () =>
      document.querySelector(".figure-wait") === null &&
      !/One moment\.|Working out|is being (made|worked out|drawn)/.test(document.body.textContent ?? ""),
    undefined,
    { timeout: 60_000 },
  );
}

/** The six required answers for an invented person. */
export async function addPerson(page: Page, address: string): Promise<void> {
  await page.goto(`${address}/`);
  await page.getByRole("link", { name: "New person" }).click();
  await page.getByRole("textbox", { name: /What you call them/ }).fill("Case 9, woman, 72");
  await choose(page, "Weak side", "left");
  await choose(page, "Sex", "woman");
  await page.getByRole("textbox", { name: /Days since/ }).fill("12");
  await page.getByRole("textbox", { name: /^Age/ }).fill("72");
  await page.getByRole("textbox", { name: /^Height/ }).fill("163");
  await page.getByRole("textbox", { name: /^Mass/ }).fill("66");
  await page.getByRole("button", { name: "On to the look" }).click();
  await page.getByRole("heading", { name: "What did you see?" }).waitFor();
}

/** Touches one answer of a strip. */
export async function choose(page: Page, strip: string, answer: string): Promise<void> {
  await page.getByLabel(strip, { exact: true }).getByText(answer, { exact: true }).click();
}

/** The ten-minute look of an invented person: seven seen, and where the bridge gave way. */
export const SEEN = [
  ["Roll to the strong side", "alone"],
  ["Roll to the weak side", "well"],
  ["Bridge", "touch"],
  ["Lie to sit", "help"],
  ["Sit thirty seconds", "alone"],
  ["Stand up", "help"],
  ["Prop on forearms", "cannot"],
] as const;

export async function fillLook(page: Page): Promise<void> {
  for (const [task, result] of SEEN) await choose(page, task, result);
}

export async function showPlan(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Show the plan" }).click();
  await page.getByRole("heading", { level: 1, name: /Nothing to repeat|Same as/ }).waitFor({ timeout: 60_000 });
  await settle(page);
}

export async function station(page: Page, name: string): Promise<void> {
  await page.getByRole("navigation", { name: "Day" }).getByRole("link", { name, exact: true }).click();
}

/** All the words of a place, seen or heard. */
export async function wordsOf(place: Locator): Promise<string> {
  return (await place.textContent()) ?? "";
}
