import type { RungDose } from "../../practice/activities/activity.ts";
import { EFFORT_BANDS } from "../../practice/dosing/doses.data.ts";
import { longestHoldFor } from "../../practice/precautions/effects.ts";
import type { PrecautionFinding } from "../../practice/precautions/precaution.ts";
import type { RungToday } from "../assess/rung-today.ts";

/** A dose of a rung for this person today. */
export interface DoseToday {
  readonly kind: RungDose["kind"];
  readonly sets: number;
  readonly repetitions: number | null;
  readonly holdSeconds: number | null;
  readonly restSeconds: number;
  /** Half minutes it takes, hands and words included. */
  readonly halfMinutes: number;
  /** Hundredths of today's strength it takes. */
  readonly strength: number;
}

/** Half minutes to set up an item: place, hands, a first try. */
const SET_UP = 1;

/**
 * Doses that may be chosen for a rung: the full one and a shorter one. Harder for this body: fewer repetitions and longer
 * rests, by the bands of the dosing table; holds no longer than the conditions allow.
 */
export function dosesFor(
  today: RungToday,
  precautions: readonly PrecautionFinding[],
  ageYears: number,
): readonly DoseToday[] {
  const { dose } = today.rung;
  const effort = today.asks === null ? 0.7 : today.asks.cautious;
  const band = EFFORT_BANDS.find(({ upTo }) => effort <= upTo) ?? EFFORT_BANDS[EFFORT_BANDS.length - 1];
  const place = band?.place ?? 0;
  const part = 0.6 + 0.4 * place;
  const longest = longestHoldFor(precautions);
  const restSeconds = Math.round(((band?.restTimes ?? 1) * dose.restSeconds * (ageYears >= 75 ? 1.25 : 1)) / 15) * 15;
  const repetitions = dose.repetitions === undefined ? null : Math.max(3, Math.round(dose.repetitions * part));
  const wanted = dose.holdSeconds === undefined ? null : Math.max(2, Math.round(dose.holdSeconds * part));
  const holdSeconds = wanted === null || longest === null ? wanted : Math.min(wanted, longest);
  const doseOf = (sets: number): DoseToday => ({
    kind: dose.kind,
    sets,
    repetitions,
    holdSeconds,
    restSeconds,
    halfMinutes: SET_UP + Math.max(1, Math.round(sets * dose.minutesPerSet * 2)),
    strength: Math.max(1, Math.round(sets * 5 * Math.min(effort, 1.2))),
  });
  const full = Math.max(1, dose.sets);
  return full > 1 ? [doseOf(full), doseOf(full - 1)] : [doseOf(full)];
}
