import type { Side } from "../../quantity/sides.ts";
import type { SourceId } from "../../sources/bibliography.ts";
import type { SiteId } from "../../mechanics/help/sites.ts";
import type { PoseSpecification } from "../../mechanics/pose/specification.ts";
import type { Approach, DemandId, EquipmentId, HelperPose, Limb, PlaceId, PositionId, PurposeId } from "../codes.ts";

/** A ladder: one activity in one position, its rungs from the easiest to the hardest. All texts say weak and strong only. */
export interface Activity {
  readonly id: string;
  /** As a therapist names it: "Bridge". */
  readonly name: string;
  readonly position: PositionId;
  readonly purposes: readonly PurposeId[];
  /** What it is for, as one plain sentence tied to a function. */
  readonly purposeWords: string;
  /** Code of the International Classification of Functioning for the function it readies, e.g. "d4104". */
  readonly icf: string;
  /** What is set up before the first rung. */
  readonly setUp: string;
  /** What to look at first, and where to start then. */
  readonly lookFirst: string;
  readonly rungs: readonly Rung[];
  readonly sources: readonly SourceId[];
}

/** One rung: its own pose, contacts, free limb, load or support. It differs from the rung below by one thing. */
export interface Rung {
  readonly id: string;
  readonly name: string;
  /** Its name on a patient's sheet: plain, at most four words ("Lift your seat"). */
  readonly plainName: string;
  /** The one thing that changes from the rung below; for the first rung, how it starts. */
  readonly changes: string;
  readonly movesFirst: string;
  /** The hardest held moment, which is computed and drawn. */
  readonly pose: PoseSpecification;
  /** Where it starts from, drawn as a ghost of the moving limb. */
  readonly start?: PoseSpecification;
  /** The limb that leaves its support. */
  readonly limbFree: `${"arm" | "leg"}.${Side}` | null;
  readonly workingSide: Side | "both" | "eitherSide";
  readonly helper: RungHelper;
  /** At most six words, and the one-word cue. */
  readonly words: string;
  readonly cue: string;
  readonly good: string;
  readonly faults: readonly RungFault[];
  readonly demands: readonly DemandId[];
  readonly dose: RungDose;
  /** How much it trains of each purpose, in units of one full set (0-3). */
  readonly trains: Readonly<Partial<Record<PurposeId, number>>>;
  /** What is asked of the weak limbs here: a rung that spares, lends (a post) or trains them. */
  readonly limbs: Readonly<Partial<Record<Limb, Approach>>>;
  readonly equipment: readonly EquipmentId[];
  readonly places: readonly PlaceId[];
  /** People needed besides the person, whatever the newtons. */
  readonly helpersNeeded: number;
  /** Other positions that serve the same purpose. */
  readonly substitutes: readonly { readonly activity: string; readonly rung: string }[];
  /** Why it does not go on a home sheet; null where it may, after two show-backs. */
  readonly notAtHome: string | null;
  /** For the home sheet: two plain sentences at or below sixth grade, and a short reason to stop ("your leg shakes"). Sides as {weak} and {strong}. */
  readonly home: { readonly sentences: string; readonly stopIf: string } | null;
  readonly stopSigns: readonly string[];
  readonly sources: readonly SourceId[];
}

export interface RungHelper {
  readonly pose: HelperPose;
  /** Where the helper is, seen from the person. */
  readonly at: {
    readonly beside: Side | "front" | "behind" | "foot" | "head";
    readonly nearTo: "shoulder" | "chest" | "hip" | "knee" | "foot" | "head";
    readonly awayCm: number;
  };
  /** Where the helper is, in words. */
  readonly place: string;
  /** Hands on sites; a hand may be ready rather than touching. */
  readonly hands: readonly {
    readonly site: SiteId;
    readonly does: "steadies" | "lifts" | "cues" | "blocks" | "ready";
    readonly words: string;
  }[];
  /** What the helper's knee, thigh or foot does. */
  readonly knee: string | null;
  /** Sites where help is counted when the person cannot do it alone. */
  readonly mayHelpAt: readonly SiteId[];
  /** The rung is done with this support always in place: it is part of the rung. */
  readonly always?: boolean;
}

export interface RungFault {
  readonly id: string;
  readonly fault: string;
  readonly do: string;
  /** Seen again in a row, go one rung down. */
  readonly stepDown: boolean;
}

export interface RungDose {
  readonly kind: "hold" | "repetitions" | "steps";
  readonly sets: number;
  readonly repetitions?: number;
  readonly holdSeconds?: number;
  readonly restSeconds: number;
  /** Minutes one set takes with its rest, talk and hands set. */
  readonly minutesPerSet: number;
}
