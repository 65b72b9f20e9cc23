import type { ContactSpecification, PoseSpecification, SurfaceSpecification } from "../../../mechanics/pose/specification.ts";
import { ARM_DOWN, ARM_ON_BAR, BARS, FOOT_STRONG, FOOT_WEAK, GRIP_STRONG, LEG_STANDING, STANDING_IN_BARS, STANDING_ONE_HAND } from "../../positions/standing-poses.data.ts";
import {
  ARM_ON_CANE,
  ARM_ON_RAIL,
  BOTH_FEET,
  CANE,
  HAND_LIGHT_ON_CANE,
  HAND_ON_CANE,
  HAND_ON_RAIL,
  RAIL,
  STANDING_WITH_CANE,
  WITH_CANE,
} from "../../positions/upright-poses.data.ts";

/** Key poses of walking in the bars, with a cane, and over kerbs and steps. */

const HAND_LIGHT: ContactSpecification = { patch: "grip.strong", on: "bars", role: "both", effort: "light" };
const STRONG_BALL_RESTS: ContactSpecification = { patch: "forefoot.strong", on: "floor", role: "both", effort: "rest" };
const WEAK_BALL_RESTS: ContactSpecification = { patch: "forefoot.weak", on: "floor", role: "both", effort: "rest" };
const ENDS = ["toes.weak", "toes.strong", "hand.weak"] as const;
/** The trunk a little over the standing strong leg. */
const OVER_STRONG = { lumbarSideBend: -5, thoraxSideBend: -4, neckSideBend: 6 } as const;
/** The trunk a little over the standing weak leg. */
const OVER_WEAK = { lumbarSideBend: 4, thoraxSideBend: 3, neckSideBend: -5 } as const;
const WITHOUT_WEAK_FOOT = [...ENDS, "foot.weak"] as const;
const IN_BARS: PoseSpecification = {
  pelvis: { pitchDeg: 2 },
  bothDeg: { ...LEG_STANDING, ...ARM_ON_BAR },
  weakDeg: ARM_DOWN,
  surfaces: [BARS],
  contacts: [...BOTH_FEET, GRIP_STRONG],
  notCounted: ENDS,
};

/** Both hands on the bars, the eyes shut. */
export const BARS_EYES_SHUT: PoseSpecification = { ...STANDING_IN_BARS, trunkDeg: { neckFlexion: -2 } };
export const BARS_FEET_TOGETHER: PoseSpecification = {
  ...STANDING_ONE_HAND,
  bothDeg: { ...LEG_STANDING, ...ARM_ON_BAR, hipAbduction: -3 },
};
export const BARS_FEET_TOGETHER_LIGHT: PoseSpecification = { ...BARS_FEET_TOGETHER, contacts: [...BOTH_FEET, HAND_LIGHT] };

/** A step to the strong side: the strong foot stands wide and has the weight. */
export const SIDE_STRONG_FOOT_OUT: PoseSpecification = { ...IN_BARS, bothDeg: { ...LEG_STANDING, ...ARM_ON_BAR, hipAbduction: 11 }, shift: { toWeakCm: -6 } };
/** The weak foot closes to it through the air. */
export const SIDE_WEAK_FOOT_CLOSES: PoseSpecification = {
  ...IN_BARS,
  trunkDeg: OVER_STRONG,
  weakDeg: { ...ARM_DOWN, hipFlexion: 16, hipAbduction: 12, kneeFlexion: 30, ankleDorsiflexion: 2 },
  contacts: [FOOT_STRONG, GRIP_STRONG],
  shift: { toWeakCm: -10 },
  notCounted: WITHOUT_WEAK_FOOT,
};
/** A step to the weak side: the weak foot stands wide and takes the weight. */
export const SIDE_WEAK_FOOT_OUT: PoseSpecification = { ...IN_BARS, bothDeg: { ...LEG_STANDING, ...ARM_ON_BAR, hipAbduction: 11 }, shift: { toWeakCm: 5 } };
export const SIDE_STRONG_FOOT_CLOSES: PoseSpecification = {
  ...IN_BARS,
  strongDeg: { ...ARM_ON_BAR, hipFlexion: 14, hipAbduction: 10, kneeFlexion: 28, ankleDorsiflexion: 2 },
  contacts: [FOOT_WEAK, GRIP_STRONG],
  shift: { toWeakCm: 6 },
};

