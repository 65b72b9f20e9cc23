import { describe, expect, it } from "vitest";
import { BIBLIOGRAPHY } from "../../sources/bibliography.ts";
import {
  SESSION_DAYS,
  WEEK_BY_PURPOSE,
  WEEK_FIGURES,
  WEEK_KNEELING,
  WEEK_OTHERWISE,
  WEEK_REST,
  WEEK_STRENGTHENING,
} from "../../practice/dosing/week.data.ts";
import { TRIAL_DOSES } from "../../practice/dosing/trial-doses.data.ts";
import type { Findings } from "../findings.ts";
import { LOOK_AGAIN } from "./look-again.data.ts";
import { planWeek, type WeekLadder } from "./plan-week.ts";

type Asked = Pick<Findings, "daysSinceOnset" | "stroke" | "previous">;
const WEEKS_LATER: Asked = { daysSinceOnset: 20, stroke: true, previous: [] };
const ladder = (more: Partial<WeekLadder> = {}): WeekLadder => ({
  activity: "bridge",
  purpose: "liftSeat",
  position: "hook-lying",
  effort: 0.4,
  partner: null,
  ...more,
});
const week = (asked: Asked, ...ladders: WeekLadder[]) => planWeek(asked, ladders);
const gapsOf = (days: readonly number[]): number[] => days.slice(1).map((day, k) => day - (days[k] ?? 0));
const daysOf = (more: Partial<WeekLadder>) => week(WEEKS_LATER, ladder(more)).ladders[0];

describe("which days have a session", () => {
  it("is at least five of seven (NICE NG236, 2023)", () => {
    expect(week(WEEKS_LATER).sessions.days.length).toBeGreaterThanOrEqual(5);
    expect(SESSION_DAYS.usual.source).toBe("nice-ng236");
  });

  it("is every day, twice, in the first week: short and often (Bernhardt 2016)", () => {
    const { sessions } = week({ ...WEEKS_LATER, daysSinceOnset: 3 });
    expect(sessions).toMatchObject({ sessionsADay: 2, source: "bernhardt-2016" });
    expect(sessions.days).toHaveLength(7);
    expect(week({ ...WEEKS_LATER, daysSinceOnset: 7 }).sessions).toBe(SESSION_DAYS.usual);
    expect(week({ ...WEEKS_LATER, daysSinceOnset: 3, stroke: false }).sessions).toBe(SESSION_DAYS.usual);
  });

  it("leaves a day between for one who is tired still on the day after", () => {
    const nextDay = { activity: null, pain: null, tired: "stillThere" } as const;
    const { days } = week({ ...WEEKS_LATER, previous: [{ date: null, items: [], stopped: null, nextDay }] }).sessions;
    expect(gapsOf(days).every((gap) => gap >= 2)).toBe(true);
  });
});

describe("how many days each ladder is done", () => {
  // Billinger 2014: strengthening two to three days a week. Days apart: a proposal of this project.
  it("is two to three, and never two running, near the person's limit; the partner fills the others", () => {
    const hard = daysOf({ effort: 0.8, partner: "other" });
    expect(hard?.days.length).toBeGreaterThanOrEqual(2);
    expect(hard?.days.length).toBeLessThanOrEqual(3);
    expect(gapsOf(hard?.days ?? []).every((gap) => gap >= 2)).toBe(true);
    expect([...(hard?.days ?? []), ...(hard?.partnerDays ?? [])].sort()).toEqual([...SESSION_DAYS.usual.days]);
    expect(daysOf({ effort: 0.8 })?.partnerDays).toEqual([]);
  });

  it.each([
    ["standUp", "barreca-2004", 3],
    ["sittingBalance", "dean-shepherd-1997", 5],
    ["trunkControl", "karthikbabu-2011", 4],
    ["liftSeat", "song-heo-2015", 5],
  ] as const)("is for %s inside what %s printed", (purpose, source, least) => {
    const own = daysOf({ purpose });
    expect(own?.dose.source).toBe(source);
    expect(own?.days.length).toBeGreaterThanOrEqual(least);
    expect(own?.days.length).toBeLessThanOrEqual(own?.dose.daysPerWeek[1] ?? 0);
    expect(own?.days[0]).toBe(1);
  });

  it("agrees with the table of trials wherever that prints days a week", () => {
    for (const { source, daysPerWeek } of [...Object.values(WEEK_BY_PURPOSE), WEEK_KNEELING]) {
      const trial = TRIAL_DOSES.find((row) => row.source === source);
      if (trial?.perWeek == null) continue;
      expect(trial.perWeek, source).toBeGreaterThanOrEqual(daysPerWeek[0]);
      expect(trial.perWeek, source).toBeLessThanOrEqual(daysPerWeek[1]);
    }
  });
});

it("has a source for every row and names no side of a body", () => {
  const rows = [
    ...Object.values(WEEK_BY_PURPOSE),
    WEEK_KNEELING,
    WEEK_OTHERWISE,
    WEEK_STRENGTHENING,
    ...Object.values(SESSION_DAYS),
    ...WEEK_REST,
    ...Object.values(LOOK_AGAIN),
  ];
  for (const { source } of rows) expect(Object.keys(BIBLIOGRAPHY)).toContain(source);
  expect(WEEK_FIGURES.daysBetween).toBe(2);
  expect(JSON.stringify(rows)).not.toMatch(/\b(left|right)\b/i);
});
