import { STRONG_FOOT_DRAWS_WEAK, WEAK_LEG_STRAIGHT } from "../../positions/leg-poses.data.ts";
import { HOOK_LYING, SUPINE } from "../../positions/lying-poses.data.ts";
import { PRONE, PRONE_ON_ELBOWS } from "../../positions/prone-poses.data.ts";
import { ROLL_STRONG_BEGUN, ROLL_WEAK_NEARLY_OVER, ROLL_WEAK_REACHING } from "../../positions/rolling-poses.data.ts";
import { SIDE_LYING_ON_STRONG, SIDE_LYING_ON_WEAK, STRONG_FOREARM_PROP_LOW, STRONG_HAND_PROP } from "../../positions/side-lying-poses.data.ts";
import { SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { FACE_DOWN_FOREARMS_AHEAD, FACE_DOWN_STRONG_ARM_UP, LOW_ON_ELBOWS, ROLLING_FACE_DOWN, ROLLING_TO_STRONG_LEGS_TOGETHER, ROLLING_TO_STRONG_WEAK_LEG_DOWN, ROLLING_TO_WEAK_ARM_ON_BODY, STRONG_FOREARM_PROP_FEET_TOGETHER } from "../lying-and-sitting-poses.data.ts";
import type { KeyPose } from "../transition.ts";
import {
  AT_STRONG_EDGE,
  AT_STRONG_EDGE_KNEES,
  AT_STRONG_EDGE_PILLOWS,
  AT_WEAK_BLADE,
  AT_WEAK_BLADE_OVER,
  AT_WEAK_KNEE,
  AT_WEAK_KNEE_PRESSING,
  BRAKES_ROLL_BACK,
  CARRIES_WEAK_ARM_AHEAD,
  FEELS_WEAK_BLADE,
  FOLLOWS_HAND,
  FREES_WEAK_ARM,
  LAYS_WEAK_LIMBS,
  LEGS_AND_HIP,
  ROLLS_BACK_FROM_FRONT,
  ROLLS_ONTO_FRONT,
  SHOULDER_FRONT_AND_BACK,
  STEADIES_ON_ELBOW,
} from "./lying-helpers.data.ts";
import { SITS_BEFORE_WEAK_KNEE } from "./sitting-helpers.data.ts";

/** Key moments of the ways between lying on the back, the sides and the front, and to the edge. */

export const SUPINE_TO_HOOK_LYING: readonly KeyPose[] = [
  { step: 3, pose: STRONG_FOOT_DRAWS_WEAK, helper: AT_WEAK_KNEE, onThigh: null, weakArm: "spare" },
  { step: 4, pose: HOOK_LYING, helper: AT_WEAK_KNEE_PRESSING, onThigh: null, weakArm: "spare" },
];
export const HOOK_LYING_TO_SUPINE: readonly KeyPose[] = [
  { step: 1, pose: WEAK_LEG_STRAIGHT, helper: AT_WEAK_KNEE, onThigh: null, weakArm: "spare" },
  { step: 3, pose: SUPINE, helper: LAYS_WEAK_LIMBS, onThigh: null, weakArm: "spare" },
];
export const ROLL_ONTO_STRONG: readonly KeyPose[] = [
  { step: 3, pose: ROLL_STRONG_BEGUN, helper: AT_STRONG_EDGE_KNEES, onThigh: null, weakArm: "spare" },
  { step: 4, pose: ROLLING_TO_STRONG_LEGS_TOGETHER, helper: AT_STRONG_EDGE, onThigh: null, weakArm: "spare" },
  { step: 4, pose: ROLLING_TO_STRONG_WEAK_LEG_DOWN, helper: AT_STRONG_EDGE, onThigh: null, weakArm: "spare" },
  { step: 5, pose: SIDE_LYING_ON_STRONG, helper: AT_STRONG_EDGE_PILLOWS, onThigh: null, weakArm: "spare" },
];
export const ROLL_ONTO_WEAK: readonly KeyPose[] = [
  { step: 3, pose: ROLLING_TO_WEAK_ARM_ON_BODY, helper: AT_WEAK_BLADE, onThigh: null, weakArm: "spare" },
  { step: 4, pose: ROLL_WEAK_REACHING, helper: AT_WEAK_BLADE_OVER, onThigh: null, weakArm: "spare" },
  { step: 4, pose: ROLL_WEAK_NEARLY_OVER, helper: AT_WEAK_BLADE_OVER, onThigh: null, weakArm: "spare" },
  { step: 5, pose: SIDE_LYING_ON_WEAK, helper: FEELS_WEAK_BLADE, onThigh: null, weakArm: "spare" },
];
export const ROLL_BACK_FROM_STRONG: readonly KeyPose[] = [
  { step: 3, pose: ROLLING_TO_STRONG_LEGS_TOGETHER, helper: BRAKES_ROLL_BACK, onThigh: null, weakArm: "spare" },
  { step: 3, pose: ROLL_STRONG_BEGUN, helper: BRAKES_ROLL_BACK, onThigh: null, weakArm: "spare" },
  { step: 4, pose: SUPINE, helper: LAYS_WEAK_LIMBS, onThigh: null, weakArm: "spare" },
];
export const ROLL_BACK_FROM_WEAK: readonly KeyPose[] = [
  { step: 2, pose: ROLL_WEAK_NEARLY_OVER, helper: AT_WEAK_BLADE_OVER, onThigh: null, weakArm: "spare" },
  { step: 2, pose: ROLLING_TO_WEAK_ARM_ON_BODY, helper: AT_WEAK_BLADE, onThigh: null, weakArm: "spare" },
  { step: 3, pose: HOOK_LYING, helper: AT_WEAK_KNEE_PRESSING, onThigh: null, weakArm: "spare" },
];
export const SIDE_LYING_TO_SHORT_SITTING: readonly KeyPose[] = [
  { step: 2, pose: STRONG_FOREARM_PROP_LOW, helper: LEGS_AND_HIP, onThigh: null, weakArm: "spare" },
  { step: 4, pose: STRONG_FOREARM_PROP_FEET_TOGETHER, helper: STEADIES_ON_ELBOW, onThigh: null, weakArm: "spare" },
  { step: 5, pose: STRONG_HAND_PROP, helper: FOLLOWS_HAND, onThigh: null, weakArm: "spare" },
  { step: 6, pose: SHORT_SITTING, helper: SITS_BEFORE_WEAK_KNEE, onThigh: null, weakArm: "spare" },
];
export const SHORT_SITTING_TO_SIDE_LYING: readonly KeyPose[] = [
  { step: 2, pose: STRONG_HAND_PROP, helper: FOLLOWS_HAND, onThigh: null, weakArm: "spare" },
  { step: 3, pose: STRONG_FOREARM_PROP_FEET_TOGETHER, helper: STEADIES_ON_ELBOW, onThigh: null, weakArm: "spare" },
  { step: 4, pose: STRONG_FOREARM_PROP_LOW, helper: LEGS_AND_HIP, onThigh: null, weakArm: "spare" },
  { step: 5, pose: SIDE_LYING_ON_STRONG, helper: AT_STRONG_EDGE_PILLOWS, onThigh: null, weakArm: "spare" },
];
export const SIDE_LYING_TO_PRONE: readonly KeyPose[] = [
  { step: 1, pose: SIDE_LYING_ON_STRONG, helper: AT_STRONG_EDGE_PILLOWS, onThigh: null, weakArm: "spare" },
  { step: 4, pose: ROLLING_FACE_DOWN, helper: ROLLS_ONTO_FRONT, onThigh: null, weakArm: "spare" },
  { step: 5, pose: FACE_DOWN_STRONG_ARM_UP, helper: FREES_WEAK_ARM, onThigh: null, weakArm: "spare" },
];
export const PRONE_TO_SIDE_LYING: readonly KeyPose[] = [
  { step: 1, pose: FACE_DOWN_STRONG_ARM_UP, helper: FREES_WEAK_ARM, onThigh: null, weakArm: "spare" },
  { step: 3, pose: ROLLING_FACE_DOWN, helper: ROLLS_BACK_FROM_FRONT, onThigh: null, weakArm: "spare" },
  { step: 4, pose: SIDE_LYING_ON_STRONG, helper: AT_STRONG_EDGE_PILLOWS, onThigh: null, weakArm: "spare" },
];
export const PRONE_TO_ELBOWS: readonly KeyPose[] = [
  { step: 1, pose: PRONE, helper: CARRIES_WEAK_ARM_AHEAD, onThigh: null, weakArm: "spare" },
  { step: 2, pose: FACE_DOWN_FOREARMS_AHEAD, helper: CARRIES_WEAK_ARM_AHEAD, onThigh: null, weakArm: "spare" },
  { step: 4, pose: LOW_ON_ELBOWS, helper: SHOULDER_FRONT_AND_BACK, onThigh: null, weakArm: "lend" },
  { step: 5, pose: PRONE_ON_ELBOWS, helper: SHOULDER_FRONT_AND_BACK, onThigh: null, weakArm: "lend" },
];
export const ELBOWS_TO_PRONE: readonly KeyPose[] = [
  { step: 1, pose: PRONE_ON_ELBOWS, helper: SHOULDER_FRONT_AND_BACK, onThigh: null, weakArm: "lend" },
  { step: 2, pose: LOW_ON_ELBOWS, helper: SHOULDER_FRONT_AND_BACK, onThigh: null, weakArm: "lend" },
  { step: 3, pose: FACE_DOWN_FOREARMS_AHEAD, helper: FREES_WEAK_ARM, onThigh: null, weakArm: "spare" },
  { step: 4, pose: PRONE, helper: CARRIES_WEAK_ARM_AHEAD, onThigh: null, weakArm: "spare" },
];
