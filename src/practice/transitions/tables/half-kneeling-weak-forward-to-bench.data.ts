import { WEAK_FORWARD_TO_BENCH } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const halfKneelingWeakForwardToBench = {
  id: "half-kneeling-weak-forward-to-bench",
  name: "Weak knee back down",
  from: "half-kneeling-weak-forward",
  to: "tall-kneeling-at-bench",
  steps: [
    { whoMoves: "person", moves: "Strong hand presses on the bench, weight to the strong knee.", onCount: "one", helper: "Hand at the weak hip.", helperBeside: "weak", words: "Lean on your good knee" },
    { whoMoves: "helper", moves: "The weak foot is drawn back until the knee is down.", onCount: "two", helper: "Hand under the weak thigh lowers the knee.", helperBeside: "weak", words: "Let me bring it back" },
  ],
  keyPoses: WEAK_FORWARD_TO_BENCH,
  prerequisites: [],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.75,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: false,
  demands: ["kneePressure"],
  equipment: ["bench"],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Both knees on the pad?",
  sources: ["common-practice"],
} as const satisfies Transition;
