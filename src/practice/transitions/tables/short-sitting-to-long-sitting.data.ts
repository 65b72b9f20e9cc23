import { STRONG_HAND_PROPS } from "../../activities/poses/long-sitting.data.ts";
import { LONG_SITTING, SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { SHORT_SITTING_TO_LONG_SITTING } from "../key-poses/sitting.data.ts";
import type { Transition } from "../transition.ts";

export const shortSittingToLongSitting: Transition = {
  id: "short-sitting-to-long-sitting",
  name: "Legs up onto the mat",
  from: "short-sitting",
  to: "long-sitting",
  steps: [
    { whoMoves: "person", moves: "The seat scoots back until the hollows of the knees are at the edge.", onCount: null, helper: "Sits in front and to the weak side, one hand behind the weak side of the pelvis.", helperBeside: "weak", words: "Scoot well back", pose: SHORT_SITTING },
    { whoMoves: "person", moves: "The strong hand is set on the mat behind and the body turns so that the strong side leads onto the mat.", onCount: null, helper: "Stands up, one hand stays at the weak ribs.", helperBeside: "weak", words: "Hand behind, start to turn" },
    { whoMoves: "person", moves: "The strong leg goes up onto the mat.", onCount: null, helper: "A palm behind the weak blade meets the lean back.", helperBeside: "weak", words: "Strong leg up first" },
    { whoMoves: "both", moves: "The weak leg follows, carried at thigh and heel.", onCount: "on three", helper: "One hand under the weak thigh, the other under the heel; back straight, a foot ahead; the trunk is watched.", helperBeside: "weak", words: "This leg comes with me", pose: STRONG_HAND_PROPS },
    { whoMoves: "helper", moves: "Round behind and to the weak side into half kneeling on the mat, one hand never leaving the ribs.", onCount: null, helper: "The raised thigh comes behind the back.", helperBeside: "weak", words: null },
    { whoMoves: "both", moves: "The pelvis is set upright, legs a little apart, hands on the thighs.", onCount: null, helper: "One hand behind the pelvis, the other in front of the weak shoulder.", helperBeside: "weak", words: "Find the middle", pose: LONG_SITTING },
  ],
  keyPoses: SHORT_SITTING_TO_LONG_SITTING,
  prerequisites: ["Sits with a hand near.", "The hamstrings let the legs lie long, or a roll is ready for the knees."],
  helpersNeeded: 1,
  secondHelper: "Where the trunk falls back: stands on the mat side behind the person with the hands at both blades while the first lifts the legs.",
  minutes: 1.3,
  strengthShare: 0.05,
  kneelDowns: 1,
  sideChange: false,
  demands: ["wristLoad", "hipPastNinety"],
  equipment: [],
  places: ["bed", "plinth", "raisedMat"],
  comfortCheck: "Heels and seat not dragged, trousers smooth, weak hand in sight, tube slack.",
  sources: ["common-practice"],
};
