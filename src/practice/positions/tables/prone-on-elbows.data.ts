import type { Position } from "../position.ts";
import { PRONE_ON_ELBOWS } from "../prone-poses.data.ts";

export const proneOnElbows: Position = {
  id: "prone-on-elbows",
  name: "Prone on elbows",
  plainName: "On your front, leaning on your forearms",
  isFor: "The shoulder blades learn to hold the chest, and each arm learns to bear while the other does something. It readies the strong arm for a cane and both for pushing up.",
  purposes: ["armReady", "trunkControl", "deviceReady", "bedMobility"],
  prerequisites: {
    range: ["both shoulders come forward to shoulder height without pain", "elbows bend square", "the low back bends back a little without pain"],
    strength: ["head can be held up for ten seconds", "the strong arm bears the chest with a touch of help"],
    precautions: ["no painful or slipped weak shoulder unless it is cleared and supported", "breathing easy face down", "no unsettled blood pressure"],
  },
  setUpWell: [
    "Each elbow straight under its shoulder, bent square; slid ahead it asks more of the shoulder.",
    "Forearms point ahead, a shoulder's width apart, palms down or a fist on the weak side.",
    "Blades wide, chest off the mat, neck long, eyes on the mat.",
    "Hips straight and heavy, toes over the edge or a roll under the shins.",
  ],
  helper: { pose: "kneeling", beside: "weak", place: "At the weak shoulder, one hand flat in front of it and one on the blade, the thigh along the upper arm so that the hands get free." },
  watch: ["the chest sinking between the blades", "the weak elbow sliding out or ahead", "the neck thrown back", "breath held"],
  weakShoulder: "It is held flat from the front and from behind; nothing pulls on the arm and nothing presses in the armpit.",
  comfortCheck: ["Is the weak hand open and in sight?", "Do elbows or hip bones press?", "Is breathing easy and speech whole?", "Is the low back at ease?"],
  wayOut: {
    planned: ["The helper's hands go to the weak shoulder and the weak upper chest.", "The strong elbow slides out to the side and the chest comes down slowly.", "The weak arm is drawn back beside the body by the helper and the head turned."],
    hurry: ["The helper's palm under the upper chest takes the weight.", "Both elbows are let out and the chest laid down, the face to the side.", "Rest flat; roll to the strong side if breathing is hard."],
    to: "prone",
    minutes: 0.7,
    strengthShare: 0.04,
  },
  demands: ["pronePressure", "shoulderLoad", "neckExtension"],
  floorStance: true,
  equipment: [],
  places: ["plinth", "raisedMat", "floorMat"],
  pose: PRONE_ON_ELBOWS,
  sources: ["common-practice"],
};
