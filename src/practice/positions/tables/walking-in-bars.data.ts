import type { Position } from "../position.ts";
import { STANDING_ONE_HAND } from "../standing-poses.data.ts";

export const walkingInBars = {
  id: "walking-in-bars",
  name: "Walking in the parallel bars",
  plainName: "Walking in the bars",
  isFor: "First steps in the order hand, weak foot, strong foot.",
  purposes: ["stepping", "swingWeakLeg", "deviceReady"],
  prerequisites: {
    range: ["Weak toes clear the floor, with an orthosis if needed"],
    strength: ["The weak leg holds while the strong heel lifts"],
    precautions: ["Pressure settled in standing", "Weight-bearing order allows it"],
  },
  setUpWell: ["As for standing", "A second person follows with the seat", "Tape marks on the floor"],
  helper: { pose: "strideStanding", beside: "weak", place: "Inside the bars, behind and at the weak side, belt in one hand." },
  watch: ["the weak foot catching", "the knee snapping back", "hurrying"],
  weakShoulder: "Flat hand before the weak shoulder; the arm in a support or on the bar, never pulled.",
  comfortCheck: ["Enough breath to speak?", "Foot sore in the shoe?"],
  wayOut: {
    planned: ["Stop with both feet level.", "The seat is brought until it touches the calves.", "Sit on a count, knee blocked."],
    hurry: ["Stop, hold the belt, block the knee.", "The second person brings the seat under."],
    to: "short-sitting",
    minutes: 0.75,
    strengthShare: 0.07,
  },
  demands: ["standing", "footPressure"],
  floorStance: false,
  equipment: ["bars", "belt"],
  places: ["bars"],
  pose: STANDING_ONE_HAND,
  sources: ["common-practice"],
} as const satisfies Position;
