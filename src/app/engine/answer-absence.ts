import type { RungToday } from "../../plan/assess/rung-today.ts";
import { figureOf, partName, upper } from "../../plan/session/sentences.ts";
import { ACTIVITIES } from "../../practice/catalogue.ts";
import type { AbsenceAnswer, RungName } from "./engine.ts";
import type { PersonToday } from "./person-today.ts";
import { lowerFirst } from "./words.ts";

/** Rules a therapist may overrule, with a reason written down; everything else is a stop. */
const MAY_OVERRULE = ["approach", "effort", "balance", "place", "equipment", "seen"];

export const mayOverrule = ({ rule }: { readonly rule: string }): boolean => MAY_OVERRULE.includes(rule);

/** Why a rung is not in today's plan, in words; what it would cost comes from the optimiser and is passed in. */
export function answerAbsence(
  person: PersonToday,
  today: RungToday,
  cost: string | null,
  inPlan: boolean,
): AbsenceAnswer {
  const { activity, rung, asks, out } = today;
  const first = out[0];
  const name = `${activity.name}: ${lowerFirst(rung.name)}`;
  const sentence =
    person.hold !== null
      ? `Nothing today: ${person.hold.because.map((each) => each.measured).join(", ")}.`
      : inPlan
        ? "It is in today's plan."
        : first === undefined
          ? "It fits this person; today's minutes and strength go further with other things."
          : first.rule === "effort" && asks !== null
            ? `Because ${partName(asks.limiting)} would fold.`
            : first.detail;
  return {
    activity: activity.id,
    rung: rung.id,
    name,
    sentence,
    because: (person.hold === null
      ? out
      : person.hold.because.map((each) => ({
          rule: each.rule,
          detail: `${each.measured}; limit ${each.limit}`,
          source: each.source,
        }))
    ).map(({ rule, detail, source }) => ({ rule, detail, source })),
    figure: asks === null ? null : `${upper(partName(asks.limiting))}: ${figureOf(asks.peak)}.`,
    wouldChange: wouldChange(today),
    instead: rung.substitutes.flatMap((each) => insteadOf(person, each)),
    mayForce: person.hold === null && !inPlan && out.every(mayOverrule),
    cost,
  };
}

function insteadOf(person: PersonToday, name: RungName): AbsenceAnswer["instead"] {
  const activity = ACTIVITIES.find((each) => each.id === name.activity);
  const today = person.rungs.find((each) => each.activity.id === name.activity && each.rung.id === name.rung);
  if (activity === undefined || today === undefined) return [];
  // If the named rung is out too, the nearest one below it that is open serves.
  const open = today.eligible
    ? today
    : [...person.rungs]
        .reverse()
        .find((each) => each.activity === activity && each.index < today.index && each.eligible);
  const served = open ?? today;
  return [
    {
      activity: activity.id,
      rung: served.rung.id,
      name: `${activity.name}: ${lowerFirst(served.rung.name)}`,
      position: activity.position,
      eligible: served.eligible,
    },
  ];
}

function wouldChange(today: RungToday): string[] {
  const lines: string[] = [];
  for (const reason of today.out) {
    if (reason.rule === "effort" && today.asks !== null) {
      const factor = today.asks.cautious / 0.85;
      const side =
        today.asks.limiting.side === null
          ? "the trunk"
          : `the ${today.asks.limiting.side} ${today.asks.limiting.joint}`;
      lines.push(
        `About ${Math.round(Math.min(factor, 9) * 10) / 10} times the strength at ${side}, or a rung lower on the same ladder seen done.`,
      );
    } else if (reason.rule === "helpers") lines.push("A second person.");
    else if (reason.rule === "equipment") lines.push("The piece of equipment named above.");
    else if (reason.rule === "balance") lines.push("The same position held for thirty seconds in the look.");
    else if (reason.rule === "approach") lines.push("Another approach for that limb: lend it or train it.");
    else if (reason.rule.startsWith("precaution"))
      lines.push("Clearance by the person named in the precaution, written beside its code.");
    else if (reason.rule === "stoppedInLook" || reason.rule === "seen")
      lines.push("The task tried again, without what stopped it.");
    else if (reason.rule === "range") lines.push("More range in the joint named, or the version in another position.");
  }
  return [...new Set(lines)];
}
