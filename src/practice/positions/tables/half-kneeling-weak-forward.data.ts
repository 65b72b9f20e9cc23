import type { Position } from "../position.ts";
import { HALF_KNEELING_WEAK_FORWARD } from "../kneeling-poses.data.ts";

export const halfKneelingWeakForward = {
  id: "half-kneeling-weak-forward",
  name: "Half kneeling, weak foot in front",
  plainName: "One knee down, weak foot in front",
  isFor: "Weight over a flat weak foot; easier to hold than the other way round, since the strong knee carries.",
  purposes: ["stanceOnWeak", "floorRecovery", "stepping"],
  prerequisites: {
    range: ["Weak ankle bends up to ninety degrees", "Strong knee bears kneeling"],
    strength: ["Kneeling upright at the bench for fifteen seconds"],
    precautions: ["Not with hip precautions past ninety degrees", "Not with sore knees"],
  },
  setUpWell: ["Weak foot flat, knee over the second toe", "Strong knee on a pad under the hip", "Bench at the strong hand"],
  helper: { pose: "halfKneeling", beside: "weak", place: "Behind the weak side, near knee up along the weak thigh." },
  watch: ["the weak knee falling out", "the weak foot turning over", "a tip to the weak side"],
  weakShoulder: "Flat hand before the weak shoulder; the arm hangs in a support.",
  comfortCheck: ["Foot flat in its shoe?", "Kneecap on the pad, not beside it?", "Dizzy?"],
  wayOut: {
    planned: ["The strong hand presses on the bench.", "The helper draws the weak foot back until the knee is down.", "Kneel at the bench, then as from there."],
    hurry: ["Hold hip and shoulder, fold the person back onto the near thigh.", "Down over the strong hip."],
    to: "tall-kneeling-at-bench",
    minutes: 1,
    strengthShare: 0.06,
  },
  demands: ["kneePressure", "footPressure", "hipPastNinety"],
  floorStance: true,
  equipment: ["bench"],
  places: ["raisedMat", "floorMat"],
  pose: HALF_KNEELING_WEAK_FORWARD,
  sources: ["common-practice"],
} as const satisfies Position;
