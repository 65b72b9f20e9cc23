import type { Transition } from "../transition.ts";

export const standingInBarsToWalkingInBars = {
  id: "standing-in-bars-to-walking-in-bars",
  name: "From standing into steps",
  from: "standing-in-bars",
  to: "walking-in-bars",
  steps: [
    { whoMoves: "helper", moves: "The stool goes away, the helper comes to stride standing behind the weak side; the second person takes the seat.", onCount: null, helper: "One hand on the belt before the other leaves the knee.", helperBeside: "weak", words: null },
    { whoMoves: "person", moves: "The strong hand slides ahead on the bar.", onCount: "one", helper: "Hand on the weak hip.", helperBeside: "weak", words: "Hand ahead" },
  ],
  prerequisites: ["The weak leg holds while the strong heel lifts"],
  helpersNeeded: 1,
  secondHelper: "Follows with the seat.",
  minutes: 0.5,
  strengthShare: 0.01,
  kneelDowns: 0,
  sideChange: true,
  demands: ["standing"],
  equipment: ["bars", "belt"],
  places: ["bars"],
  comfortCheck: "Ready to go on?",
  sources: ["common-practice"],
} as const satisfies Transition;
