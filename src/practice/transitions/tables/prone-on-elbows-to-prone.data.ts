import { PRONE, PRONE_ON_ELBOWS } from "../../positions/prone-poses.data.ts";
import { ELBOWS_TO_PRONE } from "../key-poses/lying.data.ts";
import type { Transition } from "../transition.ts";

export const proneOnElbowsToProne: Transition = {
  id: "prone-on-elbows-to-prone",
  name: "Down from both elbows",
  from: "prone-on-elbows",
  to: "prone",
  steps: [
    { whoMoves: "helper", moves: "The support goes from the blade to the upper chest.", onCount: null, helper: "One palm under the weak upper chest, the other in front of the weak shoulder.", helperBeside: "weak", words: null, pose: PRONE_ON_ELBOWS },
    { whoMoves: "person", moves: "The strong elbow slides out to the side and the chest comes down on that side first.", onCount: null, helper: "The palm under the chest lets down as slowly as the strong side does.", helperBeside: "weak", words: "Slide out and down slowly" },
    { whoMoves: "both", moves: "The head turns to the side that breathes easier and rests.", onCount: null, helper: "Guides the forehead with one hand; the other keeps the weak shoulder off its front.", helperBeside: "weak", words: "Turn your head and rest" },
    { whoMoves: "helper", moves: "The weak arm is drawn down beside the body and a towel laid under the front of the shoulder.", onCount: null, helper: "Carries upper arm and forearm together and does not lift the elbow high.", helperBeside: "weak", words: null, pose: PRONE },
  ],
  keyPoses: ELBOWS_TO_PRONE,
  prerequisites: ["Strength is kept for it: it is begun before the chest sinks by itself."],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.7,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: false,
  demands: ["pronePressure"],
  equipment: ["pillow"],
  places: ["plinth", "raisedMat", "floorMat"],
  comfortCheck: "Mouth and nose free, weak arm beside the body, nothing pressing in front.",
  sources: ["common-practice"],
};
