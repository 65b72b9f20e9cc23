import type { Position } from "../position.ts";
import { STANDING_AT_WALL } from "../upright-poses.data.ts";

export const standingAtWall: Position = {
  id: "standing-at-wall",
  name: "Standing with the back to a wall",
  plainName: "Standing against the wall",
  isFor: "Standing with something behind that tells where upright is, for somebody who sways, leans or cannot feel the middle.",
  purposes: ["stanceOnWeak", "trunkControl", "standUp"],
  prerequisites: {
    range: ["Hips and shoulders come back far enough to touch the wall"],
    strength: ["Stands with one helper", "The weak knee holds with a hand before it"],
    precautions: ["Pressure settled on standing"],
  },
  setUpWell: ["Heels a foot's length ahead of the wall, hip-wide", "Seat and shoulder blades touch the wall", "A chair at the strong side for the hand", "Non-slip floor, shoes on"],
  helper: { pose: "strideStanding", beside: "weak", place: "In front of the weak knee and a little to the weak side, one hand flat on the pelvis." },
  watch: ["sliding along the wall to the weak side", "feet creeping ahead", "the head pushed back into the wall"],
  weakShoulder: "The weak blade lies flat on the wall; the arm is not pinned behind.",
  comfortCheck: ["Do both shoulder blades touch?", "Are the feet holding on the floor?"],
  wayOut: {
    planned: ["The feet step back one after the other to the wall.", "Nose ahead, the seat leaves the wall.", "The mat or chair is turned in behind; down on a count, the weak knee guarded."],
    hurry: ["Shin before the weak knee, hand on the breastbone.", "The chair comes in from the strong side; lower onto it."],
    to: "short-sitting",
    minutes: 0.9,
    strengthShare: 0.06,
  },
  demands: ["standing", "footPressure"],
  floorStance: false,
  equipment: ["wall", "belt"],
  places: ["plinth", "raisedMat"],
  pose: STANDING_AT_WALL,
  sources: ["common-practice"],
};
