import type { Position } from "../position.ts";
import { PRONE } from "../prone-poses.data.ts";

export const prone: Position = {
  id: "prone",
  name: "Prone",
  plainName: "Flat on your front",
  isFor: "It lets the fronts of the hips and knees lengthen after much sitting, and it is the door to lying on the elbows and to the floor.",
  purposes: ["bedMobility", "armReady", "floorRecovery"],
  prerequisites: {
    range: ["hips straight without a hollow back", "the head turns to one side, or a face hole is used", "ankles point, or the feet hang over the edge"],
    strength: ["none: it can be reached with full help"],
    precautions: ["breathing is easy face down", "nothing on the chest or abdomen that must not be pressed", "the last meal or feed was long enough ago"],
  },
  setUpWell: [
    "A flat pillow under the abdomen where the low back is stiff.",
    "Toes over the edge, or a roll under the shins.",
    "Head turned to the side that breathes easier, mouth and nose free.",
    "The weak arm beside the body with a folded towel under the front of its shoulder.",
    "Buckles, tubes and glasses out of the way.",
  ],
  helper: { pose: "kneeling", beside: "weak", place: "Low at the weak side, level with the ribs, one hand free for the weak arm; standing where the mat is raised." },
  watch: ["colour of the face and the sound of the breath", "the weak arm under the body", "the head pressed into the mat", "a low back that hollows and hurts"],
  weakShoulder: "The towel under the front of the weak shoulder keeps it from dropping to the mat; the arm stays below shoulder height.",
  comfortCheck: ["Is the weak arm free, with its palm down?", "Does anything press: buckle, tube, catheter?", "Can a whole sentence be spoken?", "Is the neck easy on this side?"],
  wayOut: {
    planned: ["The strong arm is brought under the strong shoulder; the weak arm stays along the body.", "The helper kneels on the strong side and takes the weak hip and the back of the weak shoulder blade.", "On three the person rolls over the strong side to side-lying, the weak arm carried along in front."],
    hurry: ["The helper slides the strong arm down along the body and tucks it.", "With one hand at the far hip and one at the far blade the person is rolled to the strong side in one pull.", "Chin forward, mouth free, call for help."],
    to: "side-lying-on-strong-side",
    minutes: 1.5,
    strengthShare: 0.08,
  },
  demands: ["pronePressure"],
  floorStance: true,
  equipment: ["pillow"],
  places: ["bed", "plinth", "raisedMat", "floorMat"],
  pose: PRONE,
  sources: ["common-practice", "prone-pressure-points"],
};
