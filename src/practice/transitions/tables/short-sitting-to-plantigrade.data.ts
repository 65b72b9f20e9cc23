import { HIGH_SEAT_HANDS_ON_KNEES } from "../../activities/poses/sit-to-stand.data.ts";
import { SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { HANDS_ON_TABLE } from "../../positions/table-standing-poses.data.ts";
import type { Transition } from "../transition.ts";

export const shortSittingToPlantigrade: Transition = {
  id: "short-sitting-to-plantigrade",
  name: "Sitting to standing, hands on a table",
  from: "short-sitting",
  to: "plantigrade",
  steps: [
    { whoMoves: "helper", moves: "The table is at hip height, braked, in front; shoes, belt and pressure are seen to.", onCount: null, helper: "In front of the weak knee, sitting or half kneeling.", helperBeside: "weak", words: null, pose: SHORT_SITTING },
    { whoMoves: "person", moves: "To the edge, feet back, hip-wide.", onCount: null, helper: "Sets the weak foot and keeps it with a foot.", helperBeside: "weak", words: "Edge, then feet back" },
    { whoMoves: "both", moves: "The strong hand goes onto the table; the weak palm is laid flat.", onCount: null, helper: "Opens the fingers, carries the arm from below.", helperBeside: "weak", words: "Palms flat" },
    { whoMoves: "person", moves: "Nose over the table, seat off.", onCount: "on three", helper: "In stride: belt, knee block, hand behind the pelvis.", helperBeside: "weak", words: "Nose over, stand up", pose: HIGH_SEAT_HANDS_ON_KNEES },
    { whoMoves: "both", moves: "Hips come ahead until the shoulders are over the hands; elbows long.", onCount: null, helper: "Moves the blocking hand to the back of the weak upper arm.", helperBeside: "weak", words: "Tall arms, soft knees", pose: HANDS_ON_TABLE },
  ],
  prerequisites: ["Stands up from a high seat with one helper", "Wrist that goes back, or a fist"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 1.8,
  strengthShare: 0.07,
  kneelDowns: 0,
  sideChange: false,
  demands: ["suddenStanding", "standing", "footPressure", "hipPastNinety", "wristLoad", "shoulderLoad"],
  equipment: ["table", "belt", "nonSlip"],
  places: ["plinth", "raisedMat"],
  comfortCheck: "Clear head, both heels heavy, fingers open?",
  sources: ["common-practice"],
};
