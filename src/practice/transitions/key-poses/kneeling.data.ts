import { ROCKED_BACK } from "../../activities/poses/hands-and-knees.data.ts";
import { HALF_UP_FOREARMS, SHIFTED_TO_WEAK, SHIFTED_TO_STRONG, STRONG_FOREARM_ON_BENCH, STRONG_HAND_ON_BENCH } from "../../activities/poses/kneeling.data.ts";
import { HAND_ON_SEAT_KNEELING, KNEES_AT_SEAT, ON_FLOOR_AT_SEAT, RISING_AT_SEAT, STRONG_FOOT_AT_SEAT } from "../../positions/floor-and-arm-poses.data.ts";
import { OVER_STRONG_SEAT_UP } from "../../positions/floor-sitting-poses.data.ts";
import { BACK_ON_STRONG_KNEE, HEEL_SITTING, KNEES_AND_FOREARMS, SEAT_HALF_WAY_BACK } from "../../positions/kneeling-more-poses.data.ts";
import { HALF_KNEELING_STRONG_FORWARD, HALF_KNEELING_WEAK_FORWARD, HANDS_AND_KNEES, KNEELING_AT_BENCH, TALL_KNEELING } from "../../positions/kneeling-poses.data.ts";
import { SIDE_LYING_ON_STRONG } from "../../positions/side-lying-poses.data.ts";
import { SIDE_SITTING_ON_STRONG } from "../../positions/side-sitting-poses.data.ts";
import { STANDING_ONE_HAND } from "../../positions/standing-poses.data.ts";
import { HALF_KNEELING_AT_BAR, RISING_AT_BAR, STRONG_FOOT_JUST_SET, STRONG_FOREARM_DOWN_SEAT_BACK, STRONG_HAND_UP_ON_BENCH } from "../kneeling-and-standing-poses.data.ts";
import { KNEES_UP_HAND_BEHIND, ON_MAT_STRONG_FOREARM, ON_MAT_STRONG_HAND } from "../lying-and-sitting-poses.data.ts";
import type { KeyPose } from "../transition.ts";
import { BLOCKS_WEAK_ELBOW, BLOCKS_WEAK_HIP, BOTH_HIP_BONES, BRINGS_WEAK_FOOT, GUIDES_SEAT, HOLDS_OVER_HANDS, OUTSIDE_WEAK_KNEE, RISES_ALONG, SETS_WEAK_HAND, THIGH_UNDER_CHEST_ARM, THIGH_UNDER_CHEST_SEAT, UNDER_SEAT } from "./kneeling-helpers.data.ts";
import { AT_STRONG_EDGE_PILLOWS, BACKREST_COMING_UP } from "./lying-helpers.data.ts";
import { AT_WEAK_RIBS, BELT_AND_SHOULDER, STEERS_WEAK_KNEE } from "./sitting-helpers.data.ts";

/** Key moments of the ways onto hands and knees, up to kneeling and half kneeling, and between the floor and a seat. */

/* Onto hands and knees over the strong hip, and back. */
export const SIDE_SITTING_STRONG_TO_HANDS_AND_KNEES: readonly KeyPose[] = [
  { step: 1, pose: SIDE_SITTING_ON_STRONG, helper: AT_WEAK_RIBS, onThigh: null, weakArm: "spare" },
  { step: 2, pose: OVER_STRONG_SEAT_UP, helper: THIGH_UNDER_CHEST_SEAT, onThigh: "upperChest.weak", weakArm: "spare" },
  { step: 4, pose: HANDS_AND_KNEES, helper: HOLDS_OVER_HANDS, onThigh: null, weakArm: "lend" },
];
export const HANDS_AND_KNEES_TO_SIDE_SITTING_STRONG: readonly KeyPose[] = [
  { step: 1, pose: HANDS_AND_KNEES, helper: HOLDS_OVER_HANDS, onThigh: "upperChest.weak", weakArm: "lend" },
  { step: 3, pose: OVER_STRONG_SEAT_UP, helper: THIGH_UNDER_CHEST_ARM, onThigh: "upperChest.weak", weakArm: "spare" },
  { step: 4, pose: SIDE_SITTING_ON_STRONG, helper: AT_WEAK_RIBS, onThigh: null, weakArm: "spare" },
];
export const LONG_SITTING_TO_HANDS_AND_KNEES: readonly KeyPose[] = [
  { step: 1, pose: KNEES_UP_HAND_BEHIND, helper: STEERS_WEAK_KNEE, onThigh: null, weakArm: "spare" },
  { step: 2, pose: ON_MAT_STRONG_HAND, helper: AT_WEAK_RIBS, onThigh: null, weakArm: "spare" },
  { step: 4, pose: OVER_STRONG_SEAT_UP, helper: THIGH_UNDER_CHEST_SEAT, onThigh: "upperChest.weak", weakArm: "spare" },
  { step: 5, pose: HANDS_AND_KNEES, helper: HOLDS_OVER_HANDS, onThigh: null, weakArm: "lend" },
];
export const SIDE_LYING_TO_HANDS_AND_KNEES: readonly KeyPose[] = [
  { step: 2, pose: ON_MAT_STRONG_FOREARM, helper: BACKREST_COMING_UP, onThigh: null, weakArm: "spare" },
  { step: 2, pose: ON_MAT_STRONG_HAND, helper: AT_WEAK_RIBS, onThigh: null, weakArm: "spare" },
  { step: 4, pose: OVER_STRONG_SEAT_UP, helper: THIGH_UNDER_CHEST_SEAT, onThigh: "upperChest.weak", weakArm: "spare" },
  { step: 5, pose: HANDS_AND_KNEES, helper: HOLDS_OVER_HANDS, onThigh: null, weakArm: "lend" },
];
export const HANDS_AND_KNEES_TO_SIDE_LYING: readonly KeyPose[] = [
  { step: 1, pose: SEAT_HALF_WAY_BACK, helper: BLOCKS_WEAK_ELBOW, onThigh: "upperChest.weak", weakArm: "spare" },
  { step: 2, pose: STRONG_FOREARM_DOWN_SEAT_BACK, helper: THIGH_UNDER_CHEST_ARM, onThigh: "upperChest.weak", weakArm: "spare" },
  { step: 3, pose: ON_MAT_STRONG_FOREARM, helper: BACKREST_COMING_UP, onThigh: null, weakArm: "spare" },
  { step: 4, pose: SIDE_LYING_ON_STRONG, helper: AT_STRONG_EDGE_PILLOWS, onThigh: null, weakArm: "spare" },
];

