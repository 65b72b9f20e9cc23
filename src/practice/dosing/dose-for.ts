import { requireFinite } from "../../quantity/finite.ts";
import type { Dose, DoseRow } from "./dose.ts";
import { DOSES, EFFORT_BANDS } from "./doses.data.ts";

export type DoseKind = keyof typeof DOSES;

/** Rest is planned in whole quarters of a minute [second]. */
const REST_STEP_SECONDS = 15;

export interface DoseLimits {
  /** The longest hold a condition allows [second]; null where none does. */
  readonly holdSecondsMax?: number | null;
}

/**
 * A first dose for this kind of work at this effort: the harder it is for this body, the fewer and the longer the rest.
 *
 * @param effort the hardest joint's share of its strength, 1 being all there is.
 */
export function doseFor(kind: DoseKind, effort: number, limits: DoseLimits = {}): Dose {
  const row: DoseRow = DOSES[kind];
  const share = requireFinite(effort, "effort");
  const band = EFFORT_BANDS.find(({ upTo }) => share <= upTo) ?? EFFORT_BANDS[EFFORT_BANDS.length - 1];
  const place = band?.place ?? 0;
  const restTimes = band?.restTimes ?? 2;
  const hold = row.holdSeconds === null ? undefined : capHold(between(row.holdSeconds, place), limits.holdSecondsMax);
  return {
    kind: row.form,
    sets: between(row.sets, place),
    ...(row.repetitions === null ? {} : { repetitions: between(row.repetitions, place) }),
    ...(hold === undefined ? {} : { holdSeconds: hold }),
    restSeconds: Math.round((row.restSeconds * restTimes) / REST_STEP_SECONDS) * REST_STEP_SECONDS,
  };
}

function between([least, most]: readonly [number, number], place: number): number {
  return Math.round(least + (most - least) * place);
}

function capHold(seconds: number, most: number | null | undefined): number {
  return most === null || most === undefined ? seconds : Math.min(seconds, most);
}
