import { z } from "zod";
import {
  ANSWER_SIDE,
  CONTRADICTION,
  GUARD,
  HELP,
  HOLD,
  JOINT_SIDE,
  MARGIN,
  RANGE_OF,
  REASON,
  RUNG_NAME,
  VERSION,
} from "./answer-parts.ts";

export const DOSE = z.object({
  sets: z.number().int().min(0),
  repetitions: z.number().int().min(1).optional(),
  holdSeconds: z.number().min(0).optional(),
  restSeconds: z.number().min(0),
});

export const PLAN_ITEM = z.object({
  activity: z.string(),
  rung: z.string(),
  position: z.string(),
  limbFree: z.enum(["arm.left", "arm.right", "arm.either", "leg.left", "leg.right", "leg.either"]).nullable(),
  workingSide: ANSWER_SIDE,
  effort: z.object({
    peak: RANGE_OF,
    limiting: z.object({ joint: z.string(), direction: z.string(), side: JOINT_SIDE }),
  }),
  margin: MARGIN,
  guard: GUARD.nullable(),
  help: HELP.nullable(),
  dose: DOSE,
  minutes: z.number().min(0),
  purpose: z.string(),
  because: z.array(z.string()),
  sources: z.array(z.string()),
});

/** One way from a position to the next, with the helper's moves. */
export const PLAN_TRANSITION = z.object({
  id: z.string(),
  from: z.string(),
  to: z.string(),
  minutes: z.number().min(0),
  steps: z.array(z.string()),
});

export const HELPER_MOVE = z.object({
  /** The move comes before the item with this number; the number of items stands for the way back. */
  beforeItem: z.number().int().min(0),
  from: z.string(),
  to: z.string(),
  words: z.string(),
});

export const WAY_BACK = z.object({
  from: z.string(),
  to: z.string(),
  minutes: z.number().min(0),
  planned: z.array(z.string()),
  hurry: z.array(z.string()),
});

/** A rung put in by hand against what keeps it out, for the record: against what, with the therapist's reason, in one sentence. */
export const OVERRIDE = RUNG_NAME.extend({
  why: z.string(),
  against: z.array(REASON),
  /** It is in the plan's reach; a stop rule, or no reason given, keeps it out. */
  allowed: z.boolean(),
  record: z.string(),
});

/** Why a plan is empty or far shorter than the slot, and what serves instead. */
export const WHY_SHORT = z.object({
  because: z.array(z.string()).min(1),
  instead: z.array(z.object({ text: z.string(), source: z.string() })),
});

/** The whole answer to "what today?"; every field always present, null or empty where there is nothing. */
export const PLAN_ANSWER = z.object({
  version: VERSION,
  hold: HOLD.nullable(),
  items: z.array(PLAN_ITEM),
  transitions: z.array(PLAN_TRANSITION),
  wayBack: WAY_BACK.nullable(),
  helperMoves: z.array(HELPER_MOVE),
  available: z.array(RUNG_NAME),
  excluded: z.array(RUNG_NAME.extend({ because: z.array(REASON).min(1) })),
  minutes: z.number().min(0),
  workingMinutes: z.number().min(0),
  timeline: z.array(
    z.object({ fromMinute: z.number(), toMinute: z.number(), position: z.string(), centreHeightMetres: z.number() }),
  ),
  /** Plans kept by an earlier version have nothing in `traded`. */
  solver: z.object({ status: z.string(), gap: z.number(), traded: z.array(z.string()).optional() }),
  /** Plans kept by an earlier version have neither of these two. */
  overrides: z.array(OVERRIDE).optional(),
  whyShort: WHY_SHORT.nullable().optional(),
  changesSinceLast: z.array(z.object({ change: z.string(), because: z.string() })),
  takeNext: z.array(z.object({ finding: z.string(), wouldChange: z.string() })),
  contradictions: z.array(CONTRADICTION),
  assumed: z.array(z.string()),
  cautions: z.array(z.object({ text: z.string(), source: z.string() })),
});
export type PlanAnswer = z.infer<typeof PLAN_ANSWER>;
export type PlanItemAnswer = z.infer<typeof PLAN_ITEM>;

/** The rungs an answer accounts for, to be compared with the catalogue: each once, in no other list. */
export function accountedRungs(plan: PlanAnswer): readonly string[] {
  return [...plan.items, ...plan.available, ...plan.excluded].map(({ activity, rung }) => `${activity}/${rung}`);
}

/** Whether a value has every field of a plan; further fields do not matter. */
export function isPlanAnswer(value: unknown): value is PlanAnswer {
  return PLAN_ANSWER.safeParse(value).success;
}
