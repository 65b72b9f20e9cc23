import type { Position } from "../position.ts";
import { STRIDE_WEAK_AHEAD } from "../upright-poses.data.ts";

export const strideStandingWeakForward: Position = {
  id: "stride-standing-weak-forward",
  name: "Stride standing, weak foot ahead",
  plainName: "One foot in front",
  isFor: "A step held still with the weak foot in front: the weak leg learns to take the body that comes over it.",
  purposes: ["stanceOnWeak", "stepping"],
  prerequisites: {
    range: ["The weak heel reaches the floor ahead", "The strong hip opens behind the body"],
    strength: ["Stands a minute with one hand", "The weak knee holds under half the weight"],
    precautions: ["Loading order for the weak leg allows half the weight"],
  },
  setUpWell: ["Weak foot a foot's length ahead, its heel down", "Strong foot behind, toes ahead, hip-wide for width", "Table at the strong hand", "Mat or chair a step behind, belt on"],
  helper: { pose: "strideStanding", beside: "weak", place: "Beside the weak hip in stride, one foot level with the weak foot, a hand at the belt." },
  watch: ["the weak knee snapping back as the weight comes", "the trunk falling ahead from the hips", "the strong hand gripping"],
  weakShoulder: "Flat hand before the weak shoulder, the arm in its support.",
  comfortCheck: ["Is the front heel down?", "Steady or shaky in the knee?"],
  wayOut: {
    planned: ["The weight goes back over the strong foot.", "The weak foot is drawn level, a hand behind the knee.", "The chair touches both calves; hips back and down on a count."],
    hurry: ["Block the weak knee, hold the belt.", "The chair comes under from behind."],
    to: "short-sitting",
    minutes: 0.7,
    strengthShare: 0.06,
  },
  demands: ["standing", "footPressure"],
  floorStance: false,
  equipment: ["table", "belt"],
  places: ["plinth", "raisedMat"],
  pose: STRIDE_WEAK_AHEAD,
  sources: ["common-practice"],
};
