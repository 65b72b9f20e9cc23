import { HOOK_LYING } from "../../positions/lying-poses.data.ts";
import { ROLL_BACK_FROM_WEAK } from "../key-poses/lying.data.ts";
import type { Transition } from "../transition.ts";

export const rollBackFromWeakSide: Transition = {
  id: "roll-back-from-weak-side",
  name: "From the weak side back to hook-lying",
  from: "side-lying-on-weak-side",
  to: "hook-lying",
  steps: [
    { whoMoves: "helper", moves: "The pillow behind the back is taken away.", onCount: null, helper: "Kneels in front; a hand goes under the weak blade.", helperBeside: "front", words: "I hold your shoulder" },
    { whoMoves: "person", moves: "The strong knee and the strong arm swing back, and the trunk follows.", onCount: "on three", helper: "Keeps the weak blade forward until the weight is off it.", helperBeside: "front", words: "Knee and arm go back" },
    { whoMoves: "both", moves: "The strong foot is set and the weak knee brought up beside it.", onCount: null, helper: "Hand behind the weak knee, the other on the foot.", helperBeside: "weak", words: "Feet down, both of them", pose: HOOK_LYING },
  ],
  keyPoses: ROLL_BACK_FROM_WEAK,
  prerequisites: ["Strong arm and leg move against gravity."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.8,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: false,
  demands: ["shoulderLoad"],
  equipment: [],
  places: ["bed", "plinth", "raisedMat", "floorMat"],
  comfortCheck: "Weak shoulder painless, arm laid on its pillow, face not pale.",
  sources: ["common-practice", "canadian-stroke-shoulder-2019"],
};
