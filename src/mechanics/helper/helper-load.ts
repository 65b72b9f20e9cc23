import { scale, type Vector } from "../../quantity/vectors.ts";
import type { Body } from "../body/body.ts";
import { normalCapacities, scaleCapacities } from "../body/strength-capacities.ts";
import { evenStrengths } from "../body/strength-keys.ts";
import { solveHabitual } from "../equilibrium/habitual.ts";
import { prepareStatics } from "../equilibrium/statics.ts";
import type { ClosedPose } from "../pose/close.ts";
import { contactReach } from "../reach/contact-reach.ts";
import { TOWARDS, type Towards } from "../reach/outline.ts";
import { KNEELING_SHARE, LIFTING } from "./low-back.data.ts";
import { type LowBackLoad, lowBackLoad } from "./low-back.ts";
import { reachSite, type Site } from "./reach-site.ts";
import type { Stance } from "./stances.data.ts";

/** What helping asks of the helper's own body. */
export interface HelperLoad {
  readonly possible: true;
  readonly pose: ClosedPose;
  readonly back: LowBackLoad;
  /** How far the helper's own weight can be taken in eight directions while pushing, hands staying put, contacts alone [m]. */
  readonly outline: readonly { readonly towards: Towards; readonly metres: number }[];
  readonly least: { readonly towards: Towards; readonly metres: number };
  /** Hardest joint of a healthy helper of that age. */
  readonly hardest: { readonly joint: string; readonly direction: string; readonly effort: number } | null;
}
export interface NoHelper {
  readonly possible: false;
  readonly because: string;
}
export interface HelperTask {
  readonly stance: Stance;
  readonly site: Site;
  /** What both hands together push on the person with [N, room: x forward from the helper, y left, z up]. */
  readonly push: Vector;
  /** [years], default 40. */
  readonly age?: number;
}

/**
 * The helper as a body too: posed at the mat with the palms on the site, pushing; the load on the low back against
 * published limits, how near the own balance is to its edge, and the hardest joint.
 * @returns the load; or why this helper cannot do it from there
 */
export function helperLoad(body: Body, task: HelperTask): HelperLoad | NoHelper {
  let best: HelperLoad | null = null;
  let because = "";
  for (const lean of LEANS) {
    const found = loadLeaning(body, task, lean);
    if (!found.possible) because = because === "" ? found.because : because;
    else if (best === null || found.back.compression < best.back.compression) best = found;
  }
  return best ?? { possible: false, because };
}
/** People lean as is easiest: the one that loads the back least is taken. */
const LEANS = [0, 0.5, 1] as const;

function loadLeaning(body: Body, { stance, site, push, age = 40 }: HelperTask, lean: number): HelperLoad | NoHelper {
  const onHands = scale(push, -1);
  const reach = reachSite(body, stance, site, onHands, lean);
  if (!reach.reached) return { possible: false, because: reach.because };
  const forces = reach.palms.map(({ segment, at }) => ({ segment, at, force: scale(onHands, 1 / reach.palms.length) }));
  const statics = prepareStatics(body, reach.pose, { outside: forces });
  const normal = normalCapacities(body, age, reach.pose.configuration.angles);
  const balance = solveHabitual(statics, scaleCapacities(normal, evenStrengths(1)));
  if (!balance.balanced) return { possible: false, because: "pushing like this the helper would tip or slip" };
  const grip = { weak: normal.grip, strong: normal.grip };
  const outline = TOWARDS.map((towards, k) => {
    const turn = (k * Math.PI) / 4;
    return { towards, metres: contactReach(statics, [Math.cos(turn), Math.sin(turn) * body.weakAt], grip) };
  });
  const least = outline.reduce((nearest, each) => (each.metres < nearest.metres ? each : nearest));
  const { hardest } = balance;
  return {
    possible: true,
    pose: reach.pose,
    back: lowBackLoad(body, reach.pose.frames, forces),
    outline,
    least,
    hardest: hardest === null ? null : { joint: hardest.joint, direction: hardest.direction, effort: hardest.effort },
  };
}

/**
 * Most this helper can push that way from there with the back within its limits, the own balance kept and no joint over
 * its strength [N]: found by halving, to 5 N, at most 400.
 * @param direction unit vector of the push on the person @returns 0 where even the reach alone is too much, or not reached
 */
export function mostPush(body: Body, task: Omit<HelperTask, "push">, direction: Vector): number {
  const bears = (newtons: number): boolean => {
    const found = helperLoad(body, { ...task, push: scale(direction, newtons) });
    return found.possible && found.back.verdict === "within" && (found.hardest?.effort ?? 0) <= 1;
  };
  if (!bears(0)) return 0;
  let low = 0;
  let high = MOST_LOOKED_FOR;
  while (high - low > 5) {
    const middle = (low + high) / 2;
    if (bears(middle)) low = middle;
    else high = middle;
  }
  return low;
}
const MOST_LOOKED_FOR = 400;

/**
 * Most weight to lift at a reach, by the public lifting equation's reach and height terms and what kneelers take on [N]. The
 * equation was not made for people or for kneeling: a second opinion beside the back's load, never above the ceiling of 156 N.
 * @param reach from mid-ankle (or knee) to the hands, level [m] @param height of the hands over the floor [m]
 * @returns zero beyond 63 cm
 * @source waters1994, waters2007, gallagher1992
 */
export function acceptableLift(reach: number, height: number, kneels: boolean): number {
  const cm = reach * 100;
  if (cm > LIFTING.furthestCm) return 0;
  const near = Math.min(1, LIFTING.reachCm / cm);
  const level = 1 - LIFTING.heightLoss * Math.abs(height * 100 - LIFTING.heightCm);
  return Math.min(CEILING, LIFTING.constantKg * 9.81 * near * level * (kneels ? KNEELING_SHARE : 1));
}
/** 35 lb in handling people [N]. */
const CEILING = 156;
