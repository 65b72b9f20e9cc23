import type { Activity } from "./activities/activity.ts";
import type { Position } from "./positions/position.ts";
import type { Transition } from "./transitions/transition.ts";

import { handsAndKneesRoundAndHollow } from "./activities/tables/hands-and-knees-round-and-hollow.data.ts";
import { handsAndKneesOppositeLimbs } from "./activities/tables/hands-and-knees-opposite-limbs.data.ts";
import { creepOnHandsAndKnees } from "./activities/tables/creep-on-hands-and-knees.data.ts";
import { handsAndKneesSitBack } from "./activities/tables/hands-and-knees-sit-back.data.ts";
import { forearmsOnLowBench } from "./activities/tables/forearms-on-low-bench.data.ts";
import { heelSittingReach } from "./activities/tables/heel-sitting-reach.data.ts";
import { tallKneelHipHike } from "./activities/tables/tall-kneel-hip-hike.data.ts";
import { tallKneelArmRaiseAndReach } from "./activities/tables/tall-kneel-arm-raise-and-reach.data.ts";
import { tallKneelFreeShift } from "./activities/tables/tall-kneel-free-shift.data.ts";
import { kneeWalk } from "./activities/tables/knee-walk.data.ts";
import { kneelingHipHinge } from "./activities/tables/kneeling-hip-hinge.data.ts";
import { halfKneelWeakForwardShift } from "./activities/tables/half-kneel-weak-forward-shift.data.ts";
import { halfKneelFootThrough } from "./activities/tables/half-kneel-foot-through.data.ts";
import { halfKneelWeakForwardRise } from "./activities/tables/half-kneel-weak-forward-rise.data.ts";
import { floorToSeat } from "./activities/tables/floor-to-seat.data.ts";
import { handsOnTableShift } from "./activities/tables/hands-on-table-shift.data.ts";
import { handsOnTableKneeBend } from "./activities/tables/hands-on-table-knee-bend.data.ts";
import { handsOnTableSteps } from "./activities/tables/hands-on-table-steps.data.ts";
import { handsOnTableWeakPost } from "./activities/tables/hands-on-table-weak-post.data.ts";
import { liftOnBothArms } from "./activities/tables/lift-on-both-arms.data.ts";
import { longSitTransfer } from "./activities/tables/long-sit-transfer.data.ts";
import { oneLegStanding } from "./activities/tables/one-leg-standing.data.ts";
import { thighOverRollLift } from "./activities/tables/thigh-over-roll-lift.data.ts";
import { proneHipStraight } from "./activities/tables/prone-hip-straight.data.ts";
import { heelSitting } from "./positions/tables/heel-sitting.data.ts";
import { kneelingForearmsOnBench } from "./positions/tables/kneeling-forearms-on-bench.data.ts";
import { onFloorAtSeat } from "./positions/tables/on-floor-at-seat.data.ts";
import { plantigrade } from "./positions/tables/plantigrade.data.ts";
import { handsAndKneesToHeelSitting } from "./transitions/tables/hands-and-knees-to-heel-sitting.data.ts";
import { heelSittingToHandsAndKnees } from "./transitions/tables/heel-sitting-to-hands-and-knees.data.ts";
import { heelSittingToTallKneelingAtBench } from "./transitions/tables/heel-sitting-to-tall-kneeling-at-bench.data.ts";
import { tallKneelingAtBenchToHeelSitting } from "./transitions/tables/tall-kneeling-at-bench-to-heel-sitting.data.ts";
import { handsAndKneesToKneelingForearmsOnBench } from "./transitions/tables/hands-and-knees-to-kneeling-forearms-on-bench.data.ts";
import { tallKneelingAtBenchToKneelingForearmsOnBench } from "./transitions/tables/tall-kneeling-at-bench-to-kneeling-forearms-on-bench.data.ts";
import { kneelingForearmsOnBenchToTallKneelingAtBench } from "./transitions/tables/kneeling-forearms-on-bench-to-tall-kneeling-at-bench.data.ts";
import { kneelingForearmsOnBenchToSideLying } from "./transitions/tables/kneeling-forearms-on-bench-to-side-lying.data.ts";
import { sideSittingOnStrongHipToOnFloorAtSeat } from "./transitions/tables/side-sitting-on-strong-hip-to-on-floor-at-seat.data.ts";
import { onFloorAtSeatToLongSitting } from "./transitions/tables/on-floor-at-seat-to-long-sitting.data.ts";
import { onFloorAtSeatToShortSitting } from "./transitions/tables/on-floor-at-seat-to-short-sitting.data.ts";
import { shortSittingToOnFloorAtSeat } from "./transitions/tables/short-sitting-to-on-floor-at-seat.data.ts";
import { shortSittingToPlantigrade } from "./transitions/tables/short-sitting-to-plantigrade.data.ts";
import { plantigradeToShortSitting } from "./transitions/tables/plantigrade-to-short-sitting.data.ts";
import { heelSittingToSideSittingOnStrongHip } from "./transitions/tables/heel-sitting-to-side-sitting-on-strong-hip.data.ts";
import { onFloorAtSeatToTallKneelingAtBench } from "./transitions/tables/on-floor-at-seat-to-tall-kneeling-at-bench.data.ts";
import { plantigradeToForearmsOnTableStanding } from "./transitions/tables/plantigrade-to-forearms-on-table-standing.data.ts";
import { forearmsOnTableStandingToPlantigrade } from "./transitions/tables/forearms-on-table-standing-to-plantigrade.data.ts";

