import { STRONG_HAND_PROPS } from "../../activities/poses/long-sitting.data.ts";
import { SIDE_SITTING_ON_STRONG } from "../../positions/side-sitting-poses.data.ts";
import { LONG_SITTING } from "../../positions/sitting-poses.data.ts";
import { SIDE_SITTING_STRONG_TO_LONG } from "../key-poses/sitting.data.ts";
import type { Transition } from "../transition.ts";

export const sideSittingOnStrongHipToLongSitting: Transition = {
  id: "side-sitting-on-strong-hip-to-long-sitting",
  name: "From the strong hip back to long sitting",
  from: "side-sitting-on-strong-hip",
  to: "long-sitting",
  steps: [
    { whoMoves: "helper", moves: "Half kneeling at the weak side, a hand goes under the weak knee.", onCount: null, helper: "One hand behind the weak knee, the other at the weak ribs.", helperBeside: "weak", words: null, pose: SIDE_SITTING_ON_STRONG },
    { whoMoves: "both", moves: "Both knees come up to the middle while the strong hand keeps the lean.", onCount: "on three", helper: "Brings the weak knee up and keeps it over its foot.", helperBeside: "weak", words: "Knees up to the middle" },
    { whoMoves: "both", moves: "The weak leg is laid long, then the strong leg lies down by itself.", onCount: null, helper: "One hand under the thigh, the other at the heel; the ribs are watched.", helperBeside: "weak", words: "This leg, then that one", pose: STRONG_HAND_PROPS },
    { whoMoves: "both", moves: "The weight comes back to both hips and the hands go to the thighs.", onCount: null, helper: "Moves behind and to the weak side, the raised thigh at the back.", helperBeside: "weak", words: "Back to the middle", pose: LONG_SITTING },
  ],
  keyPoses: SIDE_SITTING_STRONG_TO_LONG,
  prerequisites: ["Props on the strong hand.", "Begun before the strong arm tires."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.8,
  strengthShare: 0.04,
  kneelDowns: 0,
  sideChange: false,
  demands: ["wristLoad", "hipPastNinety"],
  equipment: [],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Sits in the middle, legs not crossed, weak hand in sight, not dizzy.",
  sources: ["common-practice"],
};
