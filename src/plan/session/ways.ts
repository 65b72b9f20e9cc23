import { POSITIONS, TRANSITIONS } from "../../practice/catalogue.ts";
import type { PositionId } from "../../practice/codes.ts";
import { judgeDemands, keepsOut } from "../../practice/precautions/judge-demands.ts";
import type { PrecautionFinding } from "../../practice/precautions/precaution.ts";
import type { Transition } from "../../practice/transitions/transition.ts";
import type { Findings } from "../findings.ts";

/** A way from one position to another over known transitions, with what it costs. */
export interface Way {
  readonly steps: readonly Transition[];
  readonly minutes: number;
  /** Share of the session's strength. */
  readonly strengthShare: number;
  readonly kneelDowns: number;
  readonly sideChanges: number;
}

export interface Ways {
  /** The cheapest open way; null where there is none for this person today. */
  between(from: PositionId, to: PositionId): Way | null;
  /** The way from a position to sitting or lying, whichever is nearer; an empty way where one is there already. */
  back(from: PositionId): { readonly to: PositionId; readonly way: Way } | null;
}

/** Where a session may begin and end: sitting at the edge, or lying. */
export const REST_POSITIONS: readonly PositionId[] = [
  "short-sitting",
  "supine",
  "hook-lying",
  "side-lying-on-strong-side",
];
const STAY: Way = { steps: [], minutes: 0, strengthShare: 0, kneelDowns: 0, sideChanges: 0 };
/** A kneel-down or a change of side weighs like these minutes when ways are compared (judgement). */
const KNEEL_MINUTES = 1.5;
const SIDE_MINUTES = 0.5;

/** The transitions open to this person today: nothing barred by a condition, no bed where there is none, helpers enough, no kneeling where the helper cannot. */
export function findWays(findings: Findings, precautions: readonly PrecautionFinding[]): Ways {
  const known = new Set(POSITIONS.map((position) => position.id));
  const open = TRANSITIONS.filter(
    (transition) =>
      transition.from !== transition.to &&
      known.has(transition.from) &&
      known.has(transition.to) &&
      (findings.place === "bed" || transition.places.some((place) => place !== "bed")) &&
      transition.helpersNeeded <= Math.max(1, findings.helpers.count) &&
      (transition.kneelDowns === 0 ||
        findings.helpers.canKneel ||
        findings.place === "raisedMat" ||
        findings.place === "plinth") &&
      !keepsOut(judgeDemands(precautions, transition.demands, transition.to)),
  );
  const cache = new Map<PositionId, ReadonlyMap<PositionId, Way>>();
  const from = (start: PositionId): ReadonlyMap<PositionId, Way> => {
    let reached = cache.get(start);
    if (reached === undefined) {
      reached = spread(start, open);
      cache.set(start, reached);
    }
    return reached;
  };
  return {
    between: (start, end) => from(start).get(end) ?? null,
    back(start) {
      let best: { to: PositionId; way: Way } | null = null;
      for (const to of REST_POSITIONS) {
        const way = from(start).get(to);
        if (way !== undefined && (best === null || cost(way) < cost(best.way) - 1e-9)) best = { to, way };
      }
      return best;
    },
  };
}

const cost = (way: Way): number => way.minutes + KNEEL_MINUTES * way.kneelDowns + SIDE_MINUTES * way.sideChanges;

/** Cheapest ways to everywhere (Dijkstra); ties go to the transition listed first. */
function spread(start: PositionId, open: readonly Transition[]): ReadonlyMap<PositionId, Way> {
  const done = new Map<PositionId, Way>();
  const front = new Map<PositionId, Way>([[start, STAY]]);
  while (front.size > 0) {
    let next: { at: PositionId; way: Way } | null = null;
    for (const [at, way] of front) if (next === null || cost(way) < cost(next.way) - 1e-9) next = { at, way };
    if (next === null) break;
    front.delete(next.at);
    done.set(next.at, next.way);
    for (const transition of open) {
      if (transition.from !== next.at || done.has(transition.to)) continue;
      const way: Way = {
        steps: [...next.way.steps, transition],
        minutes: next.way.minutes + transition.minutes,
        strengthShare: next.way.strengthShare + transition.strengthShare,
        kneelDowns: next.way.kneelDowns + transition.kneelDowns,
        sideChanges: next.way.sideChanges + (transition.sideChange ? 1 : 0),
      };
      const before = front.get(transition.to);
      if (before === undefined || cost(way) < cost(before) - 1e-9) front.set(transition.to, way);
    }
  }
  return done;
}
