import type { Position } from "../position.ts";
import { STRIDE_STRONG_AHEAD } from "../upright-poses.data.ts";

export const strideStandingStrongForward: Position = {
  id: "stride-standing-strong-forward",
  name: "Stride standing, strong foot ahead",
  plainName: "Good foot in front",
  isFor: "A step held still with the weak foot behind: where the weak knee lets go and the leg begins to swing.",
  purposes: ["swingWeakLeg", "stepping"],
  prerequisites: {
    range: ["The weak hip opens behind the body", "The weak ankle bends up a little past square"],
    strength: ["Stands a minute with one hand", "The strong leg carries alone with one hand"],
    precautions: ["No order against loading the ball of the weak foot"],
  },
  setUpWell: ["Strong foot a foot's length ahead", "Weak foot behind, toes ahead, the heel down to begin", "Table at the strong hand", "Chair a step behind, belt on"],
  helper: { pose: "strideStanding", beside: "weak", place: "Behind the weak hip, so that the weak foot and its heel are in sight." },
  watch: ["the weak hip turning out", "the low back hollowing", "toes that curl under"],
  weakShoulder: "The weak arm hangs in its support; the hand at the chest is flat.",
  comfortCheck: ["Room in the front of the weak hip?", "Toes comfortable in the shoe?"],
  wayOut: {
    planned: ["The weight goes ahead over the strong foot.", "The weak foot is brought level, small and low.", "The chair touches both calves; down on a count, the weak knee guarded."],
    hurry: ["Both hands to the pelvis, weight to the strong leg.", "Chair under from behind."],
    to: "short-sitting",
    minutes: 0.7,
    strengthShare: 0.06,
  },
  demands: ["standing", "footPressure"],
  floorStance: false,
  equipment: ["table", "belt"],
  places: ["plinth", "raisedMat"],
  pose: STRIDE_STRONG_AHEAD,
  sources: ["common-practice"],
};
