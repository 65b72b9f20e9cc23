import { requireFinite } from "../../quantity/finite.ts";
import type { HoldReason } from "../precautions/holds.ts";
import type { GatheredOrders } from "../precautions/orders.ts";
import type { Crossing, VitalLimit } from "./limit.ts";

/** A limit that was crossed by a measurement, as it is printed. */
export interface Crossed {
  readonly reason: HoldReason;
  readonly whatToDo: string;
}

/**
 * Whether a measurement crosses a limit. Where the physician wrote an order for it, the order decides in place of the
 * printed figure: above a highest value, or below a lowest one.
 *
 * @param ceiling the highest figure an order may reach, where one is printed.
 * @returns null where it does not cross.
 */
export function crossLimit(
  limit: VitalLimit<string>,
  measured: number,
  orders: GatheredOrders,
  ceiling?: number,
): Crossed | null {
  const value = requireFinite(measured, limit.id);
  const ordered = limit.order === null ? undefined : orders[limit.order];
  if (ordered === undefined)
    return crosses(value, limit.when, limit.value) ? printed(limit, value, limit.when, limit.value, false) : null;
  if (ceiling !== undefined && ordered >= ceiling) {
    return crosses(value, limit.when, ceiling) ? printed(limit, value, limit.when, ceiling, false) : null;
  }
  const when: Crossing = limit.when === "below" ? "below" : "above";
  return crosses(value, when, ordered) ? printed(limit, value, when, ordered, true) : null;
}

const CROSSING_WORDS: Readonly<Record<Crossing, string>> = { below: "below", above: "above", atOrAbove: "at or above" };

function crosses(value: number, when: Crossing, limit: number): boolean {
  return when === "below" ? value < limit : when === "above" ? value > limit : value >= limit;
}

function printed(limit: VitalLimit<string>, value: number, when: Crossing, figure: number, byOrder: boolean): Crossed {
  return {
    reason: {
      rule: limit.rule,
      measured: `${value} ${limit.unit}`,
      limit: `${CROSSING_WORDS[when]} ${figure} ${limit.unit}${byOrder ? ", by the physician's order" : ""}`,
      source: byOrder ? "physician-orders" : limit.source,
    },
    whatToDo: limit.whatToDo,
  };
}
