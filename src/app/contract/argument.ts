import { z } from "zod";
import { EQUIPMENT_IDS, POSITION_IDS } from "../../practice/codes.ts";
import { REASON, RUNG_NAME } from "./answer-parts.ts";
import { PLAN_ANSWER } from "./plan-answer.ts";

const RUNG = z.strictObject({ activity: z.string().min(1).max(100), rung: z.string().min(1).max(100) });
const WHY = z.string().max(4000);
const HELPERS = z.number().int().min(0).max(10);

interface Rung {
  readonly activity: string;
  readonly rung: string;
}

/** What the therapist asks of the plan by hand; everything else is kept as it can be. */
export interface Wishes {
  readonly mustHave?: readonly Rung[];
  readonly leaveOut?: readonly Rung[];
  readonly startIn?: string | null;
  readonly noFloor?: boolean;
  readonly barPositions?: readonly string[];
  /** So many people are here today, where that is fewer than in the findings. */
  readonly helpers?: number;
  /** Not at hand today. */
  readonly without?: readonly string[];
  /** Kept out by the plan and put in by hand, each with the therapist's reason; a stop rule is not overruled. */
  readonly overrides?: readonly (Rung & { readonly why: string })[];
}

/** The same as it is written and sent. */
export const WISHES = z.strictObject({
  mustHave: z.exactOptional(z.array(RUNG).max(20)),
  leaveOut: z.exactOptional(z.array(RUNG).max(400)),
  startIn: z.exactOptional(z.enum(POSITION_IDS).nullable()),
  noFloor: z.exactOptional(z.boolean()),
  barPositions: z.exactOptional(z.array(z.enum(POSITION_IDS)).max(60)),
  helpers: z.exactOptional(HELPERS),
  without: z.exactOptional(z.array(z.enum(EQUIPMENT_IDS)).max(60)),
  overrides: z.exactOptional(z.array(RUNG.extend({ why: WHY })).max(20)),
});

/** One thing said against a plan. */
export const ARGUMENT = z.discriminatedUnion("say", [
  z.strictObject({ say: z.literal("keep"), of: RUNG }),
  z.strictObject({ say: z.literal("leave"), of: RUNG }),
  z.strictObject({ say: z.literal("putIn"), of: RUNG, why: z.exactOptional(WHY) }),
  z.strictObject({ say: z.literal("startIn"), position: z.enum(POSITION_IDS) }),
  z.strictObject({ say: z.literal("noFloor") }),
  z.strictObject({ say: z.literal("minutes"), minutes: z.number().min(0).max(600) }),
  z.strictObject({ say: z.literal("helpers"), count: HELPERS }),
  z.strictObject({ say: z.literal("without"), thing: z.enum(EQUIPMENT_IDS) }),
]);
export type Argument = z.infer<typeof ARGUMENT>;

const NAMED = RUNG_NAME.extend({ name: z.string() });

/** Two plans side by side. */
export const COMPARISON = z.object({
  /** What changes, in one or two sentences. */
  sentence: z.string(),
  same: z.array(NAMED),
  onlyFirst: z.array(NAMED.extend({ because: z.string() })),
  onlySecond: z.array(NAMED.extend({ because: z.string() })),
  /** What the second costs and what it spares, in words, the weightiest first; empty where nothing changes. */
  cost: z.array(z.string()),
});
export type Comparison = z.infer<typeof COMPARISON>;

export const ARGUMENT_ANSWER = z.object({
  /** What was asked, in words. */
  asked: z.string(),
  /** `follows`: the plan below keeps to it; `needsReason`: something keeps it out and a reason has to be given; `refused`. */
  verdict: z.enum(["follows", "needsReason", "refused"]),
  because: z.array(REASON),
  /** What would have to be taken over for the plan below; as before where nothing follows. */
  minutes: z.number(),
  wishes: WISHES,
  plan: PLAN_ANSWER,
  /** The plan before and the plan below. */
  comparison: COMPARISON,
});
export type ArgumentAnswer = Omit<z.infer<typeof ARGUMENT_ANSWER>, "wishes"> & { readonly wishes: Wishes };
