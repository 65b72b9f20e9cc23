import { FOREARMS_ON_TABLE_SITTING, SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import type { Transition } from "../transition.ts";

export const forearmsOnTableSittingToShortSitting: Transition = {
  id: "forearms-on-table-sitting-to-short-sitting",
  name: "Arms off the table in sitting",
  from: "forearms-on-table-sitting",
  to: "short-sitting",
  steps: [
    { whoMoves: "person", moves: "The strong hand presses the trunk upright over the hips.", onCount: null, helper: "One hand at the weak ribs, the other behind the pelvis.", helperBeside: "weak", words: "Press yourself up tall", pose: FOREARMS_ON_TABLE_SITTING },
    { whoMoves: "both", moves: "The strong hand takes the weak forearm and lays it on the weak thigh.", onCount: null, helper: "A hand under the weak upper arm carries its weight.", helperBeside: "weak", words: "Bring your arm home" },
    { whoMoves: "helper", moves: "The table is unlocked and pushed away an arm's length.", onCount: null, helper: "The inner hand stays at the ribs while the outer one pushes.", helperBeside: "weak", words: null, pose: SHORT_SITTING },
  ],
  prerequisites: ["Sits upright with a hand near."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.5,
  strengthShare: 0.01,
  kneelDowns: 0,
  sideChange: false,
  demands: [],
  equipment: ["table"],
  places: ["bed", "plinth", "raisedMat"],
  comfortCheck: "Sits in the middle, weak hand on the thigh, feet flat.",
  sources: ["common-practice"],
};
