import type { Position } from "../position.ts";
import { LONG_SITTING } from "../sitting-poses.data.ts";

export const longSitting: Position = {
  id: "long-sitting",
  name: "Long sitting",
  plainName: "Sitting with your legs straight out",
  isFor: "Sitting up in bed, drawing on socks and moving along the mat; the trunk learns to stay over the hips without the feet helping.",
  purposes: ["sittingBalance", "trunkControl", "bedMobility", "comeToSit"],
  prerequisites: {
    range: ["straight legs come up far enough that the pelvis can stand upright; otherwise the knees are bent over a roll", "the strong wrist bends back for propping, or a fist is used"],
    strength: ["the head is held up alone", "the trunk stays up with a helper's thigh behind it"],
    precautions: ["a hip with a bending limit stays within it", "blood pressure is watched on first sitting up"],
  },
  setUpWell: [
    "Pelvis upright before the shoulders; a wedge under the seat where it rolls back.",
    "Legs a little apart, kneecaps to the ceiling.",
    "The weak hand on the weak thigh, palm down and in sight.",
    "Space on all sides, no edge within an arm's length on the weak side.",
  ],
  helper: { pose: "halfKneeling", beside: "weak", place: "Half-kneeling behind and to the weak side, the near thigh as a backrest: steadier for the helper than both knees." },
  watch: ["the seat sliding ahead into a round back", "a lean back and to the weak side that is not felt", "dizziness in the first minute", "knees that bend as the hamstrings pull"],
  weakShoulder: "The weak hand rests on the thigh so that the arm does not hang; the trunk is steadied at ribs and pelvis, not by the arm.",
  comfortCheck: ["Dizzy or clear?", "Is the weak hand where it can be seen?", "Do the backs of the legs pull?", "Is the catheter tube slack?"],
  wayOut: {
    planned: ["The strong hand is set behind, then the strong elbow goes down.", "The helper takes the weak shoulder blade and lowers it while the person goes down over the strong elbow.", "Head on the pillow last, the weak arm laid on the belly."],
    hurry: ["The helper's thigh and arm take the back.", "The trunk is lowered straight back to the mat, head held.", "If pale, legs are raised only when the pressure is low."],
    to: "supine",
    minutes: 0.8,
    strengthShare: 0.05,
  },
  demands: ["hipPastNinety"],
  floorStance: true,
  equipment: [],
  places: ["bed", "plinth", "raisedMat", "floorMat"],
  pose: LONG_SITTING,
  sources: ["common-practice"],
};
