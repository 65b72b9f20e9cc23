import type { Position } from "../position.ts";
import { WEDGE_PRONE } from "../prone-more-poses.data.ts";

export const wedgeProne: Position = {
  id: "wedge-prone",
  name: "Prone over a wedge",
  plainName: "Over a wedge, face down",
  isFor: "The wedge carries the chest so that head, blades and hands can work ahead of the body: a half-way house between lying flat and lying on the elbows.",
  purposes: ["armReady", "trunkControl", "floorRecovery"],
  prerequisites: {
    range: ["the weak arm comes ahead to shoulder height without pain", "hips nearly straight", "the head can be held in the middle"],
    strength: ["the head can be lifted for a few seconds; the wedge does the rest"],
    precautions: ["breathing is easy with the chest pressed", "no tube, wound or port where the wedge lies", "an hour since the last meal or feed"],
  },
  setUpWell: [
    "The high edge of the wedge under the breastbone, clear of throat and belly.",
    "An arm to each side of it, forearms on the mat ahead, the weak hand open.",
    "A pad under the knees, the tops of the feet over the end or on a roll.",
    "A towel between the wedge and bare skin; buckles and glasses off.",
  ],
  helper: { pose: "kneeling", beside: "weak", place: "Low at the weak shoulder with one palm ready in front of it and the other on the blade." },
  watch: ["the wedge creeping up to the throat", "the weak shoulder gliding forward over the edge", "breath that grows short or noisy", "a low back that hollows"],
  weakShoulder: "The weak elbow lies ahead of its shoulder on the mat, so that nothing hangs; a palm in front of the shoulder keeps its head back whenever the strong arm lifts.",
  comfortCheck: ["Can you speak a whole sentence?", "Does the edge press anywhere: throat, breast, belly?", "Is the weak hand free and warm?", "Is the low back easy?"],
  wayOut: {
    planned: ["The strong hand is brought beside the strong shoulder and takes the weight of the chest.", "The helper draws the wedge out toward the strong side, one palm in front of the weak shoulder.", "The chest comes down slowly, the head turns to the easy side, and the weak arm is laid beside the body."],
    hurry: ["Over the strong side with the wedge: one hand behind the weak shoulder blade, one behind the weak hip.", "In side-lying the wedge is pushed away, the chin brought forward and help called."],
    to: "prone",
    minutes: 0.8,
    strengthShare: 0.04,
  },
  demands: ["pronePressure", "neckExtension"],
  floorStance: true,
  equipment: ["wedge"],
  places: ["plinth", "raisedMat", "floorMat"],
  pose: WEDGE_PRONE,
  sources: ["common-practice", "prone-pressure-points"],
};
