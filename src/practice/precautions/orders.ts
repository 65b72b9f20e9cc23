import type { Side } from "../../quantity/sides.ts";

/** What the physician set. It prevails over every figure of the tables. */
export interface Orders {
  /** Share of body weight the leg may carry [percent]; 0 is no weight, 100 as tolerated. */
  readonly weightBearing?: { readonly leg: Side; readonly percent: number };
  readonly hipFlexionDegMax?: number;
  readonly systolicMax?: number;
  readonly systolicMin?: number;
  readonly diastolicMax?: number;
  readonly heartRateMax?: number;
  readonly heartRateMin?: number;
  readonly oxygenSaturationMin?: number;
  /** The physician allows what this condition would otherwise keep out. */
  readonly cleared?: boolean;
}

/** The orders of one person taken together; a leg may carry its own share. */
export interface GatheredOrders extends Omit<Orders, "weightBearing" | "cleared"> {
  readonly legPercentMax: Readonly<Partial<Record<Side, number>>>;
}

const LOWEST_WINS = ["hipFlexionDegMax", "systolicMax", "diastolicMax", "heartRateMax"] as const;
const HIGHEST_WINS = ["systolicMin", "heartRateMin", "oxygenSaturationMin"] as const;

/** Reads all orders beside the conditions as one; where two say something about the same thing, the stricter counts. */
export function gatherOrders(findings: readonly { readonly orders?: Orders }[]): GatheredOrders {
  const limits: { -readonly [K in (typeof LOWEST_WINS | typeof HIGHEST_WINS)[number]]?: number } = {};
  const legs: Partial<Record<Side, number>> = {};
  for (const { orders } of findings) {
    if (orders === undefined) continue;
    for (const key of LOWEST_WINS) {
      const value = orders[key];
      if (value !== undefined) limits[key] = Math.min(value, limits[key] ?? value);
    }
    for (const key of HIGHEST_WINS) {
      const value = orders[key];
      if (value !== undefined) limits[key] = Math.max(value, limits[key] ?? value);
    }
    if (orders.weightBearing !== undefined) {
      const { leg, percent } = orders.weightBearing;
      legs[leg] = Math.min(percent, legs[leg] ?? percent);
    }
  }
  return { ...limits, legPercentMax: legs };
}
