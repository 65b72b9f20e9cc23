import { MIDDLE_SEAT_OFF } from "../../activities/poses/sit-to-stand.data.ts";
import { SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { CHAIR_OVER_STRONG } from "../key-poses/sitting.data.ts";
import type { Transition } from "../transition.ts";

export const wheelchairToMatOverStrongSide: Transition = {
  id: "wheelchair-to-mat-over-strong-side",
  name: "Chair to mat over the strong side",
  from: "short-sitting",
  to: "short-sitting",
  kind: "arrival",
  steps: [
    { whoMoves: "helper", moves: "The chair stands a third of a turn to the mat with the strong side nearest; brakes on, footrests away, the near armrest off, the mat as high as the seat.", onCount: null, helper: "Checks belt, shoes, tubes and the weak arm in the lap; the mat is dry.", helperBeside: "front", words: null },
    { whoMoves: "person", moves: "The seat scoots to the front edge, strong hip and weak hip in turn.", onCount: null, helper: "In front and to the weak side, hands behind the pelvis, a knee at the weak knee.", helperBeside: "weak", words: "Walk your seat to me" },
    { whoMoves: "both", moves: "The strong foot is set a little ahead toward the mat, the weak foot flat and blocked.", onCount: null, helper: "Shin and foot against the weak shin and foot.", helperBeside: "weak", words: "Strong foot points over there" },
    { whoMoves: "person", moves: "The strong hand goes flat on the mat, a seat further.", onCount: null, helper: "One hand at the belt with the palm up, the other flat behind the weak blade.", helperBeside: "weak", words: "Hand on the mat, far over" },
    { whoMoves: "both", moves: "The nose goes ahead over the toes, the seat comes off, and the body turns on the strong foot, low, without standing up.", onCount: "on three", helper: "Rocks back in stride; the knee stays at the weak knee; the belt goes with the turn.", helperBeside: "weak", words: "Nose over, push, and turn", pose: MIDDLE_SEAT_OFF },
    { whoMoves: "person", moves: "The seat comes down on the mat while counting.", onCount: null, helper: "The hand at the belt lowers; the knee lets go last.", helperBeside: "weak", words: "And down, slowly" },
    { whoMoves: "both", moves: "The seat goes back until the thighs are carried; both feet are set, the weak hand laid on the thigh, the chair taken away.", onCount: null, helper: "Sits down beside the weak hip, hand at the ribs, and asks how the head feels.", helperBeside: "weak", words: "Scoot back and sit tall", pose: SHORT_SITTING },
  ],
  keyPoses: CHAIR_OVER_STRONG,
  prerequisites: ["The seat comes off with no more than one helper.", "Sits alone long enough for the helper to set the chair.", "Chair and mat stand level and still; otherwise a lift or two people."],
  helpersNeeded: 1,
  secondHelper: "Behind, between chair and mat: both hands at the pelvis, moves the seat across on the same count.",
  minutes: 3,
  strengthShare: 0.07,
  kneelDowns: 0,
  sideChange: false,
  demands: ["footPressure", "hipPastNinety", "wristLoad", "suddenStanding"],
  equipment: ["belt", "nonSlip"],
  places: ["bed", "plinth", "raisedMat"],
  comfortCheck: "Seat back from the edge, feet flat, weak hand on the thigh, no tube under the seat, clear in the head.",
  sources: ["common-practice", "waters-2007", "lee-2024"],
};
