import type { PurposeId } from "../../practice/codes.ts";

/** Words of a goal that point at purposes; the first that fits counts. Goals are the therapist's own words. */
export const GOAL_WORDS: readonly { readonly words: readonly string[]; readonly purposes: readonly PurposeId[] }[] = [
  { words: ["walk", "bars", "step", "stairs", "stair", "kerb"], purposes: ["stepping", "stanceOnWeak", "swingWeakLeg", "deviceReady"] },
  { words: ["toilet", "transfer", "chair", "stand", "car"], purposes: ["standUp", "stanceOnWeak", "sittingBalance"] },
  { words: ["bed", "turn", "roll"], purposes: ["bedMobility", "liftSeat", "comeToSit"] },
  { words: ["sit", "dress", "eat", "wash"], purposes: ["sittingBalance", "trunkControl", "comeToSit"] },
  { words: ["floor", "fall"], purposes: ["floorRecovery", "trunkControl"] },
  { words: ["arm", "hand", "reach"], purposes: ["armReady", "trunkControl"] },
  { words: ["cane", "stick", "walker"], purposes: ["deviceReady", "stepping"] },
];

/** How much each purpose is wanted when no goal speaks of it, in points of a first unit (judgement: a main goal's first unit is 60 to 90). */
export const BASE_NEED: Readonly<Record<PurposeId, number>> = {
  bedMobility: 40,
  liftSeat: 30,
  stanceOnWeak: 60,
  swingWeakLeg: 30,
  sittingBalance: 45,
  comeToSit: 45,
  standUp: 60,
  armReady: 25,
  trunkControl: 40,
  floorRecovery: 15,
  stepping: 30,
  deviceReady: 15,
};
/** Added where a goal speaks of it. */
export const GOAL_NEED = 45;

/** Minutes of a slot that go to fetching, toilet, belt, vital signs, shoes and the transfer back (judgement; common experience is 10 to 12 of 45). */
export const LOST_BEFORE = 7;
export const LOST_AFTER = 4;