/** The strong toes reach back while the weak leg carries. */
export const STRONG_FOOT_BACK: PoseSpecification = {
  ...IN_BARS,
  pelvis: { pitchDeg: 6 },
  strongDeg: { ...ARM_ON_BAR, shoulderFlexion: 20, hipFlexion: -6, kneeFlexion: 24, ankleDorsiflexion: -2, toeExtension: 30 },
  contacts: [FOOT_WEAK, STRONG_BALL_RESTS, GRIP_STRONG],
  shift: { toWeakCm: 4, forwardCm: 2 },
};
/** The weak foot goes back through the air: the knee bends, the hip stays straight. */
export const WEAK_FOOT_BACK: PoseSpecification = {
  ...IN_BARS,
  trunkDeg: OVER_STRONG,
  pelvis: { pitchDeg: 8 },
  weakDeg: { ...ARM_DOWN, hipFlexion: -4, kneeFlexion: 38, ankleDorsiflexion: -2 },
  contacts: [FOOT_STRONG, GRIP_STRONG],
  shift: { forwardCm: -3, toWeakCm: -8 },
  notCounted: WITHOUT_WEAK_FOOT,
};
/** The strong foot on its way back past the standing weak leg. */
export const WALKING_BACK: PoseSpecification = {
  ...IN_BARS,
  pelvis: { pitchDeg: 6 },
  strongDeg: { ...ARM_ON_BAR, hipFlexion: 0, kneeFlexion: 42, ankleDorsiflexion: 0 },
  contacts: [FOOT_WEAK, GRIP_STRONG],
  shift: { toWeakCm: 6 },
};

const PASSING = { hipFlexion: 20, kneeFlexion: 42, ankleDorsiflexion: 2 } as const;
/** In mid-stride, the weight coming over the weak foot, two fingers on the bar. */
export const STRIDE_LIGHT: PoseSpecification = {
  ...IN_BARS,
  weakDeg: { ...ARM_DOWN, hipFlexion: 18, kneeFlexion: 6, ankleDorsiflexion: -4 },
  strongDeg: { ...ARM_ON_BAR, shoulderFlexion: 22, hipFlexion: -8, kneeFlexion: 6, ankleDorsiflexion: 12 },
  contacts: [...BOTH_FEET, HAND_LIGHT],
  shift: { forwardCm: 4, toWeakCm: 2 },
};
/** Stopped on call in mid-stride, no hand. */
export const STOPPED_IN_STRIDE: PoseSpecification = {
  ...IN_BARS,
  bothDeg: { ...LEG_STANDING, ...ARM_DOWN },
  weakDeg: { ...ARM_DOWN, hipFlexion: 18, kneeFlexion: 6, ankleDorsiflexion: -4 },
  strongDeg: { hipFlexion: -8, kneeFlexion: 6, ankleDorsiflexion: 12 },
  surfaces: [{ ...BARS, under: ["grip.strong"] }],
  contacts: BOTH_FEET,
  shift: { forwardCm: 3 },
};
export const WALKING_NO_HAND: PoseSpecification = {
  ...IN_BARS,
  trunkDeg: OVER_WEAK,
  weakDeg: { ...ARM_DOWN, hipFlexion: 6, kneeFlexion: 8, ankleDorsiflexion: 8 },
  strongDeg: { shoulderFlexion: -8, shoulderAbduction: 10, elbowFlexion: 14, pronation: 90, ...PASSING },
  surfaces: [{ ...BARS, under: ["grip.strong"] }],
  contacts: [FOOT_WEAK],
  shift: { forwardCm: 1, toWeakCm: 10 },
};

