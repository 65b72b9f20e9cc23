import { BENCH_TO_STRONG_FORWARD } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const benchToHalfKneelingStrongForward = {
  id: "bench-to-half-kneeling-strong-forward",
  name: "Bring the strong foot in front",
  from: "tall-kneeling-at-bench",
  to: "half-kneeling-strong-forward",
  steps: [
    { whoMoves: "person", moves: "Weight goes over the weak knee, hip straight.", onCount: "one", helper: "Behind the weak hip, hand at the seat bone, hip blocked.", helperBeside: "behind", words: "Tall on your weak knee" },
    { whoMoves: "person", moves: "The strong foot steps through and stands flat.", onCount: "two", helper: "Thigh along the weak thigh.", helperBeside: "weak", words: "Good foot through" },
    { whoMoves: "helper", moves: "Pelvis brought to face ahead.", onCount: null, helper: "Both hip bones in the hands.", helperBeside: "behind", words: null },
  ],
  keyPoses: BENCH_TO_STRONG_FORWARD,
  prerequisites: ["Weak hip stays straight on its knee for ten seconds"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1,
  strengthShare: 0.07,
  kneelDowns: 0,
  sideChange: false,
  demands: ["kneePressure", "hipPastNinety"],
  equipment: ["bench"],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Weak kneecap on the pad?",
  sources: ["common-practice"],
} as const satisfies Transition;
