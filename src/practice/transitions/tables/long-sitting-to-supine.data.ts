import { SUPINE } from "../../positions/lying-poses.data.ts";
import { STRONG_HAND_PROPS } from "../../activities/poses/long-sitting.data.ts";
import { LONG_SITTING_TO_SUPINE } from "../key-poses/sitting.data.ts";
import type { Transition } from "../transition.ts";

export const longSittingToSupine: Transition = {
  id: "long-sitting-to-supine",
  name: "Down to the back over the strong elbow",
  from: "long-sitting",
  to: "supine",
  steps: [
    { whoMoves: "both", moves: "A pillow lies where the head will come; the weak hand is laid on the belly.", onCount: null, helper: "Half-kneels behind and to the weak side, the raised thigh at the back, one hand behind the weak blade.", helperBeside: "weak", words: null },
    { whoMoves: "person", moves: "The strong hand goes to the mat behind the hip and takes the lean.", onCount: null, helper: "The thigh goes back with the trunk.", helperBeside: "weak", words: "Hand behind you, lean there", pose: STRONG_HAND_PROPS },
    { whoMoves: "person", moves: "The strong elbow bends and goes down to the mat, the trunk turned a little to that side.", onCount: null, helper: "A palm behind the weak blade, the other on the weak ribs, letting down slowly.", helperBeside: "weak", words: "Now down on your elbow" },
    { whoMoves: "both", moves: "The strong shoulder, then the weak blade, and the head last come to the mat.", onCount: null, helper: "The weak blade is laid down forward and not lain on; the arm comes along on the belly.", helperBeside: "weak", words: "Shoulder, then head. Rest.", pose: SUPINE },
  ],
  keyPoses: LONG_SITTING_TO_SUPINE,
  prerequisites: ["The strong elbow bears half the trunk.", "Chin can be kept in while going down."],
  helpersNeeded: 1,
  secondHelper: "Where the trunk drops: kneels at the head, forearms under both blades.",
  minutes: 0.8,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: false,
  demands: [],
  equipment: ["pillow"],
  places: ["bed", "plinth", "raisedMat", "floorMat"],
  comfortCheck: "Head in the middle, weak arm free, blade not pinched, breath easy lying flat.",
  sources: ["common-practice"],
};
