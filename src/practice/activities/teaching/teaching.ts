import type { Side } from "../../../quantity/sides.ts";
import type { SourceId } from "../../../sources/bibliography.ts";
import type { EquipmentId } from "../../codes.ts";
import type { MeasureId } from "./measures.data.ts";

/** What is taught around an activity besides its rungs. All texts say weak and strong only, and no two activities share one. */
export interface Teaching {
  /** The published measure in which a gain would be seen, and what in it would move; no wording of the measure itself. */
  readonly measure: { readonly id: MeasureId; readonly shows: string };
  /** Why it is done, in one line a student can repeat. */
  readonly why: string;
  /** For a person with aphasia: one word, always the same, and the gesture or demonstration that goes with it. */
  readonly aphasia: { readonly word: string; readonly gesture: string };
  /** For a person with neglect: the side to stand on, and where the eyes are drawn before the move. */
  readonly neglect: { readonly beside: Side; readonly stand: string; readonly eyes: string };
  /** Shoes, brace, splint, sling, glasses, tubes and pockets, as far as they matter here. */
  readonly gear: string;
  /** What does instead of each special piece of equipment. */
  readonly instead: Readonly<Partial<Record<SpecialPiece, string>>>;
  /** What family may do after two show-backs on different days, or why they may not. */
  readonly family: { readonly may: boolean; readonly words: string };
}

/** Pieces found in every house, answered once for all activities. */
export type OrdinaryPiece = "pillow" | "belt" | "nonSlip" | "wall";
export type SpecialPiece = Exclude<EquipmentId, OrdinaryPiece>;

/** A published measure by its plain name, with what it tells and its tie to the International Classification of Functioning. */
export interface Measure {
  readonly name: string;
  readonly tells: string;
  readonly icf: readonly string[];
  readonly source: SourceId;
}
