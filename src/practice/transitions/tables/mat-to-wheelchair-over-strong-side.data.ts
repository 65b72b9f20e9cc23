import { MIDDLE_SEAT_OFF } from "../../activities/poses/sit-to-stand.data.ts";
import { SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { CHAIR_OVER_STRONG } from "../key-poses/sitting.data.ts";
import type { Transition } from "../transition.ts";

export const matToWheelchairOverStrongSide: Transition = {
  id: "mat-to-wheelchair-over-strong-side",
  name: "Mat to chair over the strong side",
  from: "short-sitting",
  to: "short-sitting",
  kind: "leaving",
  steps: [
    { whoMoves: "helper", moves: "The chair is set a third of a turn to the mat on the strong side; brakes on, footrests away, the near armrest off, its seat no higher than the mat.", onCount: null, helper: "One hand never leaves the weak ribs; a second person brings the chair if it stands away.", helperBeside: "weak", words: null, pose: SHORT_SITTING },
    { whoMoves: "person", moves: "The seat scoots to the edge of the mat, hip by hip.", onCount: null, helper: "In front and to the weak side, one hand behind the pelvis, a knee at the weak knee.", helperBeside: "weak", words: "Scoot to the mat's edge" },
    { whoMoves: "both", moves: "The strong foot is set a little ahead toward the chair, the weak foot flat and blocked.", onCount: null, helper: "Shin and foot against the weak shin and foot.", helperBeside: "weak", words: "Point your strong foot there" },
    { whoMoves: "person", moves: "The strong hand goes to the far armrest.", onCount: null, helper: "One hand at the belt with the palm up, the other flat behind the weak blade.", helperBeside: "weak", words: "Take the far armrest" },
    { whoMoves: "both", moves: "The nose goes ahead over the toes, the seat comes off, and the body turns on the strong foot, low, without standing up.", onCount: "on three", helper: "Rocks back in stride; the knee stays at the weak knee; the belt goes with the turn.", helperBeside: "weak", words: "Lean, lift, swing the seat", pose: MIDDLE_SEAT_OFF },
    { whoMoves: "person", moves: "The seat comes down on the chair while counting.", onCount: null, helper: "The hand at the belt lowers; the knee lets go last.", helperBeside: "weak", words: "Feel the seat. Down." },
    { whoMoves: "both", moves: "The seat goes back against the backrest, hip by hip; armrest, footrests and arm support come on, the weak hand in sight.", onCount: null, helper: "Half-kneels in front for the footrests, the person leaning back; looks for a trapped hand or tube.", helperBeside: "front", words: "Slide well back" },
  ],
  keyPoses: CHAIR_OVER_STRONG,
  prerequisites: ["The seat comes off with no more than one helper.", "Sits alone long enough for the helper to set the chair.", "Chair and mat stand level and still; otherwise a lift or two people.", "Done before the legs are tired; with a tired person two helpers."],
  helpersNeeded: 1,
  secondHelper: "Behind, between chair and mat: both hands at the pelvis, moves the seat across on the same count.",
  minutes: 3,
  strengthShare: 0.08,
  kneelDowns: 1,
  sideChange: false,
  demands: ["footPressure", "hipPastNinety", "wristLoad", "suddenStanding"],
  equipment: ["belt", "nonSlip"],
  places: ["bed", "plinth", "raisedMat"],
  comfortCheck: "Seat back, brakes on, feet on the rests, weak arm on its support, bell within the strong hand's reach.",
  sources: ["common-practice", "waters-2007", "lee-2024"],
};
