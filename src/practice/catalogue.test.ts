import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { BIBLIOGRAPHY } from "../sources/bibliography.ts";
import type { Activity, Rung } from "./activities/activity.ts";
import { ACTIVITIES, POSITIONS, TRANSITIONS } from "./catalogue.ts";
import type { Transition } from "./transitions/transition.ts";
import { DEMAND_IDS, EQUIPMENT_IDS, PLACE_IDS, POSITION_IDS, PURPOSE_IDS } from "./codes.ts";

/**
 * One battery for every ladder, position and transition. The rules are common practice and this project's own:
 * six words and one cue, one thing changes from rung to rung, weak and strong only.
 */
interface RungPlace {
  readonly activity: Activity;
  readonly rung: Rung;
  readonly index: number;
  readonly name: string;
}
const RUNGS: readonly RungPlace[] = ACTIVITIES.flatMap((activity) =>
  activity.rungs.map((rung, index) => ({ activity, rung, index, name: `${activity.id}/${rung.id}` })),
);
const KEBAB = /^[a-z]+(-[a-z]+)*$/;

/** Every string in a row that a person may read: sources, codes and poses are no texts. */
const NO_TEXT = new Set([
  "pose",
  "start",
  "id",
  "sources",
  "demands",
  "purposes",
  "position",
  "from",
  "to",
  "equipment",
  "places",
  "limbFree",
  "site",
  "kind",
  "icf",
  "activity",
  "rung",
  "mayHelpAt",
  "at",
  "whoMoves",
  "helperBeside",
  "beside",
  "workingSide",
  "limbs",
  "does",
  "trains",
]);
function textsOf(row: unknown, key = ""): { key: string; text: string }[] {
  if (NO_TEXT.has(key)) return [];
  if (typeof row === "string") return [{ key, text: row }];
  if (Array.isArray(row)) return row.flatMap((each: unknown) => textsOf(each, key));
  if (typeof row === "object" && row !== null)
    return Object.entries(row).flatMap(([name, value]) => textsOf(value, name));
  return [];
}
const countWords = (text: string): number => text.split(/[^\p{L}'-]+/u).filter((word) => word !== "").length;

function repeated(values: readonly { text: string; at: string }[]): string[] {
  const seen = new Map<string, string>();
  const twice: string[] = [];
  for (const { text, at } of values) {
    const key = text
      .toLowerCase()
      .replace(/[^\p{L} ]/gu, "")
      .trim();
    const first = seen.get(key);
    if (first !== undefined) twice.push(`"${text}" in ${first} and ${at}`);
    seen.set(key, first ?? at);
  }
  return twice;
}

/** Vowel groups, less a silent final e: within a few per cent of a dictionary count on plain text. */
function syllablesIn(word: string): number {
  const groups = word
    .toLowerCase()
    .replace(/(?:[^l]e|[^td]ed|es)$/, (end) => end[0] ?? "")
    .match(/[aeiouy]+/g);
  return Math.max(1, groups?.length ?? 1);
}
/** Grade level after "flesch-kincaid": 0.39 words a sentence + 11.8 syllables a word - 15.59. */
function gradeOf(text: string): number {
  const plain = text.replaceAll("{weak}", "weak").replaceAll("{strong}", "strong");
  const sentences = plain.split(/[.!?]/).filter((part) => part.trim() !== "");
  const words = plain.split(/[^\p{L}'-]+/u).filter((word) => word !== "");
  const syllables = words.reduce((sum, word) => sum + syllablesIn(word), 0);
  return 0.39 * (words.length / sentences.length) + 11.8 * (syllables / words.length) - 15.59;
}

const filesIn = (folder: string): string[] =>
  readdirSync(new URL(folder, import.meta.url))
    .filter((file) => file.endsWith(".data.ts"))
    .map((file) => file.replace(".data.ts", ""))
    .sort();

describe("the catalogue", () => {
  it("lists every table that lies in its folders, under the table's own name", () => {
    expect(ACTIVITIES.map(({ id }) => id).sort()).toEqual(filesIn("./activities/tables/"));
    expect(POSITIONS.map(({ id }): string => id).sort()).toEqual(filesIn("./positions/tables/"));
    expect(TRANSITIONS.map(({ id }) => id).sort()).toEqual(filesIn("./transitions/tables/"));
  });

  it("is broad: 24 ladders, 70 rungs, a dozen transitions at least", () => {
    expect(ACTIVITIES.length).toBeGreaterThanOrEqual(24);
    expect(RUNGS.length).toBeGreaterThanOrEqual(70);
    expect(TRANSITIONS.length).toBeGreaterThanOrEqual(12);
  });

  it("has no empty text, no side of a body, no capital for a side and no word kept off the screen", () => {
    const wrong: string[] = [];
    for (const row of [...ACTIVITIES, ...POSITIONS, ...TRANSITIONS]) {
      for (const { key, text } of textsOf(row)) {
        if (text.trim() === "") wrong.push(`${row.id} ${key}: empty`);
        if (/\b(left|right)\b/i.test(text)) wrong.push(`${row.id} ${key}: "${text}" names a body side`);
        if (/\b[WSH]\b/.test(text)) wrong.push(`${row.id} ${key}: "${text}" has a capital for a side`);
        if (/\b(optimal|capacity|margin|solver|affected|unaffected)\b/i.test(text))
          wrong.push(`${row.id} ${key}: "${text}"`);
      }
    }
    expect(wrong).toEqual([]);
  });

  it("cites known works and uses known codes", () => {
    for (const row of [...ACTIVITIES, ...RUNGS.map(({ rung }) => rung), ...POSITIONS, ...TRANSITIONS]) {
      expect(row.sources.length).toBeGreaterThan(0);
      for (const source of row.sources) expect(BIBLIOGRAPHY[source]).toBeDefined();
    }
    for (const { rung, name } of RUNGS) {
      expect(
        Object.keys(rung.trains).filter((id) => !(PURPOSE_IDS as readonly string[]).includes(id)),
        name,
      ).toEqual([]);
      expect(
        rung.demands.filter((id) => !DEMAND_IDS.includes(id)),
        name,
      ).toEqual([]);
      expect(
        rung.equipment.filter((id) => !EQUIPMENT_IDS.includes(id)),
        name,
      ).toEqual([]);
      expect(
        rung.places.filter((id) => !PLACE_IDS.includes(id)),
        name,
      ).toEqual([]);
      expect(rung.places.length, name).toBeGreaterThan(0);
    }
  });
});

describe("every ladder", () => {
  it("has a name of its own, a place in a position that exists, and what to look at first", () => {
    expect(new Set(ACTIVITIES.map(({ id }) => id)).size).toBe(ACTIVITIES.length);
    for (const activity of ACTIVITIES) {
      expect(activity.id).toMatch(KEBAB);
      expect(POSITION_IDS).toContain(activity.position);
      expect(activity.purposes.length, activity.id).toBeGreaterThan(0);
      expect(activity.icf, activity.id).toMatch(/^d\d{3,4}$/);
      expect(activity.rungs.length, activity.id).toBeGreaterThanOrEqual(2);
      expect(new Set(activity.rungs.map(({ id }) => id)).size, activity.id).toBe(activity.rungs.length);
    }
  });

  it("changes something that can be seen or computed from each rung to the next", () => {
    const same: string[] = [];
    for (const { activity, rung, index, name } of RUNGS) {
      const below = activity.rungs[index - 1];
      if (below === undefined) continue;
      const facts = (each: Rung): string => JSON.stringify([each.pose, each.limbFree, each.demands]);
      if (facts(rung) === facts(below)) same.push(`${name} has pose, free limb and demands of ${below.id}`);
    }
    expect(same).toEqual([]);
  });
});

describe("every rung", () => {
  it("is said in at most six words with a cue of one", () => {
    const wrong = RUNGS.filter(
      ({ rung }) =>
        countWords(rung.words) > 6 || countWords(rung.words) === 0 || countWords(rung.cue) !== 1 || / /.test(rung.cue),
    );
    expect(wrong.map(({ name, rung }) => `${name}: "${rung.words}" / "${rung.cue}"`)).toEqual([]);
  });

  it("has a plain name of at most four words", () => {
    expect(
      RUNGS.filter(({ rung }) => countWords(rung.plainName) > 4).map(({ name, rung }) => `${name}: ${rung.plainName}`),
    ).toEqual([]);
  });

  it("shares words, what good is, and faults with no other", () => {
    expect(repeated(RUNGS.map(({ rung, name }) => ({ text: rung.words, at: name })))).toEqual([]);
    expect(repeated(RUNGS.map(({ rung, name }) => ({ text: rung.good, at: name })))).toEqual([]);
    expect(repeated(RUNGS.map(({ rung, name }) => ({ text: rung.changes, at: name })))).toEqual([]);
    expect(
      repeated(RUNGS.flatMap(({ rung, name }) => rung.faults.map(({ fault }) => ({ text: fault, at: name })))),
    ).toEqual([]);
    expect(
      repeated(RUNGS.flatMap(({ rung, name }) => rung.faults.map((each) => ({ text: each.do, at: name })))),
    ).toEqual([]);
  });

  it("has two or three faults to tick, each with what to do, in sentences", () => {
    for (const { rung, name } of RUNGS) {
      expect([2, 3], name).toContain(rung.faults.length);
      expect(new Set(rung.faults.map(({ id }) => id)).size, name).toBe(rung.faults.length);
      for (const fault of rung.faults) {
        expect(fault.id, name).toMatch(KEBAB);
        expect(fault.fault, name).toMatch(/^[A-Z"].*[.]$/);
        expect(fault.do, name).toMatch(/^[A-Z"].*[.]$/);
      }
      for (const sentence of [rung.changes, rung.movesFirst, rung.good, rung.helper.place])
        expect(sentence, name).toMatch(/^[A-Z"].*[.]$/);
    }
  });

  it("places the helper within reach, hands on the body", () => {
    for (const { rung, name } of RUNGS) {
      expect(rung.helper.hands.length, name).toBeGreaterThan(0);
      expect(rung.helper.mayHelpAt.length, name).toBeGreaterThan(0);
      expect(rung.helper.at.awayCm, name).toBeGreaterThanOrEqual(15);
      expect(rung.helper.at.awayCm, name).toBeLessThanOrEqual(120);
      expect(rung.helpersNeeded, name).toBeGreaterThanOrEqual(1);
    }
  });

  it("goes on a home sheet in plain words, or says why not", () => {
    const wrong: string[] = [];
    for (const { rung, name } of RUNGS) {
      if ((rung.home === null) === (rung.notAtHome === null))
        wrong.push(`${name}: home text or a reason, not both and not neither`);
      if (rung.home === null) continue;
      const { sentences, stopIf } = rung.home;
      if (gradeOf(sentences) > 6) wrong.push(`${name}: grade ${gradeOf(sentences).toFixed(1)} "${sentences}"`);
      if (sentences.split(/[.!?]/).filter((part) => part.trim() !== "").length > 3)
        wrong.push(`${name}: too many sentences`);
      if (countWords(stopIf) > 8 || /[.]$/.test(stopIf)) wrong.push(`${name}: stop sign "${stopIf}"`);
      if (/\b(weak|strong)\b(?!\})/.test(sentences + stopIf)) wrong.push(`${name}: side not to be filled in`);
    }
    expect(wrong).toEqual([]);
  });

  it("has a dose that can be done and minutes that fit it", () => {
    for (const { rung, name } of RUNGS) {
      const { dose } = rung;
      expect(dose.sets, name).toBeGreaterThanOrEqual(1);
      expect(dose.kind === "hold" ? dose.holdSeconds : dose.repetitions, name).toBeGreaterThan(0);
      const working = (dose.repetitions ?? 1) * Math.max(dose.holdSeconds ?? 0, 3);
      expect(dose.minutesPerSet * 60, name).toBeGreaterThanOrEqual(Math.min(working, 60) + dose.restSeconds * 0.5);
      expect(dose.minutesPerSet, name).toBeLessThanOrEqual(6);
      for (const amount of Object.values(rung.trains)) {
        expect(amount, name).toBeGreaterThan(0);
        expect(amount, name).toBeLessThanOrEqual(3);
      }
      expect(Object.keys(rung.trains).length, name).toBeGreaterThan(0);
      expect(Object.keys(rung.limbs).length, name).toBeGreaterThan(0);
      expect(rung.stopSigns.length, name).toBeGreaterThan(0);
    }
  });

  it("has a substitute, a rung that exists in another ladder", () => {
    const wrong: string[] = [];
    for (const { activity, rung, name } of RUNGS) {
      if (rung.substitutes.length === 0) wrong.push(`${name}: no substitute`);
      for (const substitute of rung.substitutes) {
        if (substitute.activity === activity.id) wrong.push(`${name}: substitutes itself`);
        const other = ACTIVITIES.find(({ id }) => id === substitute.activity);
        if (other?.rungs.some(({ id }) => id === substitute.rung) !== true)
          wrong.push(`${name}: no ${substitute.activity}/${substitute.rung}`);
      }
    }
    expect(wrong).toEqual([]);
  });
});

describe("every position", () => {
  it("says how it is set up, what is watched, and how to leave it, planned and in a hurry", () => {
    for (const position of POSITIONS) {
      expect(position.setUpWell.length, position.id).toBeGreaterThanOrEqual(3);
      expect(position.watch.length, position.id).toBeGreaterThanOrEqual(2);
      expect(position.comfortCheck.length, position.id).toBeGreaterThanOrEqual(2);
      expect(position.wayOut.planned.length, position.id).toBeGreaterThanOrEqual(2);
      expect(position.wayOut.hurry.length, position.id).toBeGreaterThanOrEqual(1);
      expect(position.wayOut.to, position.id).not.toBe(position.id);
      expect(position.wayOut.minutes, position.id).toBeGreaterThan(0);
      expect(position.wayOut.strengthShare, position.id).toBeGreaterThanOrEqual(0);
      expect(position.wayOut.strengthShare, position.id).toBeLessThanOrEqual(0.5);
    }
  });

  it("is there for every ladder's position", () => {
    const missing = ACTIVITIES.filter(({ position }) => !POSITIONS.some(({ id }) => id === position));
    expect(missing.map(({ id, position }) => `${id}: ${position}`)).toEqual([]);
  });
});

describe("every transition", () => {
  it("goes step by step, said in at most six words", () => {
    for (const transition of TRANSITIONS) {
      expect(transition.id).toMatch(KEBAB);
      if (transition.kind === undefined) expect(transition.from, transition.id).not.toBe(transition.to);
      expect(transition.steps.length, transition.id).toBeGreaterThanOrEqual(2);
      expect(
        transition.steps.some(({ whoMoves }) => whoMoves !== "helper"),
        transition.id,
      ).toBe(true);
      for (const step of transition.steps) {
        if (step.words !== null)
          expect(countWords(step.words), `${transition.id}: ${step.words}`).toBeLessThanOrEqual(6);
        expect(step.moves, transition.id).toMatch(/[.]$/);
      }
      expect(transition.minutes, transition.id).toBeGreaterThan(0);
      expect(transition.strengthShare, transition.id).toBeLessThanOrEqual(0.5);
    }
  });

  it("leads from lying to each position that has a ladder, and back", () => {
    const reach = (way: (transition: Transition) => readonly [string, string]): ReadonlySet<string> => {
      const reached = new Set<string>(["supine"]);
      for (let grew = true; grew; ) {
        grew = false;
        for (const transition of TRANSITIONS) {
          const [known, next] = way(transition);
          if (!reached.has(known) || reached.has(next)) continue;
          reached.add(next);
          grew = true;
        }
      }
      return reached;
    };
    const there = reach(({ from, to }) => [from, to]);
    const back = reach(({ from, to }) => [to, from]);
    const ladders = [...new Set(ACTIVITIES.map(({ position }) => position))];
    expect(ladders.filter((id) => !there.has(id))).toEqual([]);
    expect(ladders.filter((id) => !back.has(id))).toEqual([]);
  });
});