const LOW_STEP: SurfaceSpecification = { id: "step", kind: "step", height: { cm: 5 }, under: ["foot.weak"], depthCm: 32, widthCm: 60 };
const HIGH_STEP: SurfaceSpecification = { ...LOW_STEP, height: { cm: 12 } };
const WEAK_ON_STEP: ContactSpecification = { patch: "foot.weak", on: "step", role: "both" };
const STRONG_ON_STEP: ContactSpecification = { patch: "foot.strong", on: "step", role: "both" };
/** On the way down the heel of the foot that stays behind comes up; its ball stands near the edge. */
const STRONG_BALL_ON_STEP: ContactSpecification = { patch: "forefoot.strong", on: "step", role: "both" };
const UP_ON_WEAK: PoseSpecification = {
  ...IN_BARS,
  pelvis: { pitchDeg: 10 },
  weakDeg: { ...ARM_DOWN, hipFlexion: 34, kneeFlexion: 34, ankleDorsiflexion: 12 },
  strongDeg: { ...ARM_ON_BAR, shoulderFlexion: 26, hipFlexion: 6, kneeFlexion: 14, ankleDorsiflexion: -12, toeExtension: 24 },
  surfaces: [BARS, LOW_STEP],
  contacts: [WEAK_ON_STEP, STRONG_BALL_RESTS, GRIP_STRONG],
  shift: { forwardCm: 6, toWeakCm: 4 },
};
/** The weak foot on a step, the strong ball still down: the weak leg lifts the body. */
export const STEP_UP_WEAK_LOW = UP_ON_WEAK;
export const STEP_UP_WEAK_HIGH: PoseSpecification = {
  ...UP_ON_WEAK,
  weakDeg: { ...ARM_DOWN, hipFlexion: 50, kneeFlexion: 52, ankleDorsiflexion: 14 },
  surfaces: [BARS, HIGH_STEP],
};
/** The strong foot has left the floor. */
export const STEP_UP_WEAK_STRONG_LEAVES: PoseSpecification = {
  ...UP_ON_WEAK,
  weakDeg: { ...ARM_DOWN, hipFlexion: 30, kneeFlexion: 34, ankleDorsiflexion: 14 },
  strongDeg: { ...ARM_ON_BAR, shoulderFlexion: 14, hipFlexion: 8, kneeFlexion: 40, ankleDorsiflexion: -4 },
  surfaces: [BARS, HIGH_STEP],
  contacts: [WEAK_ON_STEP, GRIP_STRONG],
  shift: { toWeakCm: 8 },
};

