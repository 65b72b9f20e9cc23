import { OFF_THE_WALL, SITTING_AGAINST_WALL } from "../../positions/floor-sitting-poses.data.ts";
import { LONG_SITTING } from "../../positions/sitting-poses.data.ts";
import type { Transition } from "../transition.ts";

export const sittingAgainstWallToLongSitting: Transition = {
  id: "sitting-against-wall-to-long-sitting",
  name: "Away from the wall",
  from: "sitting-against-wall",
  to: "long-sitting",
  steps: [
    { whoMoves: "helper", moves: "The helper slides a hand and then the thigh behind the weak side of the back.", onCount: null, helper: "Half kneels behind-weak, between back and wall.", helperBeside: "weak", words: null, pose: SITTING_AGAINST_WALL },
    { whoMoves: "person", moves: "The back comes a hand off the wall, the strong hand is set beside the hip.", onCount: null, helper: "The thigh is the new backrest.", helperBeside: "weak", words: "Off the wall, hand down", pose: OFF_THE_WALL },
    { whoMoves: "both", moves: "The seat goes ahead a hip at a time until there is space to lie back.", onCount: null, helper: "One hand behind the pelvis, one at the ribs.", helperBeside: "weak", words: "Weak hip, strong hip, ahead" },
    { whoMoves: "person", moves: "Both hands come to the thighs.", onCount: null, helper: "Thigh behind the back, hands ready.", helperBeside: "weak", words: "And sit tall here", pose: LONG_SITTING },
  ],
  prerequisites: ["Sits off the wall for some seconds."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.7,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: false,
  demands: ["wristLoad", "hipPastNinety"],
  equipment: [],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Space behind, weak hand in sight, not dizzy.",
  sources: ["common-practice"],
};
