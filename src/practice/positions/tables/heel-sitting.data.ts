import { HEEL_SITTING } from "../kneeling-more-poses.data.ts";
import type { Position } from "../position.ts";

export const heelSitting: Position = {
  id: "heel-sitting",
  name: "Heel sitting",
  plainName: "Sitting back on your heels",
  isFor: "A low seat over the knees with the trunk free: the rest stop between hands and knees and kneeling upright.",
  purposes: ["trunkControl", "floorRecovery", "stanceOnWeak"],
  prerequisites: {
    range: ["Knees bend to about 130 degrees without pain", "Ankles point, or the feet hang over the edge"],
    strength: ["The trunk holds upright in sitting"],
    precautions: ["Not with sore or newly replaced knees", "Not with a sore shin, heel or instep"],
  },
  setUpWell: ["A firm roll or folded cushion between seat and lower legs, so that the knees bend no further than they like", "Knees hip-wide on a pad, feet straight behind", "Weak hand on its thigh, shoulders over the hips"],
  helper: { pose: "kneeling", beside: "weak", place: "Kneeling behind and at the weak side, near thigh along the weak hip." },
  watch: ["the seat sliding off toward the strong side", "a numb or cramping foot", "the back rounding"],
  weakShoulder: "The weak hand lies on its thigh; nobody draws the arm forward.",
  comfortCheck: ["Do both feet still feel normal?", "Do the knees bend without pain?", "Is the roll under both halves of the seat?"],
  wayOut: {
    planned: ["The strong hand goes to the mat beside the strong knee.", "The seat goes over to the strong hip beside the roll.", "Down on the strong forearm, then onto the strong side."],
    hurry: ["Hands on both sides of the pelvis, guide it over the strong hip to the mat.", "Free the feet, straighten the knees, look at the face."],
    to: "side-lying-on-strong-side",
    minutes: 1.2,
    strengthShare: 0.05,
  },
  demands: ["kneePressure", "hipPastNinety"],
  floorStance: true,
  equipment: ["bolster"],
  places: ["raisedMat", "floorMat"],
  pose: HEEL_SITTING,
  sources: ["common-practice"],
};
