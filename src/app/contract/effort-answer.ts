import { z } from "zod";
import { GUARD, HELP, JOINT_SIDE, MARGIN, RANGE_OF, VERSION } from "./answer-parts.ts";

const JOINT_EFFORT = z.object({
  joint: z.string(),
  direction: z.string(),
  side: JOINT_SIDE,
  capacity: RANGE_OF,
  effort: RANGE_OF,
  limitedBy: z.enum(["muscle", "jointEnd", "friction", "contact"]),
});

const KEY_POSE = z.object({
  name: z.string(),
  joints: z.array(JOINT_EFFORT),
  contacts: z.array(z.object({ segment: z.string(), side: JOINT_SIDE, share: z.number(), newtons: z.number() })),
  /** Metres: x forward, y to the person's left. */
  outline: z.array(z.object({ x: z.number(), y: z.number() })),
  margin: MARGIN,
  carries: z.union([z.string(), z.array(z.string())]).nullable(),
  bestPossible: z
    .object({
      effort: z.union([z.number(), RANGE_OF]),
      limiting: z.union([z.string(), z.object({ joint: z.string(), direction: z.string(), side: JOINT_SIDE })]),
    })
    .nullable(),
});

/** What one rung asks of this person. */
export const RUNG_EFFORT = z.object({
  version: VERSION,
  activity: z.string(),
  rung: z.string(),
  keyPoses: z.array(KEY_POSE),
  help: HELP.nullable(),
  guard: GUARD.nullable(),
  evidence: z.array(z.unknown()),
  basis: z.array(z.object({ formula: z.string(), inputs: z.record(z.string(), z.unknown()), source: z.string() })),
});

/** One rung, or every rung of the activity in the order of the ladder. */
export const EFFORT_ANSWER = z.union([RUNG_EFFORT, z.array(RUNG_EFFORT)]);
export type RungEffort = z.infer<typeof RUNG_EFFORT>;
export type EffortAnswer = z.infer<typeof EFFORT_ANSWER>;
