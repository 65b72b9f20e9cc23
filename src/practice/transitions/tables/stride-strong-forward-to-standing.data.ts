import { STANDING_HAND_FLAT } from "../../positions/upright-poses.data.ts";
import type { Transition } from "../transition.ts";

export const strideStrongForwardToStanding: Transition = {
  id: "stride-strong-forward-to-standing",
  name: "Weak foot brought level",
  from: "stride-standing-strong-forward",
  to: "standing",
  steps: [
    { whoMoves: "person", moves: "The weight goes ahead over the strong foot.", onCount: null, helper: "Hand at the belt goes along.", helperBeside: "weak", words: "Chest over the front foot" },
    { whoMoves: "both", moves: "The weak knee bends and the foot comes level.", onCount: "on two", helper: "Hand behind the weak knee starts the bend.", helperBeside: "weak", words: "Bend it and bring it", pose: STANDING_HAND_FLAT },
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
  comfortCheck: "Feet level, both heels down?",
  sources: ["common-practice"],
};
