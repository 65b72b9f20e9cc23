import { BENCH_TO_SIDE_LYING } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const tallKneelingAtBenchToSideLying = {
  id: "tall-kneeling-at-bench-to-side-lying",
  name: "From the bench down to the strong side",
  from: "tall-kneeling-at-bench",
  to: "side-lying-on-strong-side",
  steps: [
    { whoMoves: "person", moves: "Forearms stay on the bench while the seat sinks back onto the cushion.", onCount: "one", helper: "Hands under both buttocks, slow.", helperBeside: "behind", words: "Seat back, slowly" },
    { whoMoves: "person", moves: "The strong hand comes down to the mat at the strong side.", onCount: null, helper: "Hand flat before the weak shoulder.", helperBeside: "weak", words: "Good hand to the mat" },
    { whoMoves: "both", moves: "Weight over the strong hip, then the strong elbow, then down.", onCount: "two", helper: "One hand behind the weak blade, one on the weak hip.", helperBeside: "weak", words: "Over, elbow, and down" },
    { whoMoves: "helper", moves: "Legs straightened one after the other, weak arm forward.", onCount: null, helper: "Look for cramp in the foot.", helperBeside: "front", words: null },
  ],
  keyPoses: BENCH_TO_SIDE_LYING,
  prerequisites: ["Strength kept for it"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 2,
  strengthShare: 0.07,
  kneelDowns: 0,
  sideChange: true,
  demands: ["kneePressure"],
  equipment: [],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Any cramp, weak arm in front?",
  sources: ["common-practice"],
} as const satisfies Transition;
