import { describe, expect, it } from "vitest";
import type { Activity, Rung } from "../../practice/activities/activity.ts";
import { ACTIVITIES } from "../../practice/catalogue.ts";
import { everyBlock, wordsOf } from "../paper/paper.ts";
import { type PlannedRung, rungKey } from "../planned-rung.ts";
import { fillSides } from "../words/body-sides.ts";
import { gradeOfText, HIGHEST_GRADE } from "../words/reading-grade.ts";
import { standsOnOneLeg } from "./choose-home-rungs.ts";
import { homePaper } from "./home-paper.ts";
import { type HomeSheet, type HomeSheetInput, homeSheetText, makeHomeSheet } from "./home-sheet.ts";

const ALL: readonly { activity: Activity; rung: Rung }[] = ACTIVITIES.flatMap((activity) =>
  activity.rungs.map((rung) => ({ activity, rung })),
);
const HOME = ALL.filter(({ rung }) => rung.home !== null && rung.notAtHome === null);
const KEPT = ALL.filter(({ rung }) => rung.notAtHome !== null);

const planned = (
  { activity, rung }: { activity: Activity; rung: Rung },
  more: Partial<PlannedRung> = {},
): PlannedRung => ({
  activity: activity.id,
  rung: rung.id,
  dose: rung.dose,
  help: null,
  guard: null,
  ...more,
});

