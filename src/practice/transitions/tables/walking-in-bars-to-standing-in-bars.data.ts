import type { Transition } from "../transition.ts";

export const walkingInBarsToStandingInBars = {
  id: "walking-in-bars-to-standing-in-bars",
  name: "From steps to standing",
  from: "walking-in-bars",
  to: "standing-in-bars",
  steps: [
    { whoMoves: "person", moves: "Stop with both feet level, hand beside the hip.", onCount: null, helper: "Belt held, near knee behind the weak knee.", helperBeside: "weak", words: "Stop. Feet together" },
    { whoMoves: "helper", moves: "The seat is brought close behind.", onCount: null, helper: "The second person brakes it.", helperBeside: "weak", words: null },
  ],
  prerequisites: [],
  helpersNeeded: 1,
  secondHelper: "Brings the seat.",
  minutes: 0.5,
  strengthShare: 0.01,
  kneelDowns: 0,
  sideChange: false,
  demands: ["standing"],
  equipment: ["bars", "belt"],
  places: ["bars"],
  comfortCheck: "Enough breath to speak?",
  sources: ["common-practice"],
} as const satisfies Transition;
