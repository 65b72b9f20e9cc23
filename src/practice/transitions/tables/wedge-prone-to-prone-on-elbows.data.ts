import { PRONE_ON_ELBOWS } from "../../positions/prone-poses.data.ts";
import { WEDGE_PRONE } from "../../positions/prone-more-poses.data.ts";
import type { Transition } from "../transition.ts";

export const wedgeProneToProneOnElbows: Transition = {
  id: "wedge-prone-to-prone-on-elbows",
  name: "From the wedge onto both elbows",
  from: "wedge-prone",
  to: "prone-on-elbows",
  steps: [
    { whoMoves: "helper", moves: "The weak elbow is drawn back until it stands under its shoulder.", onCount: null, helper: "One hand round the upper arm just above the elbow, the other in front of the shoulder.", helperBeside: "weak", words: "This elbow goes under you", pose: WEDGE_PRONE },
    { whoMoves: "person", moves: "The strong elbow is set under its shoulder.", onCount: null, helper: "The near thigh closes on the weak upper arm.", helperBeside: "weak", words: "Now your strong elbow" },
    { whoMoves: "both", moves: "Both forearms press, the chest grows light, and the wedge is drawn out toward the feet.", onCount: "on three", helper: "One palm stays in front of the weak shoulder; the other draws the wedge.", helperBeside: "weak", words: "Press, grow light, and hold", pose: PRONE_ON_ELBOWS },
  ],
  prerequisites: ["Holds the chest light on the wedge for a count of ten.", "The weak shoulder bears its share without pain."],
  helpersNeeded: 1,
  secondHelper: "Draws the wedge, so that the first keeps both hands at the weak shoulder.",
  minutes: 0.7,
  strengthShare: 0.04,
  kneelDowns: 0,
  sideChange: false,
  demands: ["pronePressure", "shoulderLoad", "neckExtension"],
  equipment: [],
  places: ["plinth", "raisedMat", "floorMat"],
  comfortCheck: "Both elbows under the shoulders, blades wide, breath easy.",
  sources: ["common-practice"],
};
