import { ROLL_STRONG_BEGUN, ROLL_STRONG_HALF_WAY } from "../../positions/rolling-poses.data.ts";
import { SIDE_LYING_ON_STRONG } from "../../positions/side-lying-poses.data.ts";
import { ROLL_ONTO_STRONG } from "../key-poses/lying.data.ts";
import type { Transition } from "../transition.ts";

export const rollOntoStrongSide: Transition = {
  id: "roll-onto-strong-side",
  name: "Roll onto the strong side",
  from: "hook-lying",
  to: "side-lying-on-strong-side",
  steps: [
    { whoMoves: "both", moves: "The person moves to the middle of the mat.", onCount: null, helper: "From the weak side, hands under the pelvis; checks the room on the far side.", helperBeside: "weak", words: "First to the middle" },
    { whoMoves: "person", moves: "The strong hand takes the weak forearm just above the wrist; the fingers are not laced.", onCount: null, helper: "Goes round behind the head end to the strong side, a hand on the person's shoulder until she is there.", helperBeside: "strong", words: "Take your arm along" },
    { whoMoves: "person", moves: "Head and eyes turn, both knees fall over to the strong side.", onCount: "on one", helper: "Kneels at the edge with both thighs against it; one hand outside the weak knee.", helperBeside: "strong", words: "Look here. Knees over.", pose: ROLL_STRONG_BEGUN },
    { whoMoves: "both", moves: "Both arms reach over and the trunk follows the knees.", onCount: "on three", helper: "One hand flat behind the weak shoulder blade, one behind the weak side of the pelvis.", helperBeside: "strong", words: "And three, over to me", pose: ROLL_STRONG_HALF_WAY },
    { whoMoves: "helper", moves: "Pillows go under head, weak arm and weak leg.", onCount: null, helper: "One hand stays on the pelvis while the other brings the pillows.", helperBeside: "strong", words: "Let it all lie", pose: SIDE_LYING_ON_STRONG },
  ],
  keyPoses: ROLL_ONTO_STRONG,
  prerequisites: ["The weak shoulder comes forward without pain.", "After a hip replacement the knees stay apart on a pillow."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1,
  strengthShare: 0.03,
  kneelDowns: 1,
  sideChange: true,
  demands: ["hipAcrossMidline"],
  equipment: ["pillow"],
  places: ["bed", "plinth", "raisedMat", "floorMat"],
  comfortCheck: "Weak arm in front, nothing under the ribs, breath easy, dizzy or not.",
  sources: ["common-practice"],
};