function input(items: readonly PlannedRung[], more: Partial<HomeSheetInput> = {}): HomeSheetInput {
  return {
    person: { weak: "left" },
    items,
    catalogue: ACTIVITIES,
    neglect: "none",
    helper: "your partner",
    shown: items.map(rungKey),
    form: "plain",
    picture: ({ activity, rung }, { withHelper }) => ({
      svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path d="M0 0L5 5"/></svg>`,
      alt: `${activity}/${rung}${withHelper ? " helped" : ""}`,
    }),
    label: "Case 1",
    date: "2026-03-16",
    ...more,
  };
}

function sheetOf(items: readonly PlannedRung[], more: Partial<HomeSheetInput> = {}): HomeSheet {
  const sheet = makeHomeSheet(input(items, more));
  if (sheet.kind === "none") throw new Error(sheet.because);
  return sheet;
}

const first = (count: number) =>
  HOME.filter(({ activity }, index) => HOME.findIndex((one) => one.activity === activity) === index).slice(0, count);
const swap = (text: string): string =>
  text.replace(/\b(left|right)\b/g, (side) => (side === "left" ? "right" : "left"));

describe("every text for home in the catalogue", () => {
  it("is there to be judged", () => {
    expect(HOME.length).toBeGreaterThan(20);
    expect(KEPT.length).toBeGreaterThan(5);
  });

  // Sixth grade: Am Fam Physician 2015;92:118-124; formula: Kincaid and others 1975.
  it.each(HOME.map(({ activity, rung }) => [`${activity.id}/${rung.id}`, rung] as const))(
    "%s reads at sixth grade or below, with both sides filled in",
    (_name, rung) => {
      for (const weak of ["left", "right", null] as const) {
        const text = fillSides(`${rung.plainName}. ${rung.home?.sentences} Stop if ${rung.home?.stopIf}.`, { weak });
        expect(text).not.toMatch(/[{}]/);
        expect(gradeOfText(text)).toBeLessThanOrEqual(HIGHEST_GRADE);
        expect(gradeOfText(fillSides(rung.home?.sentences ?? "", { weak }))).toBeLessThanOrEqual(HIGHEST_GRADE);
      }
    },
  );
});

describe("the words of the stop boxes", () => {
  it("are none so long that a narrow box would not hold them", () => {
    const long = HOME.flatMap(({ rung }) => fillSides(rung.home?.stopIf ?? "", { weak: "right" }).split(" ")).filter(
      (word) => word.length > 10,
    );
    expect(long).toEqual([]);
  });
});

describe("the home sheet", () => {
  it("has a strip for each of up to four rungs: picture, name, sentences, how many, when to stop", () => {
    const sheet = sheetOf(first(6).map((one) => planned(one)));
    expect(sheet.strips).toHaveLength(4);
    for (const strip of sheet.strips) {
      expect(strip.picture).not.toBeNull();
      expect(strip.name.split(" ").length).toBeLessThanOrEqual(4);
      expect(strip.sentences.length).toBeGreaterThanOrEqual(1);
      expect(strip.howMany).toMatch(/\d/);
      expect(strip.stopIf).not.toBe("");
    }
    expect(sheet.leftOff.map(({ because }) => because)).toEqual(["A sheet holds 4.", "A sheet holds 4."]);
  });

  it.each(["plain", "aphasia"] as const)("reads as a whole at sixth grade or below: %s", (form) => {
    for (let from = 0; from < HOME.length; from += 3) {
      const sheet = sheetOf(
        HOME.slice(from, from + 3).map((one) => planned(one)),
        { form, neglect: "none", shown: null },
      );
      expect(gradeOfText(homeSheetText(sheet)), homeSheetText(sheet)).toBeLessThanOrEqual(HIGHEST_GRADE);
    }
  });

  it("is for a left-weak person the right-weak person's with the sides exchanged", () => {
    for (const form of ["plain", "aphasia"] as const)
      for (let from = 0; from < HOME.length; from += 4) {
        const items = [...HOME.slice(from, from + 4), ...KEPT.slice(0, 2)].map((one) => planned(one));
        const words = (weak: "left" | "right") =>
          homePaper(sheetOf(items, { person: { weak }, form })).pages.flatMap((page) =>
            [...page.blocks, ...page.foot].flatMap(wordsOf),
          );
        expect(words("left").map(swap)).toEqual(words("right"));
        expect(words("left")).not.toEqual(words("right"));
      }
  });

  it("never pictures what is not for home, and names it in one line", () => {
    const asked: string[] = [];
    const items = [...KEPT.map((one) => planned(one)), ...first(2).map((one) => planned(one))];
    const sheet = sheetOf(items, {
      picture: (one) => {
        asked.push(rungKey(one));
        return { svg: "<svg/>", alt: rungKey(one) };
      },
    });
    const kept = new Set(KEPT.map(({ activity, rung }) => `${activity.id}/${rung.id}`));
    expect(asked).toHaveLength(2);
    expect(asked.filter((key) => kept.has(key))).toEqual([]);
    const alts = homePaper(sheet).pages.flatMap((page) =>
      everyBlock(page.blocks).flatMap((block) => (block.kind === "figure" ? [block.alt ?? ""] : [])),
    );
    expect(alts.filter((alt) => kept.has(alt))).toEqual([]);
    expect(sheet.notAtHome).toMatch(/^Not at home: .+\.$/);
    expect(sheet.notAtHome.split(/[.!?]/)).toHaveLength(2);
    expect(new Set(sheet.leftOff.map(({ because }) => because)).size).toBeGreaterThan(1);
  });

  it("takes only what was shown back where show-backs are kept, else says to wait for them", () => {
    const items = first(3).map((one) => planned(one));
    const shown = items.slice(0, 1).map(rungKey);
    const some = sheetOf(items, { shown });
    expect(some.strips.map(rungKey)).toEqual(shown);
    expect(some.wait).toBeNull();
    const all = sheetOf(items, { shown: null });
    expect(all.strips).toHaveLength(3);
    expect(all.wait).toMatch(/two times/);
  });

  it("keeps back what takes more than a steadying hand, and what needs somebody where nobody is", () => {
    const [one, other] = first(2);
    if (one === undefined || other === undefined) throw new Error("two rungs");
    const lifted = planned(one, { help: { words: "moderate" } });
    expect(sheetOf([lifted, planned(other)]).strips.map(rungKey)).toEqual([rungKey(planned(other))]);
    const guarded = planned(one, { guard: { helperPose: "sitting", because: "" } });
    expect(makeHomeSheet(input([guarded], { helper: null }))).toMatchObject({
      kind: "none",
      leftOff: [{ because: expect.stringMatching(/no helper/) }],
    });
    expect(sheetOf([guarded]).strips[0]?.picture?.alt).toMatch(/helped/);
  });

  it("sends nobody with neglect home to stand on one leg, or alone", () => {
    const oneLeg = HOME.filter(({ rung }) => standsOnOneLeg(rung));
    expect(oneLeg.length).toBeGreaterThan(0);
    const items = [...oneLeg, ...first(2)].map((one) => planned(one));
    for (const neglect of ["mild", "marked"] as const) {
      const sheet = sheetOf(items, { neglect });
      const keys = new Set(oneLeg.map((one) => rungKey(planned(one))));
      expect(sheet.strips.filter((strip) => keys.has(rungKey(strip)))).toEqual([]);
      for (const { helper, sentences } of sheet.strips)
        expect(`${helper ?? ""} ${sentences.join(" ")}`).toMatch(/your partner/i);
      expect(sheet.lookFirst).toBe("Look for your left arm first.");
      expect(makeHomeSheet(input(items, { neglect, helper: null }))).toMatchObject({
        kind: "none",
        because: expect.stringMatching(/name a helper/),
      });
    }
    expect(sheetOf(items.slice(0, 1)).strips).toHaveLength(1);
  });

  it("says when to call", () => {
    for (const form of ["plain", "aphasia"] as const) {
      const text = homeSheetText(
        sheetOf(
          first(2).map((one) => planned(one)),
          { form },
        ),
      );
      for (const sign of [/face/, /speech/, /headache/, /ambulance/]) expect(text).toMatch(sign);
    }
  });

  it("uses fewer words and larger pictures for aphasia", () => {
    const items = first(3).map((one) => planned(one));
    const plain = sheetOf(items);
    const aphasia = sheetOf(items, { form: "aphasia" });
    expect(homeSheetText(aphasia).split(/\s+/).length).toBeLessThan(homeSheetText(plain).split(/\s+/).length);
    const pictures = (sheet: HomeSheet) =>
      homePaper(sheet).pages.flatMap((page) =>
        everyBlock(page.blocks).flatMap((block) =>
          block.kind === "figure" && block.alt !== "Stripes" ? [block.height] : [],
        ),
      );
    expect(Math.min(...pictures(aphasia))).toBeGreaterThan(1.5 * Math.max(...pictures(plain)));
  });

  it("is set no smaller than 16.5 points", () => {
    for (const form of ["plain", "aphasia"] as const) {
      for (const page of homePaper(
        sheetOf(
          first(4).map((one) => planned(one)),
          { form },
        ),
      ).pages)
        for (const block of everyBlock([...page.blocks, ...page.foot]))
          if (block.kind === "words") expect(block.size * 0.75 * page.shrinkTo).toBeGreaterThanOrEqual(16.5);
    }
  });

  it("names no side where neither is weaker", () => {
    const sheet = sheetOf(
      first(3).map((one) => planned(one)),
      { person: { weak: null } },
    );
    expect(sheet.legend).toBeNull();
    expect(homeSheetText(sheet)).not.toMatch(/\b(left|right)\b|[{}]/);
  });

  it("says so where nothing may go home", () => {
    expect(makeHomeSheet(input([]))).toMatchObject({ kind: "none" });
    expect(makeHomeSheet(input(KEPT.map((one) => planned(one))))).toMatchObject({
      kind: "none",
      because: expect.any(String),
    });
  });
});
