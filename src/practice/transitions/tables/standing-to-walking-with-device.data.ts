import { STANDING_WITH_CANE } from "../../positions/upright-poses.data.ts";
import type { Transition } from "../transition.ts";

export const standingToWalkingWithDevice: Transition = {
  id: "standing-to-walking-with-device",
  name: "The cane is taken",
  from: "standing",
  to: "walking-with-device",
  steps: [
    { whoMoves: "helper", moves: "Gives the cane into the strong hand, its height looked at once more; the second person takes the chair.", onCount: null, helper: "Belt first; the cane is handed from the front.", helperBeside: "weak", words: null },
    { whoMoves: "person", moves: "The strong hand leaves the table and leans on the cane.", onCount: "on two", helper: "Hand flat before the weak shoulder.", helperBeside: "weak", words: "Lean on it, let table go", pose: STANDING_WITH_CANE },
  ],
  prerequisites: ["Walks in the bars with one flat hand, or stands a minute without a hand"],
  helpersNeeded: 1,
  secondHelper: "Follows with the chair.",
  minutes: 0.6,
  strengthShare: 0.01,
  kneelDowns: 0,
  sideChange: false,
  demands: ["standing", "footPressure"],
  equipment: ["cane", "belt"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Elbow a little bent, shoulders level?",
  sources: ["common-practice"],
};
