import { TALL_KNEELING_TO_BENCH } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const tallKneelingToTallKneelingAtBench = {
  id: "tall-kneeling-to-tall-kneeling-at-bench",
  name: "Back to the bench",
  from: "tall-kneeling",
  to: "tall-kneeling-at-bench",
  steps: [
    { whoMoves: "helper", moves: "The bench is brought to the belly.", onCount: null, helper: "One hand stays at the pelvis.", helperBeside: "behind", words: null },
    { whoMoves: "person", moves: "Forearms or strong hand to the bench.", onCount: null, helper: "Weak forearm laid on it.", helperBeside: "weak", words: "Hands onto the bench" },
  ],
  keyPoses: TALL_KNEELING_TO_BENCH,
  prerequisites: [],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.5,
  strengthShare: 0.01,
  kneelDowns: 0,
  sideChange: false,
  demands: ["kneePressure"],
  equipment: ["bench"],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Weak arm lying well?",
  sources: ["common-practice"],
} as const satisfies Transition;
