import { SIDE_LYING_ON_STRONG } from "../../positions/side-lying-poses.data.ts";
import { LONG_SITTING_TO_SIDE_LYING } from "../key-poses/sitting.data.ts";
import type { Transition } from "../transition.ts";

export const longSittingToSideLying: Transition = {
  id: "long-sitting-to-side-lying",
  name: "Long sitting down to the strong side",
  from: "long-sitting",
  to: "side-lying-on-strong-side",
  steps: [
    { whoMoves: "both", moves: "Both knees bend and lean together toward the strong side.", onCount: null, helper: "Half kneels behind toward the weak side, thigh at the back.", helperBeside: "behind", words: "Bend your knees a little" },
    { whoMoves: "person", moves: "The strong hand walks out, then the elbow goes down under the shoulder.", onCount: null, helper: "Hands at weak blade and pelvis, braking.", helperBeside: "behind", words: "Hand out, elbow down" },
    { whoMoves: "both", moves: "The trunk is let down from the elbow to the side, head last.", onCount: "on three", helper: "The hand from the blade goes under the head.", helperBeside: "behind", words: "Down, and head last" },
    { whoMoves: "helper", moves: "Pillows under weak arm and leg.", onCount: null, helper: "Comes round the foot end to the front, one hand on the legs.", helperBeside: "front", words: null, pose: SIDE_LYING_ON_STRONG },
  ],
  keyPoses: LONG_SITTING_TO_SIDE_LYING,
  prerequisites: ["The strong elbow takes weight without pain."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1,
  strengthShare: 0.04,
  kneelDowns: 0,
  sideChange: true,
  demands: ["wristLoad"],
  equipment: ["pillow"],
  places: ["raisedMat", "floorMat", "plinth"],
  comfortCheck: "Weak arm in front, head level, breath settled.",
  sources: ["common-practice"],
};
