import { SIDE_LYING_ON_STRONG } from "../../positions/side-lying-poses.data.ts";
import { SIDE_LYING_TO_PRONE } from "../key-poses/lying.data.ts";
import type { Transition } from "../transition.ts";

export const sideLyingToProne: Transition = {
  id: "side-lying-to-prone",
  name: "From the strong side to prone",
  from: "side-lying-on-strong-side",
  to: "prone",
  steps: [
    { whoMoves: "helper", moves: "A flat pillow is laid where the belly and the shins will come; lines and buckles are cleared.", onCount: null, helper: "In front; one hand on the pelvis.", helperBeside: "front", words: "I make room in front", pose: SIDE_LYING_ON_STRONG },
    { whoMoves: "person", moves: "The strong arm slides up beside the head so that it is not lain on.", onCount: null, helper: "Guides the strong elbow up along the mat.", helperBeside: "front", words: "Arm up by your ear" },
    { whoMoves: "helper", moves: "The weak arm is held along the weak side, elbow straight.", onCount: null, helper: "Holds the weak upper arm and forearm close to the body.", helperBeside: "front", words: "I carry this arm" },
    { whoMoves: "both", moves: "The pelvis rolls forward, then the chest; the face turns to the strong side.", onCount: "on three", helper: "One hand at the weak side of the pelvis, the other keeps the weak shoulder from dropping.", helperBeside: "front", words: "Roll on, slowly, three" },
    { whoMoves: "both", moves: "The weak arm is freed and laid down beside the body or bent up on a pillow; feet over the edge or on a roll.", onCount: null, helper: "Lifts the weak shoulder front with a flat hand while the arm is brought out.", helperBeside: "weak", words: "Is your arm easy?" },
  ],
  keyPoses: SIDE_LYING_TO_PRONE,
  prerequisites: ["Hips come straight.", "Breathing, pressure, feeding tube and airway allow prone.", "The neck turns to one side without pain."],
  helpersNeeded: 1,
  secondHelper: "With lines, a heavy body or a painful weak shoulder: at the weak arm alone.",
  minutes: 1.5,
  strengthShare: 0.04,
  kneelDowns: 0,
  sideChange: true,
  demands: ["pronePressure", "shoulderLoad"],
  equipment: ["pillow"],
  places: ["bed", "plinth", "raisedMat", "floorMat"],
  comfortCheck: "Weak arm not under the body, nose and mouth free, belly soft, no tube pressed.",
  sources: ["common-practice"],
};
