import { z } from "zod";
import { CONTRADICTION, VERSION } from "./answer-parts.ts";

export const FAULT = z.object({ path: z.string(), found: z.string(), expected: z.string() });

/** Whether a case file can be used, what is wrong with it, and what will be assumed. */
export const CHECK_ANSWER = z.object({
  version: VERSION,
  ok: z.boolean(),
  faults: z.array(FAULT),
  warnings: z.array(FAULT),
  contradictions: z.array(CONTRADICTION),
  assumed: z.array(z.string()),
});
export type CheckAnswer = z.infer<typeof CHECK_ANSWER>;
