import { STANDING_SEAT_BEHIND } from "../../activities/poses/forearms-on-table.data.ts";
import { PERCH_FOREARMS_ON_TABLE } from "../../activities/poses/sit-to-stand.data.ts";
import { FOREARMS_ON_TABLE_STANDING, SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { SEAT_TO_FOREARMS_STANDING } from "../key-poses/standing.data.ts";
import type { Transition } from "../transition.ts";

export const shortSittingToForearmsOnTableStanding: Transition = {
  id: "short-sitting-to-forearms-on-table-standing",
  name: "Sitting to standing at a table",
  from: "short-sitting",
  to: "forearms-on-table-standing",
  steps: [
    { whoMoves: "helper", moves: "The high table is set in front against a wall, shoes and belt are checked, pressure is known.", onCount: null, helper: "Sits in front and to the weak side, knee against the weak knee.", helperBeside: "weak", words: null, pose: SHORT_SITTING },
    { whoMoves: "person", moves: "The seat scoots to the edge, the feet come back and apart.", onCount: null, helper: "Places the weak foot and holds it with a foot.", helperBeside: "weak", words: "To the edge, feet back" },
    { whoMoves: "both", moves: "The weak forearm is laid on the table, the strong one beside it.", onCount: null, helper: "Carries the weak arm from below, elbow and wrist together.", helperBeside: "weak", words: "Arms on the table" },
    { whoMoves: "helper", moves: "Up from the stool into stride, before the person moves.", onCount: null, helper: "Behind and to the weak side: belt with the palm up, the other palm behind the pelvis, near knee at the weak knee.", helperBeside: "weak", words: null },
    { whoMoves: "person", moves: "The chest goes ahead over the table and the seat comes off.", onCount: "on three", helper: "The knee blocks the weak knee from the front or the side, the hand behind the pelvis goes ahead and up.", helperBeside: "weak", words: "Nose over, push your feet", pose: PERCH_FOREARMS_ON_TABLE },
    { whoMoves: "person", moves: "The hips come ahead until the elbows are under the shoulders; knees stay soft.", onCount: null, helper: "Draws the seat close behind the knees with one foot, looks at the face.", helperBeside: "weak", words: "Hips ahead. Stand. Dizzy?", pose: STANDING_SEAT_BEHIND },
    { whoMoves: "both", moves: "The stand is set: heels down, weight in the middle, weak hand flat.", onCount: null, helper: "One hand at the belt, the other flat in front of the weak shoulder.", helperBeside: "weak", words: null, pose: FOREARMS_ON_TABLE_STANDING },
  ],
  keyPoses: SEAT_TO_FOREARMS_STANDING,
  prerequisites: ["The seat comes off from a high plinth with no more than one helper.", "Pressure does not fall on sitting up.", "Follows one step at a time."],
  helpersNeeded: 1,
  secondHelper: "Where the weak knee folds: sits in front at the weak knee and blocks it with both knees while the first stays at belt and shoulder.",
  minutes: 2,
  strengthShare: 0.07,
  kneelDowns: 0,
  sideChange: false,
  demands: ["suddenStanding", "standing", "footPressure", "hipPastNinety", "shoulderLoad"],
  equipment: ["table", "belt", "nonSlip"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Clear in the head, both heels heavy, weak hand flat, seat touching the backs of the knees.",
  sources: ["common-practice"],
};
