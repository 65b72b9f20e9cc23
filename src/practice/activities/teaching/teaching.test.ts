import { describe, expect, it } from "vitest";
import { BIBLIOGRAPHY } from "../../../sources/bibliography.ts";
import { ACTIVITIES } from "../../catalogue.ts";
import { equipmentOf, insteadOf, isOrdinary, measureOf, TEACHING, teachingOf } from "./catalogue.ts";
import { MEASURES } from "./measures.data.ts";
import { ORDINARY_INSTEAD, TEACHING_SOURCES } from "./ordinary.data.ts";
import type { Teaching } from "./teaching.ts";

/** Every text of a row, with where it stands. Measures and sources are codes and no texts. */
function textsOf(id: string, row: Teaching): { readonly text: string; readonly at: string; readonly kind: string }[] {
  const { measure, why, aphasia, neglect, gear, instead, family } = row;
  return [
    { kind: "shows", text: measure.shows },
    { kind: "why", text: why },
    { kind: "word", text: aphasia.word },
    { kind: "gesture", text: aphasia.gesture },
    { kind: "stand", text: neglect.stand },
    { kind: "eyes", text: neglect.eyes },
    { kind: "gear", text: gear },
    ...Object.entries(instead).map(([piece, text]) => ({ kind: `instead of ${piece}`, text })),
    { kind: "family", text: family.words },
  ].map((each) => ({ ...each, at: `${id}, ${each.kind}` }));
}
const TEXTS = Object.entries(TEACHING).flatMap(([id, row]) => textsOf(id, row));
const keyOf = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L} ]/gu, "")
    .trim();
