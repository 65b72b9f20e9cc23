import { HAND_ON_SEAT_KNEELING, ON_FLOOR_AT_SEAT, RISING_AT_SEAT, STRONG_FOOT_AT_SEAT } from "../../positions/floor-and-arm-poses.data.ts";
import { SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { SEAT_TO_FLOOR } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const shortSittingToOnFloorAtSeat: Transition = {
  id: "short-sitting-to-on-floor-at-seat",
  name: "From the seat down to the floor",
  from: "short-sitting",
  to: "on-floor-at-seat",
  steps: [
    { whoMoves: "person", moves: "The seat of the body comes to the edge, the strong foot back under it.", onCount: null, helper: "In front and at the weak side, knee before the weak knee.", helperBeside: "weak", words: "Come to the edge", pose: SHORT_SITTING },
    { whoMoves: "both", moves: "Standing up half way with the strong hand on the seat, a quarter turn toward it.", onCount: "on three", helper: "Belt palm up, hand before the weak shoulder.", helperBeside: "weak", words: "Up, turn to the seat", pose: RISING_AT_SEAT },
    { whoMoves: "both", moves: "The weak knee goes down to the pad beside the seat.", onCount: "slowly", helper: "Hand under the weak buttock, thigh behind the weak thigh.", helperBeside: "behind", words: "Weak knee down, slowly", pose: STRONG_FOOT_AT_SEAT },
    { whoMoves: "person", moves: "The strong knee follows.", onCount: null, helper: "Pelvis kept level.", helperBeside: "behind", words: "Other knee beside it", pose: HAND_ON_SEAT_KNEELING },
    { whoMoves: "both", moves: "Over the strong hip to sitting, the strong forearm staying on the seat; knees come to the front.", onCount: "two", helper: "Lowers the weak side of the pelvis, carries the weak leg round.", helperBeside: "weak", words: "Sit to your good side", pose: ON_FLOOR_AT_SEAT },
  ],
  keyPoses: SEAT_TO_FLOOR,
  prerequisites: ["Half kneels with a hand on a bench", "Knees that bear"],
  helpersNeeded: 2,
  secondHelper: "Stands behind: keeps the seat from sliding and takes the belt until the knee is down.",
  minutes: 2.5,
  strengthShare: 0.12,
  kneelDowns: 1,
  sideChange: true,
  demands: ["kneePressure", "hipPastNinety"],
  equipment: ["stool", "belt"],
  places: ["floorMat"],
  comfortCheck: "Any knee pain, weak arm in front?",
  sources: ["common-practice"],
};
