import { STANDING_HAND_FLAT } from "../../positions/upright-poses.data.ts";
import type { Transition } from "../transition.ts";

export const walkingWithDeviceToStanding: Transition = {
  id: "walking-with-device-to-standing",
  name: "The cane is laid aside",
  from: "walking-with-device",
  to: "standing",
  steps: [
    { whoMoves: "both", moves: "In front of the mat a turn in small steps until both calves touch.", onCount: null, helper: "Behind the weak hip, round with the person.", helperBeside: "weak", words: "Small steps till it touches" },
    { whoMoves: "person", moves: "The strong hand goes from the cane to the table.", onCount: "on two", helper: "Takes the cane with the free hand, belt held.", helperBeside: "weak", words: "Hand over to the table", pose: STANDING_HAND_FLAT },
  ],
  prerequisites: ["Turns with small steps"],
  helpersNeeded: 1,
  secondHelper: "Takes the chair away.",
  minutes: 0.8,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: false,
  demands: ["standing"],
  equipment: ["cane", "belt"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Out of breath, or ready?",
  sources: ["common-practice"],
};
