import { ROLL_WEAK_BEGUN, ROLL_WEAK_NEARLY_OVER } from "../../positions/rolling-poses.data.ts";
import { SIDE_LYING_ON_WEAK } from "../../positions/side-lying-poses.data.ts";
import { ROLL_ONTO_WEAK } from "../key-poses/lying.data.ts";
import type { Transition } from "../transition.ts";

export const rollOntoWeakSide: Transition = {
  id: "roll-onto-weak-side",
  name: "Roll onto the weak side",
  from: "hook-lying",
  to: "side-lying-on-weak-side",
  steps: [
    { whoMoves: "helper", moves: "The weak arm is brought out in front at less than shoulder height, palm up.", onCount: null, helper: "Kneels on the weak side; one hand behind the blade, one under the forearm.", helperBeside: "weak", words: "Your arm goes first" },
    { whoMoves: "helper", moves: "The weak shoulder blade is drawn forward and held.", onCount: null, helper: "The hand behind the blade stays there through the whole roll.", helperBeside: "weak", words: "Let your shoulder come forward" },
    { whoMoves: "person", moves: "The weak leg is let down straight, the strong foot stays up and pushes.", onCount: "on one", helper: "The free hand behind the strong side of the pelvis.", helperBeside: "weak", words: "Push with your foot", pose: ROLL_WEAK_BEGUN },
    { whoMoves: "person", moves: "The strong arm crosses and the strong knee comes over in front.", onCount: "on three", helper: "Thigh at the edge as a stop; draws the pelvis over.", helperBeside: "weak", words: "Reach over, come to me", pose: ROLL_WEAK_NEARLY_OVER },
    { whoMoves: "helper", moves: "The blade is set once more and a pillow goes under the strong leg and behind the back.", onCount: null, helper: "Feels the inner edge of the blade flat on the ribs before letting go.", helperBeside: "weak", words: "Does your shoulder feel easy?", pose: SIDE_LYING_ON_WEAK },
  ],
  keyPoses: ROLL_ONTO_WEAK,
  prerequisites: ["No pain in the weak shoulder when the blade comes forward.", "Strong foot can push."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1.2,
  strengthShare: 0.03,
  kneelDowns: 1,
  sideChange: false,
  demands: ["shoulderLoad"],
  equipment: ["pillow"],
  places: ["bed", "plinth", "raisedMat", "floorMat"],
  comfortCheck: "Weight behind the weak shoulder, arm out and free, ear flat, breath easy.",
  sources: ["common-practice", "canadian-stroke-shoulder-2019"],
};
