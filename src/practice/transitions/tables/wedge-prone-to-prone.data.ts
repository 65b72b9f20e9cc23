import { PRONE } from "../../positions/prone-poses.data.ts";
import { WEDGE_PRONE } from "../../positions/prone-more-poses.data.ts";
import type { Transition } from "../transition.ts";

export const wedgeProneToProne: Transition = {
  id: "wedge-prone-to-prone",
  name: "Down from the wedge",
  from: "wedge-prone",
  to: "prone",
  steps: [
    { whoMoves: "person", moves: "The strong hand is brought back beside the strong shoulder.", onCount: null, helper: "One palm in front of the weak shoulder, the other on the edge of the wedge.", helperBeside: "weak", words: "Strong hand back and press", pose: WEDGE_PRONE },
    { whoMoves: "both", moves: "The chest grows light and the wedge is drawn out toward the strong side.", onCount: "on three", helper: "Carries the weak upper chest with the forearm while the wedge goes.", helperBeside: "weak", words: "Light, I take it away" },
    { whoMoves: "both", moves: "The chest comes down on the strong side first, the head turning to the easy cheek.", onCount: null, helper: "Lets the weak side down as slowly as the strong arm does.", helperBeside: "weak", words: "Down slowly, turn your head" },
    { whoMoves: "helper", moves: "The weak arm is drawn down beside the body, a towel under the front of its shoulder.", onCount: null, helper: "Carries upper arm and forearm together.", helperBeside: "weak", words: null, pose: PRONE },
  ],
  prerequisites: ["It is begun before the head has tired."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.8,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: false,
  demands: ["pronePressure"],
  equipment: ["pillow"],
  places: ["plinth", "raisedMat", "floorMat"],
  comfortCheck: "Mouth and nose free, weak arm beside the body and warm, low back easy.",
  sources: ["common-practice"],
};
