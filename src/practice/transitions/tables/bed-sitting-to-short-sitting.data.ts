import { HAND_PUSHES_UP_IN_BED } from "../../positions/floor-sitting-poses.data.ts";
import { SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import type { Transition } from "../transition.ts";

export const bedSittingToShortSitting: Transition = {
  id: "bed-sitting-to-short-sitting",
  name: "From the raised backrest to the edge",
  from: "bed-sitting",
  to: "short-sitting",
  steps: [
    { whoMoves: "both", moves: "The back leaves the rest over the strong hand.", onCount: "on three", helper: "Stands at the strong side of the bed with a hand behind the weak blade.", helperBeside: "strong", words: "Chin in, and push", pose: HAND_PUSHES_UP_IN_BED },
    { whoMoves: "both", moves: "Both legs go over the edge on the strong side while the seat turns on the sheet.", onCount: "on three", helper: "One arm under both thighs, the hand at the blade turns along.", helperBeside: "strong", words: "Legs over to me" },
    { whoMoves: "helper", moves: "The helper crosses in front to the weak knee without letting go of the ribs.", onCount: null, helper: "Sits down or stands in front of the weak knee.", helperBeside: "weak", words: null },
    { whoMoves: "both", moves: "Feet are set flat, the weak hand laid on the thigh.", onCount: null, helper: "A hand at the weak ribs until it is quiet.", helperBeside: "weak", words: "Feet flat, and sit tall", pose: SHORT_SITTING },
  ],
  prerequisites: ["Comes off the backrest with a push of the strong hand.", "Pressure stays steady with the backrest up."],
  helpersNeeded: 1,
  secondHelper: "Behind, on the bed: both hands at the pelvis.",
  minutes: 1.2,
  strengthShare: 0.05,
  kneelDowns: 0,
  sideChange: true,
  demands: ["wristLoad", "hipPastNinety"],
  equipment: ["pillow"],
  places: ["bed"],
  comfortCheck: "Feet flat, seat back from the edge, weak hand in sight, not dizzy.",
  sources: ["common-practice"],
};
