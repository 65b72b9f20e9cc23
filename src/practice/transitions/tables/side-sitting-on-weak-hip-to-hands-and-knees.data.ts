import { OVER_WEAK_BOTH_HANDS_DOWN, OVER_WEAK_SEAT_UP, SIDE_SITTING_ON_WEAK } from "../../positions/floor-sitting-poses.data.ts";
import { HANDS_AND_KNEES } from "../../positions/kneeling-poses.data.ts";
import { SIDE_SITTING_WEAK_TO_HANDS_AND_KNEES } from "../key-poses/sitting.data.ts";
import type { Transition } from "../transition.ts";

export const sideSittingOnWeakHipToHandsAndKnees: Transition = {
  id: "side-sitting-on-weak-hip-to-hands-and-knees",
  name: "Over the weak hip to hands and knees",
  from: "side-sitting-on-weak-hip",
  to: "hands-and-knees",
  steps: [
    { whoMoves: "helper", moves: "The helper comes to the weak shoulder, on the side the chest will turn to, before anything moves.", onCount: null, helper: "Half kneels, thigh up, ready under the front of the weak shoulder and upper chest; one hand above the back of the weak elbow.", helperBeside: "weak", words: null, pose: SIDE_SITTING_ON_WEAK },
    { whoMoves: "both", moves: "The weak hand stays flat and takes weight while the strong arm swings across and lands beyond it.", onCount: "one", helper: "The block above the elbow comes first, then the swing.", helperBeside: "weak", words: "Swing your good arm over", pose: OVER_WEAK_BOTH_HANDS_DOWN },
    { whoMoves: "both", moves: "The chest goes ahead over both hands and the seat rises over the knees.", onCount: "two", helper: "Thigh takes the upper chest, a hand at the weak side of the pelvis brings it over.", helperBeside: "weak", words: "Chest ahead, seat up", pose: OVER_WEAK_SEAT_UP },
    { whoMoves: "both", moves: "The knees are squared under the hips and the weight is shared.", onCount: null, helper: "The block stays until the weight is even.", helperBeside: "weak", words: "Square up, and stay", pose: HANDS_AND_KNEES },
  ],
  keyPoses: SIDE_SITTING_WEAK_TO_HANDS_AND_KNEES,
  prerequisites: ["The weak arm bears in side-sitting with a block.", "Shoulder without pain.", "Otherwise the way goes over the strong hip."],
  helpersNeeded: 1,
  secondHelper: "Behind, both hands at the pelvis, swings it over the knees on the count.",
  minutes: 1.6,
  strengthShare: 0.1,
  kneelDowns: 0,
  sideChange: false,
  demands: ["wristLoad", "kneePressure", "shoulderLoad"],
  equipment: [],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Shoulder easy, weak fingers flat, knees padded, breath easy.",
  sources: ["common-practice"],
};
