import type { Vector } from "../../quantity/vectors.ts";
import type { Block, Tube } from "./solid.ts";

const CANE_RADIUS = 0.011;
const RAIL_RADIUS = 0.019;
/** How far a cane's handle reaches behind and ahead of the hand's middle [m]. */
const HANDLE = { behind: 0.05, ahead: 0.07 } as const;

/** A cane upright under the hand, its handle along the way the person faces. */
export function caneUnder(hand: Vector, floor: number): readonly Tube[] {
  const [x, y, z] = hand;
  return [
    { from: [x, y, floor], to: [x, y, z], radius: CANE_RADIUS },
    { from: [x - HANDLE.behind, y, z], to: [x + HANDLE.ahead, y, z], radius: CANE_RADIUS * 1.25 },
    { from: [x, y, floor], to: [x, y, floor + 0.04], radius: CANE_RADIUS * 1.6 },
  ];
}

/** A hand rail through the hand that follows the steps, on two posts; level where there are none. @param rises metres up for each metre ahead */
export function railAt(hand: Vector, floor: number, rises: number): readonly Tube[] {
  const [x, y, z] = hand;
  const at = (away: number): Vector => [x + away, y, z + rises * away];
  const ends = [at(-0.5), at(0.6)] as const;
  return [
    { from: ends[0], to: ends[1], radius: RAIL_RADIUS },
    ...[at(-0.42), at(0.52)].map(
      (top): Tube => ({ from: [top[0], top[1], floor], to: [top[0], top[1], top[2]], radius: RAIL_RADIUS * 0.8 }),
    ),
  ];
}

/** How steeply a flight climbs, metres up for each metre along it, from one of its steps. */
export function riseOf(step: Block, rise: number): number {
  return Math.min(0.65, rise / Math.max(0.2, step.toX - step.fromX));
}
