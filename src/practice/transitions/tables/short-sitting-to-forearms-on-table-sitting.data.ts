import { FOREARMS_ON_TABLE_SITTING, SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import type { Transition } from "../transition.ts";

export const shortSittingToForearmsOnTableSitting: Transition = {
  id: "short-sitting-to-forearms-on-table-sitting",
  name: "Arms onto the table in sitting",
  from: "short-sitting",
  to: "forearms-on-table-sitting",
  steps: [
    { whoMoves: "helper", moves: "The table is brought over the knees to the belly and its wheels are locked.", onCount: null, helper: "Sits on a stool at the weak side and reaches the table with the outer hand; the inner hand stays at the weak ribs.", helperBeside: "weak", words: null, pose: SHORT_SITTING },
    { whoMoves: "person", moves: "The strong hand takes the weak forearm just above the wrist and lays it on the table.", onCount: null, helper: "A hand under the weak upper arm goes along, without lifting it.", helperBeside: "weak", words: "Lay your weak arm down" },
    { whoMoves: "person", moves: "The strong forearm comes down beside it and the pelvis tips forward into a light lean.", onCount: null, helper: "One hand behind the weak side of the pelvis, the other on the blade.", helperBeside: "weak", words: "Now this one, and lean", pose: FOREARMS_ON_TABLE_SITTING },
  ],
  prerequisites: ["Sits with a hand near.", "The weak arm comes forward without pain."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.7,
  strengthShare: 0.01,
  kneelDowns: 0,
  sideChange: false,
  demands: ["hipPastNinety"],
  equipment: ["table"],
  places: ["bed", "plinth", "raisedMat"],
  comfortCheck: "Whole forearm on the table, palm down, nothing pressed at the belly, feet flat.",
  sources: ["common-practice"],
};
