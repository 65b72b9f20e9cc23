import type { Position } from "../position.ts";
import { SIDE_SITTING_ON_STRONG } from "../side-sitting-poses.data.ts";

export const sideSittingOnStrongHip: Position = {
  id: "side-sitting-on-strong-hip",
  name: "Side-sitting on the strong hip",
  plainName: "Sitting on one hip, legs to the side",
  isFor: "The half-way house between long sitting and hands and knees: the weak side of the trunk shortens to hold, the strong arm is the pivot.",
  purposes: ["trunkControl", "floorRecovery", "sittingBalance"],
  prerequisites: {
    range: ["both hips turn and both knees bend well past square", "the strong wrist bends back, or a fist is used"],
    strength: ["the strong arm props the trunk", "sits in long sitting with a hand near"],
    precautions: ["not with a hip that must not bend, turn or cross", "not with a sore knee that does not like turning"],
  },
  setUpWell: [
    "Both knees lie to the weak side, the strong foot near the weak knee.",
    "The weight is on the strong buttock and the side of that hip.",
    "The strong hand is flat beside the strong hip, elbow straight but not locked.",
    "The weak hand lies on the weak thigh; the weak ribs are drawn down toward the hip.",
  ],
  helper: { pose: "halfKneeling", beside: "weak", place: "Half-kneeling in front and to the weak side, one hand at the weak ribs and one on the weak side of the pelvis." },
  watch: ["the trunk sliding down on the strong hand", "pain at the turned knee", "the weak arm behind the body", "leaning back over the weak foot"],
  weakShoulder: "The arm lies on the thigh in front of the body; the trunk is helped at ribs and pelvis.",
  comfortCheck: ["Does either knee hurt?", "Is the strong wrist easy?", "Is the weak hand in front?", "Is the foot under the thigh free of weight?"],
  wayOut: {
    planned: ["The knees come up one after the other with the helper's hand on the weak one.", "The weight rolls from the strong hip back to both.", "The legs are laid long."],
    hurry: ["The strong elbow bends and goes down to the mat.", "Down onto the strong side, knees still bent.", "Pillow under the head, weak arm in front."],
    to: "long-sitting",
    minutes: 0.8,
    strengthShare: 0.05,
  },
  demands: ["hipPastNinety", "hipAcrossMidline", "kneePressure", "wristLoad", "trunkEndRange"],
  floorStance: true,
  equipment: [],
  places: ["raisedMat", "floorMat"],
  pose: SIDE_SITTING_ON_STRONG,
  sources: ["common-practice"],
};
