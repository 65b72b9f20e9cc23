import type { SiteId } from "../../mechanics/help/sites.ts";
import type { Side } from "../../quantity/sides.ts";
import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";
import type { DemandId, PositionId } from "../codes.ts";
import type { PRECAUTION_IDS } from "./identifiers.data.ts";
import type { Orders } from "./orders.ts";

export type PrecautionId = (typeof PRECAUTION_IDS)[number];

/** How far a condition reaches into a rung, hardest first. */
export const VERDICTS = ["bar", "clearFirst", "change", "watch"] as const;
export type Verdict = (typeof VERDICTS)[number];

/** A condition of one person, with what the physician set beside it. */
export interface PrecautionFinding {
  readonly code: PrecautionId;
  readonly note?: string;
  readonly orders?: Orders;
}

/** A sentence with where it comes from. */
export interface SourcedText {
  readonly text: string;
  readonly source: SourceId;
  readonly seen: Seen;
}

/**
 * What one condition does to rungs. With demands and positions both given, a rung must have one of each; with
 * `everywhere` it reaches every rung.
 */
export interface PrecautionLine {
  readonly verdict: Verdict;
  readonly demands?: readonly DemandId[];
  readonly positions?: readonly PositionId[];
  /** Positions the line does not reach, because another line says what to do there. */
  readonly except?: readonly PositionId[];
  readonly everywhere?: true;
  /** The line is about this side only; a rung known to ask it of the other side is not reached. */
  readonly side?: Side;
  /** The physician's figure that decides instead, where there is one. */
  readonly judgedBy?: "hipFlexion" | "legLoad";
  /** What to tell the therapist, in weak and strong words. */
  readonly because: string;
  readonly source: SourceId;
  readonly seen: Seen;
  /** The verdict once the physician has cleared it. */
  readonly whenCleared: "change" | "watch" | "stays";
  /** True where the line is common practice or a proposal of this project, for the site to change. */
  readonly editable: boolean;
}

/** Where a helper's hand may not go, or only in a certain way. */
export interface SiteLine {
  readonly verdict: Verdict;
  readonly sites: readonly SiteId[];
  readonly because: string;
  readonly source: SourceId;
  readonly seen: Seen;
  readonly editable: boolean;
}

/** A condition that stops the whole session until it is cleared. */
export interface HoldRule {
  readonly rule: string;
  readonly because: string;
  readonly whatToDo: string;
  readonly source: SourceId;
  readonly seen: Seen;
}

/** A sign that outranks the computed fall direction. */
export interface GuardEffect {
  readonly sign: "pushing" | "neglect" | "fainting" | "impulsive" | "seizure";
  readonly side: "weak" | "all";
  readonly because: string;
  readonly source: SourceId;
  readonly seen: Seen;
}

/** More hands, where a rung has one of these demands or positions. */
export interface HelpersEffect {
  readonly count: number;
  readonly demands: readonly DemandId[];
  readonly positions: readonly PositionId[];
  readonly because: string;
  readonly source: SourceId;
  readonly seen: Seen;
  readonly editable: true;
}

/** Everything one coded condition changes. */
export interface PrecautionRow {
  /** The condition in the trade's words. */
  readonly title: string;
  /** "positions-only" rows have no line by demand yet and say so in the cautions. */
  readonly depth: "full" | "positions-only";
  /** Who can clear it; null where nobody has to. */
  readonly clearWith: string | null;
  readonly hold: HoldRule | null;
  readonly lines: readonly PrecautionLine[];
  readonly sites: readonly SiteLine[];
  readonly guard: GuardEffect | null;
  /** How to speak and show. */
  readonly words: readonly SourcedText[];
  readonly helpers: HelpersEffect | null;
  /** Longest hold [second]; null where the dose is not limited. */
  readonly holdSecondsMax: number | null;
  /** Printed once a plan. */
  readonly cautions: readonly SourcedText[];
  readonly stopSigns: readonly SourcedText[];
}