/** Ladders on hands and knees, kneeling, on the way up from the floor, with the hands on a table; then lifts on both arms, one leg, a short thigh. */
export const KNEELING_LADDERS: readonly Activity[] = [
  handsAndKneesRoundAndHollow,
  handsAndKneesOppositeLimbs,
  creepOnHandsAndKnees,
  handsAndKneesSitBack,
  forearmsOnLowBench,
  heelSittingReach,
  tallKneelHipHike,
  tallKneelArmRaiseAndReach,
  tallKneelFreeShift,
  kneeWalk,
  kneelingHipHinge,
  halfKneelWeakForwardShift,
  halfKneelFootThrough,
  halfKneelWeakForwardRise,
  floorToSeat,
  handsOnTableShift,
  handsOnTableKneeBend,
  handsOnTableSteps,
  handsOnTableWeakPost,
  liftOnBothArms,
  longSitTransfer,
  oneLegStanding,
  thighOverRollLift,
  proneHipStraight,
];

/** Heel sitting, a low bench, the floor beside a seat, the hands on a table. */
export const KNEELING_POSITIONS: readonly Position[] = [
  heelSitting,
  kneelingForearmsOnBench,
  onFloorAtSeat,
  plantigrade,
];

/** The ways into and out of them. */
export const KNEELING_WAYS: readonly Transition[] = [
  handsAndKneesToHeelSitting,
  heelSittingToHandsAndKnees,
  heelSittingToTallKneelingAtBench,
  tallKneelingAtBenchToHeelSitting,
  handsAndKneesToKneelingForearmsOnBench,
  tallKneelingAtBenchToKneelingForearmsOnBench,
  kneelingForearmsOnBenchToTallKneelingAtBench,
  kneelingForearmsOnBenchToSideLying,
  sideSittingOnStrongHipToOnFloorAtSeat,
  onFloorAtSeatToLongSitting,
  onFloorAtSeatToShortSitting,
  shortSittingToOnFloorAtSeat,
  shortSittingToPlantigrade,
  plantigradeToShortSitting,
  heelSittingToSideSittingOnStrongHip,
  onFloorAtSeatToTallKneelingAtBench,
  plantigradeToForearmsOnTableStanding,
  forearmsOnTableStandingToPlantigrade,
];
