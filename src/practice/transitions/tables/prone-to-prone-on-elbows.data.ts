import { OVER_A_WEDGE } from "../../activities/poses/prone-on-elbows.data.ts";
import { PRONE, PRONE_ON_ELBOWS } from "../../positions/prone-poses.data.ts";
import { PRONE_TO_ELBOWS } from "../key-poses/lying.data.ts";
import type { Transition } from "../transition.ts";

export const proneToProneOnElbows: Transition = {
  id: "prone-to-prone-on-elbows",
  name: "Up onto both elbows",
  from: "prone",
  to: "prone-on-elbows",
  steps: [
    { whoMoves: "helper", moves: "The weak arm is brought out to the side and ahead along the mat, below shoulder height, elbow bending as it goes.", onCount: null, helper: "Kneels at the weak shoulder; one hand under the weak upper arm, the other under the forearm, moving together.", helperBeside: "weak", words: "I bring this arm", pose: PRONE },
    { whoMoves: "person", moves: "The strong hand slides up beside the strong shoulder until its elbow is under it.", onCount: null, helper: "One hand stays on the weak forearm so that it keeps its place.", helperBeside: "weak", words: "Your strong elbow under you" },
    { whoMoves: "helper", moves: "The hands change to the weak shoulder before anything is lifted.", onCount: null, helper: "One palm flat in front of the weak shoulder, the other on the blade, thigh beside the weak upper arm.", helperBeside: "weak", words: null },
    { whoMoves: "both", moves: "The head and chest come up, strong elbow first; the helper brings the weak elbow under its shoulder.", onCount: "on three", helper: "The palm in front carries the weak side of the chest as it rises.", helperBeside: "weak", words: "Head up, push, come up", pose: OVER_A_WEDGE },
    { whoMoves: "both", moves: "Both elbows are set straight under the shoulders, forearms pointing ahead.", onCount: null, helper: "Sets the weak elbow with the thigh, both hands still at the shoulder.", helperBeside: "weak", words: "Push the mat away", pose: PRONE_ON_ELBOWS },
  ],
  keyPoses: PRONE_TO_ELBOWS,
  prerequisites: ["Lies face down two minutes with easy breath.", "The weak shoulder comes to shoulder height without pain.", "Holds the head up for a count of ten."],
  helpersNeeded: 1,
  secondHelper: "Where the chest is heavy: kneels at the strong side and lifts the wedge or the upper chest from below, no pull on the arm.",
  minutes: 1.5,
  strengthShare: 0.05,
  kneelDowns: 1,
  sideChange: false,
  demands: ["pronePressure", "shoulderLoad", "neckExtension"],
  equipment: [],
  places: ["plinth", "raisedMat", "floorMat"],
  comfortCheck: "Weak hand open and in sight, elbows not sore, breath easy, low back at ease.",
  sources: ["common-practice"],
};
