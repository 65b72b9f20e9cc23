import { SEAT_TO_STANDING_IN_BARS } from "../key-poses/standing.data.ts";
import type { Transition } from "../transition.ts";

export const shortSittingToStandingInBars = {
  id: "short-sitting-to-standing-in-bars",
  name: "Sitting to standing in the bars",
  from: "short-sitting",
  to: "standing-in-bars",
  steps: [
    { whoMoves: "helper", moves: "Transfer to a chair set inside the bars; brakes on, shoes, belt.", onCount: null, helper: "In front, knee to the weak knee.", helperBeside: "front", words: null },
    { whoMoves: "person", moves: "Seat to the edge, feet back and hip-wide, strong hand on the armrest.", onCount: null, helper: "Weak foot placed and blocked.", helperBeside: "front", words: "Come to the edge" },
    { whoMoves: "both", moves: "Nose over toes and up; the strong hand goes to the bar.", onCount: "three", helper: "Shin on the weak shin, hand behind the pelvis or on the belt.", helperBeside: "front", words: "Nose over toes, stand" },
    { whoMoves: "helper", moves: "Wait, look at the face, pressure if it fell before.", onCount: null, helper: "Knee stays at the weak knee.", helperBeside: "front", words: "Stand and look ahead" },
  ],
  keyPoses: SEAT_TO_STANDING_IN_BARS,
  prerequisites: ["Stands up from a high seat with no more than one helper"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 3,
  strengthShare: 0.08,
  kneelDowns: 0,
  sideChange: false,
  demands: ["suddenStanding", "standing", "footPressure"],
  equipment: ["bars", "belt"],
  places: ["bars"],
  comfortCheck: "Dizzy, both heels down, belt snug?",
  sources: ["common-practice"],
} as const satisfies Transition;
