export type { Body, BodySize } from "./body/body.ts";
export { buildBody } from "./body/build.ts";
export {
  evenStrengths,
  LIMB_STRENGTH_KEYS,
  type LimbStrengthKey,
  STRENGTH_IDS,
  type StrengthId,
  type Strengths,
  strengthsFrom,
  TRUNK_STRENGTH_KEYS,
  type TrunkStrengthKey,
} from "./body/strength-keys.ts";
export {
  type Capacities,
  capacitiesOf,
  type NormalCapacities,
  normalCapacities,
  scaleCapacities,
} from "./body/strength-capacities.ts";
export { peakNorm, trunkNorm } from "./body/strength-norms.ts";
export { type ClosedPose, closePose, movePose, type PoseResult } from "./pose/close.ts";
export type { PoseSpecification } from "./pose/specification.ts";
export { type OutsideForce, prepareStatics, type Statics, type StaticsOptions } from "./equilibrium/statics.ts";
export {
  type Balance,
  type ContactLoad,
  type JointEffort,
  type NoBalance,
  shareHabitually,
  solveHabitual,
} from "./equilibrium/habitual.ts";
export { takeSharing } from "./reach/sharing.ts";
export { type BestPossible, solveBestPossible } from "./equilibrium/best-possible.ts";
export {
  type BalanceOutline,
  balanceOutline,
  type NoOutline,
  type OutlineDirection,
  prepareStations,
  type Stations,
  TOWARDS,
  type Towards,
} from "./reach/outline.ts";
export { type Help, HELP_CEILING, type HelpPush, type HelpRequest, leastHelp, type NoHelp } from "./help/least-help.ts";
export { type SiteDirection, sitePushes, type SitePush } from "./help/points.ts";
export type { SiteId } from "./help/sites.ts";
export {
  type Certificate,
  type LinearProgram,
  type LinearSolver,
  loadLinearSolver,
} from "./linear-program/linear-program.ts";
export { type Grade, gradeQuantiles, gravityMoment, gravityShare } from "./body/grades.ts";
export {
  type Amputation,
  type AmputationLevel,
  type AmputationResult,
  amputate,
  wholeMass,
} from "./body/amputation.ts";
export { type NormEvidence, normEvidence } from "./body/strength-evidence.ts";
export { type UsualRange, usualRange } from "./body/range-norms.ts";
export { type LegAngles, passiveMoments } from "./body/passive-moments.ts";
export { endlessShare, type HoldConditions, type HoldTime, holdTime } from "./endurance/hold-time.ts";
export { fatigueRates, type FatigueRates, type TiringGroup } from "./endurance/rates.ts";
export { holdTimesOf, type JointTime } from "./endurance/position-time.ts";
export { repetitionsAt, shareForRepetitions } from "./endurance/repetitions.ts";
export {
  type Bout,
  leastRest,
  mostRepetitions,
  type RepetitionEnd,
  tireOver,
  type Tiring,
} from "./endurance/tiring.ts";
export {
  acceptableLift,
  type HelperLoad,
  helperLoad,
  type HelperTask,
  mostPush,
  type NoHelper,
} from "./helper/helper-load.ts";
export { type LowBackLoad, lowBackLoad } from "./helper/low-back.ts";
export { type HelperNeed, type HelperPlace, placeHelper } from "./helper/place-helper.ts";
export type { Site } from "./helper/reach-site.ts";
export type { Stance } from "./helper/stances.data.ts";
export { type SteadySolver, steadySolver } from "./linear-program/steady-solver.ts";
export { inertiaAbout, type StraightPart, type WeighedPoint, weighPoints } from "./pose/points.ts";
export {
  type NamedEnd,
  nameRayEnd,
  type RayEnd,
  rayEnd,
  type StationRegion,
  stationRegion,
} from "./reach/station-region.ts";
