import type { Position } from "../position.ts";
import { SIDE_SITTING_ON_WEAK } from "../floor-sitting-poses.data.ts";

export const sideSittingOnWeakHip: Position = {
  id: "side-sitting-on-weak-hip",
  name: "Side-sitting on the weak hip",
  plainName: "Sitting on one hip, legs to the other side",
  isFor: "Weight through the weak hip and, where the shoulder allows it, the weak hand; the beginning of the way over the weak side to hands and knees.",
  purposes: ["armReady", "trunkControl", "floorRecovery"],
  prerequisites: {
    range: ["both hips turn and both knees bend well past square", "the weak wrist bends back, or the hand lies over a folded towel"],
    strength: ["holds long sitting with a hand near", "the strong arm can carry on a low stool"],
    precautions: ["not with a painful or slipped weak shoulder, unless the weak arm only lies", "not with a hip that must not bend, turn or cross", "skin over the weak hip is sound"],
  },
  setUpWell: [
    "Both knees lie to the strong side, the weak foot near the strong knee.",
    "The weight is on the weak buttock, the weak side long over it.",
    "The weak hand lies flat and open a hand's breadth beside the hip.",
    "The strong hand on a low stool in front until the trunk holds.",
  ],
  helper: { pose: "halfKneeling", beside: "weak", place: "Half-kneeling behind and to the weak side, the raised thigh behind the weak blade, a hand in front of the weak shoulder." },
  watch: ["the trunk collapsing over the weak waist", "the weak elbow buckling", "the weak fingers curling under", "a red mark over the weak hip"],
  weakShoulder: "The shoulder is held front and back before any weight comes; the arm is a post only with a block above the elbow, else it only lies.",
  comfortCheck: ["Does the weak shoulder hurt?", "Are the weak fingers flat?", "Does either knee hurt?", "Does the weak hip feel the mat?"],
  wayOut: {
    planned: ["The strong hand presses on the stool and the weight goes off the weak hip.", "The knees come up one after the other, the weak one by the helper's hand.", "The legs are laid long."],
    hurry: ["The helper's thigh and chest take the trunk.", "Down to the strong side across the mat, head held.", "Weak arm in front, pillow under the head."],
    to: "long-sitting",
    minutes: 0.9,
    strengthShare: 0.06,
  },
  demands: ["hipPastNinety", "hipAcrossMidline", "kneePressure", "wristLoad", "trunkEndRange"],
  floorStance: true,
  equipment: ["stool"],
  places: ["raisedMat", "floorMat"],
  pose: SIDE_SITTING_ON_WEAK,
  sources: ["common-practice"],
};
