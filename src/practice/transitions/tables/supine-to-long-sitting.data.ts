import { SUPINE } from "../../positions/lying-poses.data.ts";
import { STRONG_HAND_PROPS } from "../../activities/poses/long-sitting.data.ts";
import { LONG_SITTING } from "../../positions/sitting-poses.data.ts";
import { SUPINE_TO_LONG_SITTING } from "../key-poses/sitting.data.ts";
import type { Transition } from "../transition.ts";

export const supineToLongSitting: Transition = {
  id: "supine-to-long-sitting",
  name: "Up to long sitting over the strong elbow",
  from: "supine",
  to: "long-sitting",
  steps: [
    { whoMoves: "person", moves: "The strong hand lays the weak arm across the belly.", onCount: null, helper: "Half-kneels at the weak side, level with the ribs, the near knee up.", helperBeside: "weak", words: "Weak arm on your belly", pose: SUPINE },
    { whoMoves: "both", moves: "Head and weak shoulder turn toward the strong side.", onCount: null, helper: "One palm behind the weak blade brings it forward, the other at the weak side of the pelvis.", helperBeside: "weak", words: "Look to your strong side" },
    { whoMoves: "person", moves: "The strong elbow presses down and the trunk comes over it.", onCount: "on three", helper: "The palm behind the blade lifts along with the turn; nothing pulls on the arm.", helperBeside: "weak", words: "Chin in, push on your elbow" },
    { whoMoves: "person", moves: "The strong elbow straightens onto the hand and the hand walks toward the hip.", onCount: null, helper: "Comes in behind with the raised thigh as a backrest.", helperBeside: "weak", words: "Onto your hand, walk in", pose: STRONG_HAND_PROPS },
    { whoMoves: "both", moves: "The pelvis is brought upright, the hands laid on the thighs, and the face looked at.", onCount: null, helper: "One hand behind the pelvis, the other at the weak ribs; asks about dizziness and waits a minute.", helperBeside: "weak", words: "Sit tall. Dizzy or clear?", pose: LONG_SITTING },
  ],
  keyPoses: SUPINE_TO_LONG_SITTING,
  prerequisites: ["Lifts the head from the pillow.", "The strong elbow and hand bear the trunk.", "Pressure known before the first time."],
  helpersNeeded: 1,
  secondHelper: "Where the trunk is heavy: half-kneels behind-strong and steadies the pelvis.",
  minutes: 1.3,
  strengthShare: 0.07,
  kneelDowns: 1,
  sideChange: false,
  demands: ["wristLoad", "hipPastNinety", "breathHolding"],
  equipment: [],
  places: ["bed", "plinth", "raisedMat", "floorMat"],
  comfortCheck: "Colour, dizziness, breath; weak hand on the thigh; catheter slack; knees not dragged apart.",
  sources: ["common-practice"],
};
