import { STANDING_AT_STEPS } from "../../positions/upright-poses.data.ts";
import type { Transition } from "../transition.ts";

export const walkingWithDeviceToStandingAtSteps: Transition = {
  id: "walking-with-device-to-standing-at-steps",
  name: "Up to the steps",
  from: "walking-with-device",
  to: "standing-at-steps",
  steps: [
    { whoMoves: "person", moves: "Walks to the steps and stops with the toes a hand's breadth off.", onCount: null, helper: "Behind and to the weak side.", helperBeside: "weak", words: "Stop here, feet level" },
    { whoMoves: "both", moves: "The strong hand goes to the rail; the cane is handed to the helper or hung on the forearm.", onCount: "on two", helper: "One hand stays in the belt.", helperBeside: "weak", words: "Hand ahead on the rail", pose: STANDING_AT_STEPS },
  ],
  prerequisites: ["Walks twenty steps with a cane and one helper"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.8,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: false,
  demands: ["standing"],
  equipment: ["cane", "steps", "belt"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Breath for a whole sentence, steps seen clearly?",
  sources: ["common-practice"],
};
