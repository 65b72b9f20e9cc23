import { BENCH_TO_WEAK_FORWARD } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const benchToHalfKneelingWeakForward = {
  id: "bench-to-half-kneeling-weak-forward",
  name: "Bring the weak foot in front",
  from: "tall-kneeling-at-bench",
  to: "half-kneeling-weak-forward",
  steps: [
    { whoMoves: "person", moves: "Weight goes over the strong knee, strong hand on the bench.", onCount: "one", helper: "Behind the weak side, hands on the pelvis.", helperBeside: "behind", words: "Lean on your good knee" },
    { whoMoves: "helper", moves: "The helper lifts the weak foot ahead and sets it flat.", onCount: "two", helper: "One hand at the weak hip, the other under the shin and foot.", helperBeside: "weak", words: "I bring your foot" },
    { whoMoves: "person", moves: "The trunk comes up over both.", onCount: null, helper: "Hand outside the weak knee, knee up along the weak thigh.", helperBeside: "weak", words: "Now stand on it" },
  ],
  keyPoses: BENCH_TO_WEAK_FORWARD,
  prerequisites: ["Kneels upright with one hand"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1,
  strengthShare: 0.05,
  kneelDowns: 0,
  sideChange: false,
  demands: ["kneePressure", "hipPastNinety", "footPressure"],
  equipment: ["bench"],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Foot flat, kneecap on the pad?",
  sources: ["common-practice"],
} as const satisfies Transition;
