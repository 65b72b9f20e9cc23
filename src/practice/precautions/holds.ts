import type { SourceId } from "../../sources/bibliography.ts";
import type { PrecautionFinding } from "./precaution.ts";
import { orderFindings, PRECAUTIONS } from "./table.ts";

/** One reason why nothing starts. */
export interface HoldReason {
  readonly rule: string;
  readonly measured: string;
  readonly limit: string;
  readonly source: SourceId;
}

/** The whole session waits. */
export interface Hold {
  readonly because: readonly HoldReason[];
  readonly whatToDo: string;
}

export interface Onset {
  /** Null where there was no onset or it is not known. */
  readonly daysSinceOnset: number | null;
  readonly stroke: boolean;
}

/**
 * Whether a condition stops the whole session: a suspected clot, or the first day after a stroke, until the physician
 * has cleared it.
 *
 * @returns the hold, or null where nothing stops the session.
 */
export function judgeHolds(findings: readonly PrecautionFinding[], onset: Onset): Hold | null {
  const rules = orderFindings(withFirstDay(findings, onset)).flatMap(({ code, orders, note }) => {
    const hold = PRECAUTIONS[code].hold;
    return hold === null || orders?.cleared === true ? [] : [{ hold, measured: note ?? PRECAUTIONS[code].title }];
  });
  if (rules.length === 0) return null;
  return {
    because: rules.map(({ hold, measured }) => ({
      rule: hold.rule,
      measured,
      limit: hold.because,
      source: hold.source,
    })),
    whatToDo: [...new Set(rules.map(({ hold }) => hold.whatToDo))].join(" "),
  };
}

/** The first day needs an order even where nobody ticked it. */
function withFirstDay(findings: readonly PrecautionFinding[], onset: Onset): readonly PrecautionFinding[] {
  const firstDay = onset.stroke && onset.daysSinceOnset !== null && onset.daysSinceOnset < 1;
  if (!firstDay || findings.some(({ code }) => code === "acute_24h")) return findings;
  return [...findings, { code: "acute_24h" }];
}
