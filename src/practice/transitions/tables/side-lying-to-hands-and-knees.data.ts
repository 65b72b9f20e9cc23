import { SIDE_LYING_TO_HANDS_AND_KNEES } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const sideLyingToHandsAndKnees = {
  id: "side-lying-to-hands-and-knees",
  name: "Side-lying on the strong side to hands and knees",
  from: "side-lying-on-strong-side",
  to: "hands-and-knees",
  steps: [
    { whoMoves: "person", moves: "Both knees bend up in front.", onCount: null, helper: "Half kneeling in front at chest height, one hand on the weak shoulder blade.", helperBeside: "front", words: "Bend both knees up" },
    { whoMoves: "both", moves: "The strong elbow pushes and the trunk comes up to side-sitting on the strong hip.", onCount: "one", helper: "One hand behind the blade, one on the weak hip; no pull on the arm.", helperBeside: "front", words: "Push on your elbow, up" },
    { whoMoves: "helper", moves: "The helper moves to the weak side with the thigh up before the turn.", onCount: null, helper: "One hand never leaves the pelvis.", helperBeside: "weak", words: null },
    { whoMoves: "both", moves: "Strong hand as pivot, the chest turns to the mat and the seat lifts over the knees.", onCount: "two", helper: "Thigh under the front of the weak shoulder and upper chest; hand above the elbow.", helperBeside: "weak", words: "Turn over, seat up" },
    { whoMoves: "helper", moves: "Weak hand placed, elbow straightened, knees squared.", onCount: null, helper: "Block above the elbow stays.", helperBeside: "weak", words: "Hold. Hand goes flat" },
  ],
  keyPoses: SIDE_LYING_TO_HANDS_AND_KNEES,
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
  comfortCheck: "Weak fingers open, nothing under the belly, not dizzy?",
  sources: ["common-practice"],
} as const satisfies Transition;
