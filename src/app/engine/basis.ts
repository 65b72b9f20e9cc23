import type { BalanceOutline } from "../../mechanics/reach/outline.ts";
import type { RungToday } from "../../plan/assess/rung-today.ts";
import { ALLOWED_EFFORT } from "../../plan/assess/settings.ts";
import type { PersonToday } from "./person-today.ts";
import { round2, round3 } from "./sides.ts";

/** A number opened: its formula, what went in, where that comes from. */
export interface BasisEntry {
  readonly formula: string;
  readonly inputs: Record<string, unknown>;
  readonly source: string;
}

/** How the hardest joint's effort came about. */
export function effortBasis(person: PersonToday, today: RungToday): BasisEntry[] {
  const { asks } = today;
  if (asks === null) return [];
  const { limiting } = asks;
  const joint = asks.efforts.find(
    (each) =>
      each.counted &&
      each.joint === limiting.joint &&
      each.side === limiting.side &&
      each.direction === limiting.direction,
  );
  const { size } = person.findings;
  return [
    {
      formula:
        "effort = moment asked of the joint / moment it can give, loads shared so that the cubed efforts are least",
      inputs: {
        askedNewtonMetres: joint === undefined ? null : round2(Math.abs(joint.moment)),
        hasNewtonMetres:
          joint === undefined
            ? null
            : {
                low: round2(joint.capacity.low),
                middle: round2(joint.capacity.middle),
                high: round2(joint.capacity.high),
              },
        effort: { low: round2(asks.peak.low), middle: round2(asks.peak.middle), high: round2(asks.peak.high) },
        goesBy: round2(asks.cautious),
        allowedWithoutHelp: ALLOWED_EFFORT,
        heightMetres: size.height,
        massKilograms: size.mass,
        ageYears: person.findings.ageYears,
        draws: person.draws.length,
        assumed: person.findings.assumed,
      },
      source: "deleva1996",
    },
  ];
}

export function outlineBasis(outline: BalanceOutline | null): BasisEntry[] {
  if (outline === null) return [];
  return [
    {
      formula:
        "how far the centre of mass can go slowly, contacts staying put, before a contact, friction, a joint's range or a muscle ends it",
      inputs: {
        directions: outline.directions.map((way) => ({
          metres: round3(way.metres),
          endedBy: way.endedBy,
          what: way.what,
        })),
        heldStillOnly: true,
      },
      source: "judgement",
    },
  ];
}

export function helpBasis(today: RungToday): BasisEntry[] {
  const { help } = today;
  if (help === null) return [];
  return [
    {
      formula:
        "least newtons over the named sites that bring every joint under what it has; share = part of the moment taken away, the largest over the joints relieved",
      inputs: {
        newtons: Math.round(help.newtons),
        share: round2(help.share),
        limitNewtons: help.limit,
        limitBecause: help.limitBecause,
      },
      source: "waters-2007",
    },
  ];
}
