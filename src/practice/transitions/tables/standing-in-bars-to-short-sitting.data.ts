import { STANDING_IN_BARS_TO_SEAT } from "../key-poses/standing.data.ts";
import type { Transition } from "../transition.ts";

export const standingInBarsToShortSitting = {
  id: "standing-in-bars-to-short-sitting",
  name: "Standing in the bars to sitting",
  from: "standing-in-bars",
  to: "short-sitting",
  steps: [
    { whoMoves: "person", moves: "Back until the seat touches both calves.", onCount: null, helper: "In front, shin on the weak shin.", helperBeside: "front", words: "Back until it touches" },
    { whoMoves: "person", moves: "Strong hand to the armrest, look down and ahead.", onCount: "one", helper: "Hand behind the pelvis.", helperBeside: "front", words: "Reach for the chair" },
    { whoMoves: "both", moves: "Bend and sit slowly.", onCount: "two", helper: "Knee blocked until seated.", helperBeside: "front", words: "Bend, bend, and sit" },
    { whoMoves: "helper", moves: "Transfer back from the chair to the mat's edge.", onCount: null, helper: "Over the side agreed for this person.", helperBeside: "front", words: null },
  ],
  keyPoses: STANDING_IN_BARS_TO_SEAT,
  prerequisites: [],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 2,
  strengthShare: 0.05,
  kneelDowns: 0,
  sideChange: false,
  demands: ["footPressure"],
  equipment: ["bars", "belt"],
  places: ["bars"],
  comfortCheck: "Seated well back, feet flat, breath easy?",
  sources: ["common-practice"],
} as const satisfies Transition;
