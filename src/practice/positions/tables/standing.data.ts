import type { Position } from "../position.ts";
import { STANDING_HAND_FLAT } from "../upright-poses.data.ts";

export const standing: Position = {
  id: "standing",
  name: "Standing at the mat",
  plainName: "Standing by the bed",
  isFor: "Standing on two feet with a seat behind and something firm for the strong hand in reach: shifting, reaching and small bends begin here.",
  purposes: ["stanceOnWeak", "standUp", "trunkControl", "stepping"],
  prerequisites: {
    range: ["The weak ankle comes square in the shoe", "Hips and knees straighten nearly fully"],
    strength: ["Stands up from a high seat with one helper", "The weak knee holds with a block"],
    precautions: ["Blood pressure taken sitting and after a minute standing", "A weight-bearing order for either leg is kept"],
  },
  setUpWell: ["Mat braked behind the calves, as high as the hollow of the knee", "Shoes, orthosis and belt on", "Feet hip-wide, both heels down", "A steady table ahead of the strong hand at hip height"],
  helper: { pose: "strideStanding", beside: "weak", place: "Behind and to the weak side in stride, one hand in the belt palm up, the other flat before the weak shoulder or at the pelvis." },
  watch: ["the weak knee folding or snapping back", "hips drifting over the strong leg", "colour of the face and the answers"],
  weakShoulder: "The arm hangs in a support or rests on the helper's forearm; nothing goes under the armpit and nobody draws on the hand.",
  comfortCheck: ["Clear head since standing?", "Do you feel both heels?", "Is the mat touching your calves?"],
  wayOut: {
    planned: ["The calves find the mat.", "The strong hand goes to the table or back to the mat, eyes ahead.", "Hips back, knees bend, down on a count with the weak knee guarded."],
    hurry: ["Knee before the weak knee, belt held.", "Say sit and let the seat come down on the mat behind."],
    to: "short-sitting",
    minutes: 0.5,
    strengthShare: 0.06,
  },
  demands: ["standing", "footPressure"],
  floorStance: false,
  equipment: ["table", "belt"],
  places: ["plinth", "raisedMat"],
  pose: STANDING_HAND_FLAT,
  sources: ["common-practice"],
};
