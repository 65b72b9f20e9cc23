import type { Position } from "../position.ts";
import { FOREARMS_ON_TABLE_STANDING } from "../sitting-poses.data.ts";

export const forearmsOnTableStanding: Position = {
  id: "forearms-on-table-standing",
  name: "Standing, forearms on a table",
  plainName: "Standing, leaning on a high table",
  isFor: "Weight on both legs with both forearms to catch the trunk: a first standing, and what hands and knees would train for those who do not kneel.",
  purposes: ["stanceOnWeak", "armReady", "trunkControl", "standUp"],
  prerequisites: {
    range: ["ankles come square", "the weak arm comes forward to below shoulder height without pain"],
    strength: ["stands up from a high seat with one helper", "the weak knee holds with a block"],
    precautions: ["blood pressure taken sitting and standing", "a weight-bearing order for either leg is kept"],
  },
  setUpWell: [
    "A raised plinth or a heavy table against a wall, forearms on it with the hips a little bent.",
    "Shoes on, orthosis on, belt on; a seat close behind the knees.",
    "Feet hip-wide, heels down, the weak foot pointing ahead.",
    "Elbows under the shoulders, weak forearm laid first.",
  ],
  helper: { pose: "strideStanding", beside: "weak", place: "In stride behind and to the weak side, one hand at the belt with the palm up, the other flat in front of the weak shoulder." },
  watch: ["the weak knee folding or snapping back", "hips drifting over the strong leg", "colour of the face", "the chest lying down on the table"],
  weakShoulder: "The forearm is carried by the table and the shoulder by a flat palm in front; nobody holds under the armpit.",
  comfortCheck: ["Dizzy or clear?", "Are both heels felt?", "Is the weak hand flat?", "Is the seat still close behind?"],
  wayOut: {
    planned: ["The helper's foot finds the seat behind and brings it to the knees.", "The person pushes the hips back with the forearms still on the table.", "On three the knees bend and the seat is reached slowly."],
    hurry: ["Chest down on the table, the helper's hip against the weak hip.", "Knees blocked, the seat drawn in behind.", "Down on the seat by the belt, and no lower than it."],
    to: "short-sitting",
    minutes: 0.7,
    strengthShare: 0.08,
  },
  demands: ["standing", "footPressure", "shoulderLoad"],
  floorStance: false,
  equipment: ["table", "belt"],
  places: ["plinth", "raisedMat"],
  pose: FOREARMS_ON_TABLE_STANDING,
  sources: ["common-practice"],
};
