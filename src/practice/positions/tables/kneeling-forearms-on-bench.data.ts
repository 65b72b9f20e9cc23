import { KNEES_AND_FOREARMS } from "../kneeling-more-poses.data.ts";
import type { Position } from "../position.ts";

export const kneelingForearmsOnBench: Position = {
  id: "kneeling-forearms-on-bench",
  name: "On the knees, forearms on a low bench",
  plainName: "On your knees, leaning on a low bench",
  isFor: "Hands and knees made kinder: the forearms carry instead of the wrists and the head stays above the heart.",
  purposes: ["trunkControl", "armReady", "floorRecovery"],
  prerequisites: {
    range: ["Knees bend to ninety degrees without pain", "The weak arm comes forward to below shoulder height without pain"],
    strength: ["The trunk can be held off the bench for some breaths"],
    precautions: ["Not with sore knees that do not bear kneeling", "Not with a painful or slipped weak shoulder"],
  },
  setUpWell: ["A low, heavy bench that does not slide, padded on top", "Elbows straight under the shoulders, weak forearm laid first", "Knees under the hips on a pad, feet flat behind"],
  helper: { pose: "halfKneeling", beside: "weak", place: "At the weak side beside the chest, near thigh within reach of the weak upper chest." },
  watch: ["the chest sinking between the blades", "the weak elbow sliding off the edge", "hips creeping to the strong side"],
  weakShoulder: "Flat palm before the weak shoulder; the bench carries the forearm, the helper never lifts by it.",
  comfortCheck: ["Does the edge of the bench press?", "Are the knees padded?", "Is the neck long and easy?"],
  wayOut: {
    planned: ["The hips rock back toward the heels.", "The strong hand goes to the mat beside the bench.", "The seat goes over the strong hip and the person lies onto the strong side."],
    hurry: ["Chest down on the bench.", "Hips guided to the strong side, then lowered to the mat."],
    to: "side-lying-on-strong-side",
    minutes: 1.5,
    strengthShare: 0.06,
  },
  demands: ["kneePressure", "shoulderLoad"],
  floorStance: true,
  equipment: ["bench"],
  places: ["raisedMat", "floorMat"],
  pose: KNEES_AND_FOREARMS,
  sources: ["common-practice"],
};
