import { STANDING_SEAT_BEHIND } from "../../activities/poses/forearms-on-table.data.ts";
import { FOREARMS_ON_TABLE_STANDING, SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { FOREARMS_STANDING_TO_SEAT } from "../key-poses/standing.data.ts";
import type { Transition } from "../transition.ts";

export const forearmsOnTableStandingToShortSitting: Transition = {
  id: "forearms-on-table-standing-to-short-sitting",
  name: "From the table back to sitting",
  from: "forearms-on-table-standing",
  to: "short-sitting",
  steps: [
    { whoMoves: "helper", moves: "The seat is felt behind both knees.", onCount: null, helper: "In stride behind and to the weak side, belt with the palm up, near knee at the weak knee.", helperBeside: "weak", words: null, pose: FOREARMS_ON_TABLE_STANDING },
    { whoMoves: "person", moves: "The hips go back while the forearms stay on the table.", onCount: "on three", helper: "The hand at the belt goes back and down with the hips; the other stays flat in front of the weak shoulder.", helperBeside: "weak", words: "Hips back, find the seat", pose: STANDING_SEAT_BEHIND },
    { whoMoves: "person", moves: "Both knees bend and the seat is reached while counting to four.", onCount: null, helper: "The knee keeps the weak knee from folding early.", helperBeside: "weak", words: "Slowly: one, two, three, four" },
    { whoMoves: "both", moves: "The trunk comes upright, the strong hand lays the weak one on the thigh, the seat goes back from the edge.", onCount: null, helper: "Sits down beside the weak hip with a hand at the ribs, then pushes the table away.", helperBeside: "weak", words: "Sit back from the edge", pose: SHORT_SITTING },
  ],
  keyPoses: FOREARMS_STANDING_TO_SEAT,
  prerequisites: ["Begun before the legs are tired: strength is kept for it.", "The seat is no lower than the one the person came from."],
  helpersNeeded: 1,
  secondHelper: "Where the weak knee folds: blocks it from the front, sitting.",
  minutes: 1,
  strengthShare: 0.05,
  kneelDowns: 0,
  sideChange: false,
  demands: ["standing", "footPressure", "hipPastNinety"],
  equipment: ["table", "belt"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Seat well back, both feet flat, weak hand on the thigh, colour and breath settled.",
  sources: ["common-practice"],
};
