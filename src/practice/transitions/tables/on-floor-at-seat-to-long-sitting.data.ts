import { ON_FLOOR_AT_SEAT } from "../../positions/floor-and-arm-poses.data.ts";
import { LONG_SITTING } from "../../positions/sitting-poses.data.ts";
import type { Transition } from "../transition.ts";

export const onFloorAtSeatToLongSitting: Transition = {
  id: "on-floor-at-seat-to-long-sitting",
  name: "Away from the seat",
  from: "on-floor-at-seat",
  to: "long-sitting",
  steps: [
    { whoMoves: "person", moves: "The strong hand comes down to the floor beside the hip.", onCount: null, helper: "Half kneeling behind the weak side, thigh at the back.", helperBeside: "weak", words: "Hand beside your hip", pose: ON_FLOOR_AT_SEAT },
    { whoMoves: "both", moves: "The strong knee goes long, the helper lays the weak one beside it.", onCount: "one", helper: "One hand on the back, one under the weak thigh.", helperBeside: "weak", words: "Long legs, slowly", pose: LONG_SITTING },
  ],
  prerequisites: ["Sits with one arm for support"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.4,
  strengthShare: 0.02,
  kneelDowns: 0,
  sideChange: false,
  demands: [],
  equipment: [],
  places: ["floorMat"],
  comfortCheck: "Back upright, weak heel free?",
  sources: ["common-practice"],
};
