import { STRONG_HAND_PROPS } from "../../activities/poses/long-sitting.data.ts";
import { SITTING_AGAINST_WALL } from "../../positions/floor-sitting-poses.data.ts";
import { LONG_SITTING } from "../../positions/sitting-poses.data.ts";
import type { Transition } from "../transition.ts";

export const longSittingToSittingAgainstWall: Transition = {
  id: "long-sitting-to-sitting-against-wall",
  name: "Back to the wall",
  from: "long-sitting",
  to: "sitting-against-wall",
  steps: [
    { whoMoves: "helper", moves: "A non-slip mat is laid at the wall; the person sits no further from it than an arm's length.", onCount: null, helper: "Half kneels behind and to the weak side, the thigh between back and wall.", helperBeside: "weak", words: null, pose: LONG_SITTING },
    { whoMoves: "both", moves: "The seat goes back a hip at a time in the walking order, the strong hand flat on the mat.", onCount: null, helper: "One hand behind the weak side of the pelvis, the thigh gives way as the wall comes near.", helperBeside: "weak", words: "Hand, weak hip, strong hip", pose: STRONG_HAND_PROPS },
    { whoMoves: "helper", moves: "The helper comes round to the weak hip, one hand staying at the weak ribs.", onCount: null, helper: "Half kneels beside the weak hip once both blades touch.", helperBeside: "weak", words: null },
    { whoMoves: "person", moves: "The back grows long along the wall and the hands go to the thighs.", onCount: null, helper: "A hand at the weak ribs, one on the weak hip.", helperBeside: "weak", words: "Grow up along it", pose: SITTING_AGAINST_WALL },
  ],
  prerequisites: ["Sits in long sitting with a hand near.", "Straight legs or a roll under the knees are easy."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.9,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: false,
  demands: ["wristLoad", "hipPastNinety"],
  equipment: ["wall", "nonSlip"],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Both blades on the wall, weak hand in sight, seat not sliding, clear in the head.",
  sources: ["common-practice"],
};
