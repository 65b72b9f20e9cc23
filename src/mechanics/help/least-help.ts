import type { Side } from "../../quantity/sides.ts";
import { scale } from "../../quantity/vectors.ts";
import type { Capacities } from "../body/strength-capacities.ts";
import { shareHabitually, BALANCED_WITHIN } from "../equilibrium/habitual.ts";
import type { Sharing } from "../equilibrium/cubes.ts";
import { effortProgram, type ExtraColumns } from "../equilibrium/program.ts";
import { addForce, shareTwoJointMuscles, type Statics, withOutside } from "../equilibrium/statics.ts";
import type { LinearSolver } from "../linear-program/linear-program.ts";
import { type SiteDirection, sitePushes, type SitePush } from "./points.ts";
import type { SiteId } from "./sites.ts";

/** The least help found. */
export interface Help {
  readonly needed: boolean;
  readonly enough: true;
  readonly pushes: readonly HelpPush[];
  /** All pushes together [N]. */
  readonly newtons: number;
  /** Over the joints the help relieves, the part of what each needed that the help takes away; the largest. 1 where nothing but help makes the pose possible. */
  readonly share: number;
  /** Largest effort with that help, habitual sharing. */
  readonly effortWith: number;
}
export interface HelpPush {
  readonly site: SiteId;
  readonly side: Side | null;
  readonly words: string;
  readonly direction: SiteDirection;
  readonly newtons: number;
}
export interface NoHelp {
  readonly enough: false;
  readonly because: string;
  /** Newtons that would do if there were no limit; null where no push at these sites would. */
  readonly wouldNeed: number | null;
}

/** Ceiling of a helper's push in good posture [N]: 35 lb, "waters2007"; the caller halves it for kneeling or twisted work. */
export const HELP_CEILING = 156;
/** Less than a touch [N]: left out. */
const TOUCH = 3;

export interface HelpRequest {
  /** Most any joint may work, as a share of what it has. */
  readonly allowedShare: number;
  readonly sites: readonly SiteId[];
  readonly barred?: readonly SiteId[];
  /** [N], default HELP_CEILING. */
  readonly ceiling?: number;
  readonly sharingWeak?: number;
  /** How the person shares the load without help at these capacities, where it is known already. */
  readonly without?: Sharing;
}

/**
 * The fewest newtons of a helper's push that bring every joint under the allowed share: a linear program picks the sites
 * (one or two come out by themselves), then the push is raised until the person's habitual sharing agrees.
 */
export function leastHelp(
  statics: Statics,
  capacities: Capacities,
  request: HelpRequest,
  solver: LinearSolver,
): Help | NoHelp {
  const { allowedShare } = request;
  const ceiling = request.ceiling ?? HELP_CEILING;
  const without = request.without ?? shareHabitually(statics, capacities);
  const stands = without.residual <= BALANCED_WITHIN;
  if (stands && without.most <= allowedShare)
    return { needed: false, enough: true, pushes: [], newtons: 0, share: 0, effortWith: without.most };
  const barred = new Set(request.barred ?? []);
  const pushes = request.sites
    .filter((site) => !barred.has(site))
    .flatMap((site) => sitePushes(statics.body, statics.pose.frames, site));
  if (pushes.length === 0)
    return { enough: false, because: "no place here where a helper may take hold", wouldNeed: null };
  const extra = helpColumns(statics, pushes);
  const free = { ...statics, sharing: null };
  let wouldNeed: number | null = null;
  // The program shares the load better than people do: where their own sharing stays over the limit, it is asked for more.
  const { builder, extra: first, effortRow } = effortProgram(free, capacities, allowedShare, extra);
  const program = builder.build();
  const firstEffort = Math.min(...effortRow);
  for (const part of TIGHTER) {
    program.rowUpper.fill(allowedShare * part, firstEffort);
    const answer = part === 1 ? solver.solve(program) : solver.solveAgain(program);
    if (answer.status !== "best") break;
    const chosen = pushes
      .map((push, h) => ({ push, newtons: answer.x[first + h] ?? 0 }))
      .filter((each) => each.newtons > TOUCH);
    if (chosen.length === 0) continue;
    const least = chosen.reduce((sum, each) => sum + each.newtons, 0);
    if (least > ceiling) {
      // Their own sharing would ask for more still.
      wouldNeed = least;
      break;
    }
    const raised = raiseUntilHabitual(statics, capacities, chosen, request, without);
    if (raised === null) continue;
    const newtons = least * raised.times;
    if (newtons > ceiling) {
      wouldNeed = newtons;
      break;
    }
    return {
      needed: true,
      enough: true,
      pushes: chosen.map(({ push, newtons: each }) => ({
        site: push.site,
        side: push.side,
        words: push.words,
        direction: push.direction,
        newtons: each * raised.times,
      })),
      newtons,
      share: stands ? reliefShare(statics, without, raised.sharing, allowedShare) : 1,
      effortWith: raised.sharing.most,
    };
  }
  if (wouldNeed === null)
    return { enough: false, because: "no push at these places brings every joint under what it may do", wouldNeed };
  return {
    enough: false,
    because: `it would take ${Math.round(wouldNeed / 10) * 10} N, over the ${Math.round(ceiling)} N a helper may give`,
    wouldNeed,
  };
}

