import type { Activity } from "./activities/activity.ts";
import type { Position } from "./positions/position.ts";
import type { Transition } from "./transitions/transition.ts";

import { bridge } from "./activities/tables/bridge.data.ts";
import { kneesTogetherRoll } from "./activities/tables/knees-together-roll.data.ts";
import { heelSlideWeak } from "./activities/tables/heel-slide-weak.data.ts";
import { armRaiseSelfAssisted } from "./activities/tables/arm-raise-self-assisted.data.ts";
import { rollToStrongSide } from "./activities/tables/roll-to-strong-side.data.ts";
import { rollToWeakSide } from "./activities/tables/roll-to-weak-side.data.ts";
import { sideLyingToSitOverStrong } from "./activities/tables/side-lying-to-sit-over-strong.data.ts";
import { hipAbductionSideLying } from "./activities/tables/hip-abduction-side-lying.data.ts";
import { trunkCounterRotationSideLying } from "./activities/tables/trunk-counter-rotation-side-lying.data.ts";
import { weakArmForwardSideLying } from "./activities/tables/weak-arm-forward-side-lying.data.ts";

import { supine } from "./positions/tables/supine.data.ts";
import { hookLying } from "./positions/tables/hook-lying.data.ts";
import { sideLyingOnWeakSide } from "./positions/tables/side-lying-on-weak-side.data.ts";
import { sideLyingOnStrongSide } from "./positions/tables/side-lying-on-strong-side.data.ts";

import { supineToHookLying } from "./transitions/tables/supine-to-hook-lying.data.ts";
import { hookLyingToSupine } from "./transitions/tables/hook-lying-to-supine.data.ts";
import { rollOntoStrongSide } from "./transitions/tables/roll-onto-strong-side.data.ts";
import { rollOntoWeakSide } from "./transitions/tables/roll-onto-weak-side.data.ts";
import { rollBackFromStrongSide } from "./transitions/tables/roll-back-from-strong-side.data.ts";
import { rollBackFromWeakSide } from "./transitions/tables/roll-back-from-weak-side.data.ts";
import { sideLyingToShortSitting } from "./transitions/tables/side-lying-to-short-sitting.data.ts";
import { shortSittingToSideLying } from "./transitions/tables/short-sitting-to-side-lying.data.ts";
import { sideLyingToProne } from "./transitions/tables/side-lying-to-prone.data.ts";
import { proneToSideLying } from "./transitions/tables/prone-to-side-lying.data.ts";
import { sideLyingToLongSitting } from "./transitions/tables/side-lying-to-long-sitting.data.ts";
import { longSittingToSideLying } from "./transitions/tables/long-sitting-to-side-lying.data.ts";

