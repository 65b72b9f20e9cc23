import { STRONG_FORWARD_TO_STANDING_IN_BARS } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const halfKneelingStrongForwardToStandingInBars = {
  id: "half-kneeling-strong-forward-to-standing-in-bars",
  name: "From one knee up to standing",
  from: "half-kneeling-strong-forward",
  to: "standing-in-bars",
  steps: [
    { whoMoves: "helper", moves: "Weak toes tucked under, belt held at the back, second person beside the strong bar.", onCount: null, helper: "Half kneeling behind the weak side, hand in the belt, palm up.", helperBeside: "behind", words: null },
    { whoMoves: "person", moves: "Nose over the strong toes.", onCount: "one", helper: "Knee behind the weak knee.", helperBeside: "weak", words: "Nose over your toes" },
    { whoMoves: "both", moves: "Strong foot and hand push, the seat rises, the weak foot comes beside.", onCount: "two", helper: "From half kneeling to stride standing with the person.", helperBeside: "weak", words: "Push and stand" },
    { whoMoves: "helper", moves: "Look at the face, wait ten seconds, ask about dizziness.", onCount: null, helper: "Knee in front of the weak knee.", helperBeside: "weak", words: "Stand and breathe" },
  ],
  keyPoses: STRONG_FORWARD_TO_STANDING_IN_BARS,
  prerequisites: ["Rises from half kneeling with one helper"],
  helpersNeeded: 2,
  secondHelper: "Steadies the strong side and brings the seat.",
  minutes: 2,
  strengthShare: 0.12,
  kneelDowns: 0,
  sideChange: false,
  demands: ["suddenStanding", "standing", "kneePressure", "hipPastNinety"],
  equipment: ["belt", "bars"],
  places: ["floorMat"],
  comfortCheck: "Dizzy, pale, both heels down?",
  sources: ["common-practice"],
} as const satisfies Transition;
