import { STRIDE_STRONG_AHEAD } from "../../positions/upright-poses.data.ts";
import type { Transition } from "../transition.ts";

export const standingToStrideStrongForward: Transition = {
  id: "standing-to-stride-strong-forward",
  name: "Strong foot set ahead",
  from: "standing",
  to: "stride-standing-strong-forward",
  steps: [
    { whoMoves: "helper", moves: "Moves close to the weak hip, knee before the weak knee.", onCount: null, helper: "Hip to hip, hand on the outer weak pelvis.", helperBeside: "weak", words: null },
    { whoMoves: "person", moves: "The weight comes over the weak foot, the strong foot steps a foot's length ahead.", onCount: "on two", helper: "Blocks the weak knee for that moment.", helperBeside: "weak", words: "Stand on this, step ahead", pose: STRIDE_STRONG_AHEAD },
  ],
  prerequisites: ["The weak leg holds while the strong heel lifts"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.4,
  strengthShare: 0.02,
  kneelDowns: 0,
  sideChange: false,
  demands: ["standing"],
  equipment: ["table", "belt"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Weak heel down behind, no pull in the groin?",
  sources: ["common-practice"],
};
