import { STANDING_HAND_FLAT } from "../../positions/upright-poses.data.ts";
import type { Transition } from "../transition.ts";

export const standingAtWallToStanding: Transition = {
  id: "standing-at-wall-to-standing",
  name: "Off the wall",
  from: "standing-at-wall",
  to: "standing",
  steps: [
    { whoMoves: "person", moves: "Feet come back toward the wall one after the other.", onCount: null, helper: "Hand on the weak knee, the other on the pelvis.", helperBeside: "weak", words: "Walk your heels back in" },
    { whoMoves: "both", moves: "Nose ahead, the seat leaves the wall, strong hand to the table or chair.", onCount: "on three", helper: "Hand on the breastbone lets the chest come as far as the toes.", helperBeside: "weak", words: "Nose ahead, stand free", pose: STANDING_HAND_FLAT },
  ],
  prerequisites: ["Stands with one hand"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.7,
  strengthShare: 0.02,
  kneelDowns: 0,
  sideChange: false,
  demands: ["standing"],
  equipment: ["wall", "belt"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Steady without the wall?",
  sources: ["common-practice"],
};
