import type { Side } from "../../quantity/sides.ts";
import type { BodySize } from "../body/body.ts";
import { LIMB_STRENGTH_KEYS, TRUNK_STRENGTH_KEYS } from "../body/strength-keys.ts";
import type { Balance, JointEffort } from "../equilibrium/habitual.ts";
import { type HoldTime, holdTime } from "./hold-time.ts";
import { fatigueRates, type TiringGroup } from "./rates.ts";

/** How long one joint of a held position lasts. */
export interface JointTime extends HoldTime {
  readonly joint: string;
  readonly direction: string;
  readonly side: Side | null;
  readonly share: number;
  /** The group has no endurance figure of its own. */
  readonly wide: boolean;
}

/**
 * How long a position can be held: the joints that count, the one that gives out first in front. The hardest joint need not
 * be the first: some groups tire faster than others.
 * @param paretic the side weakened by a stroke; null for nobody's
 * @returns empty where no joint has an end
 */
export function holdTimesOf(
  balance: Pick<Balance, "efforts">,
  who: Pick<BodySize, "sex"> & { readonly age: number; readonly paretic: Side | null },
): readonly JointTime[] {
  return balance.efforts
    .filter(({ counted, effort }) => counted && effort > 0)
    .map((each): JointTime => {
      const rates = fatigueRates(groupOf(each), who.sex);
      const paretic = who.paretic !== null && each.side === who.paretic;
      const time = holdTime(rates, each.effort, { age: who.age, paretic });
      return {
        ...time,
        joint: each.joint,
        direction: each.direction,
        side: each.side,
        share: each.effort,
        wide: rates.wide,
      };
    })
    .filter(({ low }) => low !== null)
    .sort((a, b) => (a.low ?? 0) - (b.low ?? 0));
}

function groupOf({ strength }: JointEffort): TiringGroup {
  const [name, rest] = (strength ?? "").split(".");
  const trunk = TRUNK_STRENGTH_KEYS.find((key) => name === "trunk" && key === rest);
  if (trunk !== undefined) return `trunk.${trunk}`;
  return LIMB_STRENGTH_KEYS.find((key) => key === name) ?? "neck";
}
