import { PERCH_SITTING, SEAT_LIGHT } from "../../positions/sitting-more-poses.data.ts";
import { SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import type { Transition } from "../transition.ts";

export const shortSittingToPerchSitting: Transition = {
  id: "short-sitting-to-perch-sitting",
  name: "Up to the perch",
  from: "short-sitting",
  to: "perch-sitting",
  steps: [
    { whoMoves: "helper", moves: "Brakes are checked, shoes and belt are on, a table or the bars stand in front.", onCount: null, helper: "Sits on a stool in front of the weak knee.", helperBeside: "weak", words: null, pose: SHORT_SITTING },
    { whoMoves: "both", moves: "The plinth goes up slowly with the person on it while the seat is brought to the front edge.", onCount: null, helper: "Knees round the weak knee, one hand at the weak hip, the other works the plinth.", helperBeside: "weak", words: "Going up, tell me stop" },
    { whoMoves: "both", moves: "The feet are set flat under the knees at each stop, the weak one by hand.", onCount: null, helper: "Checks both heels with a hand.", helperBeside: "weak", words: "Both heels down", pose: SEAT_LIGHT },
    { whoMoves: "person", moves: "The trunk grows upright, half the weight on the feet.", onCount: null, helper: "Knee against the weak knee.", helperBeside: "weak", words: "Tall, and press your feet", pose: PERCH_SITTING },
  ],
  prerequisites: ["Sits with a hand near.", "A plinth that goes up and down under load."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.8,
  strengthShare: 0.02,
  kneelDowns: 0,
  sideChange: false,
  demands: ["footPressure"],
  equipment: ["belt", "nonSlip"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Seat not on the rim, both heels down, weak knee held, clear in the head.",
  sources: ["common-practice"],
};
