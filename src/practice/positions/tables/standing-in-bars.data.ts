import type { Position } from "../position.ts";
import { STANDING_IN_BARS } from "../standing-poses.data.ts";

export const standingInBars = {
  id: "standing-in-bars",
  name: "Standing in the parallel bars",
  plainName: "Standing in the bars",
  isFor: "Standing with something firm for the strong hand, so that the weak leg can learn to carry.",
  purposes: ["stanceOnWeak", "standUp", "stepping"],
  prerequisites: {
    range: ["Weak ankle bends up to ninety degrees in the shoe", "Hips and knees straighten nearly fully"],
    strength: ["Stands up from a high seat with no more than one helper"],
    precautions: ["Pressure settled on coming up", "Weight-bearing order allows it"],
  },
  setUpWell: ["Shoes and orthosis on, belt on", "Seat close behind, brakes on", "Bars at the height of the hip joint", "Feet hip-wide"],
  helper: { pose: "sitting", beside: "front", place: "Inside the bars on a stool in front, knee to the weak knee; or behind and at the weak side." },
  watch: ["the weak knee snapping back or giving", "colour and answers", "the strong hand pulling"],
  weakShoulder: "The weak hand only rests on the bar or the arm is supported; never guarded under the armpit.",
  comfortCheck: ["Dizzy since standing?", "Both heels down?", "Belt snug, shoes firm?"],
  wayOut: {
    planned: ["Back until the seat touches both calves.", "Strong hand to the armrest or bar, look down and ahead.", "Bend and sit on a count, knee blocked."],
    hurry: ["Shin on the weak shin, hand on the belt.", "Say sit, bring the seat, lower."],
    to: "short-sitting",
    minutes: 0.5,
    strengthShare: 0.06,
  },
  demands: ["standing", "footPressure"],
  floorStance: false,
  equipment: ["bars", "belt"],
  places: ["bars"],
  pose: STANDING_IN_BARS,
  sources: ["common-practice"],
} as const satisfies Position;