import { handsAndKneesRock } from "./activities/tables/hands-and-knees-rock.data.ts";
import { handsAndKneesLift } from "./activities/tables/hands-and-knees-lift.data.ts";
import { tallKneelBenchHoldAndShift } from "./activities/tables/tall-kneel-bench-hold-and-shift.data.ts";
import { heelSitToTallKneel } from "./activities/tables/heel-sit-to-tall-kneel.data.ts";
import { halfKneelWeakForwardHold } from "./activities/tables/half-kneel-weak-forward-hold.data.ts";
import { halfKneelStrongForwardRise } from "./activities/tables/half-kneel-strong-forward-rise.data.ts";
import { barsWeakStance } from "./activities/tables/bars-weak-stance.data.ts";
import { barsStrongStep } from "./activities/tables/bars-strong-step.data.ts";
import { barsWeakStepAndWalk } from "./activities/tables/bars-weak-step-and-walk.data.ts";
import { handsAndKnees } from "./positions/tables/hands-and-knees.data.ts";
import { tallKneeling } from "./positions/tables/tall-kneeling.data.ts";
import { tallKneelingAtBench } from "./positions/tables/tall-kneeling-at-bench.data.ts";
import { halfKneelingWeakForward } from "./positions/tables/half-kneeling-weak-forward.data.ts";
import { halfKneelingStrongForward } from "./positions/tables/half-kneeling-strong-forward.data.ts";
import { standingInBars } from "./positions/tables/standing-in-bars.data.ts";
import { walkingInBars } from "./positions/tables/walking-in-bars.data.ts";
import { benchToHalfKneelingStrongForward } from "./transitions/tables/bench-to-half-kneeling-strong-forward.data.ts";
import { benchToHalfKneelingWeakForward } from "./transitions/tables/bench-to-half-kneeling-weak-forward.data.ts";
import { halfKneelingStrongForwardToBench } from "./transitions/tables/half-kneeling-strong-forward-to-bench.data.ts";
import { halfKneelingStrongForwardToStandingInBars } from "./transitions/tables/half-kneeling-strong-forward-to-standing-in-bars.data.ts";
import { halfKneelingWeakForwardToBench } from "./transitions/tables/half-kneeling-weak-forward-to-bench.data.ts";
import { handsAndKneesToSideLying } from "./transitions/tables/hands-and-knees-to-side-lying.data.ts";
import { handsAndKneesToTallKneelingAtBench } from "./transitions/tables/hands-and-knees-to-tall-kneeling-at-bench.data.ts";
import { longSittingToHandsAndKnees } from "./transitions/tables/long-sitting-to-hands-and-knees.data.ts";
import { shortSittingToStandingInBars } from "./transitions/tables/short-sitting-to-standing-in-bars.data.ts";
import { sideLyingToHandsAndKnees } from "./transitions/tables/side-lying-to-hands-and-knees.data.ts";
import { standingInBarsToShortSitting } from "./transitions/tables/standing-in-bars-to-short-sitting.data.ts";
import { standingInBarsToWalkingInBars } from "./transitions/tables/standing-in-bars-to-walking-in-bars.data.ts";
import { tallKneelingAtBenchToSideLying } from "./transitions/tables/tall-kneeling-at-bench-to-side-lying.data.ts";
import { tallKneelingAtBenchToTallKneeling } from "./transitions/tables/tall-kneeling-at-bench-to-tall-kneeling.data.ts";
import { tallKneelingToTallKneelingAtBench } from "./transitions/tables/tall-kneeling-to-tall-kneeling-at-bench.data.ts";
import { walkingInBarsToStandingInBars } from "./transitions/tables/walking-in-bars-to-standing-in-bars.data.ts";

