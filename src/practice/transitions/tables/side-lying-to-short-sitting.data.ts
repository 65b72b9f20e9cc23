import { SIDE_LYING_ON_STRONG, STRONG_FOREARM_PROP, STRONG_FOREARM_PROP_LOW, STRONG_HAND_PROP } from "../../positions/side-lying-poses.data.ts";
import { SIDE_LYING_TO_SHORT_SITTING } from "../key-poses/lying.data.ts";
import type { Transition } from "../transition.ts";

export const sideLyingToShortSitting: Transition = {
  id: "side-lying-to-short-sitting",
  name: "Up to sitting over the strong side",
  from: "side-lying-on-strong-side",
  to: "short-sitting",
  steps: [
    { whoMoves: "both", moves: "The person comes near the edge, the weak arm across the body.", onCount: null, helper: "In front in a stride, one knee against the edge; hands behind the pelvis.", helperBeside: "front", words: "Come near to me", pose: SIDE_LYING_ON_STRONG },
    { whoMoves: "both", moves: "The legs go over the edge, the strong foot taking the weak one.", onCount: "on one", helper: "One hand behind both knees; the other on the upper hip.", helperBeside: "front", words: "Legs over the edge" },
    { whoMoves: "person", moves: "The strong elbow comes under the shoulder and pushes.", onCount: "on three", helper: "Hand under the lower ribs, the other presses the upper hip down.", helperBeside: "front", words: "Push with your elbow", pose: STRONG_FOREARM_PROP_LOW },
    { whoMoves: "person", moves: "The trunk comes over the upright upper arm and rests there.", onCount: null, helper: "Looks at face and lips; asks about dizziness.", helperBeside: "front", words: "Rest here. Dizzy?", pose: STRONG_FOREARM_PROP },
    { whoMoves: "person", moves: "The strong hand turns, straightens and walks toward the hip.", onCount: null, helper: "Flat hand on the weak shoulder front, the other at the weak side of the pelvis.", helperBeside: "front", words: "Hand, and walk it in", pose: STRONG_HAND_PROP },
    { whoMoves: "both", moves: "Both feet are set flat under the knees and the weak arm is laid in the lap.", onCount: null, helper: "Half kneels toward the weak side, the raised knee before the weak knee.", helperBeside: "weak", words: "Feet flat, sit tall" },
  ],
  keyPoses: SIDE_LYING_TO_SHORT_SITTING,
  prerequisites: ["Blood pressure known before the first time.", "The mat is low enough for the feet to reach the floor."],
  helpersNeeded: 1,
  secondHelper: "Where the trunk cannot help at all: behind the person, hands behind weak blade and ribs, never under the arms.",
  minutes: 2,
  strengthShare: 0.06,
  kneelDowns: 1,
  sideChange: false,
  demands: ["wristLoad"],
  equipment: ["belt"],
  places: ["bed", "plinth", "raisedMat"],
  comfortCheck: "Pressure and pulse the first time, colour of the face, both feet flat, weak arm in the lap.",
  sources: ["common-practice"],
};
