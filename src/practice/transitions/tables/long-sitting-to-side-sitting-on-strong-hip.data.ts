import { STRONG_HAND_PROPS } from "../../activities/poses/long-sitting.data.ts";
import { SIDE_SITTING_ON_STRONG } from "../../positions/side-sitting-poses.data.ts";
import { LONG_SITTING } from "../../positions/sitting-poses.data.ts";
import { LONG_TO_SIDE_SITTING_STRONG } from "../key-poses/sitting.data.ts";
import type { Transition } from "../transition.ts";

export const longSittingToSideSittingOnStrongHip: Transition = {
  id: "long-sitting-to-side-sitting-on-strong-hip",
  name: "Onto the strong hip",
  from: "long-sitting",
  to: "side-sitting-on-strong-hip",
  steps: [
    { whoMoves: "helper", moves: "Round from behind to the front of the weak side, behind the person's back and not over the head, before anything else moves.", onCount: null, helper: "Half kneels at the weak knee; one hand stays at the weak ribs all the way round.", helperBeside: "weak", words: null, pose: LONG_SITTING },
    { whoMoves: "person", moves: "The strong hand is set flat beside and behind the strong hip.", onCount: null, helper: "A hand on the weak ribs starts the lean over it.", helperBeside: "weak", words: "Prop on your strong hand", pose: STRONG_HAND_PROPS },
    { whoMoves: "both", moves: "Both knees bend up, the strong one by itself, the weak one with help, feet near the seat.", onCount: null, helper: "One hand behind the weak knee, the other at the weak side of the pelvis.", helperBeside: "weak", words: "Bend both knees up" },
    { whoMoves: "both", moves: "Both knees go down to the weak side and the weight rolls onto the strong hip.", onCount: "on three", helper: "Steers the weak knee down slowly; the hand at the pelvis lets the weak hip get light.", helperBeside: "weak", words: "Knees over to me, slowly" },
    { whoMoves: "person", moves: "The trunk grows tall again: the weak ribs draw toward the weak hip.", onCount: null, helper: "Lays the weak hand on the thigh; one hand at the ribs, one at the pelvis.", helperBeside: "weak", words: "Tall, and hold it there", pose: SIDE_SITTING_ON_STRONG },
  ],
  keyPoses: LONG_TO_SIDE_SITTING_STRONG,
  prerequisites: ["Props on the strong hand for ten seconds.", "Hips and knees turn without pain.", "No hip precaution."],
  helpersNeeded: 1,
  secondHelper: "Where the trunk is heavy: kneels behind with the hands at both sides of the ribs.",
  minutes: 1,
  strengthShare: 0.05,
  kneelDowns: 1,
  sideChange: false,
  demands: ["wristLoad", "hipPastNinety", "hipAcrossMidline", "kneePressure"],
  equipment: [],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Knees and wrist not sore, weak hand in front, no foot crushed under the thigh.",
  sources: ["common-practice"],
};
