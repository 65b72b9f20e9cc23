import { HEEL_SITTING, SEAT_HALF_WAY_BACK } from "../../positions/kneeling-more-poses.data.ts";
import { HANDS_AND_KNEES } from "../../positions/kneeling-poses.data.ts";
import { HEELS_TO_HANDS_AND_KNEES } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const heelSittingToHandsAndKnees: Transition = {
  id: "heel-sitting-to-hands-and-knees",
  name: "From the heels onto the hands",
  from: "heel-sitting",
  to: "hands-and-knees",
  steps: [
    { whoMoves: "helper", moves: "Comes to the front and weak side before anything moves.", onCount: null, helper: "Near knee up, thigh where the weak upper chest will come.", helperBeside: "weak", words: null, pose: HEEL_SITTING },
    { whoMoves: "person", moves: "The strong hand goes ahead to the mat.", onCount: null, helper: "Thigh under the weak upper chest, never the armpit.", helperBeside: "weak", words: "Good hand on the mat" },
    { whoMoves: "both", moves: "The weak hand is placed flat, the elbow brought straight.", onCount: null, helper: "One hand above the elbow from behind, one opens the fingers.", helperBeside: "weak", words: null, pose: SEAT_HALF_WAY_BACK },
    { whoMoves: "person", moves: "The hips come ahead over the knees.", onCount: "one", helper: "Keeps the elbow, thigh stays near.", helperBeside: "weak", words: "Hips over your knees", pose: HANDS_AND_KNEES },
  ],
  keyPoses: HEELS_TO_HANDS_AND_KNEES,
  prerequisites: ["Weak elbow kept straight with a block", "Painless weak shoulder"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1,
  strengthShare: 0.06,
  kneelDowns: 0,
  sideChange: true,
  demands: ["kneePressure", "wristLoad", "shoulderLoad"],
  equipment: [],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Weak fingers flat, elbow straight, breath easy?",
  sources: ["common-practice"],
};
