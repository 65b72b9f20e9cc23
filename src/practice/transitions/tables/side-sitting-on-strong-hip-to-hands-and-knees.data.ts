import { OVER_STRONG_SEAT_UP } from "../../positions/floor-sitting-poses.data.ts";
import { HANDS_AND_KNEES } from "../../positions/kneeling-poses.data.ts";
import { SIDE_SITTING_ON_STRONG } from "../../positions/side-sitting-poses.data.ts";
import { SIDE_SITTING_STRONG_TO_HANDS_AND_KNEES } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const sideSittingOnStrongHipToHandsAndKnees: Transition = {
  id: "side-sitting-on-strong-hip-to-hands-and-knees",
  name: "Over the strong hip to hands and knees",
  from: "side-sitting-on-strong-hip",
  to: "hands-and-knees",
  steps: [
    { whoMoves: "helper", moves: "The weak arm is laid across the thighs; the helper comes to the front of the weak shoulder.", onCount: null, helper: "Half kneels at the front-weak corner, thigh up under where the weak upper chest will come.", helperBeside: "front", words: null, pose: SIDE_SITTING_ON_STRONG },
    { whoMoves: "both", moves: "The strong hand is the pivot: the chest turns over it and the seat rises over the knees.", onCount: "one", helper: "Thigh takes the front of the weak shoulder and upper chest, one hand at the weak side of the pelvis.", helperBeside: "weak", words: "Turn over your good hand", pose: OVER_STRONG_SEAT_UP },
    { whoMoves: "helper", moves: "The weak hand is placed flat under the shoulder, elbow straight and turned out.", onCount: null, helper: "One hand above the back of the elbow, the thigh still carries.", helperBeside: "weak", words: "Stay, I set this hand" },
    { whoMoves: "both", moves: "The weight is shared over both hands and both knees.", onCount: "two", helper: "The thigh gives way slowly, the block stays.", helperBeside: "weak", words: "Even it out, slowly", pose: HANDS_AND_KNEES },
  ],
  keyPoses: SIDE_SITTING_STRONG_TO_HANDS_AND_KNEES,
  prerequisites: ["Bears weight on the strong arm.", "Holds on the strong hip.", "Shoulder without pain."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1.6,
  strengthShare: 0.08,
  kneelDowns: 0,
  sideChange: false,
  demands: ["wristLoad", "kneePressure", "shoulderLoad"],
  equipment: [],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Weak fingers flat, shoulder easy, knees padded, breath easy.",
  sources: ["common-practice"],
};
