import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";
import { DEMAND_IDS, type DemandId, type PositionId } from "../codes.ts";
import { judgeByHipOrder, judgeHipAngle } from "./hip-order.ts";
import { judgeByLegOrder, judgeLegShare } from "./leg-order.ts";
import { type GatheredOrders, gatherOrders } from "./orders.ts";
import {
  type PrecautionFinding,
  type PrecautionId,
  type PrecautionLine,
  VERDICTS,
  type Verdict,
} from "./precaution.ts";
import type { RungFacts } from "./rung-facts.ts";
import { orderFindings, PRECAUTIONS, type PrecautionTable } from "./table.ts";

/** One reason a condition gives about one rung. `demand` or `position` names what it reached; both may. */
export interface PrecautionVerdict {
  readonly verdict: Verdict;
  readonly demand: DemandId | null;
  readonly position: PositionId | null;
  readonly because: string;
  readonly source: SourceId;
  readonly seen: Seen;
  readonly precaution: PrecautionId;
  readonly editable: boolean;
}

/**
 * What this person's conditions say about a rung with these demands in this position: kept out, to be cleared first,
 * done with a change, or watched. The physician's orders beside a condition decide over its line.
 *
 * @param table the site's own table where it has changed what may be changed.
 * @returns the reasons, hardest first; an empty list where no condition reaches the rung. A rung is out when a reason
 * is `bar` or `clearFirst`.
 */
export function judgeDemands(
  findings: readonly PrecautionFinding[],
  demands: readonly DemandId[],
  position: PositionId,
  facts: RungFacts = {},
  table: PrecautionTable = PRECAUTIONS,
): readonly PrecautionVerdict[] {
  const orders = gatherOrders(findings);
  const verdicts: PrecautionVerdict[] = [];
  for (const finding of orderFindings(findings)) {
    for (const line of table[finding.code].lines) {
      const verdict = judgeLine(finding, line, demands, position, facts, orders);
      if (verdict !== null) verdicts.push(verdict);
    }
  }
  verdicts.push(
    ...judgeHipAngle(findings, facts, position, orders),
    ...judgeLegShare(findings, facts, position, orders),
  );
  return dropRepeats([...verdicts].sort((a, b) => VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict)));
}

/** Whether these reasons keep the rung out today. */
export function keepsOut(verdicts: readonly PrecautionVerdict[]): boolean {
  return verdicts.some(({ verdict }) => verdict === "bar" || verdict === "clearFirst");
}

function judgeLine(
  finding: PrecautionFinding,
  line: PrecautionLine,
  demands: readonly DemandId[],
  position: PositionId,
  facts: RungFacts,
  orders: GatheredOrders,
): PrecautionVerdict | null {
  const demand = reachedDemand(line, demands, facts);
  if (line.everywhere === undefined) {
    if (line.demands !== undefined && demand === null) return null;
    if (line.positions !== undefined && !line.positions.includes(position)) return null;
    if (line.except?.includes(position)) return null;
  }
  const reached: PrecautionVerdict = {
    verdict: line.verdict,
    demand,
    position: line.positions === undefined ? null : position,
    because: line.because,
    source: line.source,
    seen: line.seen,
    precaution: finding.code,
    editable: line.editable,
  };
  const ordered =
    line.judgedBy === "hipFlexion"
      ? judgeByHipOrder(reached, facts, orders)
      : line.judgedBy === "legLoad"
        ? judgeByLegOrder(reached, facts, orders)
        : reached;
  if (ordered === null || finding.orders?.cleared !== true || line.whenCleared === "stays") return ordered;
  // A clearance lifts the line, never a limit the physician set beside it.
  if (ordered !== reached) return ordered;
  return { ...ordered, verdict: line.whenCleared, because: `Cleared by the physician; still: ${line.because}` };
}

/** The first demand, in the order of the codes, by which the line reaches the rung. */
function reachedDemand(line: PrecautionLine, demands: readonly DemandId[], facts: RungFacts): DemandId | null {
  const side = line.side;
  const reached = DEMAND_IDS.find(
    (demand) =>
      line.demands?.includes(demand) &&
      demands.includes(demand) &&
      (side === undefined || (facts.sides?.[demand] ?? [side]).includes(side)),
  );
  return reached ?? null;
}

/** One sentence of one condition is said once, in its hardest form. */
function dropRepeats(verdicts: readonly PrecautionVerdict[]): readonly PrecautionVerdict[] {
  return verdicts.filter(
    (one, index) =>
      verdicts.findIndex((other) => other.precaution === one.precaution && other.because === one.because) === index,
  );
}
