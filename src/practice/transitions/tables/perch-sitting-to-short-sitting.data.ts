import { PERCH_SITTING, WEAK_HIP_GOES_BACK } from "../../positions/sitting-more-poses.data.ts";
import { SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import type { Transition } from "../transition.ts";

export const perchSittingToShortSitting: Transition = {
  id: "perch-sitting-to-short-sitting",
  name: "Down from the perch",
  from: "perch-sitting",
  to: "short-sitting",
  steps: [
    { whoMoves: "both", moves: "The plinth comes down slowly, the feet walk ahead as the knees bend.", onCount: null, helper: "On the stool at the weak knee, knees round it.", helperBeside: "weak", words: "Going down, feet with it", pose: PERCH_SITTING },
    { whoMoves: "both", moves: "The seat goes back a hip at a time until the thighs are carried.", onCount: null, helper: "One hand behind the weak side of the pelvis, one under the thigh.", helperBeside: "weak", words: "Hip back, other hip back", pose: WEAK_HIP_GOES_BACK },
    { whoMoves: "person", moves: "Both hands to the thighs, feet flat.", onCount: null, helper: "Hand at the weak ribs until it is quiet.", helperBeside: "weak", words: "And rest here", pose: SHORT_SITTING },
  ],
  prerequisites: ["The plinth goes down under load; otherwise one stands and sits."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.7,
  strengthShare: 0.02,
  kneelDowns: 0,
  sideChange: false,
  demands: ["footPressure"],
  equipment: ["nonSlip"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Thighs carried, feet flat, weak hand on the thigh.",
  sources: ["common-practice"],
};
