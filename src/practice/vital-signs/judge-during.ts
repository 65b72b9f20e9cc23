import type { Caution } from "../precautions/cautions.ts";
import type { Hold } from "../precautions/holds.ts";
import type { GatheredOrders } from "../precautions/orders.ts";
import { type Crossed, crossLimit } from "./crossing.ts";
import type { VitalChange, VitalLimit, VitalSigns } from "./limit.ts";
import { NEAR_CHANGES, STOP_CHANGES, STOP_LIMITS } from "./stop-limits.data.ts";

/** What lay between the two measurements. */
export type Between = "effort" | "comingUp" | "rest";

export interface DuringVerdict {
  readonly stop: Hold | null;
  readonly cautions: readonly Caution[];
}

export interface StopLimits {
  readonly stop: readonly VitalLimit[];
  readonly changes: readonly VitalLimit<VitalChange>[];
  readonly nearChanges: readonly VitalLimit<VitalChange>[];
}
export const PRINTED_STOP_LIMITS: StopLimits = { stop: STOP_LIMITS, changes: STOP_CHANGES, nearChanges: NEAR_CHANGES };

/**
 * Whether an exercise or a rise goes on after a second measurement. An order below the printed stop figure stops
 * earlier; an order of pressure above it does not move it.
 *
 * @param before the measurement at the start of the effort, or lying before coming up.
 * @returns a stop naming each figure crossed, or none, and falls that are not yet a stop.
 */
export function judgeDuring(
  now: VitalSigns,
  before: VitalSigns,
  between: Between,
  orders: GatheredOrders = { legPercentMax: {} },
  limits: StopLimits = PRINTED_STOP_LIMITS,
): DuringVerdict {
  const changes = changesBetween(now, before, between);
  const values = limits.stop.flatMap((limit) => {
    const measured = now[limit.of];
    if (measured === undefined) return [];
    const ceiling = limit.of === "systolic" || limit.of === "diastolic" ? limit.value : undefined;
    return crossLimit(limit, measured, orders, ceiling) ?? [];
  });
  const crossed: readonly Crossed[] = [...values, ...crossChanges(limits.changes, changes, orders)];
  const near = crossChanges(limits.nearChanges, changes, orders);
  return {
    stop:
      crossed.length === 0
        ? null
        : {
            because: crossed.map(({ reason }) => reason),
            whatToDo: [...new Set(crossed.map(({ whatToDo }) => whatToDo))].join(" "),
          },
    cautions:
      crossed.length > 0
        ? []
        : near.map(({ reason }) => ({
            text: `${reason.rule} (by ${reason.measured}).`,
            source: reason.source,
            seen: "read" as const,
            from: "vitals" as const,
          })),
  };
}

function changesBetween(
  now: VitalSigns,
  before: VitalSigns,
  between: Between,
): Readonly<Partial<Record<VitalChange, number>>> {
  const systolicFall = difference(before.systolic, now.systolic);
  const diastolicFall = difference(before.diastolic, now.diastolic);
  const rise = difference(now.heartRate, before.heartRate);
  const changes: Partial<Record<VitalChange, number>> = {};
  if (between === "effort" && systolicFall !== null) changes.systolicFallWithEffort = systolicFall;
  if (between === "effort" && rise !== null) changes.heartRateRise = rise;
  if (between === "comingUp" && systolicFall !== null) changes.systolicFallComingUp = systolicFall;
  if (between === "comingUp" && diastolicFall !== null) changes.diastolicFallComingUp = diastolicFall;
  return changes;
}

function crossChanges(
  limits: readonly VitalLimit<VitalChange>[],
  changes: Readonly<Partial<Record<VitalChange, number>>>,
  orders: GatheredOrders,
): readonly Crossed[] {
  return limits.flatMap((limit) => {
    const change = changes[limit.of];
    return change === undefined ? [] : (crossLimit(limit, change, orders) ?? []);
  });
}

function difference(larger: number | undefined, smaller: number | undefined): number | null {
  return larger === undefined || smaller === undefined ? null : larger - smaller;
}
