import { HANDS_AND_KNEES_TO_SIDE_LYING } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const handsAndKneesToSideLying = {
  id: "hands-and-knees-to-side-lying",
  name: "Hands and knees down to the strong side",
  from: "hands-and-knees",
  to: "side-lying-on-strong-side",
  steps: [
    { whoMoves: "person", moves: "The seat goes back toward the strong heel.", onCount: "one", helper: "Thigh stays under the weak upper chest; hand on the weak hip.", helperBeside: "weak", words: "Sit back to the good side" },
    { whoMoves: "person", moves: "The strong forearm comes down to the mat.", onCount: "two", helper: "Chest kept on the thigh until the forearm is down.", helperBeside: "weak", words: "Good elbow down" },
    { whoMoves: "both", moves: "The trunk lies over the strong elbow onto the strong side; the weak arm comes along in front.", onCount: null, helper: "Hand behind the weak blade, hand on the weak hip.", helperBeside: "weak", words: "Lie over, slowly" },
    { whoMoves: "helper", moves: "Pillow under the head, weak arm forward on a pillow.", onCount: null, helper: "Look at the face, count ten breaths.", helperBeside: "front", words: null },
  ],
  keyPoses: HANDS_AND_KNEES_TO_SIDE_LYING,
  prerequisites: ["Strength kept for it: plan it before going up"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1.5,
  strengthShare: 0.08,
  kneelDowns: 0,
  sideChange: false,
  demands: ["shoulderLoad"],
  equipment: [],
  places: ["raisedMat", "floorMat", "plinth"],
  comfortCheck: "Weak arm free in front, breathing easy?",
  sources: ["common-practice"],
} as const satisfies Transition;
