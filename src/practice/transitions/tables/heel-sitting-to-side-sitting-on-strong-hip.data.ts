import { HEEL_SITTING } from "../../positions/kneeling-more-poses.data.ts";
import { SIDE_SITTING_ON_STRONG } from "../../positions/side-sitting-poses.data.ts";
import { HEELS_TO_SIDE_SITTING_STRONG } from "../key-poses/kneeling.data.ts";
import type { Transition } from "../transition.ts";

export const heelSittingToSideSittingOnStrongHip: Transition = {
  id: "heel-sitting-to-side-sitting-on-strong-hip",
  name: "From the heels onto the strong hip",
  from: "heel-sitting",
  to: "side-sitting-on-strong-hip",
  steps: [
    { whoMoves: "helper", moves: "The roll is drawn out toward the weak side.", onCount: null, helper: "Kneeling behind the weak side, hands on both sides of the pelvis.", helperBeside: "behind", words: null, pose: HEEL_SITTING },
    { whoMoves: "person", moves: "The strong hand goes to the mat beside the strong knee.", onCount: null, helper: "One hand stays at the weak hip, the other on the weak ribs.", helperBeside: "behind", words: "Good hand beside your knee" },
    { whoMoves: "both", moves: "The seat goes over the strong hip and down slowly.", onCount: "two", helper: "Holds the weak side of the pelvis, lets it down.", helperBeside: "behind", words: "Sit beside your heels", pose: SIDE_SITTING_ON_STRONG },
  ],
  keyPoses: HEELS_TO_SIDE_SITTING_STRONG,
  prerequisites: ["The strong arm carries part of the trunk", "Hips that turn without pain"],
  helpersNeeded: 1,
  secondHelper: null,
  minutes: 0.6,
  strengthShare: 0.03,
  kneelDowns: 0,
  sideChange: false,
  demands: ["kneePressure", "hipPastNinety"],
  equipment: [],
  places: ["raisedMat", "floorMat"],
  comfortCheck: "Weak knee easy, strong wrist easy?",
  sources: ["common-practice"],
};
