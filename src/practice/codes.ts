/** Codes that stay stable: positions, demands, purposes, equipment, places. */
export const POSITION_IDS = [
  "supine",
  "hook-lying",
  "side-lying-on-weak-side",
  "side-lying-on-strong-side",
  "prone",
  "prone-on-elbows",
  "wedge-prone",
  "long-sitting",
  "side-sitting-on-weak-hip",
  "side-sitting-on-strong-hip",
  "short-sitting",
  "perch-sitting",
  "corner-sitting",
  "sitting-against-wall",
  "bed-sitting",
  "forearms-on-table-sitting",
  "hands-and-knees",
  "kneeling-forearms-on-bench",
  "heel-sitting",
  "on-floor-at-seat",
  "tall-kneeling",
  "tall-kneeling-at-bench",
  "half-kneeling-weak-forward",
  "half-kneeling-strong-forward",
  "forearms-on-table-standing",
  "plantigrade",
  "standing",
  "standing-in-bars",
  "stride-standing-weak-forward",
  "stride-standing-strong-forward",
  "walking-in-bars",
  "walking-with-device",
  "standing-at-steps",
  "standing-at-wall",
] as const;
export type PositionId = (typeof POSITION_IDS)[number];

export const DEMAND_IDS = [
  "headLow",
  "breathHolding",
  "wristLoad",
  "shoulderLoad",
  "kneePressure",
  "hipPastNinety",
  "hipAcrossMidline",
  "trunkEndRange",
  "neckExtension",
  "pronePressure",
  "suddenStanding",
  "standing",
  "footPressure",
] as const;
export type DemandId = (typeof DEMAND_IDS)[number];

/** What an activity is for: the function it readies. */
export const PURPOSE_IDS = [
  "bedMobility",
  "liftSeat",
  "stanceOnWeak",
  "swingWeakLeg",
  "sittingBalance",
  "comeToSit",
  "standUp",
  "armReady",
  "trunkControl",
  "floorRecovery",
  "stepping",
  "deviceReady",
] as const;
export type PurposeId = (typeof PURPOSE_IDS)[number];

export const EQUIPMENT_IDS = [
  "bolster",
  "wedge",
  "pillow",
  "stool",
  "bench",
  "table",
  "wall",
  "belt",
  "bars",
  "cane",
  "quadCane",
  "walker",
  "footBlock",
  "steps",
  "nonSlip",
  "band",
  "cuff",
  "ball",
  "mirror",
] as const;
export type EquipmentId = (typeof EQUIPMENT_IDS)[number];
export const PLACE_IDS = ["bed", "plinth", "raisedMat", "floorMat", "bars"] as const;
export type PlaceId = (typeof PLACE_IDS)[number];
export const HELPER_POSES = ["standing", "strideStanding", "sitting", "halfKneeling", "kneeling"] as const;
export type HelperPose = (typeof HELPER_POSES)[number];
export type Approach = "spare" | "lend" | "train";
export type Limb = "arm" | "leg" | "trunk";
