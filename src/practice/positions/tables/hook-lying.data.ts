import { HOOK_LYING } from "../lying-poses.data.ts";
import type { Position } from "../position.ts";

export const hookLying: Position = {
  id: "hook-lying",
  name: "Hook-lying",
  plainName: "On your back, knees bent",
  isFor: "The first working position: feet that press, a trunk that turns, a seat that lifts. It leads to rolling, scooting and the bedpan.",
  purposes: ["liftSeat", "bedMobility", "trunkControl"],
  prerequisites: {
    range: ["About sixty degrees of hip bend and a knee that bends past ninety degrees."],
    strength: ["The weak knee can stay up for five seconds, or is held."],
    precautions: ["Watch a catheter line between the knees.", "Legs do not cross after a hip replacement."],
  },
  setUpWell: [
    "Feet flat and hip-wide, the second toes pointing straight ahead.",
    "Heels a forearm's length from the seat; nearer for the bridge.",
    "The weak foot on non-slip, blocked if it creeps.",
    "Both knees pointing at the ceiling, a fist apart.",
    "The weak arm long beside the body or on a pillow.",
  ],
  helper: { pose: "kneeling", beside: "weak", place: "Beside the weak knee and foot, one hand free for the weak knee." },
  watch: ["The weak knee falling outward.", "The weak foot sliding away.", "The low back arching as the legs tire."],
  weakShoulder: "The arm lies supported out of the way; the person is not turned or moved up by it.",
  comfortCheck: ["Has the weak hand room beside the hip?", "Is the sheet smooth under the seat?", "Can the person talk in whole sentences?", "Light in the head or not?"],
  wayOut: {
    planned: ["Let the strong leg slide down.", "Hold the weak knee and heel and lower that leg.", "Rest on the back."],
    hurry: ["Support both knees on your forearm and let the legs down together.", "Turn to the strong side if the person is sick or drowsy."],
    to: "supine",
    minutes: 0.5,
    strengthShare: 0.02,
  },
  demands: [],
  floorStance: true,
  equipment: ["pillow", "nonSlip"],
  places: ["bed", "plinth", "raisedMat", "floorMat"],
  pose: HOOK_LYING,
  sources: ["common-practice"],
};
