import type { Position } from "../position.ts";
import { FOREARMS_ON_TABLE_SITTING } from "../sitting-poses.data.ts";

export const forearmsOnTableSitting: Position = {
  id: "forearms-on-table-sitting",
  name: "Sitting, forearms on a table",
  plainName: "Sitting, leaning on a table",
  isFor: "Bearing on the forearms for those who do not lie face down, and a rest for the weak arm in which it still takes part.",
  purposes: ["armReady", "sittingBalance", "trunkControl"],
  prerequisites: {
    range: ["the weak arm comes forward to below shoulder height without pain"],
    strength: ["sits with a hand near"],
    precautions: ["a shoulder that hurts is only carried, not loaded"],
  },
  setUpWell: [
    "Table close to the belly, at elbow height, unable to roll.",
    "The weak forearm is laid first, all of it on the table, palm down.",
    "Elbows a little ahead of the shoulders and as wide as they are.",
    "Both feet flat, hips square and back on the seat.",
  ],
  helper: { pose: "sitting", beside: "weak", place: "On a stool beside the weak shoulder, the near knee against the weak thigh." },
  watch: ["the weak forearm sliding off", "the trunk slumping on the table", "the weak shoulder creeping to the ear"],
  weakShoulder: "The table carries the arm; a palm in front of the shoulder stops it gliding forward when the lean grows.",
  comfortCheck: ["Is the weak hand flat and in sight?", "Does the table press on the belly or a tube?", "Is breathing easy?", "Are both feet down?"],
  wayOut: {
    planned: ["The strong hand pushes the trunk upright off the table.", "The helper lays the weak hand back on the thigh.", "The table is pushed away and the sitting checked."],
    hurry: ["Let the trunk rest on the table, head to the side.", "The helper stays at the weak side and takes the ribs.", "If sagging, draw the table away and lower the person to the strong side on the mat."],
    to: "short-sitting",
    minutes: 0.5,
    strengthShare: 0.02,
  },
  demands: ["shoulderLoad", "hipPastNinety"],
  floorStance: false,
  equipment: ["table"],
  places: ["bed", "plinth", "raisedMat"],
  pose: FOREARMS_ON_TABLE_SITTING,
  sources: ["common-practice", "canadian-stroke-shoulder-2019"],
};
