import { STRONG_FOOT_DRAWS_WEAK } from "../../positions/leg-poses.data.ts";
import { HOOK_LYING } from "../../positions/lying-poses.data.ts";
import { SUPINE_TO_HOOK_LYING } from "../key-poses/lying.data.ts";
import type { Transition } from "../transition.ts";

export const supineToHookLying: Transition = {
  id: "supine-to-hook-lying",
  name: "Bend the weak knee up with the strong foot",
  from: "supine",
  to: "hook-lying",
  steps: [
    { whoMoves: "helper", moves: "The weak heel is freed of the sheet and laid on something that slides.", onCount: null, helper: "Kneels beside the weak knee; one hand on the knee, one at the heel.", helperBeside: "weak", words: "I free your heel first" },
    { whoMoves: "person", moves: "The strong foot slips under the weak ankle.", onCount: null, helper: "Lifts the weak heel by a finger's breadth if the foot cannot get under.", helperBeside: "weak", words: "Foot under the other" },
    { whoMoves: "person", moves: "Both knees bend together, the strong foot carrying the weak one.", onCount: "on three", helper: "Keeps the weak knee pointing at the ceiling with the outer hand.", helperBeside: "weak", words: "One, two, three, draw up", pose: STRONG_FOOT_DRAWS_WEAK },
    { whoMoves: "both", moves: "The weak foot is set flat, hip-wide, and the strong foot comes out from under it.", onCount: null, helper: "Presses the end of the weak thigh toward the foot until it stays.", helperBeside: "weak", words: "Stand on your foot", pose: HOOK_LYING },
  ],
  keyPoses: SUPINE_TO_HOOK_LYING,
  prerequisites: ["Follows one step at a time.", "The strong knee bends past ninety degrees."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.7,
  strengthShare: 0.02,
  kneelDowns: 1,
  sideChange: false,
  demands: [],
  equipment: ["nonSlip"],
  places: ["bed", "plinth", "raisedMat", "floorMat"],
  comfortCheck: "Both feet flat, knees a fist apart, weak arm free, breath easy.",
  sources: ["common-practice"],
};
