import type { SiteId } from "../../mechanics/help/sites.ts";
import type { Side } from "../../quantity/sides.ts";

export type HelperStance = "standing" | "strideStanding" | "sitting" | "halfKneeling" | "kneeling";

/** Where a helper is, seen from the person, as a rung states it. */
export interface HelperPlace {
  readonly beside: Side | "front" | "behind" | "foot" | "head";
  readonly nearTo: "shoulder" | "chest" | "hip" | "knee" | "foot" | "head";
  readonly awayCm: number;
}

/** A helper to be drawn: how and where they are, and what each hand does where. */
export interface HelperDrawing {
  readonly pose: HelperStance;
  readonly at: HelperPlace;
  readonly hands: readonly {
    readonly site: SiteId;
    /** A hand that is ready stays a hand's breadth off the skin. */
    readonly does: "steadies" | "lifts" | "cues" | "blocks" | "ready";
  }[];
  /** What the helper's own knee, thigh, shin or foot does, as the rung says it: drawn where it names a place on the person. */
  readonly knee?: string | null;
  /** Two where the rung needs a second pair of hands: the second stands by at the strong hip. */
  readonly people?: number;
}

/** Where the second helper is: at the strong side of the pelvis, one hand ready. Common practice, no source. */
export function secondHelper(first: HelperDrawing): HelperDrawing {
  const stands = first.pose === "standing" || first.pose === "strideStanding";
  return {
    pose: stands ? "standing" : "kneeling",
    at: { beside: "strong", nearTo: "hip", awayCm: 35 },
    hands: [{ site: "pelvisSide.strong", does: "ready" }],
  };
}
