import type { Side } from "../../quantity/sides.ts";
import type { SiteId } from "../../mechanics/help/sites.ts";
import type { PoseSpecification } from "../../mechanics/pose/specification.ts";
import type { SourceId } from "../../sources/bibliography.ts";
import type { RungHelper } from "../activities/activity.ts";
import type { Approach, DemandId, EquipmentId, PlaceId, PositionId } from "../codes.ts";

/** The way from one position to another in numbered steps, with the helper's move at each. Weak and strong only. */
export interface Transition {
  readonly id: string;
  /** As a therapist names it: "Roll to the strong side". */
  readonly name: string;
  readonly from: PositionId;
  readonly to: PositionId;
  /** From a chair onto the mat, or off it into one: both ends are then the sitting on the mat. Absent between positions. */
  readonly kind?: "arrival" | "leaving";
  /** In the order done; the number of a step is its place in the list. */
  readonly steps: readonly TransitionStep[];
  /** Two to four moments on the way, in order, each posed, computed and drawn; absent where none are set. */
  readonly keyPoses?: readonly KeyPose[];
  /** What the person needs for it: range, strength, understanding. */
  readonly prerequisites: readonly string[];
  /** People needed besides the person; what the second one does stands in `secondHelper`. */
  readonly helpersNeeded: number;
  readonly secondHelper: string | null;
  readonly minutes: number;
  /** Share of the person's strength for a session that it takes, 0 to 1. */
  readonly strengthShare: number;
  /** How often the helper goes down on or comes up from the knees. */
  readonly kneelDowns: number;
  /** The helper changes to the person's other side on the way. */
  readonly sideChange: boolean;
  readonly demands: readonly DemandId[];
  readonly equipment: readonly EquipmentId[];
  readonly places: readonly PlaceId[];
  /** Looked at and asked on arriving. */
  readonly comfortCheck: string;
  readonly sources: readonly SourceId[];
}

export interface TransitionStep {
  readonly whoMoves: "person" | "helper" | "both";
  /** What moves, in one sentence. */
  readonly moves: string;
  /** On which count it goes; null where nobody counts. */
  readonly onCount: string | null;
  /** What the helper does meanwhile: place, hands, knee. */
  readonly helper: string;
  /** Which side of the person the helper is on at this step. */
  readonly helperBeside: Side | "front" | "behind" | "foot" | "head";
  /** At most six words; null where nothing is said. */
  readonly words: string | null;
  readonly pose?: PoseSpecification;
}

/** One moment on the way, still enough to be computed and drawn. */
export interface KeyPose {
  /** The number of the step it shows, from 1. */
  readonly step: number;
  readonly pose: PoseSpecification;
  /** The helper at this moment: place, hands, thigh, and where help is counted. */
  readonly helper: RungHelper;
  /** Where the body lies on the helper's thigh; null where it does not. */
  readonly onThigh: SiteId | null;
  /** What is asked of the weak arm here: laid down or carried, lent as a post, or trained. */
  readonly weakArm: Approach;
}
