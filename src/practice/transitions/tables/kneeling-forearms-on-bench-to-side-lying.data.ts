import { FOREARMS_ROCKED_BACK } from "../../positions/kneeling-more-poses.data.ts";
import type { Transition } from "../transition.ts";

export const kneelingForearmsOnBenchToSideLying: Transition = {
  id: "kneeling-forearms-on-bench-to-side-lying",
  name: "From the low bench down to the strong side",
  from: "kneeling-forearms-on-bench",
  to: "side-lying-on-strong-side",
  steps: [
    { whoMoves: "person", moves: "The hips rock back toward the heels.", onCount: "one", helper: "At the weak side, thigh near the chest.", helperBeside: "weak", words: "Rock back and rest", pose: FOREARMS_ROCKED_BACK },
    { whoMoves: "person", moves: "The strong hand comes down to the mat beside the bench.", onCount: null, helper: "Holds the weak forearm on the bench from above.", helperBeside: "weak", words: "Good hand to the mat" },
    { whoMoves: "both", moves: "The seat goes over the strong hip, the weak arm comes along in front.", onCount: "two", helper: "One hand at the weak side of the pelvis, one under the weak forearm.", helperBeside: "weak", words: "Sit to your good side" },
    { whoMoves: "both", moves: "Down on the strong forearm, then onto the strong side.", onCount: "three", helper: "Goes round behind, keeps the weak arm in front of the trunk.", helperBeside: "behind", words: "Down on your elbow" },
  ],
  prerequisites: ["The strong arm lowers the trunk"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1.2,
  strengthShare: 0.05,
  kneelDowns: 0,
  sideChange: true,
  demands: ["kneePressure"],
  equipment: [],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Weak arm in front and free, breath easy?",
  sources: ["common-practice"],
};
