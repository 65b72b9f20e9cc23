import { z } from "zod";
import { DEMAND_IDS, POSITION_IDS } from "../../practice/codes.ts";
import { RUNG_NAME, VERSION } from "./answer-parts.ts";

const CATALOGUE_RUNG = z.object({
  id: z.string(),
  name: z.string(),
  changes: z.string(),
  demands: z.array(z.enum(DEMAND_IDS)),
  helper: z.unknown(),
  words: z.string(),
  cue: z.string(),
  good: z.string(),
  faults: z.array(z.object({ id: z.string(), fault: z.string(), do: z.string() })),
  purpose: z.string(),
  icf: z.string(),
  substitutes: z.array(RUNG_NAME),
  dose: z.unknown(),
  notAtHome: z.string().nullable(),
  sources: z.array(z.string()),
});

/** All that the product knows how to do, in weak and strong words. */
export const CATALOGUE_ANSWER = z.object({
  version: VERSION,
  positions: z.array(z.object({ id: z.enum(POSITION_IDS), name: z.string() })),
  transitions: z.array(z.object({ id: z.string(), from: z.enum(POSITION_IDS), to: z.enum(POSITION_IDS) })),
  activities: z.array(
    z.object({
      id: z.string(),
      name: z.string(),
      position: z.enum(POSITION_IDS),
      rungs: z.array(CATALOGUE_RUNG).min(1),
    }),
  ),
});
export type CatalogueAnswer = z.infer<typeof CATALOGUE_ANSWER>;