/** The program's push is raised to at most this many times itself. */
const MOST_RAISED = 2.5;

/** Parts of the allowed share the program is asked for, in turn. */
const TIGHTER = [1, 0.93, 0.86, 0.8, 0.7, 0.55] as const;

/** The helper's pushes as columns: one newton each. */
function helpColumns(statics: Statics, pushes: readonly SitePush[]): ExtraColumns {
  const count = pushes.length;
  const whole = new Float64Array(6 * count);
  const muscle = new Float64Array(statics.angles * count);
  pushes.forEach((push, h) => {
    addForce(statics.body, statics.pose, statics.axes, push.segment, push.at, push.push, whole, muscle, h, count);
  });
  shareTwoJointMuscles(statics.body, muscle, count);
  return { count, whole, muscle, cost: 1, most: 4 * statics.weight };
}

/** Raises the chosen pushes until the person's own sharing is under the limit; null where that does not do it. */
function raiseUntilHabitual(
  statics: Statics,
  capacities: Capacities,
  chosen: readonly { readonly push: SitePush; readonly newtons: number }[],
  request: HelpRequest,
  without: Sharing,
): { times: number; sharing: Sharing } | null {
  const solveAt = (times: number): Sharing => shareHabitually(helped(statics, chosen, times), capacities, without);
  const sharing = solveAt(1);
  if (fits(sharing, request)) return { times: 1, sharing };
  const raised = solveAt(1.2);
  if (fits(raised, request)) return { times: 1.2, sharing: raised };
  const slope = (raised.most - sharing.most) / 0.2;
  if (!Number.isFinite(slope) || slope >= 0) return null;
  const times = 1.2 + ((request.allowedShare * 0.995 - raised.most) / slope) * 1.05;
  if (times > MOST_RAISED) return null;
  const last = solveAt(times);
  return fits(last, request) ? { times, sharing: last } : null;
}

const fits = (sharing: Sharing, request: HelpRequest): boolean =>
  sharing.residual <= BALANCED_WITHIN && sharing.most <= request.allowedShare * 1.005;

/** The same pose with the chosen pushes acting. */
const helped = (
  statics: Statics,
  chosen: readonly { readonly push: SitePush; readonly newtons: number }[],
  times: number,
): Statics =>
  withOutside(
    statics,
    chosen.map(({ push, newtons }) => ({
      segment: push.segment,
      at: push.at,
      force: scale(push.push, newtons * times),
    })),
  );

/** Over the joints that were asked too much, the part taken away; the largest. */
function reliefShare(statics: Statics, without: Sharing, with_: Sharing, allowedShare: number): number {
  let most = 0;
  for (const joint of statics.joints) {
    const effort = (sharing: Sharing): number => {
      let sum = 0;
      for (const i of joint.angles)
        if (sharing.allowed.counted[i] === 1)
          sum = joint.ball ? sum + (sharing.ratios[i] ?? 0) : Math.max(sum, sharing.ratios[i] ?? 0);
      return sum;
    };
    const before = effort(without);
    if (before <= allowedShare) continue;
    most = Math.max(most, (before - effort(with_)) / before);
  }
  return Math.min(1, Math.max(0, most));
}
