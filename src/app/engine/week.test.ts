import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import type { CaseFile } from "../contract/case-file.ts";
import { parseCase } from "../contract/parse-case.ts";
import { WEEK_ANSWER, type WeekAnswer } from "../contract/week-answer.ts";
import { createEngine } from "./create-engine.ts";
import type { Engine } from "./engine.ts";
import { weekSection } from "./week-section.ts";

const read = (name: string): CaseFile => {
  const parsed = parseCase(readFileSync(`examples/${name}.json`, "utf8"));
  if (!parsed.ok) throw new Error(name);
  return parsed.value;
};
type Previous = NonNullable<CaseFile["previous"]>[number];
type Item = NonNullable<Previous["items"]>[number];
const MINUTES = 45;
let engine: Engine;
let file: CaseFile;
let week: WeekAnswer;
let logged: Item[];
beforeAll(async () => {
  engine = await createEngine();
  file = { ...read("case-p"), date: "2026-03-16", previous: [] };
  week = engine.week(file, MINUTES);
  logged = engine
    .plan(file, MINUTES)
    .items.map(({ activity, rung }) => ({ activity, rung, done: "asPlanned", help: "alone", faults: [] }));
}, 120_000);
const session = (date: string, more: Partial<Item> = {}): Previous => ({
  date,
  items: logged.map((item) => ({ ...item, ...more })),
});

describe("the plan for the week", () => {
  it("has the published form, seven days, and is the same week for the same case", () => {
    expect(WEEK_ANSWER.strict().parse(week)).toEqual(week);
    expect(week.days.map(({ day, date }) => [day, date])).toEqual(
      [16, 17, 18, 19, 20, 21, 22].map((at, k) => [k + 1, `2026-03-${at}`]),
    );
    expect(JSON.stringify(engine.week(file, MINUTES))).toBe(JSON.stringify(week));
  });

  it("begins with today's plan, keeps every ladder to its days, and never leaves a session day empty", () => {
    const plan = engine.plan(file, MINUTES);
    expect(week.days[0]?.ladders.map(({ activity }) => activity)).toEqual(plan.items.map(({ activity }) => activity));
    for (const { day, sessions, ladders } of week.days) {
      if (sessions === 0) expect(ladders).toEqual([]);
      else expect(ladders.length, `day ${day}`).toBeGreaterThan(0);
      expect(new Set(ladders.map(({ activity }) => activity)).size).toBe(ladders.length);
    }
    for (const { activity, days, hard } of week.ladders) {
      const on = week.days.filter(({ ladders }) =>
        ladders.some((each) => each.activity === activity && each.inPlaceOf === null),
      );
      expect(on.map(({ day }) => day)).toEqual(days);
      if (hard) expect(days.slice(1).every((day, k) => day - (days[k] ?? 0) >= 2)).toBe(true);
    }
  });

  it("puts in place of a resting ladder only what is open today", () => {
    const { available } = engine.plan(file, MINUTES);
    for (const { ladders } of week.days)
      for (const { activity, rung, inPlaceOf } of ladders)
        if (inPlaceOf !== null) expect(available).toContainEqual({ activity, rung });
  });

  it("says in plain lines the days, doses with their source, rest, what may change and what to look at again", () => {
    const { title, blocks } = weekSection(week);
    expect(title).toBe("This week");
    expect(blocks.map(({ head }) => head)).toEqual([
      "Which days",
      "How often, and from where",
      "What may change, if it goes well",
      "Rest",
      "Look again",
    ]);
    const text = blocks.flatMap(({ lines }) => lines).join("\n");
    expect(text).toMatch(/bernhardt-2016|nice-ng236/);
    expect(text).not.toMatch(/undefined|NaN|\b(optimal|capacity|margin|solver)\b/i);
  });
});

describe("the log of several days in plan and week", () => {
  it("says one good day stays, two go up, each with its rule", () => {
    const one = engine.week({ ...file, previous: [session("2026-03-14")] }, MINUTES);
    expect(new Set(one.log.map(({ rule }) => rule))).toEqual(new Set(["stayOneGood"]));
    const two = engine.week({ ...file, previous: [session("2026-03-13"), session("2026-03-14")] }, MINUTES);
    expect(new Set(two.log.map(({ rule }) => rule))).toEqual(new Set(["upTwoDays"]));
    expect(two.log).toHaveLength(logged.length);
    for (const { because, whatToDo, source } of two.log) {
      expect(because.length).toBeGreaterThan(10);
      expect(whatToDo.length).toBeGreaterThan(10);
      expect(source).toBe("common-practice");
    }
  });

  // A proposal of this project: eight days away is as long as three sessions missed.
  it("goes back a rung after three missed sessions, says so in the plan's changes, and looks again today", () => {
    const away: CaseFile = { ...file, previous: [session("2026-03-05"), session("2026-03-06")] };
    const answer = engine.week(away, MINUTES);
    expect(new Set(answer.log.map(({ rule }) => rule))).toEqual(new Set(["backAfterAbsence"]));
    expect(answer.lookAgain[0]).toMatchObject({ day: 1, source: "judgement" });
    const lower = engine.plan(away, MINUTES).changesSinceLast.filter(({ change }) => change.startsWith("One down"));
    for (const { because } of lower.filter((each) => /without a session/.test(each.because)))
      expect(because).toContain("10 days without a session, as long as three missed. One rung back");
    const missed = { ...file, date: "2026-03-10" };
    const not = ["2026-03-07", "2026-03-08", "2026-03-09"].map((date) => session(date, { done: "notDone" }));
    const listed = engine.week({ ...missed, previous: [session("2026-03-06"), ...not] }, MINUTES);
    expect(listed.log.every(({ because }) => because === "3 sessions missed in a row.")).toBe(true);
  });

  it("names a plateau with what to do", () => {
    const stuck = ["10", "11", "12", "13"].map((day) =>
      session(`2026-03-${day}`, { done: "changed", sets: 1, repetitions: 3, exertion: 6 }),
    );
    const [first] = engine.week({ ...file, previous: stuck }, MINUTES).log;
    expect(first?.trend).toMatchObject({ what: "plateau" });
    expect(first?.trend?.words).toContain("tiredness");
  });
});

it("plans no week while the session is on hold, and says what to do", () => {
  const held = engine.week({ ...file, vitals: { systolic: 230, diastolic: 125 } }, MINUTES);
  expect(held.hold).not.toBeNull();
  expect(held.ladders).toEqual([]);
  expect(held.days.every(({ sessions }) => sessions === 0)).toBe(true);
  expect(weekSection(held).lead).toContain("on hold");
});
