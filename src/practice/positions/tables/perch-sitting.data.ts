import type { Position } from "../position.ts";
import { PERCH_SITTING } from "../sitting-more-poses.data.ts";

export const perchSitting: Position = {
  id: "perch-sitting",
  name: "Perch sitting",
  plainName: "Half sitting on a high seat",
  isFor: "Between sitting and standing: the feet carry a part, the seat the rest, and the knees learn to hold without the long way up.",
  purposes: ["stanceOnWeak", "standUp", "sittingBalance"],
  prerequisites: {
    range: ["ankles let the feet stand flat", "hips bend only a little, so it suits a hip with a bending limit"],
    strength: ["sits with a hand near", "the weak knee is held by a helper or holds a little itself"],
    precautions: ["blood pressure is settled in sitting"],
  },
  setUpWell: [
    "The plinth is raised until the thighs slope down and both feet are flat; it cannot roll.",
    "The sitting bones are well on the seat, not on its rim.",
    "Feet hip-wide under the knees, shoes on, the weak foot on a non-slip mat.",
    "A table or the bars within reach in front.",
  ],
  helper: { pose: "sitting", beside: "weak", place: "On a stool in front of the weak knee, knees on either side of it, one hand at the weak hip." },
  watch: ["the seat creeping off the rim", "the weak knee giving or snapping back", "the weak heel lifting", "pale or silent after coming up"],
  weakShoulder: "The arm hangs or lies on the thigh; nobody holds the person by it, and the table carries it when it is heavy.",
  comfortCheck: ["Clear in the head?", "Are both heels felt?", "Is the seat far enough back?", "Is the weak hand free?"],
  wayOut: {
    planned: ["The plinth is let down with the person on it, the helper at the knees.", "Feet are set again.", "Scoot back until the thighs are carried."],
    hurry: ["The helper blocks both knees and leans the trunk back over the seat.", "A second person lets the plinth down.", "Lie down over the strong side if faint."],
    to: "short-sitting",
    minutes: 0.8,
    strengthShare: 0.04,
  },
  demands: ["footPressure"],
  floorStance: false,
  equipment: ["nonSlip", "belt"],
  places: ["plinth", "raisedMat"],
  pose: PERCH_SITTING,
  sources: ["common-practice"],
};
