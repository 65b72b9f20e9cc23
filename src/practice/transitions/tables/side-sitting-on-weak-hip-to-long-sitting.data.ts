import { SIDE_SITTING_ON_WEAK } from "../../positions/floor-sitting-poses.data.ts";
import { LONG_SITTING } from "../../positions/sitting-poses.data.ts";
import { SIDE_SITTING_WEAK_TO_LONG } from "../key-poses/sitting.data.ts";
import type { Transition } from "../transition.ts";

export const sideSittingOnWeakHipToLongSitting: Transition = {
  id: "side-sitting-on-weak-hip-to-long-sitting",
  name: "From the weak hip back to long sitting",
  from: "side-sitting-on-weak-hip",
  to: "long-sitting",
  steps: [
    { whoMoves: "both", moves: "The strong hand presses on the stool and the trunk comes over to the middle.", onCount: null, helper: "Behind-weak, a hand at the weak ribs sends it over.", helperBeside: "weak", words: "Come away from me", pose: SIDE_SITTING_ON_WEAK },
    { whoMoves: "helper", moves: "The weak hand is lifted off the mat at the forearm and laid in the lap.", onCount: null, helper: "One hand under the forearm, the other in front of the shoulder.", helperBeside: "weak", words: "I bring your hand home" },
    { whoMoves: "both", moves: "Both knees come up to the middle, then the legs are laid long, the weak one first.", onCount: "on three", helper: "One hand behind the weak knee.", helperBeside: "weak", words: "Knees up, then down long" },
    { whoMoves: "person", moves: "Both hands to the thighs.", onCount: null, helper: "Thigh behind the back.", helperBeside: "weak", words: "Both hands home, sit tall", pose: LONG_SITTING },
  ],
  keyPoses: SIDE_SITTING_WEAK_TO_LONG,
  prerequisites: ["Begun before the trunk tires."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.9,
  strengthShare: 0.05,
  kneelDowns: 0,
  sideChange: false,
  demands: ["hipPastNinety"],
  equipment: [],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Skin over the weak hip looked at, weak hand in sight, not dizzy.",
  sources: ["common-practice"],
};
