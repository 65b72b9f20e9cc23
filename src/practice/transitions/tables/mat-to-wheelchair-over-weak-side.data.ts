import { MIDDLE_SEAT_OFF } from "../../activities/poses/sit-to-stand.data.ts";
import { SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { CHAIR_OVER_WEAK } from "../key-poses/sitting.data.ts";
import type { Transition } from "../transition.ts";

export const matToWheelchairOverWeakSide: Transition = {
  id: "mat-to-wheelchair-over-weak-side",
  name: "Mat to chair over the weak side",
  from: "short-sitting",
  to: "short-sitting",
  kind: "leaving",
  steps: [
    { whoMoves: "helper", moves: "The chair is set a third of a turn to the mat on the weak side; brakes on, footrests away, the near armrest off, its seat no higher than the mat.", onCount: null, helper: "One hand never leaves the weak ribs; a second person brings the chair if it stands away.", helperBeside: "weak", words: null, pose: SHORT_SITTING },
    { whoMoves: "person", moves: "The seat scoots to the edge of the mat, hip by hip.", onCount: null, helper: "In front and to the weak side, one hand behind the pelvis, a knee at the weak knee.", helperBeside: "weak", words: "To the edge, one hip, other" },
    { whoMoves: "both", moves: "The weak foot is placed by hand toward the chair, flat on a non-slip mat; the strong foot a little behind it.", onCount: null, helper: "Half-sitting in front, both knees on either side of the weak knee.", helperBeside: "front", words: "Look where your foot stands" },
    { whoMoves: "person", moves: "The strong hand pushes from the mat beside the strong hip.", onCount: null, helper: "One hand at the belt on the weak side with the palm up, the other flat behind the weak blade; the weak arm stays in the lap.", helperBeside: "front", words: "Push from the mat" },
    { whoMoves: "both", moves: "The nose goes ahead, the seat comes off a hand's breadth, and the body is turned in two small turns with a rest on the way if there is a board.", onCount: "on three", helper: "Both knees guard the weak knee from folding and from snapping back; the trunk leans to the helper, not over the weak hip.", helperBeside: "front", words: "Weight to me and round", pose: MIDDLE_SEAT_OFF },
    { whoMoves: "person", moves: "The seat comes down on the chair; the strong hand reaches across to it.", onCount: null, helper: "Lowers by the belt and holds the weak knee until the seat is safe.", helperBeside: "front", words: "Reach across, sit, slide back" },
    { whoMoves: "both", moves: "The seat goes back against the backrest, hip by hip; armrest, footrests and arm support come on, the weak hand in sight.", onCount: null, helper: "Half-kneels in front for the footrests, the person leaning back; looks for a trapped hand or tube.", helperBeside: "front", words: "Back against the backrest" },
  ],
  keyPoses: CHAIR_OVER_WEAK,
  prerequisites: ["The seat comes off with no more than one helper.", "Sits alone long enough for the helper to set the chair.", "Chair and mat stand level and still; otherwise a lift or two people.", "The weak knee holds with a block; no pushing toward the weak side.", "Done before the legs are tired; with a tired person two helpers."],
  helpersNeeded: 1,
  secondHelper: "Behind the person with both hands at the pelvis; needed where the weak knee folds, with neglect of that side or with pushing.",
  minutes: 3.5,
  strengthShare: 0.1,
  kneelDowns: 1,
  sideChange: false,
  demands: ["footPressure", "hipPastNinety", "suddenStanding"],
  equipment: ["belt", "nonSlip"],
  places: ["bed", "plinth", "raisedMat"],
  comfortCheck: "Seat back, brakes on, feet on the rests, weak arm on its support, bell within the strong hand's reach.",
  sources: ["common-practice", "waters-2007", "lee-2024"],
};
