import type { Capacities } from "../../mechanics/body/strength-capacities.ts";
import { BALANCED_WITHIN, shareHabitually } from "../../mechanics/equilibrium/habitual.ts";
import { prepareStatics, type Statics } from "../../mechanics/equilibrium/statics.ts";
import type { Help } from "../../mechanics/help/least-help.ts";
import { type SitePush, sitePushes } from "../../mechanics/help/points.ts";
import type { SiteId } from "../../mechanics/help/sites.ts";
import { scale } from "../../quantity/vectors.ts";

interface Given {
  readonly push: SitePush;
  readonly newtons: number;
}

/** Pushes tried [N]. */
const TRIED = [10, 20, 40, 60, 90, 120, 156] as const;
const MOST_PUSHES = 3;
/** Halvings of the whole help at the end. */
const TRIMS = 5;

/**
 * Looks for help by trying: the best single push at the sites, then a second and a third on top, each judged by the
 * person's own way of sharing the load; the whole is then made as small as will do. For moments where the body could share
 * its load well enough but by habit does not, so that a program that shares best sees nothing to help with.
 * @returns the help, not proven to be the least; null where three pushes under the ceiling do not bring every joint under
 * the allowed share
 */
export function tryPushes(
  statics: Statics,
  capacities: Capacities,
  sites: readonly SiteId[],
  { allowedShare, ceiling }: { readonly allowedShare: number; readonly ceiling: number },
): Help | null {
  const pushes = sites.flatMap((site) => sitePushes(statics.body, statics.pose.frames, site));
  const without = shareHabitually(statics, capacities);
  const mostWith = (given: readonly Given[]): number => {
    const sharing = shareHabitually(pushed(statics, given), capacities);
    return sharing.residual <= BALANCED_WITHIN ? sharing.most : Number.POSITIVE_INFINITY;
  };
  let given: readonly Given[] = [];
  let most = without.residual <= BALANCED_WITHIN ? without.most : Number.POSITIVE_INFINITY;
  for (let round = 0; round < MOST_PUSHES && most > allowedShare; round++) {
    const spent = sumOf(given);
    let best: { readonly given: readonly Given[]; readonly most: number } | null = null;
    for (const push of pushes) {
      for (const newtons of TRIED) {
        if (spent + newtons > ceiling) break;
        const candidate = [...given, { push, newtons }];
        const reached = mostWith(candidate);
        if (best === null || better(reached, sumOf(candidate), best.most, sumOf(best.given), allowedShare))
          best = { given: candidate, most: reached };
      }
    }
    if (best === null || best.most >= most) return null;
    given = best.given;
    most = best.most;
  }
  if (most > allowedShare) return null;
  const least = trim(given, allowedShare, mostWith);
  const effortWith = mostWith(least);
  return {
    needed: true,
    enough: true,
    pushes: least.map(({ push, newtons }) => ({
      site: push.site,
      side: push.side,
      words: push.words,
      direction: push.direction,
      newtons,
    })),
    newtons: sumOf(least),
    share:
      without.residual <= BALANCED_WITHIN ? Math.min(1, Math.max(0, (without.most - effortWith) / without.most)) : 1,
    effortWith,
  };
}

const sumOf = (given: readonly Given[]): number => given.reduce((sum, { newtons }) => sum + newtons, 0);

/** Enough beats not enough; of two that are enough the smaller push, of two that are not the lower effort. */
function better(most: number, newtons: number, bestMost: number, bestNewtons: number, allowed: number): boolean {
  if (most <= allowed && bestMost <= allowed) return newtons < bestNewtons;
  return most < bestMost;
}

/** The same pushes together as small as still does. */
function trim(
  given: readonly Given[],
  allowed: number,
  mostWith: (given: readonly Given[]) => number,
): readonly Given[] {
  const times = (factor: number): Given[] => given.map(({ push, newtons }) => ({ push, newtons: newtons * factor }));
  let enough = 1;
  let short = 0;
  for (let i = 0; i < TRIMS; i++) {
    const middle = (enough + short) / 2;
    if (mostWith(times(middle)) <= allowed) enough = middle;
    else short = middle;
  }
  return times(enough);
}

/** The same pose with the pushes acting, the sharing between the sides as the person's own. */
function pushed(statics: Statics, given: readonly Given[]): Statics {
  const again = prepareStatics(statics.body, statics.pose, {
    ...statics.options,
    outside: [
      ...(statics.options.outside ?? []),
      ...given.map(({ push, newtons }) => ({
        segment: push.segment,
        at: push.at,
        force: scale(push.push, newtons),
      })),
    ],
  });
  return statics.sharing === null ? { ...again, sharing: null } : again;
}
