import { STANDING_HAND_FLAT } from "../../positions/upright-poses.data.ts";
import { FOREARMS_ON_TABLE_STANDING, SHORT_SITTING } from "../../positions/sitting-poses.data.ts";
import { SEAT_LIGHT } from "../../positions/sitting-more-poses.data.ts";
import { STANDING_ONE_HAND } from "../../positions/standing-poses.data.ts";
import { PERCH_FOREARMS_ON_TABLE } from "../../activities/poses/sit-to-stand.data.ts";
import { HALF_UP_HAND_ON_TABLE, HALF_UP_IN_BARS, SEAT_OFF_HAND_PUSHES } from "../kneeling-and-standing-poses.data.ts";
import type { KeyPose } from "../transition.ts";
import { BELT_AND_KNEE, BELT_AND_SHOULDER, SITS_BEFORE_WEAK_KNEE, SITS_SEAT_LIGHT } from "./sitting-helpers.data.ts";

/** Key moments of the ways between a seat and standing. */

export const SEAT_TO_STANDING: readonly KeyPose[] = [
  { step: 2, pose: SEAT_LIGHT, helper: SITS_SEAT_LIGHT, onThigh: null, weakArm: "spare" },
  { step: 3, pose: SEAT_OFF_HAND_PUSHES, helper: BELT_AND_KNEE, onThigh: null, weakArm: "spare" },
  { step: 3, pose: HALF_UP_HAND_ON_TABLE, helper: BELT_AND_KNEE, onThigh: null, weakArm: "spare" },
  { step: 4, pose: STANDING_HAND_FLAT, helper: BELT_AND_SHOULDER, onThigh: null, weakArm: "spare" },
];
export const STANDING_TO_SEAT: readonly KeyPose[] = [
  { step: 1, pose: STANDING_HAND_FLAT, helper: BELT_AND_SHOULDER, onThigh: null, weakArm: "spare" },
  { step: 2, pose: HALF_UP_HAND_ON_TABLE, helper: BELT_AND_KNEE, onThigh: null, weakArm: "spare" },
  { step: 2, pose: SEAT_OFF_HAND_PUSHES, helper: BELT_AND_KNEE, onThigh: null, weakArm: "spare" },
  { step: 3, pose: SHORT_SITTING, helper: SITS_BEFORE_WEAK_KNEE, onThigh: null, weakArm: "spare" },
];
export const SEAT_TO_STANDING_IN_BARS: readonly KeyPose[] = [
  { step: 2, pose: SEAT_LIGHT, helper: SITS_SEAT_LIGHT, onThigh: null, weakArm: "spare" },
  { step: 3, pose: HALF_UP_IN_BARS, helper: BELT_AND_KNEE, onThigh: null, weakArm: "spare" },
  { step: 4, pose: STANDING_ONE_HAND, helper: BELT_AND_SHOULDER, onThigh: null, weakArm: "spare" },
];
export const STANDING_IN_BARS_TO_SEAT: readonly KeyPose[] = [
  { step: 1, pose: STANDING_ONE_HAND, helper: BELT_AND_SHOULDER, onThigh: null, weakArm: "spare" },
  { step: 3, pose: HALF_UP_IN_BARS, helper: BELT_AND_KNEE, onThigh: null, weakArm: "spare" },
  { step: 3, pose: SHORT_SITTING, helper: SITS_BEFORE_WEAK_KNEE, onThigh: null, weakArm: "spare" },
];
export const SEAT_TO_FOREARMS_STANDING: readonly KeyPose[] = [
  { step: 1, pose: SHORT_SITTING, helper: SITS_BEFORE_WEAK_KNEE, onThigh: null, weakArm: "spare" },
  { step: 5, pose: PERCH_FOREARMS_ON_TABLE, helper: BELT_AND_KNEE, onThigh: null, weakArm: "spare" },
  { step: 6, pose: FOREARMS_ON_TABLE_STANDING, helper: BELT_AND_SHOULDER, onThigh: null, weakArm: "spare" },
];
export const FOREARMS_STANDING_TO_SEAT: readonly KeyPose[] = [
  { step: 1, pose: FOREARMS_ON_TABLE_STANDING, helper: BELT_AND_SHOULDER, onThigh: null, weakArm: "spare" },
  { step: 2, pose: PERCH_FOREARMS_ON_TABLE, helper: BELT_AND_KNEE, onThigh: null, weakArm: "spare" },
  { step: 4, pose: SHORT_SITTING, helper: SITS_BEFORE_WEAK_KNEE, onThigh: null, weakArm: "spare" },
];
