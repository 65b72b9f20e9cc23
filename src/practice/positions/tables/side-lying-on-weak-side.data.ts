import { SIDE_LYING_ON_WEAK } from "../side-lying-poses.data.ts";
import type { Position } from "../position.ts";

export const sideLyingOnWeakSide: Position = {
  id: "side-lying-on-weak-side",
  name: "Side-lying on the weak side",
  plainName: "On your weak side",
  isFor: "Weight and feeling for the weak side while the strong hand stays free. It counters neglect and makes both sides of the bed usable.",
  purposes: ["armReady", "bedMobility"],
  prerequisites: {
    range: ["The weak shoulder comes forward to ninety degrees without pain."],
    strength: ["None when helped."],
    precautions: ["Not on a painful or slipped weak shoulder.", "Skin over the weak hip is whole and is looked at afterwards."],
  },
  setUpWell: [
    "The weak shoulder blade drawn well forward, so that the weight is behind the joint.",
    "The weak arm straight out in front, palm up.",
    "Weak hip straight, weak knee a little bent.",
    "Strong leg ahead on a pillow, hip and knee bent.",
    "A pillow behind the back; the head in line with the trunk.",
  ],
  helper: { pose: "kneeling", beside: "front", place: "In front of the chest, with the face in view and a hand able to reach the weak blade." },
  watch: ["The trunk creeping forward onto the joint.", "A weak hand that swells or turns dark.", "Restlessness without words."],
  weakShoulder: "The blade is placed before the body arrives; no weight rests on the point of the shoulder, and after half an hour the side is changed.",
  comfortCheck: ["Is the blade flat and the arm out in front?", "Is the ear folded or the eye pressed?", "Does breath come easily on this side?", "Does the room stand still?"],
  wayOut: {
    planned: ["Bring the strong knee up and over behind.", "Roll back onto the back, the helper's hand under the weak blade.", "Lay the weak arm on its pillow."],
    hurry: ["Free the weak arm from the blade.", "Roll the person onto the back with hands on upper ribs and pelvis."],
    to: "supine",
    minutes: 1,
    strengthShare: 0.04,
  },
  demands: ["shoulderLoad"],
  floorStance: true,
  equipment: ["pillow"],
  places: ["bed", "plinth", "raisedMat", "floorMat"],
  pose: SIDE_LYING_ON_WEAK,
  sources: ["common-practice", "canadian-stroke-shoulder-2019"],
};
