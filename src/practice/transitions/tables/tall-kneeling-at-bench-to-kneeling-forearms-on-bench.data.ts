import { KNEES_AND_FOREARMS } from "../../positions/kneeling-more-poses.data.ts";
import type { Transition } from "../transition.ts";

export const tallKneelingAtBenchToKneelingForearmsOnBench: Transition = {
  id: "tall-kneeling-at-bench-to-kneeling-forearms-on-bench",
  name: "Lean down over a low bench",
  from: "tall-kneeling-at-bench",
  to: "kneeling-forearms-on-bench",
  steps: [
    { whoMoves: "helper", moves: "The high bench is changed for the low one while the person holds the helper's thigh.", onCount: null, helper: "Half kneeling in front and at the weak side, thigh offered as a rail.", helperBeside: "weak", words: "Hand on my thigh" },
    { whoMoves: "person", moves: "The hips fold and the strong forearm reaches the low bench.", onCount: "one", helper: "One hand at the front of the weak shoulder, one at the pelvis.", helperBeside: "weak", words: "Bow down to the bench" },
    { whoMoves: "both", moves: "The weak forearm is laid beside it.", onCount: null, helper: "From below, elbow first.", helperBeside: "weak", words: null, pose: KNEES_AND_FOREARMS },
  ],
  prerequisites: ["Kneels upright with a touch"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.7,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: true,
  demands: ["kneePressure", "shoulderLoad"],
  equipment: ["bench"],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Chest free, forearms flat?",
  sources: ["common-practice"],
};
