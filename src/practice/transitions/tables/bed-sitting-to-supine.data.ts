import { BED_SITTING } from "../../positions/floor-sitting-poses.data.ts";
import type { Transition } from "../transition.ts";

export const bedSittingToSupine: Transition = {
  id: "bed-sitting-to-supine",
  name: "Backrest down",
  from: "bed-sitting",
  to: "supine",
  steps: [
    { whoMoves: "both", moves: "The back comes to rest, the head on its pillow.", onCount: null, helper: "Stands at the weak side, a hand at the weak ribs.", helperBeside: "weak", words: "Lean back and rest", pose: BED_SITTING },
    { whoMoves: "helper", moves: "The backrest goes down by notches.", onCount: null, helper: "Eyes on the face, the other hand keeps the weak arm on its pillow.", helperBeside: "weak", words: "Going down now" },
    { whoMoves: "both", moves: "The person is moved up the bed and laid straight.", onCount: "on three", helper: "One hand under the weak side of the pelvis, one behind the blade.", helperBeside: "weak", words: "Good foot pushes, up we go" },
  ],
  prerequisites: ["Lying flat is allowed."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.8,
  strengthShare: 0.01,
  kneelDowns: 0,
  sideChange: false,
  demands: [],
  equipment: ["pillow"],
  places: ["bed"],
  comfortCheck: "Straight, weak arm on its pillow, heels free, bell in the strong hand.",
  sources: ["common-practice"],
};
