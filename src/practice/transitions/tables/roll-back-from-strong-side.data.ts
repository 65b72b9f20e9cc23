import { SUPINE } from "../../positions/lying-poses.data.ts";
import { ROLL_BACK_FROM_STRONG } from "../key-poses/lying.data.ts";
import type { Transition } from "../transition.ts";

export const rollBackFromStrongSide: Transition = {
  id: "roll-back-from-strong-side",
  name: "From the strong side back to supine",
  from: "side-lying-on-strong-side",
  to: "supine",
  steps: [
    { whoMoves: "helper", moves: "The pillows are taken from arm and leg.", onCount: null, helper: "In front; one hand stays on the pelvis.", helperBeside: "front", words: "I take the pillows away" },
    { whoMoves: "person", moves: "The strong hand takes the weak forearm so that it does not fall behind.", onCount: null, helper: "Lays the weak hand in the strong one if it is not found.", helperBeside: "front", words: "Keep hold of your arm" },
    { whoMoves: "both", moves: "Pelvis and shoulders roll back together.", onCount: "on three", helper: "Flat hands on the weak side of ribs and pelvis brake the way.", helperBeside: "front", words: "Slowly back, look up", pose: SUPINE },
    { whoMoves: "helper", moves: "The weak arm and leg are laid and the middle of the mat is checked.", onCount: null, helper: "Goes round the foot end to the weak side, one hand on the shin until she is there.", helperBeside: "weak", words: null },
  ],
  keyPoses: ROLL_BACK_FROM_STRONG,
  prerequisites: ["Room on the mat behind the person."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.8,
  strengthShare: 0.02,
  kneelDowns: 0,
  sideChange: true,
  demands: [],
  equipment: ["pillow"],
  places: ["bed", "plinth", "raisedMat", "floorMat"],
  comfortCheck: "Weak arm on top and free, head in the middle, not dizzy.",
  sources: ["common-practice"],
};
