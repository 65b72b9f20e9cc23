import { HIGH_SEAT_HANDS_ON_KNEES } from "../../activities/poses/sit-to-stand.data.ts";
import { SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { STANDING_HAND_FLAT } from "../../positions/upright-poses.data.ts";
import { SEAT_TO_STANDING } from "../key-poses/standing.data.ts";
import type { Transition } from "../transition.ts";

export const shortSittingToStanding: Transition = {
  id: "short-sitting-to-standing",
  name: "Sitting to standing at the mat",
  from: "short-sitting",
  to: "standing",
  steps: [
    { whoMoves: "helper", moves: "Table at hip height ahead of the strong hand, shoes and belt on, mat braked; pressure known sitting.", onCount: null, helper: "In front and to the weak side, knee ready before the weak knee.", helperBeside: "weak", words: null, pose: SHORT_SITTING },
    { whoMoves: "person", moves: "Comes to the edge, feet back and hip-wide, weight on both sitting bones.", onCount: null, helper: "Places the weak foot and keeps it with the own foot.", helperBeside: "weak", words: "Edge, feet back, both even" },
    { whoMoves: "both", moves: "Nose over the toes and up; the strong hand pushes off the mat, then finds the table.", onCount: "on three", helper: "Shin at the weak knee, hand behind the pelvis, other at the belt.", helperBeside: "weak", words: "Nose ahead and rise", pose: HIGH_SEAT_HANDS_ON_KNEES },
    { whoMoves: "helper", moves: "Waits one minute, looks at the face, takes the pressure if it fell before.", onCount: null, helper: "Moves behind the weak hip once the knee is quiet.", helperBeside: "weak", words: "Both heels, look ahead", pose: STANDING_HAND_FLAT },
  ],
  keyPoses: SEAT_TO_STANDING,
  prerequisites: ["Stands up from a high seat with one helper"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1.8,
  strengthShare: 0.07,
  kneelDowns: 0,
  sideChange: false,
  demands: ["suddenStanding", "standing", "footPressure"],
  equipment: ["table", "belt"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Dizzy, both heels down, belt snug?",
  sources: ["common-practice"],
};
