import { z } from "zod";
import { HELPER_POSES } from "../../practice/codes.ts";

/** Product and knowledge an answer was made with. */
export const VERSION = z.object({ product: z.string(), knowledge: z.string() });
/** 5th, 50th and 95th percentile of the person model's samples. */
export const RANGE_OF = z.object({ low: z.number(), middle: z.number(), high: z.number() });
/** A direction seen from the person, by body side. */
export const DIRECTIONS = [
  "forward",
  "back",
  "left",
  "right",
  "forwardLeft",
  "forwardRight",
  "backLeft",
  "backRight",
] as const;
/** With no weaker side a direction has none either. */
export const DIRECTION = z.enum([...DIRECTIONS, "either", "forwardEither", "backEither"]);
export const ANSWER_SIDE = z.enum(["left", "right", "both", "either"]);
/** Null for the trunk. */
export const JOINT_SIDE = z.enum(["left", "right", "either"]).nullable();

export const MARGIN = z.object({ least: z.object({ metres: z.number(), towards: DIRECTION }) });

export const HELP = z.object({
  words: z.enum(["standBy", "touching", "minimal", "moderate", "maximal", "dependent"]),
  code: z.number().int().min(1).max(6),
  share: z.number().min(0).max(1),
  newtons: z.number().min(0),
  site: z.string().nullable(),
  side: ANSWER_SIDE.nullable(),
  direction: z.string().nullable(),
});

/** The side towards which a fall is guarded, not where the helper kneels. */
export const GUARD = z.object({
  side: ANSWER_SIDE,
  quadrant: DIRECTION,
  helperPose: z.enum(HELPER_POSES),
  because: z.string(),
});

/** A finding that stands against another, which one was believed, and why. */
export const CONTRADICTION = z.object({ findings: z.array(z.string()), believed: z.string(), because: z.string() });
export const REASON = z.object({ rule: z.string(), detail: z.string(), source: z.string() });
export const RUNG_NAME = z.object({ activity: z.string(), rung: z.string() });

export const HOLD = z.object({
  because: z.array(z.object({ rule: z.string(), measured: z.string(), limit: z.string(), source: z.string() })).min(1),
  whatToDo: z.string(),
});