const CANE_AHEAD = { ...ARM_ON_CANE, shoulderFlexion: 24, elbowFlexion: 20, wristExtension: 32 } as const;
/** The cane only stands there: no more than the arm's weight on it. */
export const CANE_LIGHT: PoseSpecification = { ...STANDING_WITH_CANE, contacts: [...BOTH_FEET, HAND_LIGHT_ON_CANE] };
/** Weight over the strong foot and the cane: the hand pushes down. */
export const CANE_LOADED: PoseSpecification = { ...WITH_CANE, shift: { toWeakCm: -5 } };
/** The cane set a foot's length ahead and leaned on. */
export const CANE_SET_AHEAD: PoseSpecification = { ...WITH_CANE, pelvis: { pitchDeg: 4 }, strongDeg: CANE_AHEAD, shift: { forwardCm: 4 } };
/** Cane ahead, the weak foot in the air on its way to it: the strong leg and the cane carry. */
export const CANE_WEAK_FOOT_IN_AIR: PoseSpecification = {
  ...WITH_CANE,
  trunkDeg: OVER_STRONG,
  weakDeg: { ...ARM_DOWN, hipFlexion: 28, kneeFlexion: 38, ankleDorsiflexion: 0 },
  strongDeg: { ...CANE_AHEAD, hipFlexion: 0, kneeFlexion: 4 },
  contacts: [FOOT_STRONG, HAND_ON_CANE],
  shift: { forwardCm: -1, toWeakCm: -10 },
  notCounted: WITHOUT_WEAK_FOOT,
};
/** The weak foot stands level with the cane and takes the weight. */
export const CANE_WEIGHT_ON_WEAK: PoseSpecification = {
  ...WITH_CANE,
  weakDeg: { ...ARM_DOWN, hipFlexion: 15, kneeFlexion: 6, ankleDorsiflexion: -2 },
  strongDeg: { ...CANE_AHEAD, hipFlexion: -8, kneeFlexion: 10, ankleDorsiflexion: 12 },
  shift: { forwardCm: 6, toWeakCm: 1 },
};
/** The strong foot comes level: the weak leg and the cane carry. */
export const CANE_STRONG_FOOT_COMES: PoseSpecification = {
  ...WITH_CANE,
  weakDeg: { ...ARM_DOWN, hipFlexion: 4, kneeFlexion: 7, ankleDorsiflexion: 5 },
  strongDeg: { ...ARM_ON_CANE, shoulderFlexion: 6, shoulderAbduction: 6, hipFlexion: 10, kneeFlexion: 36, ankleDorsiflexion: 0 },
  contacts: [FOOT_WEAK, HAND_ON_CANE],
  shift: { toWeakCm: 6 },
};
/** Cane and weak foot travel together: the strong leg is alone, the hand only guides the cane. */
export const CANE_WITH_WEAK_FOOT: PoseSpecification = {
  ...CANE_WEAK_FOOT_IN_AIR,
  strongDeg: { ...ARM_ON_CANE, shoulderFlexion: 10, hipFlexion: 0, kneeFlexion: 4 },
  contacts: [FOOT_STRONG, HAND_LIGHT_ON_CANE],
  shift: { toWeakCm: -9 },
};
/** The strong foot passes the weak foot, the hand on the cane. */
export const CANE_STRONG_FOOT_PASSES: PoseSpecification = {
  ...WITH_CANE,
  weakDeg: { ...ARM_DOWN, hipFlexion: 2, kneeFlexion: 7, ankleDorsiflexion: 9 },
  strongDeg: { ...ARM_ON_CANE, ...PASSING, shoulderAbduction: 6, hipFlexion: 26 },
  contacts: [FOOT_WEAK, HAND_ON_CANE],
  shift: { toWeakCm: 6 },
};
/** The same step with the cane hardly leaned on. */
export const CANE_STRONG_FOOT_PASSES_LIGHT: PoseSpecification = { ...CANE_STRONG_FOOT_PASSES, trunkDeg: OVER_WEAK, strongDeg: { ...ARM_ON_CANE, ...PASSING, shoulderAbduction: -4 }, contacts: [FOOT_WEAK, HAND_LIGHT_ON_CANE], shift: { toWeakCm: 9 } };