/* Up to kneeling, and down. */
export const HANDS_AND_KNEES_TO_BENCH: readonly KeyPose[] = [
  { step: 1, pose: SEAT_HALF_WAY_BACK, helper: BLOCKS_WEAK_ELBOW, onThigh: "upperChest.weak", weakArm: "spare" },
  { step: 2, pose: STRONG_HAND_UP_ON_BENCH, helper: THIGH_UNDER_CHEST_ARM, onThigh: "upperChest.weak", weakArm: "spare" },
  { step: 3, pose: STRONG_FOREARM_ON_BENCH, helper: GUIDES_SEAT, onThigh: null, weakArm: "spare" },
  { step: 4, pose: KNEELING_AT_BENCH, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
];
export const HANDS_AND_KNEES_TO_HEELS: readonly KeyPose[] = [
  { step: 1, pose: HANDS_AND_KNEES, helper: HOLDS_OVER_HANDS, onThigh: null, weakArm: "lend" },
  { step: 2, pose: SEAT_HALF_WAY_BACK, helper: GUIDES_SEAT, onThigh: null, weakArm: "spare" },
  { step: 4, pose: HEEL_SITTING, helper: BOTH_HIP_BONES, onThigh: null, weakArm: "spare" },
];
export const HEELS_TO_HANDS_AND_KNEES: readonly KeyPose[] = [
  { step: 1, pose: HEEL_SITTING, helper: GUIDES_SEAT, onThigh: null, weakArm: "spare" },
  { step: 3, pose: SEAT_HALF_WAY_BACK, helper: SETS_WEAK_HAND, onThigh: "upperChest.weak", weakArm: "spare" },
  { step: 4, pose: HANDS_AND_KNEES, helper: HOLDS_OVER_HANDS, onThigh: null, weakArm: "lend" },
];
export const HEELS_TO_BENCH: readonly KeyPose[] = [
  { step: 1, pose: HEEL_SITTING, helper: BOTH_HIP_BONES, onThigh: null, weakArm: "spare" },
  { step: 3, pose: HALF_UP_FOREARMS, helper: UNDER_SEAT, onThigh: null, weakArm: "spare" },
  { step: 4, pose: KNEELING_AT_BENCH, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
];
export const BENCH_TO_HEELS: readonly KeyPose[] = [
  { step: 1, pose: KNEELING_AT_BENCH, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
  { step: 2, pose: HALF_UP_FOREARMS, helper: UNDER_SEAT, onThigh: null, weakArm: "spare" },
  { step: 3, pose: HEEL_SITTING, helper: BOTH_HIP_BONES, onThigh: null, weakArm: "spare" },
];
export const BENCH_TO_SIDE_LYING: readonly KeyPose[] = [
  { step: 1, pose: HALF_UP_FOREARMS, helper: UNDER_SEAT, onThigh: null, weakArm: "spare" },
  { step: 2, pose: ON_MAT_STRONG_HAND, helper: AT_WEAK_RIBS, onThigh: null, weakArm: "spare" },
  { step: 3, pose: ON_MAT_STRONG_FOREARM, helper: BACKREST_COMING_UP, onThigh: null, weakArm: "spare" },
];
export const BENCH_TO_TALL_KNEELING: readonly KeyPose[] = [
  { step: 1, pose: STRONG_HAND_ON_BENCH, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
  { step: 2, pose: TALL_KNEELING, helper: BOTH_HIP_BONES, onThigh: null, weakArm: "spare" },
];
export const TALL_KNEELING_TO_BENCH: readonly KeyPose[] = [
  { step: 1, pose: TALL_KNEELING, helper: BOTH_HIP_BONES, onThigh: null, weakArm: "spare" },
  { step: 2, pose: STRONG_FOREARM_ON_BENCH, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
];
export const HANDS_AND_KNEES_TO_LOW_BENCH: readonly KeyPose[] = [
  { step: 2, pose: ROCKED_BACK, helper: BLOCKS_WEAK_ELBOW, onThigh: "upperChest.weak", weakArm: "lend" },
  { step: 4, pose: KNEES_AND_FOREARMS, helper: SETS_WEAK_HAND, onThigh: null, weakArm: "lend" },
];
export const HEELS_TO_SIDE_SITTING_STRONG: readonly KeyPose[] = [
  { step: 1, pose: HEEL_SITTING, helper: BOTH_HIP_BONES, onThigh: null, weakArm: "spare" },
  { step: 3, pose: SIDE_SITTING_ON_STRONG, helper: AT_WEAK_RIBS, onThigh: null, weakArm: "spare" },
];

/* Half kneeling. */
export const BENCH_TO_STRONG_FORWARD: readonly KeyPose[] = [
  { step: 1, pose: SHIFTED_TO_WEAK, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
  { step: 2, pose: STRONG_FOOT_JUST_SET, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
  { step: 3, pose: HALF_KNEELING_STRONG_FORWARD, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
];
export const BENCH_TO_WEAK_FORWARD: readonly KeyPose[] = [
  { step: 1, pose: SHIFTED_TO_STRONG, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
  { step: 2, pose: BACK_ON_STRONG_KNEE, helper: BRINGS_WEAK_FOOT, onThigh: null, weakArm: "spare" },
  { step: 3, pose: HALF_KNEELING_WEAK_FORWARD, helper: OUTSIDE_WEAK_KNEE, onThigh: null, weakArm: "spare" },
];
export const STRONG_FORWARD_TO_BENCH: readonly KeyPose[] = [
  { step: 1, pose: HALF_KNEELING_STRONG_FORWARD, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
  { step: 2, pose: STRONG_HAND_ON_BENCH, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
];
export const WEAK_FORWARD_TO_BENCH: readonly KeyPose[] = [
  { step: 1, pose: HALF_KNEELING_WEAK_FORWARD, helper: OUTSIDE_WEAK_KNEE, onThigh: null, weakArm: "spare" },
  { step: 2, pose: BACK_ON_STRONG_KNEE, helper: BRINGS_WEAK_FOOT, onThigh: null, weakArm: "spare" },
  { step: 2, pose: STRONG_HAND_ON_BENCH, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
];
export const STRONG_FORWARD_TO_STANDING_IN_BARS: readonly KeyPose[] = [
  { step: 1, pose: HALF_KNEELING_AT_BAR, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
  { step: 3, pose: RISING_AT_BAR, helper: RISES_ALONG, onThigh: null, weakArm: "spare" },
  { step: 4, pose: STANDING_ONE_HAND, helper: BELT_AND_SHOULDER, onThigh: null, weakArm: "spare" },
];

/* Between the floor and a seat. */
export const FLOOR_TO_SEAT: readonly KeyPose[] = [
  { step: 2, pose: KNEES_AT_SEAT, helper: UNDER_SEAT, onThigh: "upperChest.weak", weakArm: "spare" },
  { step: 3, pose: HAND_ON_SEAT_KNEELING, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
  { step: 4, pose: STRONG_FOOT_AT_SEAT, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
  { step: 5, pose: RISING_AT_SEAT, helper: RISES_ALONG, onThigh: null, weakArm: "spare" },
];
export const SEAT_TO_FLOOR: readonly KeyPose[] = [
  { step: 2, pose: RISING_AT_SEAT, helper: RISES_ALONG, onThigh: null, weakArm: "spare" },
  { step: 3, pose: STRONG_FOOT_AT_SEAT, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
  { step: 4, pose: HAND_ON_SEAT_KNEELING, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
  { step: 5, pose: ON_FLOOR_AT_SEAT, helper: AT_WEAK_RIBS, onThigh: null, weakArm: "spare" },
];
export const FLOOR_TO_BENCH: readonly KeyPose[] = [
  { step: 1, pose: ON_FLOOR_AT_SEAT, helper: AT_WEAK_RIBS, onThigh: null, weakArm: "spare" },
  { step: 2, pose: KNEES_AT_SEAT, helper: UNDER_SEAT, onThigh: "upperChest.weak", weakArm: "spare" },
  { step: 3, pose: KNEELING_AT_BENCH, helper: BLOCKS_WEAK_HIP, onThigh: null, weakArm: "spare" },
];
export const SIDE_SITTING_TO_FLOOR_SEAT: readonly KeyPose[] = [
  { step: 1, pose: SIDE_SITTING_ON_STRONG, helper: AT_WEAK_RIBS, onThigh: null, weakArm: "spare" },
  { step: 3, pose: ON_FLOOR_AT_SEAT, helper: STEERS_WEAK_KNEE, onThigh: null, weakArm: "spare" },
];
