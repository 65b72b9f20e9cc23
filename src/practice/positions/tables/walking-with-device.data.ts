import type { Position } from "../position.ts";
import { STANDING_WITH_CANE } from "../upright-poses.data.ts";

export const walkingWithDevice: Position = {
  id: "walking-with-device",
  name: "Standing and walking with a cane",
  plainName: "Walking with a cane",
  isFor: "Walking out of the bars with a cane in the strong hand: it widens the base and takes a little of the weight from the weak hip.",
  purposes: ["deviceReady", "stepping", "stanceOnWeak", "swingWeakLeg"],
  prerequisites: {
    range: ["Weak toes clear the floor, with an orthosis if needed", "Strong wrist bends back and carries"],
    strength: ["Walks in the bars with one flat hand", "The strong arm carries a tenth of the body's weight"],
    precautions: ["Pressure settled on standing", "Weight-bearing order allows walking"],
  },
  setUpWell: ["Cane's top at the wrist crease of the hanging strong arm, in usual shoes: the elbow is then bent 20 to 30 degrees", "Cane in the strong hand, its foot a hand's length out from the little toe", "Rubber foot and height pin looked at", "Belt on, chair following, floor dry and clear"],
  helper: { pose: "strideStanding", beside: "weak", place: "Behind and to the weak side, hand in the belt palm up, the other before the weak shoulder." },
  watch: ["the weak foot catching", "the cane set too far ahead or too near the foot", "the trunk hanging over the cane"],
  weakShoulder: "The weak arm is in its support; guarding is at belt and flat shoulder, never by the arm.",
  comfortCheck: ["Enough breath to talk?", "Is the handle sore in the palm?", "Where is the chair?"],
  wayOut: {
    planned: ["Turn in small steps until both calves touch the seat.", "The cane is leaned aside, the strong hand goes back for the armrest.", "Down on a count."],
    hurry: ["Stop, belt close to own hip, block the weak knee.", "The second person pushes the chair in behind."],
    to: "short-sitting",
    minutes: 0.8,
    strengthShare: 0.08,
  },
  demands: ["standing", "footPressure"],
  floorStance: false,
  equipment: ["cane", "belt"],
  places: ["plinth", "raisedMat"],
  pose: STANDING_WITH_CANE,
  sources: ["common-practice"],
};
