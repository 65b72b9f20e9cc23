import { ROCKED_BACK } from "../../activities/poses/hands-and-knees.data.ts";
import { KNEES_AND_FOREARMS } from "../../positions/kneeling-more-poses.data.ts";
import { HANDS_AND_KNEES } from "../../positions/kneeling-poses.data.ts";
import { HANDS_AND_KNEES_TO_LOW_BENCH } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const handsAndKneesToKneelingForearmsOnBench: Transition = {
  id: "hands-and-knees-to-kneeling-forearms-on-bench",
  name: "From the hands up to a low bench",
  from: "hands-and-knees",
  to: "kneeling-forearms-on-bench",
  steps: [
    { whoMoves: "helper", moves: "The low bench is pushed in front of the hands.", onCount: null, helper: "Thigh stays at the weak upper chest.", helperBeside: "weak", words: null, pose: HANDS_AND_KNEES },
    { whoMoves: "person", moves: "Rock back a little, the strong forearm goes up onto the bench.", onCount: "one", helper: "Thigh takes the weak upper chest meanwhile.", helperBeside: "weak", words: "Good forearm up here", pose: ROCKED_BACK },
    { whoMoves: "both", moves: "The weak forearm is carried up and laid down, elbow under the shoulder.", onCount: null, helper: "One hand under the upper arm, one under the forearm.", helperBeside: "weak", words: "I bring the other one" },
    { whoMoves: "person", moves: "The trunk settles between both elbows.", onCount: null, helper: "Flat palm before the weak shoulder.", helperBeside: "weak", words: "Wide between the blades", pose: KNEES_AND_FOREARMS },
  ],
  keyPoses: HANDS_AND_KNEES_TO_LOW_BENCH,
  prerequisites: ["No painful or slipped weak shoulder"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.8,
  strengthShare: 0.04,
  kneelDowns: 0,
  sideChange: false,
  demands: ["kneePressure", "shoulderLoad"],
  equipment: ["bench"],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Elbows in from the edge, neck long?",
  sources: ["common-practice"],
};
