import { SMALL_SQUAT_HAND } from "../../activities/poses/upright.data.ts";
import { SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { STANDING_HAND_FLAT } from "../../positions/upright-poses.data.ts";
import { STANDING_TO_SEAT } from "../key-poses/standing.data.ts";
import type { Transition } from "../transition.ts";

export const standingToShortSitting: Transition = {
  id: "standing-to-short-sitting",
  name: "Standing to sitting on the mat",
  from: "standing",
  to: "short-sitting",
  steps: [
    { whoMoves: "person", moves: "Steps back until both calves feel the mat.", onCount: null, helper: "Hand in the belt, knee near the weak knee.", helperBeside: "weak", words: "Feel it with both legs", pose: STANDING_HAND_FLAT },
    { whoMoves: "person", moves: "Hips go back and the knees bend, the strong hand stays on the table, then goes to the mat.", onCount: "count of three", helper: "Knee before the weak knee, belt slows the last part.", helperBeside: "weak", words: "Seat far back, slow down", pose: SMALL_SQUAT_HAND },
    { whoMoves: "both", moves: "The weak arm is laid on the thigh, both feet are looked at.", onCount: null, helper: "Looks at face and breath before letting go.", helperBeside: "weak", words: null, pose: SHORT_SITTING },
  ],
  keyPoses: STANDING_TO_SEAT,
  prerequisites: ["Knees bend under weight with a block"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.6,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: false,
  demands: ["standing", "hipPastNinety"],
  equipment: ["table", "belt"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Light head, pain, weak hand safe on the thigh?",
  sources: ["common-practice"],
};
