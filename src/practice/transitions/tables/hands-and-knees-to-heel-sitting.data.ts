import { HEEL_SITTING, SEAT_HALF_WAY_BACK } from "../../positions/kneeling-more-poses.data.ts";
import { HANDS_AND_KNEES } from "../../positions/kneeling-poses.data.ts";
import { HANDS_AND_KNEES_TO_HEELS } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const handsAndKneesToHeelSitting: Transition = {
  id: "hands-and-knees-to-heel-sitting",
  name: "Back onto the heels",
  from: "hands-and-knees",
  to: "heel-sitting",
  steps: [
    { whoMoves: "helper", moves: "The roll is laid across the lower legs behind the thighs.", onCount: null, helper: "One hand stays at the weak upper chest, thigh beside it.", helperBeside: "weak", words: null, pose: HANDS_AND_KNEES },
    { whoMoves: "person", moves: "The seat goes back while the hands stay where they are.", onCount: "one", helper: "Hand on the back of the pelvis guides it to the middle.", helperBeside: "weak", words: "Seat back, hands stay", pose: SEAT_HALF_WAY_BACK },
    { whoMoves: "both", moves: "The strong hand walks in; the weak hand is brought onto its thigh by the helper.", onCount: null, helper: "One hand under the weak forearm, the other flat before the weak shoulder.", helperBeside: "weak", words: "Walk your good hand in" },
    { whoMoves: "person", moves: "The trunk comes upright over the roll.", onCount: "two", helper: "Goes behind the weak side, hands on both sides of the pelvis.", helperBeside: "behind", words: "Grow tall", pose: HEEL_SITTING },
  ],
  keyPoses: HANDS_AND_KNEES_TO_HEELS,
  prerequisites: ["Knees bend to about 130 degrees"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1,
  strengthShare: 0.04,
  kneelDowns: 0,
  sideChange: true,
  demands: ["kneePressure", "hipPastNinety"],
  equipment: ["bolster"],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Seat in the middle of the roll, feet straight, knees easy?",
  sources: ["common-practice"],
};
