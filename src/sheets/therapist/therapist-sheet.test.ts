import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { describe, expect, it } from "vitest";
import { ACTIVITIES, POSITIONS } from "../../practice/catalogue.ts";
import { FONT_FILES } from "../paper/fonts.data.ts";
import { wordsOf } from "../paper/paper.ts";
import { writePaperHtml } from "../paper/paper-html.ts";
import { writePaperPdf } from "../paper/paper-pdf.ts";
import { therapistPaper } from "./therapist-paper.ts";
import { makeTherapistSheet, type TherapistItem, type TherapistSheetInput } from "./therapist-sheet.ts";

const ITEMS: readonly TherapistItem[] = ACTIVITIES.slice(0, 7).flatMap((activity) => {
  const rung = activity.rungs[1];
  return rung === undefined
    ? []
    : [
        {
          activity: activity.id,
          rung: rung.id,
          dose: rung.dose,
          help: null,
          guard: null,
          effortWords: "Steady work, inside what it has",
          changed: activity.id === "bridge",
        },
      ];
});

function input(weak: "left" | "right" | null): TherapistSheetInput {
  return {
    person: { weak },
    label: "Case 1",
    date: "2026-03-16",
    dayAfterOnset: 14,
    lastDay: "Friday",
    changes: [{ change: "Seat 5 cm lower", because: "the knee held ten times" }],
    hold: null,
    line: {
      svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 700 200"><path d="M0 0L700 200" stroke="#000000"/></svg>`,
      alt: "Starts sitting, ends lying.",
    },
    items: ITEMS,
    catalogue: ACTIVITIES,
    positions: POSITIONS,
    picture: () => ({
      svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 20"><path d="M0 0L30 20" stroke="#000000"/></svg>`,
      alt: "A picture.",
    }),
    out: [{ name: "Hands and knees", because: "the elbow would fold", instead: "Forearms on a table" }],
    limits: ["Pressure over 180 over 100: rest, measure again."],
  };
}

const wordsFor = (weak: "left" | "right" | null): readonly string[] =>
  therapistPaper(makeTherapistSheet(input(weak))).pages.flatMap((page) =>
    [...page.blocks, ...page.foot].flatMap(wordsOf),
  );
const swap = (text: string): string =>
  text.replace(
    /\b(left|right|Left|Right)\b/g,
    (side) => ({ left: "right", right: "left", Left: "Right", Right: "Left" })[side] ?? side,
  );

describe("the therapist's sheet", () => {
  it("has a row an item, in the plan's order, with a box a set and a box a fault", () => {
    const sheet = makeTherapistSheet(input("left"));
    expect(sheet.title).toBe("Same as Friday, and one change");
    expect(sheet.rows).toHaveLength(ITEMS.length);
    expect(sheet.rows.map(({ sets }) => sets)).toEqual(ITEMS.map(({ dose }) => dose.sets));
    for (const row of sheet.rows) {
      expect(row.faults.length).toBeGreaterThanOrEqual(2);
      expect(row.you).not.toBe("");
      expect(row.picture).not.toBeNull();
    }
    expect(sheet.rows.filter(({ changed }) => changed)).toHaveLength(1);
  });

  it("gives a way out for every position of the day, and says once who decides", () => {
    const sheet = makeTherapistSheet(input("right"));
    const positions = new Set(ITEMS.map(({ activity }) => ACTIVITIES.find(({ id }) => id === activity)?.position));
    expect(sheet.waysOut).toHaveLength(positions.size);
    expect(wordsFor("right").filter((words) => /clinician/.test(words))).toHaveLength(1);
    expect(sheet.out).toBe("Out today: hands and knees (the elbow would fold; instead forearms on a table).");
  });

  it("is for a left-weak person the right-weak person's with the sides exchanged, and says no weak or strong", () => {
    expect(wordsFor("left").map(swap)).toEqual(wordsFor("right"));
    expect(wordsFor("left")).not.toEqual(wordsFor("right"));
    expect(wordsFor("left").filter((words) => /\bstrong(er)?\b/i.test(words))).toEqual([]);
    expect(makeTherapistSheet(input(null)).label).toBe("Case 1, day 14");
  });

  it("begins with what it is on a first day", () => {
    expect(makeTherapistSheet({ ...input("left"), lastDay: null, changes: [] }).title).toBe("First session");
    expect(makeTherapistSheet({ ...input("left"), changes: [] }).title).toBe("Same as Friday");
  });

  it("says why there is none today, and what to do", () => {
    const hold = {
      because: [{ rule: "pressure", measured: "192 over 104", limit: "180 over 100" }],
      whatToDo: "Rest, measure again, tell the physician",
    };
    const sheet = makeTherapistSheet({ ...input("left"), hold, items: [], line: null });
    expect(sheet.title).toBe("Not today");
    expect(sheet.hold).toEqual([
      "Pressure: 192 over 104; limit 180 over 100.",
      "Rest, measure again, tell the physician.",
    ]);
    const words = therapistPaper(sheet).pages.flatMap((page) => page.blocks.flatMap(wordsOf));
    expect(words).toContain("Pressure: 192 over 104; limit 180 over 100.");
    expect(makeTherapistSheet({ ...input("left"), items: [] }).title).toBe("Nothing to do today");
  });

  it("stays one page of PDF with seven items", async () => {
    const require = createRequire(import.meta.url);
    const read = (file: string) => new Uint8Array(readFileSync(require.resolve(file)));
    const fonts = {
      serif: read(FONT_FILES.serif),
      serifBold: read(FONT_FILES.serifBold),
      sans: read(FONT_FILES.sans),
      sansBold: read(FONT_FILES.sansBold),
    };
    const file = Buffer.from(await writePaperPdf(therapistPaper(makeTherapistSheet(input("left"))), fonts)).toString(
      "latin1",
    );
    expect(ITEMS.length).toBe(7);
    expect(file.match(/\/Type \/Page\b/g)).toHaveLength(1);
    expect(file.match(/\/Alt \(/g)).toHaveLength(8);
  });

  it("is as HTML a whole page: language, title, a table with heads, pictures with words", () => {
    const html = writePaperHtml(therapistPaper(makeTherapistSheet({ ...input("left"), label: "<Case> & 1" })));
    expect(html).toMatch(/^<!doctype html>\n<html lang="en">/);
    expect(html).toContain("<title>Same as Friday, and one change: &lt;Case&gt; &amp; 1");
    expect(html.match(/<th scope="col"/g)).toHaveLength(4);
    expect(html.match(/role="img" aria-label="[^"]+"/g)).toHaveLength(8);
    expect(html).not.toContain("<Case>");
    expect(html).not.toMatch(/https?:\/\/(?!www\.w3\.org)/);
  });
});
