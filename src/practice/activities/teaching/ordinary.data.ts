import type { SourceId } from "../../../sources/bibliography.ts";
import type { OrdinaryPiece, Teaching } from "./teaching.ts";

/** What does instead of the pieces found in every house. */
export const ORDINARY_INSTEAD: Readonly<Record<OrdinaryPiece, string>> = {
  pillow: "A bath towel or a jersey, folded until it is as thick as the pillow.",
  belt: "No belt: open hands on both hip bones; never pull at trousers or under the arm. Standing and walking without one is for the therapist to decide.",
  nonSlip: "A damp face cloth under the foot, or a rubber bath mat with the suckers down.",
  wall: "A closed door that opens the other way, or the side of a wardrobe fixed to the wall.",
};

/** What each kind of text rests on. */
export const TEACHING_SOURCES: Readonly<Record<Exclude<keyof Teaching, "measure">, readonly SourceId[]>> = {
  why: ["common-practice"],
  aphasia: ["supported-conversation", "common-practice"],
  neglect: ["common-practice"],
  gear: ["common-practice"],
  instead: ["judgement"],
  family: ["teach-back", "common-practice"],
};
