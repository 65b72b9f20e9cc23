import { SIDES, type Side } from "../../quantity/sides.ts";
import type { PositionId } from "../codes.ts";
import type { PrecautionVerdict } from "./judge-demands.ts";
import type { GatheredOrders } from "./orders.ts";
import type { PrecautionFinding } from "./precaution.ts";
import type { RungFacts } from "./rung-facts.ts";

/** As tolerated: the order sets no limit [percent]. */
const NO_LIMIT_PERCENT = 100;

/** A line about weight on a leg, against the ordered share. Null where the order leaves the leg free. */
export function judgeByLegOrder(
  line: PrecautionVerdict,
  facts: RungFacts,
  orders: GatheredOrders,
): PrecautionVerdict | null {
  const limited = SIDES.filter((side) => orders.legPercentMax[side] !== undefined);
  if (limited.length === 0) return line;
  const reached = limited.filter((side) => reachesLeg(line, facts, side));
  const judged = reached.flatMap((side) =>
    judgeOneLeg(line, side, orders.legPercentMax[side] ?? NO_LIMIT_PERCENT, facts),
  );
  return judged[0] ?? null;
}

/** A rung known to load the leg above the order is out, whatever its demands say. */
export function judgeLegShare(
  findings: readonly PrecautionFinding[],
  facts: RungFacts,
  position: PositionId,
  orders: GatheredOrders,
): readonly PrecautionVerdict[] {
  return SIDES.flatMap((side) => {
    const percent = orders.legPercentMax[side];
    const share = facts.legShare?.[side];
    if (percent === undefined || share === undefined || share * 100 <= percent) return [];
    const beside = findings.find(
      ({ orders: own }) => own?.weightBearing?.leg === side && own.weightBearing.percent === percent,
    );
    return [
      {
        verdict: "bar",
        demand: null,
        position,
        because: tooMuch(side, share, percent),
        source: "common-practice",
        seen: "common-practice",
        precaution: beside?.code ?? "weight_bearing_order",
        editable: false,
      },
    ];
  });
}

function reachesLeg(line: PrecautionVerdict, facts: RungFacts, side: Side): boolean {
  if (line.demand === null) return true;
  return (facts.sides?.[line.demand] ?? SIDES).includes(side);
}

function judgeOneLeg(
  line: PrecautionVerdict,
  side: Side,
  percent: number,
  facts: RungFacts,
): readonly PrecautionVerdict[] {
  if (percent >= NO_LIMIT_PERCENT) return [];
  const share = facts.legShare?.[side];
  if (share !== undefined) {
    if (share * 100 > percent)
      return [{ ...line, verdict: "bar", because: tooMuch(side, share, percent), editable: false }];
    return [
      {
        ...line,
        verdict: "watch",
        because: `The ${side} leg may carry ${percent} percent of the weight and stays below it here.`,
      },
    ];
  }
  if (percent === 0)
    return [{ ...line, verdict: "bar", because: `The ${side} leg carries no weight by order. ${line.because}` }];
  return [
    {
      ...line,
      verdict: "clearFirst",
      because: `The ${side} leg may carry ${percent} percent of the weight; its load here is not known. ${line.because}`,
    },
  ];
}

function tooMuch(side: Side, share: number, percent: number): string {
  return `The ${side} leg would carry ${Math.round(share * 100)} percent of the weight here; the order allows ${percent}.`;
}
