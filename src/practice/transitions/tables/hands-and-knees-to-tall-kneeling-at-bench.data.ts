import { HANDS_AND_KNEES_TO_BENCH } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const handsAndKneesToTallKneelingAtBench = {
  id: "hands-and-knees-to-tall-kneeling-at-bench",
  name: "Hands and knees to kneeling at a bench",
  from: "hands-and-knees",
  to: "tall-kneeling-at-bench",
  steps: [
    { whoMoves: "person", moves: "Rock back toward the heels and rest.", onCount: "one", helper: "Front and weak side, near knee up as a stand for the weak upper chest.", helperBeside: "weak", words: "Rock back and rest" },
    { whoMoves: "person", moves: "The strong hand goes up onto the bench.", onCount: null, helper: "Thigh carries the weak upper chest; never the armpit.", helperBeside: "weak", words: "Good hand up here" },
    { whoMoves: "both", moves: "The trunk comes up, the weak forearm is laid on the bench.", onCount: "two", helper: "One hand at the weak seat bone, one before the weak shoulder.", helperBeside: "weak", words: "Chest up, belly forward" },
    { whoMoves: "helper", moves: "The helper goes behind the weak side, one hand staying at the pelvis.", onCount: null, helper: "Half kneeling behind.", helperBeside: "behind", words: null },
  ],
  keyPoses: HANDS_AND_KNEES_TO_BENCH,
  prerequisites: ["Knees bend past ninety degrees", "No painful or slipped weak shoulder"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1.5,
  strengthShare: 0.08,
  kneelDowns: 0,
  sideChange: true,
  demands: ["kneePressure", "shoulderLoad"],
  equipment: ["bench"],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Knees and feet lie well, weak arm supported?",
  sources: ["common-practice"],
} as const satisfies Transition;
