import type { BodySize } from "../body/body.ts";
import type { LimbStrengthKey, TrunkStrengthKey } from "../body/strength-keys.ts";
import { RATES_BY_SEX, RATES_OF_ALL } from "./rates.data.ts";

/** How a muscle group tires: rates [1/s]. */
export interface FatigueRates {
  /** Part of working muscle that becomes tired each second. */
  readonly fatigue: number;
  /** Part of tired muscle that comes back each second, while working. */
  readonly recovery: number;
  /** How many times quicker it comes back at rest. */
  readonly restTimes: number;
  /** No figure of its own was found: the general one stands in. */
  readonly wide: boolean;
}
export type TiringGroup = LimbStrengthKey | `trunk.${TrunkStrengthKey}` | "neck";

const ROW_OF: Readonly<Partial<Record<TiringGroup, keyof typeof RATES_BY_SEX>>> = {
  ankleDorsiflexion: "ankleUp",
  anklePlantarflexion: "ankleDown",
  elbowExtension: "elbowStraighten",
  elbowFlexion: "elbowBend",
  grip: "gripAndWrist",
  wristFlexion: "gripAndWrist",
  wristExtension: "gripAndWrist",
  kneeExtension: "kneeStraighten",
};

/** Rates of a muscle group. @source rakshit2021, freylaw2012, looft2018 */
export function fatigueRates(group: TiringGroup, sex: BodySize["sex"]): FatigueRates {
  const row = ROW_OF[group];
  if (row !== undefined) {
    const [fatigue, recovery, restTimes] = RATES_BY_SEX[row][sex];
    return { fatigue, recovery, restTimes, wide: false };
  }
  const whole = group.startsWith("shoulder") ? "shoulder" : group.startsWith("trunk") ? "trunk" : "general";
  const [fatigue, recovery, restTimes] = RATES_OF_ALL[whole];
  return { fatigue, recovery, restTimes, wide: whole === "general" };
}
