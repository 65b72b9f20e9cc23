import type { PoseSpecification } from "../../../mechanics/pose/specification.ts";
import { FEET_ON_FLOOR, FOREARMS_ON_TABLE, FOREARMS_ON_TABLE_SITTING, FOREARMS_ON_TABLE_STANDING, SEAT, SEATED, SITTING_TABLE, STANDING_TABLE } from "../../positions/sitting-poses.data.ts";

/** Key poses of the leans on the forearms at a table. Angles: "judgement", adjusted until they closed. */

/** Chest forward over the forearms: the arms take more of the trunk. */
export const SITTING_LEANED_AHEAD: PoseSpecification = {
  ...FOREARMS_ON_TABLE_SITTING,
  pelvis: { pitchDeg: 20 },
  trunkDeg: { lumbarFlexion: 9, thoraxFlexion: 6, neckFlexion: -18 },
  bothDeg: { ...FOREARMS_ON_TABLE_SITTING.bothDeg, hipFlexion: 108, shoulderFlexion: 78, elbowFlexion: 48 },
};
export const SITTING_LEANED_TO_WEAK: PoseSpecification = { ...FOREARMS_ON_TABLE_SITTING, shift: { toWeakCm: 2.5 } };
/** The strong hand reaches ahead, a hand's breadth over the table; the weak forearm stays as a post. */
export const SITTING_STRONG_REACHES: PoseSpecification = {
  ...FOREARMS_ON_TABLE_SITTING,
  surfaces: [SEAT, SITTING_TABLE],
  weakDeg: { shoulderAbduction: -4 },
  strongDeg: { shoulderFlexion: 84, shoulderAbduction: 6, elbowFlexion: 14, pronation: 90 },
  contacts: [...SEATED, ...FEET_ON_FLOOR, { patch: "forearm.weak", on: "table", role: "both" }],
  shift: { toWeakCm: 1.5 },
};

/** The seat behind still touches: half standing against a high plinth. */
export const STANDING_SEAT_BEHIND: PoseSpecification = {
  ...FOREARMS_ON_TABLE_STANDING,
  pelvis: { pitchDeg: 32 },
  bothDeg: { ...FOREARMS_ON_TABLE_STANDING.bothDeg, hipFlexion: 78, kneeFlexion: 50, ankleDorsiflexion: 4, shoulderFlexion: 52, elbowFlexion: 74 },
  surfaces: [
    { id: "seat", kind: "seat", height: { of: "kneeHollow", times: 1.5 }, under: ["buttock.weak", "buttock.strong"], depthCm: 26, widthCm: 120 },
    { ...STANDING_TABLE, height: { of: "elbowStanding", times: 0.82 } },
  ],
  contacts: [...FOREARMS_ON_TABLE_STANDING.contacts, { patch: "buttock.weak", on: "seat", role: "both" }, { patch: "buttock.strong", on: "seat", role: "both" }],
};
export const STANDING_OVER_WEAK_LEG: PoseSpecification = { ...FOREARMS_ON_TABLE_STANDING, shift: { toWeakCm: 6 } };
/** The strong forearm floats, the weak forearm and both feet carry. */
export const STANDING_STRONG_FOREARM_LIGHT: PoseSpecification = {
  ...FOREARMS_ON_TABLE_STANDING,
  trunkDeg: { ...FOREARMS_ON_TABLE_STANDING.trunkDeg, lumbarSideBend: 4, thoraxSideBend: 3 },
  weakDeg: { shoulderAbduction: -10 },
  strongDeg: { shoulderFlexion: 72, shoulderAbduction: 8, elbowFlexion: 84, pronation: 150 },
  contacts: [...FEET_ON_FLOOR, { patch: "forearm.weak", on: "table", role: "both" }],
  shift: { toWeakCm: 1.5 },
};
/** The strong heel comes up, its ball of the foot stays: the weak leg carries. */
export const STANDING_STRONG_HEEL_UP: PoseSpecification = {
  ...FOREARMS_ON_TABLE_STANDING,
  strongDeg: { hipFlexion: 56, hipAbduction: 5, kneeFlexion: 40, ankleDorsiflexion: -8, toeExtension: 25 },
  contacts: [{ patch: "foot.weak", on: "floor", role: "both" }, { patch: "forefoot.strong", on: "floor", role: "both", effort: "rest" }, ...FOREARMS_ON_TABLE],
  shift: { toWeakCm: 5 },
};
