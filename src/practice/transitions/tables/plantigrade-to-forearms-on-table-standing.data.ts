import { FOREARMS_ON_TABLE_STANDING } from "../../positions/sitting-poses.data.ts";
import { HANDS_ON_TABLE } from "../../positions/table-standing-poses.data.ts";
import type { Transition } from "../transition.ts";

export const plantigradeToForearmsOnTableStanding: Transition = {
  id: "plantigrade-to-forearms-on-table-standing",
  name: "Down from the hands to the forearms",
  from: "plantigrade",
  to: "forearms-on-table-standing",
  steps: [
    { whoMoves: "helper", moves: "The table is raised or a block of foam laid on it.", onCount: null, helper: "One hand at the belt.", helperBeside: "weak", words: null, pose: HANDS_ON_TABLE },
    { whoMoves: "both", moves: "The strong forearm goes down first, the weak one is laid beside it.", onCount: "one", helper: "Lowers the weak forearm, elbow first.", helperBeside: "weak", words: "Elbow down, then the other", pose: FOREARMS_ON_TABLE_STANDING },
  ],
  prerequisites: ["The weak arm comes forward without pain"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.4,
  strengthShare: 0.02,
  kneelDowns: 0,
  sideChange: false,
  demands: ["standing", "shoulderLoad"],
  equipment: ["table"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Elbows under the shoulders, heels heavy?",
  sources: ["common-practice"],
};
