import { HALF_UP_FOREARMS } from "../../activities/poses/kneeling.data.ts";
import { HEEL_SITTING } from "../../positions/kneeling-more-poses.data.ts";
import { KNEELING_AT_BENCH } from "../../positions/kneeling-poses.data.ts";
import { BENCH_TO_HEELS } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const tallKneelingAtBenchToHeelSitting: Transition = {
  id: "tall-kneeling-at-bench-to-heel-sitting",
  name: "Down onto the heels",
  from: "tall-kneeling-at-bench",
  to: "heel-sitting",
  steps: [
    { whoMoves: "helper", moves: "The roll is laid across the lower legs.", onCount: null, helper: "One hand stays at the weak hip bone.", helperBeside: "behind", words: null, pose: KNEELING_AT_BENCH },
    { whoMoves: "person", moves: "The hips fold and the seat goes down slowly.", onCount: "count of three", helper: "Hands on both sides of the pelvis, near thigh under it.", helperBeside: "behind", words: "Down in three", pose: HALF_UP_FOREARMS },
    { whoMoves: "both", moves: "The weak hand is brought to its thigh, the bench goes away.", onCount: null, helper: "Lifts the forearm from below.", helperBeside: "weak", words: null, pose: HEEL_SITTING },
  ],
  keyPoses: BENCH_TO_HEELS,
  prerequisites: ["Knees bend to about 130 degrees"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.7,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: false,
  demands: ["kneePressure", "hipPastNinety"],
  equipment: ["bench", "bolster"],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Both feet free of the roll's edge, no cramp?",
  sources: ["common-practice"],
};
