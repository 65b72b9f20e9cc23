import { SUPINE } from "../lying-poses.data.ts";
import type { Position } from "../position.ts";

export const supine: Position = {
  id: "supine",
  name: "Supine",
  plainName: "On your back, legs straight",
  isFor: "Rest, care of the weak arm and the start of every way out of bed. It asks nothing of balance and is the place to return to when in doubt.",
  purposes: ["armReady", "bedMobility"],
  prerequisites: {
    range: ["Hips that come straight, or a pillow under the knees."],
    strength: ["None."],
    precautions: ["Head raised where a feeding tube runs, with breathlessness, or late in pregnancy."],
  },
  setUpWell: [
    "One thin pillow under the head; the nose points at the ceiling.",
    "A folded towel under the weak shoulder blade so that it does not sink back.",
    "The weak arm on a pillow a little away from the body, hand higher than the elbow.",
    "A small roll outside the weak thigh keeps the knee and toes up.",
    "Nothing presses against the soles of the feet.",
  ],
  helper: { pose: "kneeling", beside: "weak", place: "Beside the weak hip, one hand's breadth from the mat's edge." },
  watch: ["The weak leg rolling outward.", "The weak shoulder lying lower than the other.", "Coughing after swallowing: raise the head.", "Heels lying hard on one spot."],
  weakShoulder: "It is kept forward by a towel under the blade and by a pillow under the whole arm; nobody lifts the arm by the hand.",
  comfortCheck: ["Is the weak arm in sight and free?", "Does a buckle, tube or fold press?", "Is breathing easy?", "Any dizziness?"],
  wayOut: {
    planned: ["Bend both knees, the strong foot bringing the weak one.", "Roll to the strong side with the strong hand holding the weak forearm.", "Come up over the strong elbow."],
    hurry: ["Turn the whole body onto the strong side with hands behind weak shoulder blade and pelvis.", "Keep the airway free and call."],
    to: "side-lying-on-strong-side",
    minutes: 1.5,
    strengthShare: 0.05,
  },
  demands: [],
  floorStance: true,
  equipment: ["pillow"],
  places: ["bed", "plinth", "raisedMat", "floorMat"],
  pose: SUPINE,
  sources: ["common-practice", "canadian-stroke-shoulder-2019"],
};
