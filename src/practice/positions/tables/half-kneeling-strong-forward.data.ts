import type { Position } from "../position.ts";
import { HALF_KNEELING_STRONG_FORWARD } from "../kneeling-poses.data.ts";

export const halfKneelingStrongForward = {
  id: "half-kneeling-strong-forward",
  name: "Half kneeling, strong foot in front",
  plainName: "One knee down, good foot in front",
  isFor: "The start of rising from the floor over the strong foot; the weak knee carries meanwhile.",
  purposes: ["floorRecovery", "standUp", "stanceOnWeak"],
  prerequisites: {
    range: ["Weak knee bears kneeling", "Strong ankle and hip bend freely"],
    strength: ["The weak hip stays straight on its knee for ten seconds"],
    precautions: ["Not with hip precautions past ninety degrees", "Not with sore knees"],
  },
  setUpWell: ["Weak knee under the hip on a pad", "Strong foot flat ahead", "Bench or stool at the strong hand"],
  helper: { pose: "halfKneeling", beside: "weak", place: "Behind the weak hip, thigh along the weak thigh." },
  watch: ["the weak hip folding", "the pelvis turning open", "pulling with the strong hand"],
  weakShoulder: "Flat hand in front of the weak shoulder; nothing in the armpit.",
  comfortCheck: ["Weak kneecap on the pad?", "Weak foot straight behind?", "Ready to go on?"],
  wayOut: {
    planned: ["The strong foot slides back until both knees are down.", "Hands to the bench.", "Then as from kneeling."],
    hurry: ["Seat onto the helper's thigh.", "Down over the strong hip to the mat."],
    to: "tall-kneeling-at-bench",
    minutes: 1,
    strengthShare: 0.06,
  },
  demands: ["kneePressure", "hipPastNinety"],
  floorStance: true,
  equipment: ["bench"],
  places: ["raisedMat", "floorMat"],
  pose: HALF_KNEELING_STRONG_FORWARD,
  sources: ["common-practice"],
} as const satisfies Position;
