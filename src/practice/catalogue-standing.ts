import type { Activity } from "./activities/activity.ts";
import type { Position } from "./positions/position.ts";
import type { Transition } from "./transitions/transition.ts";

import { standStillLessHand } from "./activities/tables/stand-still-less-hand.data.ts";
import { standWeightSideToSide } from "./activities/tables/stand-weight-side-to-side.data.ts";
import { standSmallSquats } from "./activities/tables/stand-small-squats.data.ts";
import { standToesAndHeels } from "./activities/tables/stand-toes-and-heels.data.ts";
import { standReach } from "./activities/tables/stand-reach.data.ts";
import { standStrongFootOnBlock } from "./activities/tables/stand-strong-foot-on-block.data.ts";
import { standWeakFootTargets } from "./activities/tables/stand-weak-foot-targets.data.ts";
import { standTurnSmallSteps } from "./activities/tables/stand-turn-small-steps.data.ts";
import { strideWeakAheadShift } from "./activities/tables/stride-weak-ahead-shift.data.ts";
import { strideStrongAheadShift } from "./activities/tables/stride-strong-ahead-shift.data.ts";
import { weakKneeRelease } from "./activities/tables/weak-knee-release.data.ts";
import { standAtWall } from "./activities/tables/stand-at-wall.data.ts";
import { barsFeetNearEyesShut } from "./activities/tables/bars-feet-near-eyes-shut.data.ts";
import { barsSideSteps } from "./activities/tables/bars-side-steps.data.ts";
import { barsBackwardSteps } from "./activities/tables/bars-backward-steps.data.ts";
import { barsWalkLighterHand } from "./activities/tables/bars-walk-lighter-hand.data.ts";
import { barsStepUpWeakLeads } from "./activities/tables/bars-step-up-weak-leads.data.ts";
import { caneFitAndLoad } from "./activities/tables/cane-fit-and-load.data.ts";
import { caneThreePoint } from "./activities/tables/cane-three-point.data.ts";
import { caneTwoPoint } from "./activities/tables/cane-two-point.data.ts";
import { kerbWithCane } from "./activities/tables/kerb-with-cane.data.ts";
import { stairsStrongRail } from "./activities/tables/stairs-strong-rail.data.ts";
import { stairsDownOtherRail } from "./activities/tables/stairs-down-other-rail.data.ts";
import { standing } from "./positions/tables/standing.data.ts";
import { strideStandingWeakForward } from "./positions/tables/stride-standing-weak-forward.data.ts";
import { strideStandingStrongForward } from "./positions/tables/stride-standing-strong-forward.data.ts";
import { standingAtWall } from "./positions/tables/standing-at-wall.data.ts";
import { walkingWithDevice } from "./positions/tables/walking-with-device.data.ts";
import { standingAtSteps } from "./positions/tables/standing-at-steps.data.ts";
import { shortSittingToStanding } from "./transitions/tables/short-sitting-to-standing.data.ts";
import { standingToShortSitting } from "./transitions/tables/standing-to-short-sitting.data.ts";
import { standingToStrideWeakForward } from "./transitions/tables/standing-to-stride-weak-forward.data.ts";
import { strideWeakForwardToStanding } from "./transitions/tables/stride-weak-forward-to-standing.data.ts";
import { standingToStrideStrongForward } from "./transitions/tables/standing-to-stride-strong-forward.data.ts";
import { strideStrongForwardToStanding } from "./transitions/tables/stride-strong-forward-to-standing.data.ts";
import { standingToStandingAtWall } from "./transitions/tables/standing-to-standing-at-wall.data.ts";
import { standingAtWallToStanding } from "./transitions/tables/standing-at-wall-to-standing.data.ts";
import { standingToWalkingWithDevice } from "./transitions/tables/standing-to-walking-with-device.data.ts";
import { walkingWithDeviceToStanding } from "./transitions/tables/walking-with-device-to-standing.data.ts";
import { walkingWithDeviceToStandingAtSteps } from "./transitions/tables/walking-with-device-to-standing-at-steps.data.ts";
import { standingAtStepsToWalkingWithDevice } from "./transitions/tables/standing-at-steps-to-walking-with-device.data.ts";

/** Ladders standing and walking: at the mat, in stride, at a wall, in the bars, with a cane, over a kerb and on steps. */
export const STANDING_LADDERS: readonly Activity[] = [
  standStillLessHand,
  standWeightSideToSide,
  standSmallSquats,
  standToesAndHeels,
  standReach,
  standStrongFootOnBlock,
  standWeakFootTargets,
  standTurnSmallSteps,
  strideWeakAheadShift,
  strideStrongAheadShift,
  weakKneeRelease,
  standAtWall,
  barsFeetNearEyesShut,
  barsSideSteps,
  barsBackwardSteps,
  barsWalkLighterHand,
  barsStepUpWeakLeads,
  caneFitAndLoad,
  caneThreePoint,
  caneTwoPoint,
  kerbWithCane,
  stairsStrongRail,
  stairsDownOtherRail,
];

/** Positions those ladders brought with them. */
export const STANDING_POSITIONS: readonly Position[] = [
  standing,
  strideStandingWeakForward,
  strideStandingStrongForward,
  standingAtWall,
  walkingWithDevice,
  standingAtSteps,
];

/** The ways into them and out. */
export const STANDING_WAYS: readonly Transition[] = [
  shortSittingToStanding,
  standingToShortSitting,
  standingToStrideWeakForward,
  strideWeakForwardToStanding,
  standingToStrideStrongForward,
  strideStrongForwardToStanding,
  standingToStandingAtWall,
  standingAtWallToStanding,
  standingToWalkingWithDevice,
  walkingWithDeviceToStanding,
  walkingWithDeviceToStandingAtSteps,
  standingAtStepsToWalkingWithDevice,
];
