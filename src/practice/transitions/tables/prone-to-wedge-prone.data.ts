import { PRONE } from "../../positions/prone-poses.data.ts";
import { WEDGE_PRONE } from "../../positions/prone-more-poses.data.ts";
import type { Transition } from "../transition.ts";

export const proneToWedgeProne: Transition = {
  id: "prone-to-wedge-prone",
  name: "Chest up onto a wedge",
  from: "prone",
  to: "wedge-prone",
  steps: [
    { whoMoves: "helper", moves: "The wedge is laid ready on the strong side at the height of the breastbone, its low end toward the feet.", onCount: null, helper: "Kneels at the weak shoulder; the second hand stays on the back.", helperBeside: "weak", words: "I lay the wedge beside you", pose: PRONE },
    { whoMoves: "helper", moves: "The weak arm is brought out and ahead along the mat, below shoulder height.", onCount: null, helper: "Carries upper arm and forearm together, the elbow bending on the way.", helperBeside: "weak", words: "Your arm comes with me" },
    { whoMoves: "person", moves: "The strong hand comes beside the strong shoulder, elbow up.", onCount: null, helper: "One palm goes in front of the weak shoulder, one on its blade.", helperBeside: "weak", words: "Strong hand by your shoulder" },
    { whoMoves: "both", moves: "The strong hand presses, the chest rises on that side, and the wedge is slid under the breastbone.", onCount: "on three", helper: "The palm in front carries the weak side; the second helper or the free forearm slides the wedge.", helperBeside: "weak", words: "Press up, chest over, three" },
    { whoMoves: "both", moves: "The chest settles, both forearms are laid down ahead of the wedge.", onCount: null, helper: "Sets the weak elbow ahead of its shoulder and opens the hand.", helperBeside: "weak", words: "Settle and tell me how", pose: WEDGE_PRONE },
  ],
  prerequisites: ["Lies face down two minutes with easy breath.", "The strong arm can press the chest up by a hand's breadth, or there is a second helper."],
  helpersNeeded: 1,
  secondHelper: "With a heavy chest or a weak press: at the strong side, slides the wedge under while the first carries the weak shoulder.",
  minutes: 1.5,
  strengthShare: 0.04,
  kneelDowns: 1,
  sideChange: false,
  demands: ["pronePressure", "shoulderLoad", "neckExtension"],
  equipment: ["wedge"],
  places: ["plinth", "raisedMat", "floorMat"],
  comfortCheck: "Throat and belly clear of the wedge, breath easy, weak hand open and in sight.",
  sources: ["common-practice"],
};