import { proneOnElbowsHoldAndShift } from "./activities/tables/prone-on-elbows-hold-and-shift.data.ts";
import { proneOnElbowsLiftAndReach } from "./activities/tables/prone-on-elbows-lift-and-reach.data.ts";
import { tableForearmsSittingLean } from "./activities/tables/table-forearms-sitting-lean.data.ts";
import { tableForearmsStandingLean } from "./activities/tables/table-forearms-standing-lean.data.ts";
import { longSittingBalanceAndReach } from "./activities/tables/long-sitting-balance-and-reach.data.ts";
import { longSittingScoot } from "./activities/tables/long-sitting-scoot.data.ts";
import { shortSittingReach } from "./activities/tables/short-sitting-reach.data.ts";
import { shortSittingHipHike } from "./activities/tables/short-sitting-hip-hike.data.ts";
import { sitToStand } from "./activities/tables/sit-to-stand.data.ts";
import { prone } from "./positions/tables/prone.data.ts";
import { proneOnElbows } from "./positions/tables/prone-on-elbows.data.ts";
import { longSitting } from "./positions/tables/long-sitting.data.ts";
import { shortSitting } from "./positions/tables/short-sitting.data.ts";
import { forearmsOnTableSitting } from "./positions/tables/forearms-on-table-sitting.data.ts";
import { forearmsOnTableStanding } from "./positions/tables/forearms-on-table-standing.data.ts";
import { wheelchairToMatOverStrongSide } from "./transitions/tables/wheelchair-to-mat-over-strong-side.data.ts";
import { wheelchairToMatOverWeakSide } from "./transitions/tables/wheelchair-to-mat-over-weak-side.data.ts";
import { proneToProneOnElbows } from "./transitions/tables/prone-to-prone-on-elbows.data.ts";
import { proneOnElbowsToProne } from "./transitions/tables/prone-on-elbows-to-prone.data.ts";
import { shortSittingToForearmsOnTableSitting } from "./transitions/tables/short-sitting-to-forearms-on-table-sitting.data.ts";
import { forearmsOnTableSittingToShortSitting } from "./transitions/tables/forearms-on-table-sitting-to-short-sitting.data.ts";
import { shortSittingToForearmsOnTableStanding } from "./transitions/tables/short-sitting-to-forearms-on-table-standing.data.ts";
import { forearmsOnTableStandingToShortSitting } from "./transitions/tables/forearms-on-table-standing-to-short-sitting.data.ts";
import { supineToLongSitting } from "./transitions/tables/supine-to-long-sitting.data.ts";
import { longSittingToSupine } from "./transitions/tables/long-sitting-to-supine.data.ts";
import { shortSittingToLongSitting } from "./transitions/tables/short-sitting-to-long-sitting.data.ts";
import { longSittingToShortSitting } from "./transitions/tables/long-sitting-to-short-sitting.data.ts";
import { matToWheelchairOverStrongSide } from "./transitions/tables/mat-to-wheelchair-over-strong-side.data.ts";
import { matToWheelchairOverWeakSide } from "./transitions/tables/mat-to-wheelchair-over-weak-side.data.ts";
import { sideSittingOnStrongHip } from "./positions/tables/side-sitting-on-strong-hip.data.ts";
import { longSittingToSideSittingOnStrongHip } from "./transitions/tables/long-sitting-to-side-sitting-on-strong-hip.data.ts";
import { sideSittingOnStrongHipToLongSitting } from "./transitions/tables/side-sitting-on-strong-hip-to-long-sitting.data.ts";
import { pelvicTilt } from "./activities/tables/pelvic-tilt.data.ts";
import { bridgeOverRoll } from "./activities/tables/bridge-over-roll.data.ts";
import { kneesOpenAndClose } from "./activities/tables/knees-open-and-close.data.ts";
import { weakLegRaise } from "./activities/tables/weak-leg-raise.data.ts";
import { strongLegRaise } from "./activities/tables/strong-leg-raise.data.ts";
import { strongArmForCane } from "./activities/tables/strong-arm-for-cane.data.ts";
import { weakBladeReach } from "./activities/tables/weak-blade-reach.data.ts";
import { weakElbowBend } from "./activities/tables/weak-elbow-bend.data.ts";
import { kneeStraightenOverRoll } from "./activities/tables/knee-straighten-over-roll.data.ts";
import { footUpLying } from "./activities/tables/foot-up-lying.data.ts";
import { headAndShouldersUp } from "./activities/tables/head-and-shoulders-up.data.ts";
import { breatheIntoRibs } from "./activities/tables/breathe-into-ribs.data.ts";
import { moveInBed } from "./activities/tables/move-in-bed.data.ts";
import { weakThighTurn } from "./activities/tables/weak-thigh-turn.data.ts";
import { weakHipHikeSideLying } from "./activities/tables/weak-hip-hike-side-lying.data.ts";
import { weakBladeSetSideLying } from "./activities/tables/weak-blade-set-side-lying.data.ts";
import { weakKneeBendProne } from "./activities/tables/weak-knee-bend-prone.data.ts";
import { hipExtensionProne } from "./activities/tables/hip-extension-prone.data.ts";
import { bladeSetProne } from "./activities/tables/blade-set-prone.data.ts";
import { chestLiftProne } from "./activities/tables/chest-lift-prone.data.ts";
import { pelvisMoveOnElbows } from "./activities/tables/pelvis-move-on-elbows.data.ts";
import { wedgeProneReach } from "./activities/tables/wedge-prone-reach.data.ts";
import { wedgeProne } from "./positions/tables/wedge-prone.data.ts";
import { proneToWedgeProne } from "./transitions/tables/prone-to-wedge-prone.data.ts";
import { wedgeProneToProne } from "./transitions/tables/wedge-prone-to-prone.data.ts";
import { wedgeProneToProneOnElbows } from "./transitions/tables/wedge-prone-to-prone-on-elbows.data.ts";
import { SITTING_LADDERS, SITTING_POSITIONS, SITTING_WAYS } from "./catalogue-sitting.ts";
import { STANDING_LADDERS, STANDING_POSITIONS, STANDING_WAYS } from "./catalogue-standing.ts";
import { KNEELING_LADDERS, KNEELING_POSITIONS, KNEELING_WAYS } from "./catalogue-kneeling.ts";

