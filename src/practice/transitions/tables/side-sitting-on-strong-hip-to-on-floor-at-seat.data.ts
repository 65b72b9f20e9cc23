import { ON_FLOOR_AT_SEAT } from "../../positions/floor-and-arm-poses.data.ts";
import { SIDE_SITTING_ON_STRONG } from "../../positions/side-sitting-poses.data.ts";
import { SIDE_SITTING_TO_FLOOR_SEAT } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const sideSittingOnStrongHipToOnFloorAtSeat: Transition = {
  id: "side-sitting-on-strong-hip-to-on-floor-at-seat",
  name: "To the seat beside you",
  from: "side-sitting-on-strong-hip",
  to: "on-floor-at-seat",
  steps: [
    { whoMoves: "helper", moves: "A firm seat is set against the wall at the strong side.", onCount: null, helper: "One hand stays on the weak shoulder blade.", helperBeside: "weak", words: null, pose: SIDE_SITTING_ON_STRONG },
    { whoMoves: "person", moves: "The strong forearm goes up onto the seat.", onCount: null, helper: "Flat hand on the weak ribs while the hand leaves the floor.", helperBeside: "weak", words: "Forearm up on the seat" },
    { whoMoves: "both", moves: "The knees come round to the front, feet flat.", onCount: "one", helper: "Moves the weak leg under thigh and heel.", helperBeside: "weak", words: "Knees to the front", pose: ON_FLOOR_AT_SEAT },
  ],
  keyPoses: SIDE_SITTING_TO_FLOOR_SEAT,
  prerequisites: ["Side-sits with the strong hand"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.8,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: false,
  demands: ["hipPastNinety"],
  equipment: ["stool"],
  places: ["floorMat"],
  comfortCheck: "Seat firm, weak arm in front, no new pain?",
  sources: ["common-practice"],
};
