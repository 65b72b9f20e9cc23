import { LONG_SITTING_TO_HANDS_AND_KNEES } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const longSittingToHandsAndKnees = {
  id: "long-sitting-to-hands-and-knees",
  name: "Long sitting to hands and knees over the strong hip",
  from: "long-sitting",
  to: "hands-and-knees",
  steps: [
    { whoMoves: "helper", moves: "The weak arm is laid across the thighs, the knees are bent up.", onCount: null, helper: "Half kneeling behind the weak side, one hand on the blade, one on the weak knee.", helperBeside: "weak", words: "Knees up, arm stays here" },
    { whoMoves: "person", moves: "Both knees fall to the weak side, so that the weight comes onto the strong hip.", onCount: "one", helper: "Behind; one hand on the pelvis, one flat at the front of the weak shoulder.", helperBeside: "behind", words: "Over onto the good hip" },
    { whoMoves: "helper", moves: "The helper crosses behind to the front of the weak side before anything else moves.", onCount: null, helper: "Hand stays on the pelvis while crossing; near knee up, thigh ready under the weak upper chest.", helperBeside: "front", words: null },
    { whoMoves: "both", moves: "The strong hand is the pivot: the chest turns to the mat and the pelvis lifts over the knees.", onCount: "two", helper: "Thigh takes the weak upper chest, hand above the back of the weak elbow.", helperBeside: "weak", words: "Turn, and seat up" },
    { whoMoves: "helper", moves: "The weak hand is placed flat under the shoulder, elbow straight and turned out; knees are squared.", onCount: null, helper: "Block stays above the elbow until the weight is even.", helperBeside: "weak", words: "Stay. I place your hand" },
  ],
  keyPoses: LONG_SITTING_TO_HANDS_AND_KNEES,
  prerequisites: ["Bears weight on the strong arm", "No shoulder pain", "Knees bear kneeling"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 2,
  strengthShare: 0.1,
  kneelDowns: 1,
  sideChange: true,
  demands: ["wristLoad", "kneePressure", "shoulderLoad"],
  equipment: [],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Are the weak fingers flat, are the knees padded, is the breath easy?",
  sources: ["common-practice"],
} as const satisfies Transition;
