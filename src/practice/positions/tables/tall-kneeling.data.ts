import type { Position } from "../position.ts";
import { TALL_KNEELING } from "../kneeling-poses.data.ts";

export const tallKneeling = {
  id: "tall-kneeling",
  name: "Tall kneeling",
  plainName: "Kneeling upright",
  isFor: "Hips straight over the knees without the ankles to manage: stance practice near the mat.",
  purposes: ["stanceOnWeak", "floorRecovery", "standUp"],
  prerequisites: {
    range: ["Knees bear and bend past ninety degrees", "Ankles point or lie over the edge"],
    strength: ["Hip extensors that can hold the trunk upright with a touch"],
    precautions: ["Not with sore knees", "Not in the first weeks after a knee or hip replacement without clearance"],
  },
  setUpWell: ["Knees hip-wide on a pad", "Feet over the edge or a roll under the shins", "Bench within reach in front"],
  helper: { pose: "halfKneeling", beside: "weak", place: "Behind and at the weak side, half kneeling, near thigh ready as a seat." },
  watch: ["the hips folding", "a cramp in the foot", "the trunk bending sideways"],
  weakShoulder: "The weak arm hangs in a support or lies on the bench; a flat hand in front of the shoulder, no pull.",
  comfortCheck: ["Do knees and feet lie well?", "Is the weak foot straight behind?", "Dizzy since coming up?"],
  wayOut: {
    planned: ["The strong hand goes to the bench.", "Both hips fold slowly, the seat goes to the cushion on the heels.", "Over the strong hip to side-sitting, then down on the strong elbow."],
    hurry: ["Thigh under the seat, sit the person on it.", "Lower over the strong hip to the mat."],
    to: "side-lying-on-strong-side",
    minutes: 2,
    strengthShare: 0.08,
  },
  demands: ["kneePressure"],
  floorStance: true,
  equipment: [],
  places: ["raisedMat", "floorMat"],
  pose: TALL_KNEELING,
  sources: ["common-practice"],
} as const satisfies Position;