const KERB: SurfaceSpecification = { id: "step", kind: "block", height: { cm: 12 }, under: ["foot.strong"], depthCm: 60, widthCm: 110 };
const KERB_BEHIND: SurfaceSpecification = { ...KERB, under: ["forefoot.strong"] };
/** Up the kerb: the strong foot is up and lifts, the weak ball and the cane are still below. */
export const KERB_STRONG_UP: PoseSpecification = {
  ...WITH_CANE,
  trunkDeg: OVER_STRONG,
  pelvis: { pitchDeg: 12 },
  weakDeg: { ...ARM_DOWN, hipFlexion: 8, kneeFlexion: 14, ankleDorsiflexion: -8, toeExtension: 22 },
  strongDeg: { ...ARM_ON_CANE, shoulderFlexion: 6, hipFlexion: 50, kneeFlexion: 52, ankleDorsiflexion: 14 },
  surfaces: [CANE, KERB],
  contacts: [STRONG_ON_STEP, WEAK_BALL_RESTS, HAND_ON_CANE],
  shift: { forwardCm: 6, toWeakCm: -10.5 },
};
/** Cane and weak foot follow: the strong leg stands on the kerb, the weak foot is in the air. */
export const KERB_WEAK_FOLLOWS: PoseSpecification = {
  ...WITH_CANE,
  trunkDeg: OVER_STRONG,
  pelvis: { pitchDeg: 6 },
  weakDeg: { ...ARM_DOWN, hipFlexion: 18, kneeFlexion: 48, ankleDorsiflexion: 0 },
  strongDeg: { ...ARM_ON_CANE, hipFlexion: 14, kneeFlexion: 16, ankleDorsiflexion: 8 },
  surfaces: [{ ...CANE, height: { of: "wristStanding", plusCm: 10.5 } }, KERB],
  contacts: [STRONG_ON_STEP, HAND_ON_CANE],
  shift: { forwardCm: 4, toWeakCm: -13 },
  notCounted: WITHOUT_WEAK_FOOT,
};
/** Down the kerb: the cane is down, the weak foot reaches the road, the strong knee lets down. */
export const KERB_WEAK_DOWN: PoseSpecification = {
  ...WITH_CANE,
  pelvis: { pitchDeg: 8 },
  weakDeg: { ...ARM_DOWN, hipFlexion: 24, kneeFlexion: 8, ankleDorsiflexion: -10 },
  strongDeg: { ...CANE_AHEAD, hipFlexion: 28, kneeFlexion: 52, ankleDorsiflexion: 18, toeExtension: 16 },
  surfaces: [CANE, KERB_BEHIND],
  contacts: [STRONG_BALL_ON_STEP, FOOT_WEAK, HAND_ON_CANE],
  shift: { forwardCm: -8 },
};
/** The strong foot leaves the kerb: the weak leg below and the cane carry. */
export const KERB_STRONG_FOLLOWS: PoseSpecification = {
  ...WITH_CANE,
  pelvis: { pitchDeg: 5 },
  weakDeg: { ...ARM_DOWN, hipFlexion: 8, kneeFlexion: 10, ankleDorsiflexion: 6 },
  strongDeg: { ...CANE_AHEAD, hipFlexion: 16, kneeFlexion: 46, ankleDorsiflexion: 4 },
  surfaces: [CANE, KERB_BEHIND],
  contacts: [FOOT_WEAK, HAND_ON_CANE],
  shift: { toWeakCm: 6 },
};

