import { KNEES_AT_SEAT, ON_FLOOR_AT_SEAT } from "../../positions/floor-and-arm-poses.data.ts";
import { KNEELING_AT_BENCH } from "../../positions/kneeling-poses.data.ts";
import { FLOOR_TO_BENCH } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const onFloorAtSeatToTallKneelingAtBench: Transition = {
  id: "on-floor-at-seat-to-tall-kneeling-at-bench",
  name: "From the floor up to kneeling at the seat",
  from: "on-floor-at-seat",
  to: "tall-kneeling-at-bench",
  steps: [
    { whoMoves: "person", moves: "The trunk turns toward the seat over the strong hip.", onCount: "one", helper: "Brings the weak knee under, hand on the weak hip.", helperBeside: "weak", words: "Turn round to the seat", pose: ON_FLOOR_AT_SEAT },
    { whoMoves: "both", moves: "Up onto both knees, the strong forearm pressing.", onCount: "two", helper: "Hands at both seat bones.", helperBeside: "weak", words: "Press down, knees under", pose: KNEES_AT_SEAT },
    { whoMoves: "both", moves: "The weak forearm is laid beside the strong one, the higher bench comes in front.", onCount: null, helper: "Carries the arm from below; one hand stays at the pelvis.", helperBeside: "behind", words: null, pose: KNEELING_AT_BENCH },
  ],
  keyPoses: FLOOR_TO_BENCH,
  prerequisites: ["Knees that bear"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1.2,
  strengthShare: 0.08,
  kneelDowns: 0,
  sideChange: true,
  demands: ["kneePressure", "hipPastNinety"],
  equipment: ["bench"],
  places: ["floorMat"],
  comfortCheck: "Knees on the pad, dizzy or clear?",
  sources: ["common-practice"],
};
