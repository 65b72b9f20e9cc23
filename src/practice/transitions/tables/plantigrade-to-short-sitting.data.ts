import { SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { HANDS_ON_TABLE, TABLE_KNEES_BENT } from "../../positions/table-standing-poses.data.ts";
import type { Transition } from "../transition.ts";

export const plantigradeToShortSitting: Transition = {
  id: "plantigrade-to-short-sitting",
  name: "From the hands back to sitting",
  from: "plantigrade",
  to: "short-sitting",
  steps: [
    { whoMoves: "helper", moves: "The seat is drawn to the backs of the knees with a foot.", onCount: null, helper: "Belt in one hand, the other lifts the weak hand off from below.", helperBeside: "weak", words: "Feel the seat behind", pose: HANDS_ON_TABLE },
    { whoMoves: "person", moves: "Hips back, knees bend, down slowly with the strong hand staying on the table.", onCount: "count of three", helper: "Knee before the weak knee, belt slows the last part.", helperBeside: "weak", words: "Hips back, slowly down", pose: TABLE_KNEES_BENT },
    { whoMoves: "both", moves: "Both hands come to the thighs.", onCount: null, helper: "Looks at the face and the weak foot.", helperBeside: "weak", words: null, pose: SHORT_SITTING },
  ],
  prerequisites: ["Knees that bend under weight with a block"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.7,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: false,
  demands: ["standing", "hipPastNinety"],
  equipment: ["table", "belt"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Dizzy, breath, weak hand on its thigh?",
  sources: ["common-practice"],
};
