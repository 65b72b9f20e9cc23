import type { SiteId } from "../../mechanics/help/sites.ts";
import type { DemandId, PositionId } from "../codes.ts";
import type {
  GuardEffect,
  HelpersEffect,
  PrecautionFinding,
  PrecautionId,
  SiteLine,
  SourcedText,
} from "./precaution.ts";
import { orderFindings, PRECAUTIONS } from "./table.ts";

/** The order in which signs outrank one another where a person shows several. Proposal of this project. */
export const GUARD_SIGNS = ["pushing", "neglect", "fainting", "impulsive", "seizure"] as const;

/** The signs that decide the guard side before anything computed does, the strongest first. */
export function guardSignsOf(
  findings: readonly PrecautionFinding[],
): readonly (GuardEffect & { readonly precaution: PrecautionId })[] {
  return GUARD_SIGNS.flatMap((sign) =>
    orderFindings(findings).flatMap(({ code }) => {
      const guard = PRECAUTIONS[code].guard;
      return guard?.sign === sign ? [{ ...guard, precaution: code }] : [];
    }),
  );
}

/** How to speak and show with this person, said once. */
export function wordsFor(
  findings: readonly PrecautionFinding[],
): readonly (SourcedText & { readonly precaution: PrecautionId })[] {
  return orderFindings(findings).flatMap(({ code }) =>
    PRECAUTIONS[code].words.map((words) => ({ ...words, precaution: code })),
  );
}

/**
 * How many helpers the conditions ask for on this rung.
 * @returns the effect that asks for most, or null where none asks for more than one.
 */
export function helpersFor(
  findings: readonly PrecautionFinding[],
  demands: readonly DemandId[],
  position: PositionId,
): (HelpersEffect & { readonly precaution: PrecautionId }) | null {
  const asked = orderFindings(findings).flatMap(({ code }) => {
    const helpers = PRECAUTIONS[code].helpers;
    if (helpers === null) return [];
    const reached = helpers.positions.includes(position) || helpers.demands.some((demand) => demands.includes(demand));
    return reached ? [{ ...helpers, precaution: code }] : [];
  });
  return asked.reduce<(typeof asked)[number] | null>(
    (most, one) => (most === null || one.count > most.count ? one : most),
    null,
  );
}

/** What the conditions say about a helper's hand, thigh or shin at this place on the body. */
export function judgeSite(
  findings: readonly PrecautionFinding[],
  site: SiteId,
): readonly (SiteLine & { readonly precaution: PrecautionId })[] {
  return orderFindings(findings).flatMap(({ code }) =>
    PRECAUTIONS[code].sites.filter((line) => line.sites.includes(site)).map((line) => ({ ...line, precaution: code })),
  );
}

/** The longest hold the conditions allow [second]; null where none limits it. */
export function longestHoldFor(findings: readonly PrecautionFinding[]): number | null {
  const limits = findings.flatMap(({ code }) => PRECAUTIONS[code].holdSecondsMax ?? []);
  return limits.length === 0 ? null : Math.min(...limits);
}
