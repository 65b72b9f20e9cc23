import { STANDING_AT_WALL } from "../../positions/upright-poses.data.ts";
import type { Transition } from "../transition.ts";

export const standingToStandingAtWall: Transition = {
  id: "standing-to-standing-at-wall",
  name: "To the wall",
  from: "standing",
  to: "standing-at-wall",
  steps: [
    { whoMoves: "helper", moves: "Clears the way to the wall, chair ready at the strong side.", onCount: null, helper: "Belt in hand before anything else moves.", helperBeside: "weak", words: null },
    { whoMoves: "both", moves: "Turns in small steps until the back is to the wall, strong hand on the chair.", onCount: null, helper: "Behind and to the weak side, one step with each of theirs.", helperBeside: "weak", words: "Small steps, turn your back" },
    { whoMoves: "person", moves: "Steps back until the heels are a foot's length from the wall, then seat and blades touch.", onCount: "on three", helper: "Comes round to the front of the weak knee.", helperBeside: "weak", words: "Seat first, then shoulders", pose: STANDING_AT_WALL },
  ],
  prerequisites: ["Takes four steps with one helper"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: false,
  demands: ["standing", "footPressure"],
  equipment: ["wall", "belt"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Feet holding, both blades touching?",
  sources: ["common-practice"],
};
