import type { Position } from "../position.ts";
import { HANDS_ON_TABLE } from "../table-standing-poses.data.ts";

export const plantigrade: Position = {
  id: "plantigrade",
  name: "Standing, hands on a table (modified plantigrade)",
  plainName: "Standing, hands on a table",
  isFor: "Four points of support in standing: both feet and both flat hands, for legs and arms that do not yet carry alone or knees that will not kneel.",
  purposes: ["stanceOnWeak", "armReady", "trunkControl", "stepping"],
  prerequisites: {
    range: ["The wrist goes back far enough for a flat palm, or a fist or folded towel is used", "Ankles come square", "The weak arm comes forward to below shoulder height without pain"],
    strength: ["Stands up from a high seat with one helper", "The weak knee holds with a block"],
    precautions: ["Blood pressure taken sitting and standing", "A weight-bearing order for either leg is kept"],
  },
  setUpWell: ["A heavy table or raised plinth at hip height, against a wall or braked", "Palms flat under the shoulders, fingers ahead, weak elbow straight", "Feet hip-wide and a step back from the table, heels down", "Shoes, orthosis and belt on, a seat close behind"],
  helper: { pose: "strideStanding", beside: "weak", place: "In stride behind and to the weak side, one hand at the belt, the other ready above the weak elbow." },
  watch: ["the weak elbow and wrist", "the weak knee folding or snapping back", "hips drifting over the strong leg", "colour of the face"],
  weakShoulder: "The hand is placed, not dragged; a flat palm before the shoulder, a hand above the elbow from behind, nothing under the armpit.",
  comfortCheck: ["Are the weak fingers open and flat?", "Both heels felt?", "Dizzy or clear?", "Is the seat still behind?"],
  wayOut: {
    planned: ["The seat is brought to the backs of the knees.", "The hips go back while the strong hand stays on the table.", "Down on a count of three, the weak hand lifted off by the helper from below."],
    hurry: ["Forearms and chest down on the table.", "Knees blocked, the seat drawn in behind.", "Down onto it by the belt."],
    to: "short-sitting",
    minutes: 0.7,
    strengthShare: 0.08,
  },
  demands: ["standing", "footPressure", "wristLoad", "shoulderLoad"],
  floorStance: false,
  equipment: ["table", "belt"],
  places: ["plinth", "raisedMat"],
  pose: HANDS_ON_TABLE,
  sources: ["common-practice"],
};
