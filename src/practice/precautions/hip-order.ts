import type { PositionId } from "../codes.ts";
import type { PrecautionVerdict } from "./judge-demands.ts";
import type { GatheredOrders } from "./orders.ts";
import type { PrecautionFinding, PrecautionId } from "./precaution.ts";
import type { RungFacts } from "./rung-facts.ts";

/** The usual limit where nothing else is ordered [degree]. @source hip-precautions-posterior-2019 */
export const USUAL_HIP_FLEXION_MAX_DEG = 90;
/** A rung this near to the limit is watched [degree]. Proposal of this project. */
const NEAR_DEG = 10;

const HIP_CODES: readonly PrecautionId[] = ["thr_posterior", "thr_anterior"];

/** A line about folding the hip, against the ordered angle and the rung's own. Null where it no longer reaches the rung. */
export function judgeByHipOrder(
  line: PrecautionVerdict,
  facts: RungFacts,
  orders: GatheredOrders,
): PrecautionVerdict | null {
  const ordered = orders.hipFlexionDegMax;
  const angle = facts.hipFlexionDeg;
  if (ordered === undefined) {
    // Without an order the taught rule stands, except that a demand is dropped where the angle is known to be within it.
    return line.position === null && angle !== undefined && angle <= USUAL_HIP_FLEXION_MAX_DEG ? null : line;
  }
  if (angle !== undefined) {
    if (angle > ordered) return { ...line, verdict: "bar", because: foldsTooFar(angle, ordered) };
    return angle > ordered - NEAR_DEG ? { ...line, verdict: "watch", because: foldsNear(angle, ordered) } : null;
  }
  if (ordered <= USUAL_HIP_FLEXION_MAX_DEG) return line;
  return {
    ...line,
    verdict: "clearFirst",
    because: `The order allows the hip to fold to ${ordered} degrees and it is not known how far it folds here.`,
  };
}

/** A rung whose hip angle is over the ordered one is out, whatever its demands say. */
export function judgeHipAngle(
  findings: readonly PrecautionFinding[],
  facts: RungFacts,
  position: PositionId,
  orders: GatheredOrders,
): readonly PrecautionVerdict[] {
  const ordered = orders.hipFlexionDegMax;
  const angle = facts.hipFlexionDeg;
  if (ordered === undefined || angle === undefined || angle <= ordered) return [];
  const code = codeBeside(findings, "hipFlexionDegMax");
  return [
    {
      verdict: "bar",
      demand: null,
      position,
      because: foldsTooFar(angle, ordered),
      source: HIP_CODES.includes(code) ? "hip-precautions-posterior-2019" : "judgement",
      seen: HIP_CODES.includes(code) ? "read" : "judgement",
      precaution: code,
      editable: false,
    },
  ];
}

/** The condition beside which the physician wrote the strictest order of this kind. */
function codeBeside(findings: readonly PrecautionFinding[], key: "hipFlexionDegMax"): PrecautionId {
  const least = gatherLeast(findings, key);
  return findings.find((finding) => finding.orders?.[key] === least)?.code ?? "thr_posterior";
}

function gatherLeast(findings: readonly PrecautionFinding[], key: "hipFlexionDegMax"): number {
  return Math.min(...findings.map((finding) => finding.orders?.[key] ?? Number.POSITIVE_INFINITY));
}

function foldsTooFar(angle: number, ordered: number): string {
  return `The hip folds to ${Math.round(angle)} degrees here; the order allows ${ordered}.`;
}

function foldsNear(angle: number, ordered: number): string {
  return `The hip folds to ${Math.round(angle)} degrees here, near the ${ordered} the order allows.`;
}
