import type { Vector } from "../../quantity/vectors.ts";
import type { Body } from "../body/body.ts";
import { type HelperLoad, helperLoad } from "./helper-load.ts";
import type { Stance } from "./stances.data.ts";

/** Where a helper of this body stands or kneels to push at a site, and what it costs. */
export interface HelperPlace {
  readonly stance: Stance;
  /** From the middle of what the helper stands on to the hands, level [m]. */
  readonly forward: number;
  readonly load: HelperLoad;
}
/** What is to be pushed: how high the site is over what the helper stands on [m], and with what [N, x away from the helper, z up]. */
export interface HelperNeed {
  readonly height: number;
  readonly push: Vector;
  readonly hands?: 1 | 2;
  readonly age?: number;
}

/** Nearer than this the person is in the way, further the arms do not go [m]. */
const DISTANCES = [0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.55] as const;

/**
 * For each stance the distance that loads the low back least; the best stance in front. Stances from which the site is out
 * of reach or the helper would tip are left out: an empty answer means that one helper does not do it from here.
 */
export function placeHelper(body: Body, stances: readonly Stance[], need: HelperNeed): readonly HelperPlace[] {
  const { height, push, hands = 2, age = 40 } = need;
  return stances
    .flatMap((stance): HelperPlace[] => {
      let best: HelperPlace | null = null;
      for (const forward of DISTANCES) {
        const load = helperLoad(body, { stance, site: { forward, left: 0, up: height, hands }, push, age });
        if (!load.possible) continue;
        if (best === null || load.back.compression < best.load.back.compression) best = { stance, forward, load };
      }
      return best === null ? [] : [best];
    })
    .sort((a, b) => a.load.back.compression - b.load.back.compression);
}
