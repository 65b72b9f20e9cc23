import type { ContactSpecification, LimbAngles, PoseSpecification, SurfaceSpecification } from "../../mechanics/pose/specification.ts";
import { ARM_DOWN, FOOT_STRONG, FOOT_WEAK, LEG_STANDING } from "./standing-poses.data.ts";

/** Poses standing away from the bars: at the mat, in stride, at a wall, with a cane, at steps. Angles: "judgement", adjusted until they closed. */

/** The mat's edge behind the calves, as high as the hollow of the knee. */
export const MAT_BEHIND: SurfaceSpecification = { id: "seat", kind: "seat", height: { of: "kneeHollow" }, under: ["buttock.weak", "buttock.strong"], depthCm: 60, widthCm: 70 };
/** A table ahead at the strong side, for a flat hand. */
export const HAND_TABLE: SurfaceSpecification = { id: "table", kind: "table", height: { of: "hipStanding", plusCm: 8 }, under: ["hand.strong"], depthCm: 40, widthCm: 50 };
export const HAND_FLAT: ContactSpecification = { patch: "hand.strong", on: "table", role: "both" };
export const FINGERTIPS: ContactSpecification = { patch: "hand.strong", on: "table", role: "both", effort: "light" };
export const ARM_ON_TABLE = { shoulderFlexion: 27, shoulderAbduction: 10, elbowFlexion: 34, pronation: 160, wristExtension: 32 } as const satisfies LimbAngles;
export const BOTH_FEET: readonly ContactSpecification[] = [FOOT_WEAK, FOOT_STRONG];
export const ENDS = ["toes.weak", "toes.strong", "hand.weak", "hand.strong"] as const;

/** Standing in front of the mat, no hand on anything. */
export const UPRIGHT: PoseSpecification = {
  pelvis: { pitchDeg: 2 },
  bothDeg: { ...LEG_STANDING, ...ARM_DOWN },
  surfaces: [MAT_BEHIND],
  contacts: BOTH_FEET,
  notCounted: ENDS,
};
export const STANDING_FREE: PoseSpecification = { ...UPRIGHT, sharing: "standing" };
/** Standing in front of the mat, the strong hand flat on a table. */
export const STANDING_HAND_FLAT: PoseSpecification = {
  ...STANDING_FREE,
  strongDeg: ARM_ON_TABLE,
  surfaces: [MAT_BEHIND, HAND_TABLE],
  contacts: [...BOTH_FEET, HAND_FLAT],
};

const LEG_AHEAD = { hipFlexion: 20, kneeFlexion: 5, ankleDorsiflexion: -6 } as const satisfies LimbAngles;
const LEG_BEHIND = { hipFlexion: -9, kneeFlexion: 6, ankleDorsiflexion: 13 } as const satisfies LimbAngles;
/** In stride, the weak foot ahead, the strong hand on the table. */
export const STRIDE_WEAK_AHEAD: PoseSpecification = {
  pelvis: { pitchDeg: 3 },
  bothDeg: { ...LEG_STANDING, ...ARM_DOWN },
  weakDeg: LEG_AHEAD,
  strongDeg: { ...LEG_BEHIND, ...ARM_ON_TABLE },
  surfaces: [HAND_TABLE],
  contacts: [...BOTH_FEET, HAND_FLAT],
  notCounted: ENDS,
};
/** In stride, the strong foot ahead. */
export const STRIDE_STRONG_AHEAD: PoseSpecification = {
  ...STRIDE_WEAK_AHEAD,
  weakDeg: LEG_BEHIND,
  strongDeg: { ...LEG_AHEAD, ...ARM_ON_TABLE },
};

/** Back and seat against a wall, the heels a foot's length ahead of it. */
export const STANDING_AT_WALL: PoseSpecification = {
  pelvis: { pitchDeg: 0 },
  bothDeg: { ...ARM_DOWN, hipFlexion: 12, hipAbduction: 3, kneeFlexion: 6, ankleDorsiflexion: -8 },
  surfaces: [{ id: "wall", kind: "wall", height: { cm: 200 } }],
  contacts: [
    ...BOTH_FEET,
    { patch: "buttock.weak", on: "wall", role: "bears" },
    { patch: "buttock.strong", on: "wall", role: "bears" },
    { patch: "shoulderBlade.weak", on: "wall", role: "bears" },
    { patch: "shoulderBlade.strong", on: "wall", role: "bears" },
  ],
  notCounted: ENDS,
};

/** A cane whose top is at the wrist crease of the hanging arm; the middle of the hand's hold lies half the handle's thickness lower. */
export const CANE: SurfaceSpecification = { id: "cane", kind: "cane", height: { of: "wristStanding", plusCm: -1.5 } };
export const HAND_ON_CANE: ContactSpecification = { patch: "grip.strong", on: "cane", role: "both" };
export const HAND_LIGHT_ON_CANE: ContactSpecification = { patch: "grip.strong", on: "cane", role: "both", effort: "light" };
/** The cane's foot stands a hand's length out from the little toe. */
export const ARM_ON_CANE = { shoulderFlexion: 0, shoulderAbduction: 12, elbowFlexion: 25, pronation: 120, wristExtension: 42 } as const satisfies LimbAngles;
/** Standing with a cane in the strong hand, its foot beside the strong little toe. */
export const WITH_CANE: PoseSpecification = {
  pelvis: { pitchDeg: 2 },
  bothDeg: { ...LEG_STANDING, ...ARM_DOWN },
  strongDeg: ARM_ON_CANE,
  surfaces: [CANE],
  contacts: [...BOTH_FEET, HAND_ON_CANE],
  notCounted: ["toes.weak", "toes.strong", "hand.weak"],
};
export const STANDING_WITH_CANE: PoseSpecification = { ...WITH_CANE, sharing: "standing" };

/** A rail at the strong side; its height where the hand holds it, above the lower of the two levels. */
export const RAIL: SurfaceSpecification = { id: "rail", kind: "rail", height: { cm: 98 } };
export const HAND_ON_RAIL: ContactSpecification = { patch: "grip.strong", on: "rail", role: "both", grips: true };
export const ARM_ON_RAIL = { shoulderFlexion: 28, shoulderAbduction: 14, elbowFlexion: 55, pronation: 110, wristExtension: 12 } as const satisfies LimbAngles;
/** Before the first step, the strong hand on the rail. */
export const WITH_RAIL: PoseSpecification = {
  pelvis: { pitchDeg: 3 },
  bothDeg: { ...LEG_STANDING, ...ARM_DOWN },
  strongDeg: ARM_ON_RAIL,
  surfaces: [RAIL, { id: "step", kind: "step", height: { cm: 17 }, under: ["toes.weak", "toes.strong"], depthCm: 30, widthCm: 90 }],
  contacts: [...BOTH_FEET, HAND_ON_RAIL],
  notCounted: ["toes.weak", "toes.strong", "hand.weak"],
};
export const STANDING_AT_STEPS: PoseSpecification = { ...WITH_RAIL, sharing: "standing" };
