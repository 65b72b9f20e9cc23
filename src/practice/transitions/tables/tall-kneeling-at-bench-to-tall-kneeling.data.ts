import { BENCH_TO_TALL_KNEELING } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const tallKneelingAtBenchToTallKneeling = {
  id: "tall-kneeling-at-bench-to-tall-kneeling",
  name: "Bench moved away",
  from: "tall-kneeling-at-bench",
  to: "tall-kneeling",
  steps: [
    { whoMoves: "person", moves: "Upright over the knees with the strong hand light.", onCount: null, helper: "Hands at both seat bones.", helperBeside: "behind", words: "Grow tall, hand light" },
    { whoMoves: "helper", moves: "The bench goes a forearm ahead, still in reach.", onCount: null, helper: "One hand stays at the pelvis.", helperBeside: "behind", words: null },
  ],
  keyPoses: BENCH_TO_TALL_KNEELING,
  prerequisites: ["Holds with the strong hand light for fifteen seconds"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.5,
  strengthShare: 0.01,
  kneelDowns: 0,
  sideChange: false,
  demands: ["kneePressure"],
  equipment: ["bench"],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Knees and feet well?",
  sources: ["common-practice"],
} as const satisfies Transition;