/** Every ladder, in the order of the day's positions: lying, prone, sitting, hands and knees, kneeling, standing. */
export const ACTIVITIES: readonly Activity[] = [
  bridge,
  kneesTogetherRoll,
  heelSlideWeak,
  armRaiseSelfAssisted,
  rollToStrongSide,
  rollToWeakSide,
  sideLyingToSitOverStrong,
  hipAbductionSideLying,
  trunkCounterRotationSideLying,
  weakArmForwardSideLying,
  pelvicTilt,
  bridgeOverRoll,
  kneesOpenAndClose,
  weakLegRaise,
  strongLegRaise,
  strongArmForCane,
  weakBladeReach,
  weakElbowBend,
  kneeStraightenOverRoll,
  footUpLying,
  headAndShouldersUp,
  breatheIntoRibs,
  moveInBed,
  weakThighTurn,
  weakHipHikeSideLying,
  weakBladeSetSideLying,
  weakKneeBendProne,
  hipExtensionProne,
  bladeSetProne,
  chestLiftProne,
  proneOnElbowsHoldAndShift,
  proneOnElbowsLiftAndReach,
  pelvisMoveOnElbows,
  wedgeProneReach,
  tableForearmsSittingLean,
  tableForearmsStandingLean,
  longSittingBalanceAndReach,
  longSittingScoot,
  shortSittingReach,
  shortSittingHipHike,
  sitToStand,
  ...SITTING_LADDERS,
  handsAndKneesRock,
  handsAndKneesLift,
  tallKneelBenchHoldAndShift,
  heelSitToTallKneel,
  halfKneelWeakForwardHold,
  halfKneelStrongForwardRise,
  barsWeakStance,
  barsStrongStep,
  barsWeakStepAndWalk,
  ...KNEELING_LADDERS,
  ...STANDING_LADDERS,
];

/** Every position that has its row. */
export const POSITIONS: readonly Position[] = [
  supine,
  hookLying,
  sideLyingOnWeakSide,
  sideLyingOnStrongSide,
  prone,
  proneOnElbows,
  wedgeProne,
  longSitting,
  sideSittingOnStrongHip,
  shortSitting,
  ...SITTING_POSITIONS,
  forearmsOnTableSitting,
  forearmsOnTableStanding,
  handsAndKnees,
  tallKneeling,
  tallKneelingAtBench,
  halfKneelingWeakForward,
  halfKneelingStrongForward,
  standingInBars,
  walkingInBars,
  ...KNEELING_POSITIONS,
  ...STANDING_POSITIONS,
];

/** Every way from one position to another. */
export const TRANSITIONS: readonly Transition[] = [
  supineToHookLying,
  hookLyingToSupine,
  rollOntoStrongSide,
  rollOntoWeakSide,
  rollBackFromStrongSide,
  rollBackFromWeakSide,
  sideLyingToShortSitting,
  shortSittingToSideLying,
  sideLyingToProne,
  proneToSideLying,
  sideLyingToLongSitting,
  longSittingToSideLying,
  wheelchairToMatOverStrongSide,
  wheelchairToMatOverWeakSide,
  proneToProneOnElbows,
  proneOnElbowsToProne,
  proneToWedgeProne,
  wedgeProneToProne,
  wedgeProneToProneOnElbows,
  shortSittingToForearmsOnTableSitting,
  forearmsOnTableSittingToShortSitting,
  shortSittingToForearmsOnTableStanding,
  forearmsOnTableStandingToShortSitting,
  supineToLongSitting,
  longSittingToSupine,
  shortSittingToLongSitting,
  longSittingToShortSitting,
  longSittingToSideSittingOnStrongHip,
  sideSittingOnStrongHipToLongSitting,
  matToWheelchairOverStrongSide,
  matToWheelchairOverWeakSide,
  benchToHalfKneelingStrongForward,
  benchToHalfKneelingWeakForward,
  halfKneelingStrongForwardToBench,
  halfKneelingStrongForwardToStandingInBars,
  halfKneelingWeakForwardToBench,
  handsAndKneesToSideLying,
  handsAndKneesToTallKneelingAtBench,
  longSittingToHandsAndKnees,
  shortSittingToStandingInBars,
  sideLyingToHandsAndKnees,
  standingInBarsToShortSitting,
  standingInBarsToWalkingInBars,
  tallKneelingAtBenchToSideLying,
  tallKneelingAtBenchToTallKneeling,
  tallKneelingToTallKneelingAtBench,
  walkingInBarsToStandingInBars,
  ...SITTING_WAYS,
  ...KNEELING_WAYS,
  ...STANDING_WAYS,
];