const countWords = (text: string): number => text.split(/[^\p{L}'-]+/u).filter((word) => word !== "").length;

const wordsIn = (text: string): ReadonlySet<string> => new Set(keyOf(text).split(" "));
/** Words two texts have in common, as a share of all their words. */
function shared(one: ReadonlySet<string>, other: ReadonlySet<string>): number {
  const both = [...one].filter((word) => other.has(word)).length;
  return both / (one.size + other.size - both);
}

/** The texts that stand twice. */
function twice(texts: readonly { readonly text: string; readonly at: string }[]): string[] {
  const seen = new Map<string, string>();
  return texts.flatMap(({ text, at }) => {
    const key = keyOf(text);
    const first = seen.get(key);
    seen.set(key, first ?? at);
    return first === undefined ? [] : [`"${text}" in ${first} and ${at}`];
  });
}

describe("what is taught around an activity", () => {
  it("is there for every activity, and for no other", () => {
    const ids = ACTIVITIES.map(({ id }) => id);
    expect(ids.filter((id) => !(id in TEACHING))).toEqual([]);
    expect(Object.keys(TEACHING).filter((id) => !ids.includes(id))).toEqual([]);
    console.log(`${ids.length} activities, ${TEXTS.length} texts around them`);
  });

  it("shares no text with another, nor with the catalogue's own", () => {
    expect(twice(TEXTS)).toEqual([]);
    const catalogue = ACTIVITIES.flatMap(({ id, purposeWords, setUp, lookFirst, rungs }) => [
      ...[purposeWords, setUp, lookFirst].map((text) => ({ text, at: id })),
      ...rungs.flatMap(({ good, changes, notAtHome }) =>
        [good, changes, ...(notAtHome === null ? [] : [notAtHome])].map((text) => ({ text, at: id })),
      ),
    ]);
    const own = new Set(TEXTS.map(({ text }) => keyOf(text)));
    expect(catalogue.filter(({ text }) => own.has(keyOf(text)))).toEqual([]);
  });

  it("shares no more than two words in three with another of its kind", () => {
    const texts = TEXTS.filter(({ kind }) => kind !== "word").map((each) => ({ ...each, words: wordsIn(each.text) }));
    const alike = texts.flatMap((one, index) =>
      texts
        .slice(index + 1)
        .filter((other) => other.kind === one.kind && shared(one.words, other.words) > 2 / 3)
        .map((other) => `${one.at}: "${one.text}" / ${other.at}: "${other.text}"`),
    );
    expect(alike).toEqual([]);
    expect(shared(wordsIn("Lay it on the mat."), wordsIn("Lay it on a mat."))).toBeGreaterThan(2 / 3 - 0.01);
  });

  it("would notice a text that stands twice", () => {
    expect(
      twice([
        { text: "Lift, now.", at: "a" },
        { text: "lift now", at: "b" },
      ]),
    ).toHaveLength(1);
  });

  it("names sides as weak and strong only, without a capital", () => {
    const wrong = TEXTS.filter(
      ({ text }) =>
        /\b(affected|unaffected|hemi\w*|bad|good) (?:hand|arm|leg|foot|side|hip|knee|one)\b/i.test(text) ||
        /\b(left|right)\b/i.test(text) ||
        /(?<=[\p{L},;] )(Weak|Strong)\b/u.test(text),
    );
    expect(wrong).toEqual([]);
  });

  it("is short: a why in one line, a word of one, sentences that end", () => {
    for (const [id, row] of Object.entries(TEACHING)) {
      expect(countWords(row.why), `${id}: ${row.why}`).toBeLessThanOrEqual(20);
      expect(
        row.why.split(/[.!?]/).filter((part) => part.trim() !== ""),
        id,
      ).toHaveLength(1);
      expect(row.aphasia.word, id).toMatch(/^[A-Z][a-z]+$/);
    }
    for (const { text, at, kind } of TEXTS) {
      if (kind === "word") continue;
      expect(text, at).toMatch(/^[A-Z"].*[.?]$/);
      expect(countWords(text), at).toBeGreaterThanOrEqual(kind === "why" ? 4 : 5);
      expect(countWords(text), at).toBeLessThanOrEqual(45);
    }
  });

  it("shows the effect in a published measure whose source is known, tied to a function", () => {
    for (const activity of ACTIVITIES) {
      const measure = measureOf(teachingOf(activity));
      expect(BIBLIOGRAPHY[measure.source], activity.id).toBeDefined();
      expect(measure.icf.length, activity.id).toBeGreaterThan(0);
      for (const code of measure.icf) expect(code, activity.id).toMatch(/^[bd]\d{3}$/);
    }
    for (const source of Object.values(TEACHING_SOURCES).flat()) expect(BIBLIOGRAPHY[source]).toBeDefined();
    const used = new Set(Object.values(TEACHING).map(({ measure }) => measure.id));
    expect(Object.keys(MEASURES).filter((id) => ![...used].some((each) => each === id))).toEqual([]);
  });

  it("has something instead of each piece of equipment, and of no piece that is not used", () => {
    const wrong: string[] = [];
    for (const activity of ACTIVITIES) {
      const used = equipmentOf(activity);
      for (const piece of used)
        if (insteadOf(activity, piece) === null) wrong.push(`${activity.id}: nothing instead of ${piece}`);
      for (const piece of Object.keys(teachingOf(activity).instead))
        if (!used.some((each) => each === piece)) wrong.push(`${activity.id}: ${piece} is not used`);
    }
    expect(wrong).toEqual([]);
    expect(Object.keys(ORDINARY_INSTEAD).every((piece) => isOrdinary(piece as keyof typeof ORDINARY_INSTEAD))).toBe(
      true,
    );
  });

  it("lets the family do something exactly where a rung may go on the home sheet", () => {
    const wrong = ACTIVITIES.filter(
      (activity) => teachingOf(activity).family.may !== activity.rungs.some(({ notAtHome }) => notAtHome === null),
    );
    expect(wrong.map(({ id }) => id)).toEqual([]);
    for (const [id, { family }] of Object.entries(TEACHING))
      expect(family.words, id).toMatch(family.may ? /^May (?!not\b)/ : /^May not\b/);
  });

  it("stands on the side where the ladder's helper begins, or says why from the other", () => {
    const crossed = ACTIVITIES.filter(({ id, rungs }) => {
      const at = rungs[0]?.helper.at.beside;
      return (at === "weak" || at === "strong") && at !== TEACHING[id]?.neglect.beside;
    });
    expect(crossed.map(({ id }) => id)).toEqual([]);
    const own = Object.values(TEACHING).filter(({ neglect }) => neglect.beside === "weak").length;
    expect(own / Object.keys(TEACHING).length).toBeGreaterThan(0.9);
  });
});
