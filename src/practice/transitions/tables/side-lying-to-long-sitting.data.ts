import { SIDE_LYING_ON_STRONG } from "../../positions/side-lying-poses.data.ts";
import { SIDE_LYING_TO_LONG_SITTING } from "../key-poses/sitting.data.ts";
import type { Transition } from "../transition.ts";

export const sideLyingToLongSitting: Transition = {
  id: "side-lying-to-long-sitting",
  name: "Side-lying to long sitting by elbow, then hand",
  from: "side-lying-on-strong-side",
  to: "long-sitting",
  steps: [
    { whoMoves: "both", moves: "The weak arm is laid across the body, both hips bent to about ninety degrees.", onCount: null, helper: "Half kneels behind the person toward the weak side; hand on the pelvis.", helperBeside: "behind", words: "Bend up your knees", pose: SIDE_LYING_ON_STRONG },
    { whoMoves: "person", moves: "The strong elbow comes under the shoulder and the trunk rises onto it.", onCount: "on three", helper: "Flat hand behind the weak blade, the other on the upper hip.", helperBeside: "behind", words: "Up onto your elbow" },
    { whoMoves: "person", moves: "The strong hand pushes straight and walks in toward the hip.", onCount: null, helper: "Follows with the near thigh until it is against the back.", helperBeside: "behind", words: "Onto your hand, walk in" },
    { whoMoves: "both", moves: "Both legs turn to the front and straighten as far as the hamstrings let them.", onCount: null, helper: "One hand stays behind the weak ribs, the other brings the weak knee.", helperBeside: "behind", words: "Legs to the front" },
    { whoMoves: "helper", moves: "A wedge goes under the seat or a roll under the knees if the back is round.", onCount: null, helper: "The thigh remains the backrest.", helperBeside: "behind", words: "Lean on my leg" },
  ],
  keyPoses: SIDE_LYING_TO_LONG_SITTING,
  prerequisites: ["Hamstrings that allow sitting with the legs ahead, or a wedge under the seat.", "Hips may bend past ninety degrees."],
  helpersNeeded: 1,
  secondHelper: "At the legs, if the person is heavy or pushes.",
  minutes: 1.5,
  strengthShare: 0.06,
  kneelDowns: 1,
  sideChange: true,
  demands: ["wristLoad", "hipPastNinety"],
  equipment: ["wedge", "bolster"],
  places: ["raisedMat", "floorMat", "plinth"],
  comfortCheck: "Back against the thigh, weak hand on the own thigh, dizzy or not, hamstrings not straining.",
  sources: ["common-practice"],
};
