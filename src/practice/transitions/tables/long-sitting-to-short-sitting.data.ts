import { STRONG_HAND_PROPS } from "../../activities/poses/long-sitting.data.ts";
import { LONG_SITTING, SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { LONG_SITTING_TO_SHORT_SITTING } from "../key-poses/sitting.data.ts";
import type { Transition } from "../transition.ts";

export const longSittingToShortSitting: Transition = {
  id: "long-sitting-to-short-sitting",
  name: "Legs down over the edge",
  from: "long-sitting",
  to: "short-sitting",
  steps: [
    { whoMoves: "helper", moves: "Up from half kneeling to stand at the edge where the feet will come down, one hand at the weak ribs throughout.", onCount: null, helper: "Stride standing at the weak side, thigh against the edge.", helperBeside: "weak", words: null, pose: LONG_SITTING },
    { whoMoves: "person", moves: "The strong hand is set behind and the seat turns, hip by hip, until the legs point over the edge.", onCount: null, helper: "A hand behind the weak blade; the other steers the weak thigh.", helperBeside: "weak", words: "Hand back, turn your seat", pose: STRONG_HAND_PROPS },
    { whoMoves: "both", moves: "The weak leg is carried over the edge, knee bending.", onCount: null, helper: "One hand under the weak thigh, the other under the heel, and lets the foot down slowly.", helperBeside: "weak", words: "I bring this leg down" },
    { whoMoves: "person", moves: "The strong leg follows by itself and the trunk comes ahead over the hips.", onCount: null, helper: "A palm in front of the weak shoulder and one behind the pelvis.", helperBeside: "weak", words: "Other leg, and come ahead" },
    { whoMoves: "both", moves: "Both feet are set flat under the knees, the seat far enough from the edge, the weak hand laid on the thigh.", onCount: null, helper: "Sits down on the stool, knees on either side of the weak knee.", helperBeside: "weak", words: "Feet flat. Steady? Good.", pose: SHORT_SITTING },
  ],
  keyPoses: LONG_SITTING_TO_SHORT_SITTING,
  prerequisites: ["Props on the strong hand for ten seconds.", "The mat is low enough for the feet to reach the floor."],
  helpersNeeded: 1,
  secondHelper: "Where the trunk falls back: behind the person with the hands at both blades.",
  minutes: 1.3,
  strengthShare: 0.05,
  kneelDowns: 1,
  sideChange: false,
  demands: ["wristLoad", "hipPastNinety"],
  equipment: [],
  places: ["bed", "plinth", "raisedMat"],
  comfortCheck: "Not near the edge, feet flat, clear in the head, weak hand on the thigh.",
  sources: ["common-practice"],
};
