import { STRONG_FORWARD_TO_BENCH } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const halfKneelingStrongForwardToBench = {
  id: "half-kneeling-strong-forward-to-bench",
  name: "Strong knee back down",
  from: "half-kneeling-strong-forward",
  to: "tall-kneeling-at-bench",
  steps: [
    { whoMoves: "person", moves: "Strong hand on the bench, weight stays over the weak knee.", onCount: null, helper: "Hip blocked, hand at the seat bone.", helperBeside: "weak", words: "Hand on the bench" },
    { whoMoves: "person", moves: "The strong foot slides back until the knee is down.", onCount: "one", helper: "Pelvis kept level.", helperBeside: "weak", words: "Slide your foot back" },
  ],
  keyPoses: STRONG_FORWARD_TO_BENCH,
  prerequisites: [],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.75,
  strengthShare: 0.04,
  kneelDowns: 0,
  sideChange: false,
  demands: ["kneePressure"],
  equipment: ["bench"],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Both knees on the pad, breath easy?",
  sources: ["common-practice"],
} as const satisfies Transition;
