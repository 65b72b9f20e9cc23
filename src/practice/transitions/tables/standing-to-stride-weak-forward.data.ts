import { STRIDE_WEAK_AHEAD } from "../../positions/upright-poses.data.ts";
import type { Transition } from "../transition.ts";

export const standingToStrideWeakForward: Transition = {
  id: "standing-to-stride-weak-forward",
  name: "Weak foot set ahead",
  from: "standing",
  to: "stride-standing-weak-forward",
  steps: [
    { whoMoves: "person", moves: "The weight goes over the strong foot.", onCount: null, helper: "Hand on the strong side of the pelvis draws it over.", helperBeside: "weak", words: "All on the good leg" },
    { whoMoves: "both", moves: "The weak foot is set a foot's length ahead, heel first.", onCount: "on two", helper: "Hand behind the weak knee helps it ahead.", helperBeside: "weak", words: "Heel ahead and down", pose: STRIDE_WEAK_AHEAD },
  ],
  prerequisites: ["Stands with one hand for a minute"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.4,
  strengthShare: 0.01,
  kneelDowns: 0,
  sideChange: false,
  demands: ["standing"],
  equipment: ["table", "belt"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Front heel down, knee soft?",
  sources: ["common-practice"],
};
