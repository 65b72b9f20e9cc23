import { z } from "zod";
import { HOLD, VERSION } from "./answer-parts.ts";

/** One session day or day of rest, today being day 1. */
const WEEK_DAY = z.object({
  day: z.number().int().min(1).max(7),
  /** Null where the case has no date. */
  date: z.string().nullable(),
  sessions: z.number().int().min(0).max(2),
  /** Ladders of that day in the order of today's plan. */
  ladders: z.array(
    z.object({ activity: z.string(), rung: z.string(), words: z.string(), inPlaceOf: z.string().nullable() }),
  ),
});

/** What the log says of one ladder: where it goes, by which rule, in words. */
export const LADDER_TODAY = z.object({
  activity: z.string(),
  name: z.string(),
  lastRung: z.string(),
  todayRung: z.string(),
  step: z.enum(["up", "stay", "down"]),
  rule: z.string(),
  because: z.string(),
  whatToDo: z.string(),
  source: z.string(),
  seen: z.string(),
  inPlan: z.boolean(),
  trend: z
    .object({
      what: z.enum(["plateau", "setback"]),
      words: z.string(),
      tryThis: z.string(),
      source: z.string(),
      seen: z.string(),
    })
    .nullable(),
});

const WEEK_LADDER = z.object({
  activity: z.string(),
  rung: z.string(),
  words: z.string(),
  /** Near the person's limit: not two days running. */
  hard: z.boolean(),
  days: z.array(z.number().int().min(1).max(7)),
  dose: z.object({
    daysPerWeek: z.tuple([z.number(), z.number()]),
    words: z.string(),
    population: z.string(),
    source: z.string(),
    seen: z.string(),
  }),
  /** What is expected to change if it goes well; never a promise. */
  expect: z.string(),
});

const SAID = z.object({ text: z.string(), source: z.string(), seen: z.string() });

/** The whole answer to "what this week?"; every field always present. */
export const WEEK_ANSWER = z.object({
  version: VERSION,
  hold: HOLD.nullable(),
  sentence: z.string(),
  sessionDays: z.object({ days: z.array(z.number()), because: z.string(), source: z.string(), seen: z.string() }),
  days: z.array(WEEK_DAY),
  ladders: z.array(WEEK_LADDER),
  log: z.array(LADDER_TODAY),
  rest: z.array(SAID),
  lookAgain: z.array(SAID.extend({ day: z.number().int().min(1).max(7), date: z.string().nullable() })),
});
export type WeekAnswer = z.infer<typeof WEEK_ANSWER>;
