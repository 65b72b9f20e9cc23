import { SIDE_SITTING_ON_WEAK } from "../../positions/floor-sitting-poses.data.ts";
import { LONG_SITTING } from "../../positions/sitting-poses.data.ts";
import { LONG_TO_SIDE_SITTING_WEAK } from "../key-poses/sitting.data.ts";
import type { Transition } from "../transition.ts";

export const longSittingToSideSittingOnWeakHip: Transition = {
  id: "long-sitting-to-side-sitting-on-weak-hip",
  name: "Onto the weak hip",
  from: "long-sitting",
  to: "side-sitting-on-weak-hip",
  steps: [
    { whoMoves: "helper", moves: "A low stool is set in front for the strong hand; the weak shoulder is asked about and felt.", onCount: null, helper: "Half kneels behind and to the weak side, the thigh behind the weak blade.", helperBeside: "weak", words: null, pose: LONG_SITTING },
    { whoMoves: "both", moves: "Both knees bend up, the strong one by itself, the weak one with help.", onCount: null, helper: "One hand behind the weak knee, the chest behind the shoulder.", helperBeside: "weak", words: "Both knees up to you" },
    { whoMoves: "helper", moves: "The weak hand is opened and laid flat a hand's breadth beside the weak hip.", onCount: null, helper: "One hand opens the fingers, the other is flat in front of the shoulder.", helperBeside: "weak", words: "I lay your hand here" },
    { whoMoves: "both", moves: "Both knees go down to the strong side and the weight rolls onto the weak hip.", onCount: "on three", helper: "Hand in front of the weak shoulder, the other presses the weak ribs long.", helperBeside: "weak", words: "Knees away from me, slowly" },
    { whoMoves: "person", moves: "The strong hand takes its place on the stool and the trunk grows long.", onCount: null, helper: "Thigh behind the blade, one hand at the ribs, one in front of the shoulder.", helperBeside: "weak", words: "Hand on the stool, grow", pose: SIDE_SITTING_ON_WEAK },
  ],
  keyPoses: LONG_TO_SIDE_SITTING_WEAK,
  prerequisites: ["Shoulder without pain.", "Hips and knees turn without pain.", "Knows or learns where the weak side is."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1.3,
  strengthShare: 0.05,
  kneelDowns: 1,
  sideChange: false,
  demands: ["wristLoad", "hipPastNinety", "hipAcrossMidline", "kneePressure"],
  equipment: ["stool"],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Shoulder easy, weak fingers flat, knees not sore, no weight hanging in the joint.",
  sources: ["common-practice"],
};
