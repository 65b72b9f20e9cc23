import { SIDE_LYING_ON_STRONG, STRONG_FOREARM_PROP, STRONG_HAND_PROP } from "../../positions/side-lying-poses.data.ts";
import { SHORT_SITTING_TO_SIDE_LYING } from "../key-poses/lying.data.ts";
import type { Transition } from "../transition.ts";

export const shortSittingToSideLying: Transition = {
  id: "short-sitting-to-side-lying",
  name: "Lie down over the strong side",
  from: "short-sitting",
  to: "side-lying-on-strong-side",
  steps: [
    { whoMoves: "both", moves: "The person sits far enough back and toward the foot of the mat that the head will reach the pillow.", onCount: null, helper: "In front, half kneeling, knee before the weak knee.", helperBeside: "front", words: "Look where your head goes" },
    { whoMoves: "person", moves: "The strong hand walks out to the strong side.", onCount: null, helper: "Rises to a stride; one hand at the weak shoulder front.", helperBeside: "front", words: "Walk your hand out", pose: STRONG_HAND_PROP },
    { whoMoves: "person", moves: "The strong elbow bends and takes the weight.", onCount: "on three", helper: "Hand on the lower ribs, braking.", helperBeside: "front", words: "Down onto your elbow", pose: STRONG_FOREARM_PROP },
    { whoMoves: "both", moves: "As the trunk goes down both legs come up.", onCount: "on three", helper: "One arm behind both calves lifts the legs, the other hand guides the weak shoulder.", helperBeside: "front", words: "Head down, legs come up" },
    { whoMoves: "helper", moves: "Weak arm and weak leg are laid on their pillows.", onCount: null, helper: "Hips at the edge as a wall until the pelvis lies steady.", helperBeside: "front", words: "Lie easy", pose: SIDE_LYING_ON_STRONG },
  ],
  keyPoses: SHORT_SITTING_TO_SIDE_LYING,
  prerequisites: ["Strong elbow bends under load without pain."],
  helpersNeeded: 1,
  secondHelper: "With a heavy person: at the legs, lifting both together on the count.",
  minutes: 1.5,
  strengthShare: 0.05,
  kneelDowns: 0,
  sideChange: false,
  demands: ["wristLoad"],
  equipment: ["pillow"],
  places: ["bed", "plinth", "raisedMat"],
  comfortCheck: "Not at the edge, weak arm in front, breath settled after a minute.",
  sources: ["common-practice"],
};
