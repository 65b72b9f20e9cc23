import { BED_SITTING } from "../../positions/floor-sitting-poses.data.ts";
import type { Transition } from "../transition.ts";

export const supineToBedSitting: Transition = {
  id: "supine-to-bed-sitting",
  name: "Backrest up",
  from: "supine",
  to: "bed-sitting",
  steps: [
    { whoMoves: "helper", moves: "The bed is raised, the brakes are on, the far rail is up; pulse and pressure are taken.", onCount: null, helper: "Stands at the weak side, one foot ahead.", helperBeside: "weak", words: null },
    { whoMoves: "both", moves: "The person is moved up until the hips lie at the bend.", onCount: "on three", helper: "One hand under the weak side of the pelvis, one behind the weak blade.", helperBeside: "weak", words: "Push with your good foot" },
    { whoMoves: "helper", moves: "The backrest comes up by notches; each is held for some breaths.", onCount: null, helper: "One hand at the weak ribs, eyes on the face.", helperBeside: "weak", words: "Tell me if you are faint" },
    { whoMoves: "both", moves: "The trunk is set in the middle and the weak arm on its pillow.", onCount: null, helper: "Blade forward by a flat hand, then the pillow.", helperBeside: "weak", words: "Middle, and breathe out", pose: BED_SITTING },
  ],
  prerequisites: ["Pressure allows the head up.", "The bed has a backrest that goes up."],
  helpersNeeded: 1,
  secondHelper: "On the other side for moving up the bed, on the same count.",
  minutes: 1.5,
  strengthShare: 0.01,
  kneelDowns: 0,
  sideChange: false,
  demands: ["hipPastNinety"],
  equipment: ["pillow"],
  places: ["bed"],
  comfortCheck: "Clear in the head, hips at the bend, weak arm on its pillow, heels free, bell in reach.",
  sources: ["common-practice"],
};
