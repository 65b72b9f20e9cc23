import { OVER_STRONG_SEAT_UP } from "../../positions/floor-sitting-poses.data.ts";
import { HANDS_AND_KNEES } from "../../positions/kneeling-poses.data.ts";
import { SIDE_SITTING_ON_STRONG } from "../../positions/side-sitting-poses.data.ts";
import { HANDS_AND_KNEES_TO_SIDE_SITTING_STRONG } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const handsAndKneesToSideSittingOnStrongHip: Transition = {
  id: "hands-and-knees-to-side-sitting-on-strong-hip",
  name: "From hands and knees down onto the strong hip",
  from: "hands-and-knees",
  to: "side-sitting-on-strong-hip",
  steps: [
    { whoMoves: "helper", moves: "The helper's thigh goes under the front of the weak shoulder and upper chest.", onCount: null, helper: "Half kneels at the weak shoulder, one hand above the elbow.", helperBeside: "weak", words: "I have this side", pose: HANDS_AND_KNEES },
    { whoMoves: "helper", moves: "The weak hand is taken off the mat at the forearm and laid toward the lap.", onCount: null, helper: "Thigh carries the chest, one hand under the forearm.", helperBeside: "weak", words: "This hand comes home" },
    { whoMoves: "both", moves: "The hips go back and down to the strong side while the strong hand stays as a post.", onCount: "on three", helper: "A hand at the weak side of the pelvis brakes the way down.", helperBeside: "weak", words: "Sit back over there", pose: OVER_STRONG_SEAT_UP },
    { whoMoves: "person", moves: "The weight settles on the strong hip and the weak side shortens.", onCount: null, helper: "One hand at the weak ribs, one at the pelvis.", helperBeside: "weak", words: "And tall on that hip", pose: SIDE_SITTING_ON_STRONG },
  ],
  keyPoses: HANDS_AND_KNEES_TO_SIDE_SITTING_STRONG,
  prerequisites: ["Begun before the arms tire."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1.6,
  strengthShare: 0.06,
  kneelDowns: 0,
  sideChange: false,
  demands: ["wristLoad", "kneePressure", "hipAcrossMidline"],
  equipment: [],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Weak hand in the lap, knees not sore, breath easy.",
  sources: ["common-practice"],
};
