import { MIDDLE_SEAT_OFF } from "../../activities/poses/sit-to-stand.data.ts";
import { SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { CHAIR_OVER_WEAK } from "../key-poses/sitting.data.ts";
import type { Transition } from "../transition.ts";

export const wheelchairToMatOverWeakSide: Transition = {
  id: "wheelchair-to-mat-over-weak-side",
  name: "Chair to mat over the weak side",
  from: "short-sitting",
  to: "short-sitting",
  kind: "arrival",
  steps: [
    { whoMoves: "helper", moves: "The chair stands a third of a turn to the mat with the weak side nearest; brakes on, footrests away, the near armrest off, the mat as high as the seat.", onCount: null, helper: "Checks belt, shoes, tubes and the weak arm in the lap; the mat is dry.", helperBeside: "front", words: null },
    { whoMoves: "person", moves: "The seat scoots to the front edge, strong hip and weak hip in turn.", onCount: null, helper: "In front and to the weak side, hands behind the pelvis, a knee at the weak knee.", helperBeside: "weak", words: "Come ahead, hip by hip" },
    { whoMoves: "both", moves: "The weak foot is placed by hand toward the mat, flat on a non-slip mat; the strong foot a little behind it.", onCount: null, helper: "Half-sitting in front, both knees on either side of the weak knee.", helperBeside: "front", words: "I set this foot first" },
    { whoMoves: "person", moves: "The strong hand pushes from the armrest beside the strong hip.", onCount: null, helper: "One hand at the belt on the weak side with the palm up, the other flat behind the weak blade; the weak arm stays in the lap.", helperBeside: "front", words: "Push from the armrest" },
    { whoMoves: "both", moves: "The nose goes ahead, the seat comes off a hand's breadth, and the body is turned in two small turns with a rest on the way if there is a board.", onCount: "on three", helper: "Both knees guard the weak knee from folding and from snapping back; the trunk leans to the helper, not over the weak hip.", helperBeside: "front", words: "Lean to me, small turn", pose: MIDDLE_SEAT_OFF },
    { whoMoves: "person", moves: "The seat comes down on the mat; the strong hand reaches across to it.", onCount: null, helper: "Lowers by the belt and holds the weak knee until the seat is safe.", helperBeside: "front", words: "Reach over and sit down" },
    { whoMoves: "both", moves: "The seat goes back until the thighs are carried; both feet are set, the weak hand laid on the thigh, the chair taken away.", onCount: null, helper: "Sits down beside the weak hip, hand at the ribs, and asks how the head feels.", helperBeside: "weak", words: "Back a little. All well?", pose: SHORT_SITTING },
  ],
  keyPoses: CHAIR_OVER_WEAK,
  prerequisites: ["The seat comes off with no more than one helper.", "Sits alone long enough for the helper to set the chair.", "Chair and mat stand level and still; otherwise a lift or two people.", "The weak knee holds with a block; no pushing toward the weak side."],
  helpersNeeded: 1,
  secondHelper: "Behind the person with both hands at the pelvis; needed where the weak knee folds, with neglect of that side or with pushing.",
  minutes: 3.5,
  strengthShare: 0.09,
  kneelDowns: 0,
  sideChange: false,
  demands: ["footPressure", "hipPastNinety", "suddenStanding"],
  equipment: ["belt", "nonSlip"],
  places: ["bed", "plinth", "raisedMat"],
  comfortCheck: "Seat back from the edge, feet flat, weak hand on the thigh, no tube under the seat, clear in the head.",
  sources: ["common-practice", "waters-2007", "lee-2024"],
};
