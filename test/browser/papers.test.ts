import { AxeBuilder } from "@axe-core/playwright";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ACTIVITIES, POSITIONS } from "../../src/practice/catalogue.ts";
import {
  homePaper,
  makeHomeSheet,
  makeTherapistSheet,
  type Paper,
  type PlannedRung,
  therapistPaper,
  writePaperHtml,
} from "../../src/sheets/index.ts";
import { launchBrowser } from "../support/browser.ts";

const SVG = (width: number, height: number): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}"><path d="M0 0L${width} ${height}" stroke="#000000"/></svg>`;
const picture = () => ({ svg: SVG(300, 200), alt: "On the back, knees bent, seat up." });

function itemsOf(home: boolean, count: number): readonly PlannedRung[] {
  const found = ACTIVITIES.flatMap((activity) => {
    const rung = activity.rungs.find(({ notAtHome }) => !home || notAtHome === null);
    return rung === undefined
      ? []
      : [{ activity: activity.id, rung: rung.id, dose: rung.dose, help: null, guard: null }];
  });
  return found.slice(0, count);
}

function homeOf(form: "plain" | "aphasia"): Paper {
  const sheet = makeHomeSheet({
    person: { weak: "left" },
    items: [...itemsOf(true, 4), ...itemsOf(false, 12).slice(10)],
    catalogue: ACTIVITIES,
    neglect: "marked",
    helper: "your partner",
    shown: null,
    form,
    picture,
    label: "Case 1",
    date: "2026-03-16",
  });
  if (sheet.kind === "none") throw new Error(sheet.because);
  return homePaper(sheet);
}

const THERAPIST = therapistPaper(
  makeTherapistSheet({
    person: { weak: "right" },
    label: "Case 1",
    date: "2026-03-16",
    dayAfterOnset: 14,
    lastDay: "Friday",
    changes: [{ change: "Seat 5 cm lower", because: "the knee held ten times" }],
    hold: null,
    line: { svg: SVG(700, 230), alt: "Starts sitting, ends lying." },
    items: itemsOf(false, 7).map((item) => ({
      ...item,
      effortWords: "Hard for the right hip, but inside what it has",
      changed: false,
    })),
    catalogue: ACTIVITIES,
    positions: POSITIONS,
    picture,
    out: [{ name: "Hands and knees", because: "the elbow would fold", instead: "Forearms on a table" }],
    limits: ["Pressure over 180 over 100: rest, measure again."],
  }),
);

const PAPERS = [
  ["home sheet", homeOf("plain"), 2],
  ["home sheet for aphasia", homeOf("aphasia"), 2],
  ["therapist's sheet", THERAPIST, 1],
] as const;

describe.each(PAPERS)("the %s as a page", (_name, paper, mostPages) => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await launchBrowser();
    page = await (await browser.newContext()).newPage();
    await page.setContent(writePaperHtml(paper));
  });
  afterAll(async () => browser.close());

  it.each([360, 834, 1112, 1366])("does not run over its sides at %i", async (width) => {
    await page.setViewportSize({ width, height: 900 });
    const [wide, room] = await page.evaluate(() => [
      document.documentElement.scrollWidth,
      document.documentElement.clientWidth,
    ]);
    expect(wide).toBeLessThanOrEqual(room ?? 0);
  });

  it("prints on as many sheets as meant", async () => {
    const file = (await page.pdf({ format: "A4", printBackground: true })).toString("latin1");
    expect(file.match(/\/Type \/Page\b/g)?.length).toBeLessThanOrEqual(mostPages);
  });

  it("keeps the rules of accessibility", async () => {
    await page.setViewportSize({ width: 1112, height: 834 });
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  });
});
