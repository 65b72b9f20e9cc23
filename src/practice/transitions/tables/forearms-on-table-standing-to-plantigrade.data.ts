import { FOREARMS_ON_TABLE_STANDING } from "../../positions/sitting-poses.data.ts";
import { HANDS_ON_TABLE } from "../../positions/table-standing-poses.data.ts";
import type { Transition } from "../transition.ts";

export const forearmsOnTableStandingToPlantigrade: Transition = {
  id: "forearms-on-table-standing-to-plantigrade",
  name: "Up from the forearms onto the hands",
  from: "forearms-on-table-standing",
  to: "plantigrade",
  steps: [
    { whoMoves: "person", moves: "The strong hand pushes that elbow straight.", onCount: "one", helper: "Flat palm before the weak shoulder, belt in the other hand.", helperBeside: "weak", words: "Push up on this hand", pose: FOREARMS_ON_TABLE_STANDING },
    { whoMoves: "both", moves: "The weak palm is laid flat and its elbow brought straight.", onCount: null, helper: "Opens the fingers, hand above the elbow from behind.", helperBeside: "weak", words: null, pose: HANDS_ON_TABLE },
  ],
  prerequisites: ["Wrist that goes back, or a fist", "Painless weak shoulder"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.5,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: false,
  demands: ["standing", "wristLoad", "shoulderLoad"],
  equipment: ["table"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Fingers open, elbow long, knee soft?",
  sources: ["common-practice"],
};
