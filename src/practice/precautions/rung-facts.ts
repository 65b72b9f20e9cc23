import type { Side } from "../../quantity/sides.ts";
import type { DemandId } from "../codes.ts";

/** What is known of a rung besides its demands and position. All optional: unknown is judged on the safe side. */
export interface RungFacts {
  /** On which side a demand falls; a demand not named here is taken to fall on both. */
  readonly sides?: Readonly<Partial<Record<DemandId, readonly Side[]>>>;
  /** The deepest hip folding over its key poses [degree]. */
  readonly hipFlexionDeg?: number;
  /** Share of body weight on each leg, foot and knee together [0-1]. */
  readonly legShare?: Readonly<Partial<Record<Side, number>>>;
}
