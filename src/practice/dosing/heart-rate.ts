import { AEROBIC } from "./exertion.data.ts";
import { HEART_RATE_EQUATIONS } from "./heart-rate.data.ts";

/**
 * Highest heart rate expected at an age [1/min], by a published equation; its error is many beats.
 * @source tanaka-2001, brawner-2004
 */
export function estimateHeartRateMax(ageYears: number, equation: keyof typeof HEART_RATE_EQUATIONS = "tanaka"): number {
  const { atBirth, perYear } = HEART_RATE_EQUATIONS[equation];
  return atBirth - perYear * ageYears;
}

/** A heart rate at a share of the reserve between rest and the highest [1/min]. @source karvonen-reserve */
export function heartRateAtReserve(resting: number, highest: number, share: number): number {
  return resting + share * (highest - resting);
}

/**
 * The band of heart rate for work that trains the heart [1/min], always an estimate.
 * @returns null where the highest is not above rest, or where a medicine makes the rate a poor guide: go by exertion.
 * @source billinger-2014
 */
export function trainingHeartRates(
  resting: number,
  ageYears: number,
  heartRateGuides: boolean,
): readonly [number, number] | null {
  const highest = estimateHeartRateMax(ageYears);
  if (!heartRateGuides || highest <= resting) return null;
  const { from, to } = AEROBIC.heartRateReserve;
  return [heartRateAtReserve(resting, highest, from), heartRateAtReserve(resting, highest, to)];
}
