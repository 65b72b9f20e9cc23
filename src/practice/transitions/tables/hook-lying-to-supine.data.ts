import { WEAK_LEG_STRAIGHT } from "../../positions/leg-poses.data.ts";
import { SUPINE } from "../../positions/lying-poses.data.ts";
import { HOOK_LYING_TO_SUPINE } from "../key-poses/lying.data.ts";
import type { Transition } from "../transition.ts";

export const hookLyingToSupine: Transition = {
  id: "hook-lying-to-supine",
  name: "Legs down one after the other",
  from: "hook-lying",
  to: "supine",
  steps: [
    { whoMoves: "both", moves: "The weak leg goes down first while the strong foot still holds the pelvis.", onCount: "slowly to three", helper: "Kneels beside the weak knee, a hand behind it and one under the heel, and brakes.", helperBeside: "weak", words: "Let this leg down slowly", pose: WEAK_LEG_STRAIGHT },
    { whoMoves: "person", moves: "The strong heel slides down.", onCount: null, helper: "Keeps the weak leg from rolling outward.", helperBeside: "weak", words: "Now the other" },
    { whoMoves: "helper", moves: "A roll goes outside the weak thigh and the weak arm back on its pillow.", onCount: null, helper: "Places the roll, then the arm, holding upper arm and forearm.", helperBeside: "weak", words: null, pose: SUPINE },
  ],
  keyPoses: HOOK_LYING_TO_SUPINE,
  prerequisites: ["Hips come straight or are pillowed."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.5,
  strengthShare: 0.01,
  kneelDowns: 0,
  sideChange: false,
  demands: [],
  equipment: ["pillow"],
  places: ["bed", "plinth", "raisedMat", "floorMat"],
  comfortCheck: "Back comfortable, heels free, weak arm in sight.",
  sources: ["common-practice"],
};
