import type { Position } from "../position.ts";
import { BED_SITTING } from "../floor-sitting-poses.data.ts";

export const bedSitting: Position = {
  id: "bed-sitting",
  name: "Bed sitting, backrest up",
  plainName: "Sitting up in bed",
  isFor: "The first sitting of the day and of the illness: to eat, breathe and look about, with the trunk carried in the middle.",
  purposes: ["sittingBalance", "comeToSit", "trunkControl"],
  prerequisites: {
    range: ["hips bend enough for the backrest"],
    strength: ["the head is held up, or is supported"],
    precautions: ["blood pressure and colour are watched while the backrest comes up", "the swallowing order for upright sitting is known"],
  },
  setUpWell: [
    "The hips lie at the bend of the bed before the backrest goes up.",
    "Backrest up by notches, two minutes at each.",
    "The weak arm on a pillow, blade forward, hand higher than the elbow.",
    "A thin pillow under the knees, none under the heels' weight only.",
  ],
  helper: { pose: "standing", beside: "weak", place: "Standing at the weak side of the raised bed, one hand at the weak ribs, the rail up on the other side." },
  watch: ["sliding down until the bend sits at the ribs", "toppling to the weak side", "going pale or silent as the back comes up", "the weak arm slipping off its pillow"],
  weakShoulder: "The arm is carried on a pillow in front of the body, the blade brought forward by hand and never by pulling the arm.",
  comfortCheck: ["Faint or clear?", "Does the seat slide?", "Is the weak hand on its pillow?", "Are tubes and call bell in reach?"],
  wayOut: {
    planned: ["The backrest goes down by notches.", "The person is moved up the bed.", "Flat on the back, weak arm on its pillow."],
    hurry: ["Backrest flat at once, head turned to the side if sick.", "Legs raised only if the pressure is low.", "Call."],
    to: "supine",
    minutes: 0.6,
    strengthShare: 0.01,
  },
  demands: ["hipPastNinety"],
  floorStance: false,
  equipment: ["pillow"],
  places: ["bed"],
  pose: BED_SITTING,
  sources: ["common-practice"],
};
