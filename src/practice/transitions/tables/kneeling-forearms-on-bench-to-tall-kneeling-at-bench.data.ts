import { KNEES_AND_FOREARMS } from "../../positions/kneeling-more-poses.data.ts";
import { KNEELING_AT_BENCH } from "../../positions/kneeling-poses.data.ts";
import type { Transition } from "../transition.ts";

export const kneelingForearmsOnBenchToTallKneelingAtBench: Transition = {
  id: "kneeling-forearms-on-bench-to-tall-kneeling-at-bench",
  name: "Up from the low bench",
  from: "kneeling-forearms-on-bench",
  to: "tall-kneeling-at-bench",
  steps: [
    { whoMoves: "person", moves: "The strong hand pushes on the low bench and the trunk rises.", onCount: "one", helper: "One hand at the weak seat bone, one before the weak shoulder.", helperBeside: "weak", words: "Push up, belly ahead", pose: KNEES_AND_FOREARMS },
    { whoMoves: "helper", moves: "The higher bench takes the place of the low one.", onCount: null, helper: "One hand never leaves the pelvis.", helperBeside: "behind", words: null },
    { whoMoves: "both", moves: "Both forearms are laid on it.", onCount: null, helper: "Carries the weak one.", helperBeside: "weak", words: "Rest on the bench", pose: KNEELING_AT_BENCH },
  ],
  prerequisites: ["Hip extensors that bring the trunk up with a touch"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.8,
  strengthShare: 0.05,
  kneelDowns: 0,
  sideChange: true,
  demands: ["kneePressure"],
  equipment: ["bench"],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Dizzy on coming up, knees easy?",
  sources: ["common-practice"],
};
