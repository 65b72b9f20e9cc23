import { STANDING_WITH_CANE } from "../../positions/upright-poses.data.ts";
import type { Transition } from "../transition.ts";

export const standingAtStepsToWalkingWithDevice: Transition = {
  id: "standing-at-steps-to-walking-with-device",
  name: "Away from the steps",
  from: "standing-at-steps",
  to: "walking-with-device",
  steps: [
    { whoMoves: "helper", moves: "Puts the cane back into the strong hand's reach.", onCount: null, helper: "Belt held from behind the weak hip.", helperBeside: "weak", words: null },
    { whoMoves: "person", moves: "The strong hand goes from the rail to the cane, a small turn, feet level.", onCount: "on two", helper: "Steps round with the person.", helperBeside: "weak", words: "Cane, turn, then walk", pose: STANDING_WITH_CANE },
  ],
  prerequisites: ["Both feet on the floor"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.6,
  strengthShare: 0.02,
  kneelDowns: 0,
  sideChange: false,
  demands: ["standing"],
  equipment: ["cane", "steps", "belt"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Legs trembling, or good for the way back?",
  sources: ["common-practice"],
};
