import { STRONG_HAND_PROPS } from "../../activities/poses/long-sitting.data.ts";
import { OVER_WEAK_BOTH_HANDS_DOWN, OVER_WEAK_SEAT_UP, SIDE_SITTING_ON_WEAK } from "../../positions/floor-sitting-poses.data.ts";
import { HANDS_AND_KNEES } from "../../positions/kneeling-poses.data.ts";
import { SIDE_LYING_ON_STRONG } from "../../positions/side-lying-poses.data.ts";
import { SIDE_SITTING_ON_STRONG } from "../../positions/side-sitting-poses.data.ts";
import { HAND_BESIDE_HIP, HALF_TURNED_TO_STRONG, HALF_TURNED_TO_WEAK, HAND_ON_NEXT_SEAT, SEAT_LIGHT, WEAK_HIP_GOES_AHEAD, WEAK_HIP_GOES_BACK } from "../../positions/sitting-more-poses.data.ts";
import { LONG_SITTING, SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { SUPINE } from "../../positions/lying-poses.data.ts";
import { KNEES_UP_HAND_BEHIND, ON_MAT_STRONG_FOREARM, ON_MAT_STRONG_HAND, STRONG_FOREARM_BEHIND, WEAK_LEG_CARRIED_OVER } from "../lying-and-sitting-poses.data.ts";
import type { KeyPose } from "../transition.ts";
import { AT_STRONG_EDGE_PILLOWS, BACKREST_COMING_UP, LAYS_WEAK_LIMBS } from "./lying-helpers.data.ts";
import { AT_WEAK_RIBS, BACKREST, BACKREST_BLADE, BELT_AND_KNEE, CARRIES_WEAK_LEG, SITS_BEFORE_WEAK_KNEE, SITS_HIP_BY_HIP, SITS_SEAT_LIGHT, STEERS_WEAK_KNEE, TURNS_TO_WEAK } from "./sitting-helpers.data.ts";
import { BLOCKS_WEAK_ELBOW, HOLDS_OVER_HANDS, THIGH_UNDER_CHEST_SEAT } from "./kneeling-helpers.data.ts";

/** Key moments of the ways into, out of and within sitting on the mat, at its edge and from seat to seat. */

export const SIDE_LYING_TO_LONG_SITTING: readonly KeyPose[] = [
  { step: 2, pose: ON_MAT_STRONG_FOREARM, helper: BACKREST_COMING_UP, onThigh: null, weakArm: "spare" },
  { step: 3, pose: ON_MAT_STRONG_HAND, helper: BACKREST_COMING_UP, onThigh: null, weakArm: "spare" },
  { step: 4, pose: STRONG_HAND_PROPS, helper: BACKREST_BLADE, onThigh: "middleBack", weakArm: "spare" },
  { step: 5, pose: LONG_SITTING, helper: BACKREST, onThigh: "middleBack", weakArm: "spare" },
];
export const LONG_SITTING_TO_SIDE_LYING: readonly KeyPose[] = [
  { step: 1, pose: KNEES_UP_HAND_BEHIND, helper: BACKREST_BLADE, onThigh: "middleBack", weakArm: "spare" },
  { step: 2, pose: ON_MAT_STRONG_HAND, helper: BACKREST_COMING_UP, onThigh: null, weakArm: "spare" },
  { step: 2, pose: ON_MAT_STRONG_FOREARM, helper: BACKREST_COMING_UP, onThigh: null, weakArm: "spare" },
  { step: 4, pose: SIDE_LYING_ON_STRONG, helper: AT_STRONG_EDGE_PILLOWS, onThigh: null, weakArm: "spare" },
];
export const SUPINE_TO_LONG_SITTING: readonly KeyPose[] = [
  { step: 3, pose: STRONG_FOREARM_BEHIND, helper: BACKREST_BLADE, onThigh: null, weakArm: "spare" },
  { step: 4, pose: STRONG_HAND_PROPS, helper: BACKREST_BLADE, onThigh: "middleBack", weakArm: "spare" },
  { step: 5, pose: LONG_SITTING, helper: BACKREST, onThigh: "middleBack", weakArm: "spare" },
];
export const LONG_SITTING_TO_SUPINE: readonly KeyPose[] = [
  { step: 2, pose: STRONG_HAND_PROPS, helper: BACKREST_BLADE, onThigh: "middleBack", weakArm: "spare" },
  { step: 3, pose: STRONG_FOREARM_BEHIND, helper: BACKREST_BLADE, onThigh: null, weakArm: "spare" },
  { step: 4, pose: SUPINE, helper: LAYS_WEAK_LIMBS, onThigh: null, weakArm: "spare" },
];
export const SHORT_SITTING_TO_LONG_SITTING: readonly KeyPose[] = [
  { step: 1, pose: WEAK_HIP_GOES_BACK, helper: SITS_HIP_BY_HIP, onThigh: null, weakArm: "spare" },
  { step: 2, pose: HAND_BESIDE_HIP, helper: SITS_BEFORE_WEAK_KNEE, onThigh: null, weakArm: "spare" },
  { step: 4, pose: WEAK_LEG_CARRIED_OVER, helper: CARRIES_WEAK_LEG, onThigh: null, weakArm: "spare" },
  { step: 6, pose: LONG_SITTING, helper: BACKREST, onThigh: "middleBack", weakArm: "spare" },
];
export const LONG_SITTING_TO_SHORT_SITTING: readonly KeyPose[] = [
  { step: 2, pose: STRONG_HAND_PROPS, helper: BACKREST_BLADE, onThigh: "middleBack", weakArm: "spare" },
  { step: 3, pose: WEAK_LEG_CARRIED_OVER, helper: CARRIES_WEAK_LEG, onThigh: null, weakArm: "spare" },
  { step: 5, pose: SHORT_SITTING, helper: SITS_BEFORE_WEAK_KNEE, onThigh: null, weakArm: "spare" },
];
export const LONG_TO_SIDE_SITTING_STRONG: readonly KeyPose[] = [
  { step: 2, pose: STRONG_HAND_PROPS, helper: AT_WEAK_RIBS, onThigh: null, weakArm: "spare" },
  { step: 3, pose: KNEES_UP_HAND_BEHIND, helper: STEERS_WEAK_KNEE, onThigh: null, weakArm: "spare" },
  { step: 4, pose: ON_MAT_STRONG_HAND, helper: STEERS_WEAK_KNEE, onThigh: null, weakArm: "spare" },
  { step: 5, pose: SIDE_SITTING_ON_STRONG, helper: AT_WEAK_RIBS, onThigh: null, weakArm: "spare" },
];
export const SIDE_SITTING_STRONG_TO_LONG: readonly KeyPose[] = [
  { step: 1, pose: ON_MAT_STRONG_HAND, helper: STEERS_WEAK_KNEE, onThigh: null, weakArm: "spare" },
  { step: 2, pose: KNEES_UP_HAND_BEHIND, helper: STEERS_WEAK_KNEE, onThigh: null, weakArm: "spare" },
  { step: 3, pose: STRONG_HAND_PROPS, helper: AT_WEAK_RIBS, onThigh: null, weakArm: "spare" },
  { step: 4, pose: LONG_SITTING, helper: BACKREST, onThigh: "middleBack", weakArm: "spare" },
];
export const LONG_TO_SIDE_SITTING_WEAK: readonly KeyPose[] = [
  { step: 2, pose: KNEES_UP_HAND_BEHIND, helper: BACKREST_BLADE, onThigh: "middleBack", weakArm: "spare" },
  { step: 5, pose: SIDE_SITTING_ON_WEAK, helper: BACKREST_BLADE, onThigh: "middleBack", weakArm: "spare" },
];
export const SIDE_SITTING_WEAK_TO_LONG: readonly KeyPose[] = [
  { step: 1, pose: SIDE_SITTING_ON_WEAK, helper: BACKREST_BLADE, onThigh: "middleBack", weakArm: "spare" },
  { step: 3, pose: KNEES_UP_HAND_BEHIND, helper: BACKREST_BLADE, onThigh: "middleBack", weakArm: "spare" },
  { step: 4, pose: LONG_SITTING, helper: BACKREST, onThigh: "middleBack", weakArm: "spare" },
];
/** Over the weak hip: the weak hand carries from the swing on. */
export const SIDE_SITTING_WEAK_TO_HANDS_AND_KNEES: readonly KeyPose[] = [
  { step: 2, pose: OVER_WEAK_BOTH_HANDS_DOWN, helper: BLOCKS_WEAK_ELBOW, onThigh: "upperChest.weak", weakArm: "lend" },
  { step: 3, pose: OVER_WEAK_SEAT_UP, helper: THIGH_UNDER_CHEST_SEAT, onThigh: "upperChest.weak", weakArm: "lend" },
  { step: 4, pose: HANDS_AND_KNEES, helper: HOLDS_OVER_HANDS, onThigh: null, weakArm: "lend" },
];

export const CHAIR_OVER_STRONG: readonly KeyPose[] = [
  { step: 2, pose: WEAK_HIP_GOES_AHEAD, helper: SITS_HIP_BY_HIP, onThigh: null, weakArm: "spare" },
  { step: 4, pose: HAND_ON_NEXT_SEAT, helper: SITS_SEAT_LIGHT, onThigh: null, weakArm: "spare" },
  { step: 5, pose: HALF_TURNED_TO_STRONG, helper: BELT_AND_KNEE, onThigh: null, weakArm: "spare" },
  { step: 7, pose: SHORT_SITTING, helper: SITS_BEFORE_WEAK_KNEE, onThigh: null, weakArm: "spare" },
];
export const CHAIR_OVER_WEAK: readonly KeyPose[] = [
  { step: 4, pose: SEAT_LIGHT, helper: SITS_SEAT_LIGHT, onThigh: null, weakArm: "spare" },
  { step: 5, pose: HALF_TURNED_TO_WEAK, helper: TURNS_TO_WEAK, onThigh: null, weakArm: "spare" },
  { step: 7, pose: SHORT_SITTING, helper: SITS_BEFORE_WEAK_KNEE, onThigh: null, weakArm: "spare" },
];
