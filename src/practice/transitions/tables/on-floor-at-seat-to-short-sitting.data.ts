import { HAND_ON_SEAT_KNEELING, KNEES_AT_SEAT, ON_FLOOR_AT_SEAT, RISING_AT_SEAT, STRONG_FOOT_AT_SEAT } from "../../positions/floor-and-arm-poses.data.ts";
import { SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { FLOOR_TO_SEAT } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const onFloorAtSeatToShortSitting: Transition = {
  id: "on-floor-at-seat-to-short-sitting",
  name: "From the floor up onto the seat",
  from: "on-floor-at-seat",
  to: "short-sitting",
  steps: [
    { whoMoves: "person", moves: "The trunk turns toward the seat and the weight goes over the strong hip.", onCount: "one", helper: "Moves the weak knee under, hand on the weak hip.", helperBeside: "weak", words: "Turn to the seat", pose: ON_FLOOR_AT_SEAT },
    { whoMoves: "both", moves: "Up onto both knees, the strong forearm pressing on the seat.", onCount: "two", helper: "Hands at both seat bones, thigh before the weak upper chest.", helperBeside: "weak", words: "Push, up on your knees", pose: KNEES_AT_SEAT },
    { whoMoves: "person", moves: "The strong hand pushes the trunk upright.", onCount: null, helper: "Behind the weak hip, blocking it.", helperBeside: "behind", words: "Tall on both knees", pose: HAND_ON_SEAT_KNEELING },
    { whoMoves: "both", moves: "The strong foot comes through and stands flat beside the seat.", onCount: "three", helper: "Thigh along the weak thigh, hand on the outer weak hip.", helperBeside: "weak", words: "Good foot through", pose: STRONG_FOOT_AT_SEAT },
    { whoMoves: "both", moves: "Strong hand and strong foot push; the weak toes are tucked and the seat of the body rises.", onCount: "on three", helper: "Belt palm up, the other hand flat before the weak shoulder; comes up too.", helperBeside: "behind", words: "Nose over, push up", pose: RISING_AT_SEAT },
    { whoMoves: "both", moves: "A quarter turn on the strong foot and down onto the seat.", onCount: null, helper: "Belt and weak hip, knee before the weak knee.", helperBeside: "weak", words: "Turn, feel it, sit", pose: SHORT_SITTING },
  ],
  keyPoses: FLOOR_TO_SEAT,
  prerequisites: ["Holds half kneeling on the weak knee with a hand on a bench", "A firm seat that cannot slide"],
  helpersNeeded: 2,
  secondHelper: "In front: holds the seat firm, sees to the weak foot and is ready with both hands at the pelvis for the turn.",
  minutes: 3,
  strengthShare: 0.2,
  kneelDowns: 1,
  sideChange: true,
  demands: ["kneePressure", "hipPastNinety", "suddenStanding", "footPressure"],
  equipment: ["stool", "belt"],
  places: ["floorMat"],
  comfortCheck: "Dizzy, pain, colour of the face? Rest before anything else.",
  sources: ["common-practice"],
};
