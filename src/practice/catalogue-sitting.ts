import type { Activity } from "./activities/activity.ts";
import type { Position } from "./positions/position.ts";
import type { Transition } from "./transitions/transition.ts";

import { shortSittingStill } from "./activities/tables/short-sitting-still.data.ts";
import { shortSittingWeightShift } from "./activities/tables/short-sitting-weight-shift.data.ts";
import { shortSittingPelvicTilt } from "./activities/tables/short-sitting-pelvic-tilt.data.ts";
import { shortSittingLeanToElbow } from "./activities/tables/short-sitting-lean-to-elbow.data.ts";
import { shortSittingTrunkTurn } from "./activities/tables/short-sitting-trunk-turn.data.ts";
import { shortSittingKneeStraightening } from "./activities/tables/short-sitting-knee-straightening.data.ts";
import { shortSittingHeelAndToes } from "./activities/tables/short-sitting-heel-and-toes.data.ts";
import { shortSittingBlockPress } from "./activities/tables/short-sitting-block-press.data.ts";
import { edgeScootSideways } from "./activities/tables/edge-scoot-sideways.data.ts";
import { edgeScootBackAndAhead } from "./activities/tables/edge-scoot-back-and-ahead.data.ts";
import { weakArmPostInSitting } from "./activities/tables/weak-arm-post-in-sitting.data.ts";
import { tableArmGlide } from "./activities/tables/table-arm-glide.data.ts";
import { wallSittingTall } from "./activities/tables/wall-sitting-tall.data.ts";
import { wallSittingWeakHand } from "./activities/tables/wall-sitting-weak-hand.data.ts";
import { wallSittingThighSet } from "./activities/tables/wall-sitting-thigh-set.data.ts";
import { bedSittingComeForward } from "./activities/tables/bed-sitting-come-forward.data.ts";
import { sideSittingStrongHold } from "./activities/tables/side-sitting-strong-hold.data.ts";
import { sideSittingWeakHold } from "./activities/tables/side-sitting-weak-hold.data.ts";
import { weakHipToHandsAndKnees } from "./activities/tables/weak-hip-to-hands-and-knees.data.ts";
import { crossWeakLeg } from "./activities/tables/cross-weak-leg.data.ts";
import { seatToSeatPractice } from "./activities/tables/seat-to-seat-practice.data.ts";
import { perchLoadFeet } from "./activities/tables/perch-load-feet.data.ts";
import { perchToStand } from "./activities/tables/perch-to-stand.data.ts";
import { sitToStandOtherFeet } from "./activities/tables/sit-to-stand-other-feet.data.ts";
import { sittingAgainstWall } from "./positions/tables/sitting-against-wall.data.ts";
import { perchSitting } from "./positions/tables/perch-sitting.data.ts";
import { bedSitting } from "./positions/tables/bed-sitting.data.ts";
import { sideSittingOnWeakHip } from "./positions/tables/side-sitting-on-weak-hip.data.ts";
import { longSittingToSittingAgainstWall } from "./transitions/tables/long-sitting-to-sitting-against-wall.data.ts";
import { sittingAgainstWallToLongSitting } from "./transitions/tables/sitting-against-wall-to-long-sitting.data.ts";
import { shortSittingToPerchSitting } from "./transitions/tables/short-sitting-to-perch-sitting.data.ts";
import { perchSittingToShortSitting } from "./transitions/tables/perch-sitting-to-short-sitting.data.ts";
import { supineToBedSitting } from "./transitions/tables/supine-to-bed-sitting.data.ts";
import { bedSittingToSupine } from "./transitions/tables/bed-sitting-to-supine.data.ts";
import { bedSittingToShortSitting } from "./transitions/tables/bed-sitting-to-short-sitting.data.ts";
import { longSittingToSideSittingOnWeakHip } from "./transitions/tables/long-sitting-to-side-sitting-on-weak-hip.data.ts";
import { sideSittingOnWeakHipToLongSitting } from "./transitions/tables/side-sitting-on-weak-hip-to-long-sitting.data.ts";
import { sideSittingOnWeakHipToHandsAndKnees } from "./transitions/tables/side-sitting-on-weak-hip-to-hands-and-knees.data.ts";
import { sideSittingOnStrongHipToHandsAndKnees } from "./transitions/tables/side-sitting-on-strong-hip-to-hands-and-knees.data.ts";
import { handsAndKneesToSideSittingOnStrongHip } from "./transitions/tables/hands-and-knees-to-side-sitting-on-strong-hip.data.ts";

/** Ladders in sitting: at the edge, at a table and a wall, in bed, on either hip, on a perch, and from seat to seat. */
export const SITTING_LADDERS: readonly Activity[] = [
  shortSittingStill,
  shortSittingWeightShift,
  shortSittingPelvicTilt,
  shortSittingLeanToElbow,
  shortSittingTrunkTurn,
  shortSittingKneeStraightening,
  shortSittingHeelAndToes,
  shortSittingBlockPress,
  edgeScootSideways,
  edgeScootBackAndAhead,
  weakArmPostInSitting,
  tableArmGlide,
  wallSittingTall,
  wallSittingWeakHand,
  wallSittingThighSet,
  bedSittingComeForward,
  sideSittingStrongHold,
  sideSittingWeakHold,
  weakHipToHandsAndKnees,
  crossWeakLeg,
  seatToSeatPractice,
  perchLoadFeet,
  perchToStand,
  sitToStandOtherFeet,
];

/** Positions those ladders brought with them. */
export const SITTING_POSITIONS: readonly Position[] = [
  sittingAgainstWall,
  perchSitting,
  bedSitting,
  sideSittingOnWeakHip,
];

/** The ways into them and out. */
export const SITTING_WAYS: readonly Transition[] = [
  longSittingToSittingAgainstWall,
  sittingAgainstWallToLongSitting,
  shortSittingToPerchSitting,
  perchSittingToShortSitting,
  supineToBedSitting,
  bedSittingToSupine,
  bedSittingToShortSitting,
  longSittingToSideSittingOnWeakHip,
  sideSittingOnWeakHipToLongSitting,
  sideSittingOnWeakHipToHandsAndKnees,
  sideSittingOnStrongHipToHandsAndKnees,
  handsAndKneesToSideSittingOnStrongHip,
];
