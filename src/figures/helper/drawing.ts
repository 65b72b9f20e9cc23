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
}