const STAIR: SurfaceSpecification = { id: "step", kind: "step", height: { cm: 17 }, under: ["foot.strong"], depthCm: 30, widthCm: 90 };
const STAIR_BEHIND: SurfaceSpecification = { ...STAIR, under: ["forefoot.strong"] };
/** Up: the strong foot is on the step and lifts, the hand on the rail. */
export const STAIR_STRONG_UP: PoseSpecification = {
  ...KERB_STRONG_UP,
  pelvis: { pitchDeg: 14 },
  weakDeg: { ...ARM_DOWN, hipFlexion: 10, kneeFlexion: 12, ankleDorsiflexion: -8, toeExtension: 22 },
  strongDeg: { ...ARM_ON_RAIL, hipFlexion: 62, kneeFlexion: 64, ankleDorsiflexion: 15 },
  surfaces: [RAIL, STAIR],
  contacts: [STRONG_ON_STEP, WEAK_BALL_RESTS, HAND_ON_RAIL],
  shift: { forwardCm: 4, toWeakCm: -8 },
};
export const STAIR_WEAK_FOLLOWS: PoseSpecification = {
  ...KERB_WEAK_FOLLOWS,
  weakDeg: { ...ARM_DOWN, hipFlexion: 24, kneeFlexion: 58, ankleDorsiflexion: 2 },
  strongDeg: { ...ARM_ON_RAIL, shoulderFlexion: 22, hipFlexion: 22, kneeFlexion: 26, ankleDorsiflexion: 10 },
  surfaces: [{ ...RAIL, height: { cm: 108 } }, STAIR],
  contacts: [STRONG_ON_STEP, HAND_ON_RAIL],
  shift: { forwardCm: 8, toWeakCm: -10 },
};
/** Down: the weak foot has reached the lower step, the strong knee lets the body down. */
export const STAIR_WEAK_DOWN: PoseSpecification = {
  ...KERB_WEAK_DOWN,
  weakDeg: { ...ARM_DOWN, hipFlexion: 20, kneeFlexion: 8, ankleDorsiflexion: -10 },
  strongDeg: { ...ARM_ON_RAIL, hipFlexion: 37, kneeFlexion: 66, ankleDorsiflexion: 20, toeExtension: 16 },
  surfaces: [RAIL, STAIR_BEHIND],
  contacts: [STRONG_BALL_ON_STEP, FOOT_WEAK, HAND_ON_RAIL],
  shift: { forwardCm: -6 },
};
export const STAIR_STRONG_FOLLOWS: PoseSpecification = {
  ...KERB_STRONG_FOLLOWS,
  strongDeg: { ...ARM_ON_RAIL, shoulderFlexion: 20, hipFlexion: 22, kneeFlexion: 56, ankleDorsiflexion: 4 },
  surfaces: [{ ...RAIL, height: { cm: 94 } }, STAIR_BEHIND],
  contacts: [FOOT_WEAK, HAND_ON_RAIL],
};
/** Down backward, facing up the steps: the weak foot reaches the lower step behind, the strong hand has the rail. */
export const STAIR_BACKWARD_WEAK_DOWN: PoseSpecification = {
  ...KERB_WEAK_DOWN,
  pelvis: { pitchDeg: 14 },
  weakDeg: { ...ARM_DOWN, hipFlexion: 2, kneeFlexion: 8, ankleDorsiflexion: -16, toeExtension: 26 },
  strongDeg: { ...ARM_ON_RAIL, hipFlexion: 56, kneeFlexion: 62, ankleDorsiflexion: 18 },
  surfaces: [{ ...RAIL, height: { cm: 104 } }, STAIR],
  contacts: [STRONG_ON_STEP, WEAK_BALL_RESTS, HAND_ON_RAIL],
  shift: { forwardCm: 2, toWeakCm: -10 },
};
/** Down with the rail at the weak side: the strong hand reaches across the body to it. */
export const STAIR_DOWN_HAND_ACROSS: PoseSpecification = {
  ...STAIR_WEAK_DOWN,
  trunkDeg: { thoraxTurn: 20, lumbarTurn: 6 },
  strongDeg: { ...ARM_ON_RAIL, shoulderFlexion: 52, shoulderAbduction: -22, elbowFlexion: 42, hipFlexion: 37, kneeFlexion: 66, ankleDorsiflexion: 20, toeExtension: 16 },
  shift: { forwardCm: -4, toWeakCm: 6 },
};
/** Down with the cane and no rail. */
export const STAIR_DOWN_CANE: PoseSpecification = {
  ...STAIR_WEAK_DOWN,
  pelvis: { pitchDeg: 10 },
  strongDeg: { ...CANE_AHEAD, hipFlexion: 37, kneeFlexion: 66, ankleDorsiflexion: 20, toeExtension: 16 },
  surfaces: [CANE, STAIR_BEHIND],
  contacts: [STRONG_BALL_ON_STEP, FOOT_WEAK, HAND_ON_CANE],
  shift: { forwardCm: -8, toWeakCm: 2 },
};
