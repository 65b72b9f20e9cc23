import { STANDING_HAND_FLAT } from "../../positions/upright-poses.data.ts";
import type { Transition } from "../transition.ts";

export const strideWeakForwardToStanding: Transition = {
  id: "stride-weak-forward-to-standing",
  name: "Weak foot back level",
  from: "stride-standing-weak-forward",
  to: "standing",
  steps: [
    { whoMoves: "person", moves: "The weight goes back over the strong foot.", onCount: null, helper: "Hand at the belt, other at the weak knee.", helperBeside: "weak", words: "Lean home to the back foot" },
    { whoMoves: "both", moves: "The weak foot is drawn back level.", onCount: "on two", helper: "Hand at the weak shin steers it straight.", helperBeside: "weak", words: "Draw it level", pose: STANDING_HAND_FLAT },
  ],
  prerequisites: ["The strong leg carries with one hand"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.3,
  strengthShare: 0.01,
  kneelDowns: 0,
  sideChange: false,
  demands: ["standing"],
  equipment: ["table", "belt"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Even on both feet again?",
  sources: ["common-practice"],
};
