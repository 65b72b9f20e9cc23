import { HALF_UP_FOREARMS } from "../../activities/poses/kneeling.data.ts";
import { HEEL_SITTING } from "../../positions/kneeling-more-poses.data.ts";
import { KNEELING_AT_BENCH } from "../../positions/kneeling-poses.data.ts";
import { HEELS_TO_BENCH } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const heelSittingToTallKneelingAtBench: Transition = {
  id: "heel-sitting-to-tall-kneeling-at-bench",
  name: "From the heels up to kneeling",
  from: "heel-sitting",
  to: "tall-kneeling-at-bench",
  steps: [
    { whoMoves: "helper", moves: "The bench is set in front of the knees.", onCount: null, helper: "Half kneeling behind the weak side, hand on the pelvis.", helperBeside: "behind", words: null, pose: HEEL_SITTING },
    { whoMoves: "both", moves: "Strong forearm on the bench, the weak one laid beside it.", onCount: null, helper: "Carries the weak arm from below.", helperBeside: "weak", words: "Arms on the bench" },
    { whoMoves: "person", moves: "Nose ahead, hips straighten.", onCount: "on three", helper: "Hands under both seat bones, forward and up.", helperBeside: "behind", words: "Nose ahead, belly in", pose: HALF_UP_FOREARMS },
    { whoMoves: "helper", moves: "The roll is taken away when the hips are straight.", onCount: null, helper: "One hand stays at the weak seat bone.", helperBeside: "behind", words: null, pose: KNEELING_AT_BENCH },
  ],
  keyPoses: HEELS_TO_BENCH,
  prerequisites: ["Rises from a chair with no more than one helper"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1,
  strengthShare: 0.06,
  kneelDowns: 0,
  sideChange: false,
  demands: ["kneePressure", "hipPastNinety"],
  equipment: ["bench"],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Hips straight, breath easy, knees on the pad?",
  sources: ["common-practice"],
};
