import { SIDE_LYING_ON_STRONG } from "../side-lying-poses.data.ts";
import type { Position } from "../position.ts";

export const sideLyingOnStrongSide: Position = {
  id: "side-lying-on-strong-side",
  name: "Side-lying on the strong side",
  plainName: "On your strong side",
  isFor: "The weak limbs lie on top where they can move free of the mat; it is the gate to sitting up and to lying prone.",
  purposes: ["comeToSit", "trunkControl", "stanceOnWeak"],
  prerequisites: {
    range: ["The weak shoulder comes forward to sixty degrees without pain."],
    strength: ["None when pillowed."],
    precautions: ["The weak leg stays on its pillow and does not cross after a hip replacement.", "Not long on a sore strong shoulder."],
  },
  setUpWell: [
    "Pillow as high as the shoulder is broad, nose and breastbone in one line.",
    "Strong shoulder drawn a little forward, strong forearm in front of the face.",
    "The weak arm in front on a pillow at the height of the chest, the whole hand supported.",
    "The weak leg ahead on a pillow from knee to foot, the foot not hanging.",
    "Pelvis upright on its side, a pillow behind it if it tips.",
  ],
  helper: { pose: "kneeling", beside: "front", place: "In front on the side the person faces, thighs at the edge." },
  watch: ["The weak arm sliding off behind.", "The weak foot hanging over the end of the pillow.", "The pelvis rolling back."],
  weakShoulder: "The arm lies forward on its pillow so that nothing hangs from the joint; it never trails behind the body.",
  comfortCheck: ["Is the weak arm in front and wholly on its pillow?", "Does the lower ear or shoulder hurt?", "Is the chest free?", "Dizzy after the turn?"],
  wayOut: {
    planned: ["Take the pillows away.", "Roll back with the helper's hands at the weak blade and pelvis.", "Lay the weak arm beside the body."],
    hurry: ["Stay here: it is the place to lie when sick or drowsy.", "Otherwise roll the person back by ribs and pelvis and call."],
    to: "supine",
    minutes: 0.8,
    strengthShare: 0.03,
  },
  demands: [],
  floorStance: true,
  equipment: ["pillow"],
  places: ["bed", "plinth", "raisedMat", "floorMat"],
  pose: SIDE_LYING_ON_STRONG,
  sources: ["common-practice"],
};
