import type { Position } from "../position.ts";
import { KNEELING_AT_BENCH } from "../kneeling-poses.data.ts";

export const tallKneelingAtBench = {
  id: "tall-kneeling-at-bench",
  name: "Tall kneeling at a bench",
  plainName: "Kneeling upright at a bench",
  isFor: "The same straight hips with a bench to lean on, for those whose arm or trunk is not ready.",
  purposes: ["stanceOnWeak", "trunkControl"],
  prerequisites: {
    range: ["Knees bear kneeling", "Ankles point or lie over the edge"],
    strength: ["Some hold in the weak hip extensors, or a helper's hand under the seat bone"],
    precautions: ["Not with sore knees"],
  },
  setUpWell: ["Bench at elbow height, close to the belly", "Knees hip-wide on a pad", "Weak forearm laid on the bench or in a support"],
  helper: { pose: "halfKneeling", beside: "weak", place: "Behind and at the weak side with the chest near the person's back." },
  watch: ["hanging on the strong arm", "the weak hip staying behind", "knee pain"],
  weakShoulder: "The weak forearm lies on the bench, elbow under the shoulder; it is not leaned on when painful.",
  comfortCheck: ["Knees and feet comfortable?", "Weak arm lying, not hanging off?", "Easy breath?"],
  wayOut: {
    planned: ["Forearms stay on the bench, the seat sinks back to the cushion.", "The strong hand comes to the mat at the strong side.", "Over the strong hip and down on the strong elbow."],
    hurry: ["Chest onto the bench.", "Thigh under the seat, then down over the strong hip."],
    to: "side-lying-on-strong-side",
    minutes: 2,
    strengthShare: 0.07,
  },
  demands: ["kneePressure"],
  floorStance: true,
  equipment: ["bench"],
  places: ["raisedMat", "floorMat"],
  pose: KNEELING_AT_BENCH,
  sources: ["common-practice"],
} as const satisfies Position;
