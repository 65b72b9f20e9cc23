import type { Position } from "../position.ts";
import { SHORT_SITTING } from "../sitting-poses.data.ts";

export const shortSitting: Position = {
  id: "short-sitting",
  name: "Short sitting",
  plainName: "Sitting on the edge, feet on the floor",
  isFor: "The place from which people eat, dress, reach, scoot and stand up. Most of the day is spent in it.",
  purposes: ["sittingBalance", "standUp", "trunkControl"],
  prerequisites: {
    range: ["hips bend square, or the seat is higher", "ankles let the feet stand flat"],
    strength: ["sits with one helper beside"],
    precautions: ["blood pressure is taken on first sitting", "a hip with a bending limit gets a higher seat"],
  },
  setUpWell: [
    "Seat as high as the hollow of the knee; brakes on, mat dry and not slippery.",
    "Thighs supported for half their length or more, hips square.",
    "Feet flat and hip-wide under the knees, weak foot on a non-slip mat.",
    "Weak hand on the weak thigh or on a pillow, in sight.",
  ],
  helper: { pose: "sitting", beside: "weak", place: "On a stool in front and to the weak side, knees on either side of the weak knee, one hand near the weak ribs." },
  watch: ["a lean to the weak side, noticed or not", "the seat creeping to the edge", "the weak foot curling under", "pale, sweating or silent in the first minutes"],
  weakShoulder: "The arm is carried by the thigh, a pillow or the table; nobody lifts or steadies the person by it.",
  comfortCheck: ["Dizzy or clear?", "Are both feet felt on the floor?", "Is the weak hand free and carried?", "Is the tubing clear of the edge?"],
  wayOut: {
    planned: ["The person scoots back until the thighs are carried.", "The strong elbow goes down to the side while the helper takes the legs up.", "Over the strong side to lying."],
    hurry: ["The helper blocks the knees and leans the person to the strong side.", "Trunk down on the mat, legs lifted on.", "Flat if faint; on the side if sick."],
    to: "side-lying-on-strong-side",
    minutes: 1,
    strengthShare: 0.06,
  },
  demands: ["footPressure"],
  floorStance: false,
  equipment: [],
  places: ["bed", "plinth", "raisedMat"],
  pose: SHORT_SITTING,
  sources: ["common-practice"],
};
