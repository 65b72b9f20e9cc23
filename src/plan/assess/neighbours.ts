import { scaleCapacities } from "../../mechanics/body/strength-capacities.ts";
import { strengthsFrom } from "../../mechanics/body/strength-keys.ts";
import { solveHabitual } from "../../mechanics/equilibrium/habitual.ts";
import type { ContactSpecification, PoseSpecification } from "../../mechanics/pose/specification.ts";
import type { Activity, Rung } from "../../practice/activities/activity.ts";
import { poseOf } from "./posed.ts";
import type { PoseKeeper } from "./prepared.ts";

/** In what two rungs may differ, as far as codes and numbers tell. */
export const ASKED = ["demands", "dose", "freeLimb", "support", "hands", "effort"] as const;
export type Asked = (typeof ASKED)[number];

/** What one rung asks: codes and numbers only, no words. */
export interface RungAsk {
  readonly demands: string;
  readonly dose: string;
  readonly freeLimb: string;
  /** What bears the body: contacts and the things they rest on. */
  readonly support: string;
  /** What the helper's hands carry, steady or block, and how many helpers. */
  readonly hands: string;
  /** Effort by joint, direction and side; null where the pose cannot be taken or held. */
  readonly effort: ReadonlyMap<string, number> | null;
}

/** Efforts of a joint closer than this share of what it has are the same effort (judgement: half the spread that placement brings). */
export const SAME_EFFORT = 0.05;
/** How many of the hardest joints of either rung are compared. */
const LEADING = 3;

/** The strengths at which neighbours are compared: two fifths of normal on the weak side, nine tenths on the strong, the trunk between. */
export const COMPARED_STRENGTHS = strengthsFrom((id) =>
  id.endsWith(".weak") ? 0.4 : id.endsWith(".strong") ? 0.9 : 0.65,
);

/** What one rung asks of a body at the compared strengths. */
export function askOf(keeper: PoseKeeper, rung: Rung): RungAsk {
  const { kind, sets, repetitions, holdSeconds } = rung.dose;
  return {
    demands: [...rung.demands].sort().join(" "),
    dose: JSON.stringify([kind, sets, repetitions, holdSeconds]),
    freeLimb: rung.limbFree ?? "none",
    support: supportIn(rung.pose),
    hands: handsAt(rung),
    effort: effortOf(keeper, rung),
  };
}

function supportIn({ contacts, surfaces }: PoseSpecification): string {
  return JSON.stringify([
    contacts
      .filter(({ role }) => role !== "closes")
      .map(nameContact)
      .sort(),
    (surfaces ?? []).map(({ id, kind, height }) => [id, kind, height]),
  ]);
}

function nameContact({ patch, on, effort }: ContactSpecification): string {
  return `${patch} on ${typeof on === "string" ? on : on.body} ${effort ?? "press"}`;
}

function handsAt({ helper, helpersNeeded }: Rung): string {
  const working = helper.hands.filter(({ does }) => does !== "ready").map(({ site, does }) => `${site} ${does}`);
  return JSON.stringify([working.sort(), helper.always === true, helpersNeeded]);
}

function effortOf(keeper: PoseKeeper, rung: Rung): RungAsk["effort"] {
  const prepared = keeper.prepare(poseOf(rung));
  if (!prepared.possible) return null;
  const balance = solveHabitual(prepared.statics, scaleCapacities(prepared.normal, COMPARED_STRENGTHS));
  if (!balance.balanced) return null;
  return new Map(
    balance.efforts
      .filter(({ counted }) => counted)
      .map(({ joint, direction, side, effort }) => [`${joint} ${direction} ${side ?? "middle"}`, effort]),
  );
}

/** In what two rungs differ; empty where they are one rung under two names. */
export function differencesOf(one: RungAsk, other: RungAsk): readonly Asked[] {
  return ASKED.filter((each) =>
    each === "effort" ? !sameEffort(one.effort, other.effort) : one[each] !== other[each],
  );
}

function sameEffort(one: RungAsk["effort"], other: RungAsk["effort"]): boolean {
  if (one === null || other === null) return one === other;
  return [...leading(one), ...leading(other)].every(
    (joint) => Math.abs((one.get(joint) ?? 0) - (other.get(joint) ?? 0)) <= SAME_EFFORT,
  );
}

function leading(effort: ReadonlyMap<string, number>): readonly string[] {
  return [...effort]
    .sort(([a, x], [b, y]) => y - x || a.localeCompare(b))
    .slice(0, LEADING)
    .map(([joint]) => joint);
}

/** Two neighbouring rungs of a ladder and in what they differ. */
export interface Neighbours {
  readonly activity: string;
  readonly lower: string;
  readonly upper: string;
  readonly differ: readonly Asked[];
}

/** Every pair of neighbouring rungs, in the order of the ladders. */
export function compareNeighbours(keeper: PoseKeeper, activities: readonly Activity[]): readonly Neighbours[] {
  return activities.flatMap(({ id, rungs }) => {
    const asks = rungs.map((rung) => ({ rung: rung.id, ask: askOf(keeper, rung) }));
    return asks.flatMap((upper, index) => {
      const lower = asks[index - 1];
      return lower === undefined
        ? []
        : [{ activity: id, lower: lower.rung, upper: upper.rung, differ: differencesOf(lower.ask, upper.ask) }];
    });
  });
}
