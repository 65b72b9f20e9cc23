import { OLDER_FROM, SMALL_SHARE, TIME_FACTORS } from "./rates.data.ts";
import type { FatigueRates } from "./rates.ts";

/** How long a share of the maximum can be held [s]; null where the relation has no end. */
export interface HoldTime {
  /** As the published relation gives it: a steady push of fresh muscle. */
  readonly seconds: number | null;
  /** What holding a position may shorten and age lengthen it to: plan on `low`. */
  readonly low: number | null;
  readonly high: number | null;
}
export interface HoldConditions {
  /** Holding a limb or the body in place, which tires sooner than pushing as hard; default true. */
  readonly holdingPlace?: boolean;
  readonly age?: number;
  /** The side weakened by the stroke: its own share of its own maximum. */
  readonly paretic?: boolean;
  /** Part of the muscle that is tired when the hold starts, 0 fresh. */
  readonly tired?: number;
}

/** The share that can be held without end. */
export const endlessShare = ({ fatigue, recovery }: FatigueRates): number => recovery / (fatigue + recovery);

/**
 * How long a share of the maximum can be held, from published fatigue and recovery rates. All working muscle stays at the
 * share, so the tired part follows a first-order law until the rest of the muscle no longer makes the share up.
 * @param share moment over greatest moment, above 0; from 1 up nothing can be held
 * @returns seconds, with the range that position, age and side leave open
 * @source rakshit2021, freylaw2012, looft2018 (closed form derived)
 */
export function holdTime(rates: FatigueRates, share: number, conditions: HoldConditions = {}): HoldTime {
  const seconds = secondsUntil(rates, share, conditions.tired ?? 0);
  if (seconds === null) return { seconds, low: null, high: null };
  let low = seconds;
  let high = seconds;
  const widen = ([shortest, longest]: readonly [number, number]): void => {
    low *= shortest;
    high *= longest;
  };
  if (conditions.holdingPlace ?? true) widen(TIME_FACTORS.holdingPlace);
  if ((conditions.age ?? 0) >= OLDER_FROM && share < SMALL_SHARE) widen(TIME_FACTORS.olderSmallShare);
  if (conditions.paretic === true) widen(TIME_FACTORS.paretic);
  return { seconds, low, high };
}

function secondsUntil({ fatigue, recovery }: FatigueRates, share: number, tired: number): number | null {
  if (Number.isNaN(share)) return 0;
  if (share <= 0) return null;
  // Tired part m obeys m' = fatigue share - recovery m, and the hold ends at m = 1 - share.
  const level = (fatigue * share) / recovery;
  const end = 1 - share;
  if (tired >= end) return 0;
  if (level <= end) return null;
  return Math.log((level - tired) / (level - end)) / recovery;
}
