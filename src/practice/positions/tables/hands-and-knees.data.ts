import type { Position } from "../position.ts";
import { HANDS_AND_KNEES } from "../kneeling-poses.data.ts";

export const handsAndKnees = {
  id: "hands-and-knees",
  name: "Hands and knees",
  plainName: "On hands and knees",
  isFor: "Weight on arms and legs with the trunk level: it readies the way up from the floor and a trunk that holds while limbs move.",
  purposes: ["trunkControl", "armReady", "floorRecovery"],
  prerequisites: {
    range: ["Wrist goes back about as far as a flat palm needs, or a fist or forearm is used", "Knees bend to ninety degrees without pain", "Ankles point, or the feet hang over the edge"],
    strength: ["The weak elbow can be kept straight with a block", "The hips hold over the knees"],
    precautions: ["Not with a painful or slipped weak shoulder", "Not with sore knees that do not bear kneeling", "Not after a feed or with breathlessness face down"],
  },
  setUpWell: ["Hands under the shoulders, fingers ahead", "Weak elbow straight and turned out", "Knees under the hips, hip-wide", "Feet flat behind or over the edge"],
  helper: { pose: "halfKneeling", beside: "weak", place: "At the weak side beside the chest, near knee up so that the thigh can take the weak upper chest." },
  watch: ["the weak elbow", "the weak wrist and fingers", "hips creeping to the strong side", "a held breath"],
  weakShoulder: "Thigh or flat hand under the front of the weak shoulder and upper chest, never in the armpit; no pull on the arm.",
  comfortCheck: ["Are the weak fingers open and flat?", "Are the knees padded?", "Is anything pressing under the belly?", "Breathing easy, not dizzy?"],
  wayOut: {
    planned: ["Seat goes back toward the heels or the strong hip.", "The strong forearm comes down to the mat.", "The helper keeps the weak upper chest on the thigh until the forearm is down.", "The person lies over onto the strong side."],
    hurry: ["Take the weak upper chest on the thigh.", "Guide the hips to the strong side and lower.", "Lie on the strong side and look at the face."],
    to: "side-lying-on-strong-side",
    minutes: 1.5,
    strengthShare: 0.08,
  },
  demands: ["wristLoad", "kneePressure", "shoulderLoad"],
  floorStance: true,
  equipment: [],
  places: ["raisedMat", "floorMat", "plinth"],
  pose: HANDS_AND_KNEES,
  sources: ["common-practice"],
} as const satisfies Position;
