import { SIDE_LYING_ON_STRONG } from "../../positions/side-lying-poses.data.ts";
import { PRONE_TO_SIDE_LYING } from "../key-poses/lying.data.ts";
import type { Transition } from "../transition.ts";

export const proneToSideLying: Transition = {
  id: "prone-to-side-lying",
  name: "From prone back onto the strong side",
  from: "prone",
  to: "side-lying-on-strong-side",
  steps: [
    { whoMoves: "both", moves: "The weak arm is laid along the body and the strong arm up beside the head.", onCount: null, helper: "Kneels on the weak side; flat hand under the front of the weak shoulder.", helperBeside: "weak", words: "Arm down, other arm up" },
    { whoMoves: "person", moves: "The weak hip and knee bend a little, or are bent, to start the turn.", onCount: "on one", helper: "Hand in front of the weak side of the pelvis, ready to draw it back.", helperBeside: "weak", words: "Draw this knee up" },
    { whoMoves: "both", moves: "Pelvis first, then ribs, roll back until the body lies on the strong side.", onCount: "on three", helper: "Draws the pelvis back toward the own thighs; the weak arm rides on the forearm.", helperBeside: "weak", words: "Roll back to my knees" },
    { whoMoves: "helper", moves: "The weak arm is brought forward over the body onto its pillow.", onCount: null, helper: "Goes round the foot end, one hand on the legs, and lays arm and leg.", helperBeside: "front", words: "Stay there and breathe", pose: SIDE_LYING_ON_STRONG },
  ],
  keyPoses: PRONE_TO_SIDE_LYING,
  prerequisites: ["Room on the weak side of the mat."],
  helpersNeeded: 1,
  secondHelper: "With a painful weak shoulder: carries the weak arm through the turn.",
  minutes: 1.2,
  strengthShare: 0.04,
  kneelDowns: 0,
  sideChange: true,
  demands: ["shoulderLoad"],
  equipment: ["pillow"],
  places: ["bed", "plinth", "raisedMat", "floorMat"],
  comfortCheck: "Weak arm in front, no marks of pressure on face or belly, breath easy.",
  sources: ["common-practice"],
};
