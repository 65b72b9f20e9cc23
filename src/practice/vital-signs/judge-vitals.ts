import type { Caution, MedicineId } from "../precautions/cautions.ts";
import type { Hold } from "../precautions/holds.ts";
import { MEDICINES } from "../precautions/medicines.data.ts";
import type { GatheredOrders } from "../precautions/orders.ts";
import { type Crossed, crossLimit } from "./crossing.ts";
import type { MeasuredVital, VitalLimit, VitalSigns } from "./limit.ts";
import { NEAR_LIMITS, START_LIMITS } from "./start-limits.data.ts";
import { STOP_LIMITS } from "./stop-limits.data.ts";

/** The answer at the bedside before anything starts. */
export interface VitalsVerdict {
  readonly hold: Hold | null;
  readonly cautions: readonly Caution[];
}

/** Limits of the site; the printed ones where it set none. */
export interface SiteLimits {
  readonly start: readonly VitalLimit[];
  readonly near: readonly VitalLimit[];
}
export const PRINTED_LIMITS: SiteLimits = { start: START_LIMITS, near: NEAR_LIMITS };

/** After a meal flat and low-head work waits this long [minute]. Common practice. */
const AFTER_MEAL_MINUTES = 60;
/** Without food for this long, someone whose medicine lowers sugar is asked about it [minute]. Proposal of this project. */
const LONG_WITHOUT_FOOD_MINUTES = 240;
/** Pain at which the cause is asked for first, of 10. Proposal of this project. */
const STRONG_PAIN = 7;

/**
 * Whether the session may start with these measurements. The physician's orders stand in for the printed limits, in
 * both directions, but never above the pressure at which an exercise is stopped.
 *
 * @returns a hold naming each measurement outside its limit, or none, and what to keep an eye on.
 */
export function judgeVitals(
  vitals: VitalSigns,
  orders: GatheredOrders = { legPercentMax: {} },
  medicines: readonly MedicineId[] = [],
  limits: SiteLimits = PRINTED_LIMITS,
): VitalsVerdict {
  const crossed = crossAll(limits.start, vitals, orders);
  const hold: Hold | null =
    crossed.length === 0
      ? null
      : {
          because: crossed.map(({ reason }) => reason),
          whatToDo: [...new Set(crossed.map(({ whatToDo }) => whatToDo))].join(" "),
        };
  return {
    hold,
    cautions: [...nearCautions(vitals, orders, limits), ...otherCautions(vitals, medicines), ...missingCaution(vitals)],
  };
}

function crossAll(limits: readonly VitalLimit[], vitals: VitalSigns, orders: GatheredOrders): readonly Crossed[] {
  return limits.flatMap((limit) => {
    const measured = vitals[limit.of];
    if (measured === undefined) return [];
    return crossLimit(limit, measured, orders, ceilingOf(limit.of)) ?? [];
  });
}

/** No order lets a session start at a pressure at which it would have to stop. */
function ceilingOf(of: MeasuredVital): number | undefined {
  return of === "systolic" || of === "diastolic" ? STOP_LIMITS.find((limit) => limit.of === of)?.value : undefined;
}

/** A warning near a limit; where an order speaks about it, the order's own limit is warning enough. */
function nearCautions(vitals: VitalSigns, orders: GatheredOrders, limits: SiteLimits): readonly Caution[] {
  return limits.near.flatMap((limit) => {
    const measured = vitals[limit.of];
    if (measured === undefined || (limit.order !== null && orders[limit.order] !== undefined)) return [];
    const near = crossLimit(limit, measured, orders);
    const held =
      crossAll(
        limits.start.filter(({ of }) => of === limit.of),
        vitals,
        orders,
      ).length > 0;
    if (near === null || held) return [];
    return [
      {
        text: `${upperFirst(limit.rule)} (${near.reason.measured}).`,
        source: limit.source,
        seen: limit.seen,
        from: "vitals" as const,
      },
    ];
  });
}

function otherCautions(vitals: VitalSigns, medicines: readonly MedicineId[]): readonly Caution[] {
  const cautions: Caution[] = [];
  const meal = vitals.lastMealMinutesAgo;
  if (meal !== undefined && meal < AFTER_MEAL_MINUTES)
    cautions.push({
      text: `Last meal or feed ${meal} minutes ago: sit up first; flat and low-head work after 30 to 60 minutes.`,
      source: "common-practice",
      seen: "common-practice",
      from: "vitals",
    });
  if (
    meal !== undefined &&
    meal > LONG_WITHOUT_FOOD_MINUTES &&
    (medicines.includes("insulin") || medicines.includes("sulfonylurea"))
  )
    cautions.push({
      text: "Long without food on a medicine that lowers sugar: measure glucose before the start.",
      source: "judgement",
      seen: "judgement",
      from: "vitals",
    });
  if (vitals.painNow !== undefined && vitals.painNow >= STRONG_PAIN)
    cautions.push({
      text: `Pain ${vitals.painNow} of 10 now: ask where and since when, and for the time of the pain medicine, before the start.`,
      source: "judgement",
      seen: "judgement",
      from: "vitals",
    });
  if (vitals.heartRate !== undefined && medicines.includes("betaBlocker"))
    cautions.push(...MEDICINES.betaBlocker.cautions.map((caution) => ({ ...caution, from: "betaBlocker" as const })));
  return cautions;
}

function missingCaution(vitals: VitalSigns): readonly Caution[] {
  const missing = [
    vitals.systolic === undefined || vitals.diastolic === undefined ? ["blood pressure"] : [],
    vitals.heartRate === undefined ? ["heart rate"] : [],
    vitals.oxygenSaturation === undefined ? ["oxygen saturation"] : [],
  ].flat();
  if (missing.length === 0) return [];
  return [
    {
      text: `Not measured yet: ${missing.join(", ")}. Measure before the start.`,
      source: "judgement",
      seen: "judgement",
      from: "vitals",
    },
  ];
}

function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
