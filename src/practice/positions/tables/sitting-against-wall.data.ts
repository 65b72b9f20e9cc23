import type { Position } from "../position.ts";
import { SITTING_AGAINST_WALL } from "../floor-sitting-poses.data.ts";

export const sittingAgainstWall: Position = {
  id: "sitting-against-wall",
  name: "Sitting against a wall",
  plainName: "Sitting with your back on a wall",
  isFor: "The back learns from the wall where upright is, and the arm and the legs can be worked without fear of the fall backward. In a corner a second wall stands on the strong side of a person who pushes.",
  purposes: ["sittingBalance", "trunkControl", "armReady"],
  prerequisites: {
    range: ["straight legs come up far enough to sit upright, or a roll goes under the knees"],
    strength: ["the head is held up alone"],
    precautions: ["blood pressure is watched on first sitting up", "a hip with a bending limit stays within it"],
  },
  setUpWell: [
    "Seat close to the wall on a non-slip mat.",
    "Both blades and the back of the pelvis touch.",
    "Legs long and a little apart, or over a roll.",
    "The weak hand in the lap or on the thigh, in sight.",
  ],
  helper: { pose: "halfKneeling", beside: "weak", place: "Half-kneeling beside the weak hip, a hand near the weak ribs; nobody has to be behind." },
  watch: ["the seat sliding away from the wall", "a trunk that turns off the wall with the weak blade", "sliding along the wall to the weak side", "a head that knocks back"],
  weakShoulder: "The arm lies on the thigh, a cloth or a roll; the blade is at the wall and is not pulled off it by the arm.",
  comfortCheck: ["Dizzy or clear?", "Do the backs of the legs pull?", "Is the weak hand in sight?", "Is the low back easy at the wall?"],
  wayOut: {
    planned: ["The back comes a hand off the wall.", "The helper goes behind-weak with a thigh as a backrest.", "The seat is moved ahead, a hip at a time, into long sitting."],
    hurry: ["The helper lets the trunk down to the strong side along the wall.", "Lying on the strong side, knees bent.", "Pillow under the head, weak arm in front."],
    to: "long-sitting",
    minutes: 0.7,
    strengthShare: 0.03,
  },
  demands: ["hipPastNinety"],
  floorStance: true,
  equipment: ["wall", "nonSlip"],
  places: ["raisedMat", "floorMat"],
  pose: SITTING_AGAINST_WALL,
  sources: ["common-practice"],
};
