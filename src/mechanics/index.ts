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
