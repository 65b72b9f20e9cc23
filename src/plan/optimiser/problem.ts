/**
 * The session problem with every clinical name stripped: positions, moves, things to do and what they are worth.
 * All numbers are whole: half-minutes, hundredths of today's strength, worth points.
 */

/** A place the body can be; `wayBack` leads to sitting or lying, `entry` is null where a session cannot begin there. */
export interface PositionNode {
  readonly id: string;
  readonly wayBack: { readonly halfMinutes: number; readonly strength: number };
  readonly canEnd: boolean;
  readonly entry: { readonly halfMinutes: number; readonly strength: number; readonly cost: number } | null;
}

/** A direct move; `threshold` is the most strength that may be spent before it starts; null: no such limit. */
export interface Link {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly halfMinutes: number;
  readonly strength: number;
  readonly ease: number;
  readonly threshold: number | null;
  readonly kneelDowns: number;
  readonly sideChange: boolean;
}

/** One rung at one dose. `change` compares with last time; its cost is 0 where the change has a reason. */
export interface Option {
  readonly id: string;
  readonly rung: string;
  readonly activity: string;
  readonly ladderIndex: number;
  readonly position: string;
  readonly helperPlace: string;
  readonly halfMinutes: number;
  readonly strength: number;
  readonly units: readonly { readonly purpose: string; readonly units: number }[];
  readonly worth: number;
  /** Most strength that may be spent when its position is entered; null: no such limit. */
  readonly freshnessLimit: number | null;
  /** Points lost for each position done before it (learning-rich or hard things). */
  readonly freshnessCost: number;
  readonly prerequisite: string | null;
  readonly substitutes: string | null;
  readonly change: { readonly kind: "kept" | "new" | "shifted"; readonly cost: number };
}

/** What the session is for; the first unit is worth `need` points, then 60, 30 and 10 % of it, then nothing. */
export interface Purpose {
  readonly id: string;
  readonly need: number;
}

export interface Locks {
  readonly mustHave: readonly string[];
  readonly leaveOut: readonly string[];
  readonly barPositions: readonly string[];
  readonly startIn: string | null;
}

export interface Prices {
  readonly kneelDown: number;
  readonly sideChange: number;
  readonly helperPlace: number;
  readonly movingHalfMinute: number;
  readonly itemShort: number;
}

export interface SessionProblem {
  readonly positions: readonly PositionNode[];
  readonly links: readonly Link[];
  readonly options: readonly Option[];
  readonly purposes: readonly Purpose[];
  /** Rungs of last time and what dropping each costs, also where it is left out on a lock. */
  readonly lastTime: readonly { readonly rung: string; readonly dropCost: number }[];
  readonly locks: Locks;
  readonly prices: Prices;
  readonly workingHalfMinutes: number;
  readonly strength: number;
}

export const sizeLimits = {
  positions: 4,
  itemsInPosition: 4,
  fewestItems: 5,
  mostItems: 7,
  rungsOfActivity: 2,
} as const;

/** Positions in order; `links` are the moves that lead into each (empty for the first). */
export interface Plan {
  readonly blocks: readonly PlanBlock[];
}
export interface PlanBlock {
  readonly position: string;
  readonly links: readonly string[];
  readonly options: readonly string[];
}

/** Points gained by `units` units of a purpose. */
export function coverageGain(need: number, units: number): number {
  let sum = 0;
  const shares = [100, 60, 30, 10];
  for (let unit = 0; unit < Math.min(units, shares.length); unit += 1)
    sum += Math.floor((need * (shares[unit] ?? 0)) / 100);
  return sum;
}

export const noLocks: Locks = { mustHave: [], leaveOut: [], barPositions: [], startIn: null };
