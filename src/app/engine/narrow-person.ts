import type { RungToday } from "../../plan/assess/rung-today.ts";
import type { Reason } from "../../plan/eligibility/reason.ts";
import { findWays } from "../../plan/session/ways.ts";
import type { EquipmentId } from "../../practice/codes.ts";
import type { RungName, Wishes } from "./engine.ts";
import { mayOverrule } from "./answer-absence.ts";
import type { PersonToday } from "./person-today.ts";
import { lowerFirst } from "./words.ts";

/** What was put in by hand, against what, and whether it may be. */
export interface Override extends RungName {
  readonly why: string;
  readonly against: readonly Reason[];
  readonly allowed: boolean;
  /** One sentence for the record. */
  readonly record: string;
}
export interface NarrowedPerson {
  readonly person: PersonToday;
  readonly overrides: readonly Override[];
}

const same = (today: RungToday, name: RungName): boolean =>
  today.activity.id === name.activity && today.rung.id === name.rung;

/**
 * The person as they stand with today's wishes: fewer or more people, things that are not at hand, and what is put in by
 * hand. What is put in keeps its reasons as something to mind; a stop rule stands, and without a reason nothing is overruled.
 * More people than in the findings open nothing: that is a finding and is written down as one.
 */
export function narrowPerson(person: PersonToday, wishes: Wishes): NarrowedPerson {
  const here = Math.min(wishes.helpers ?? Number.POSITIVE_INFINITY, person.findings.helpers.count);
  const without = wishes.without ?? [];
  // What is asked for without a word against what keeps it out is asked for without a reason.
  const given = wishes.overrides ?? [];
  const asked = [
    ...given,
    ...(wishes.mustHave ?? [])
      .filter((name) => !given.some((each) => each.activity === name.activity && each.rung === name.rung))
      .map((name) => ({ ...name, why: "" })),
  ];
  if (here === person.findings.helpers.count && without.length === 0 && asked.length === 0)
    return { person, overrides: [] };
  const findings = { ...person.findings, helpers: { ...person.findings.helpers, count: here } };
  const overrides: Override[] = [];
  const rungs = person.rungs.map((each) => {
    const today = keepOut(each, here, without);
    const wish = asked.find((name) => same(each, name));
    if (wish === undefined || today.out.length === 0) return today;
    const override = judgeOverride(today, wish.why, person.hold !== null);
    overrides.push(override);
    return override.allowed ? letIn(today, override.record) : today;
  });
  return {
    person: {
      ...person,
      findings,
      rungs,
      rung: (name) => rungs.find((today) => same(today, name)),
      ways: findWays(findings, person.precautions),
    },
    overrides,
  };
}

function keepOut(today: RungToday, here: number, without: readonly string[]): RungToday {
  const reasons: Reason[] = today.rung.equipment
    .filter((thing) => without.includes(thing) && !today.out.some(({ rule }) => rule === "equipment"))
    .map((thing) => ({
      rule: "equipment",
      detail: `Needs a ${thingWords(thing)}, which is not at hand today.`,
      source: "common-practice",
    }));
  if (today.helpers > here && !today.out.some(({ rule }) => rule === "helpers"))
    reasons.push({
      rule: "helpers",
      detail: `${here === 0 ? "Nobody is" : here === 1 ? "One person is" : `${here} people are`} here today; ${today.helpers} are needed.`,
      source: "common-practice",
    });
  return reasons.length === 0 ? today : changed(today, { eligible: false, out: [...today.out, ...reasons] });
}

export const thingWords = (thing: EquipmentId | string): string => thing.replace(/([A-Z])/g, " $1").toLowerCase();

function judgeOverride(today: RungToday, why: string, held: boolean): Override {
  const name = `${today.activity.name}, ${lowerFirst(today.rung.name)}`;
  const stop = held ? undefined : today.out.find((reason) => !mayOverrule(reason));
  const reason = why.trim();
  const allowed = !held && stop === undefined && reason !== "" && today.prepared !== null;
  const against = today.out.map(({ detail }) => detail).join(" ");
  return {
    activity: today.activity.id,
    rung: today.rung.id,
    why: reason,
    against: today.out,
    allowed,
    record: held
      ? `Not put in: ${name}. The whole session is on hold.`
      : stop !== undefined
        ? `Not put in: ${name}. ${stop.detail}`
        : reason === ""
          ? `Not put in: ${name}. A reason has to be given. ${against}`
          : `Put in by hand: ${name}, against this: ${against} Reason given: ${reason.replace(/[.!?]*$/, ".")}`,
  };
}

function letIn(today: RungToday, record: string): RungToday {
  return changed(today, {
    eligible: true,
    out: [],
    mind: [{ rule: "override", detail: record, source: "judgement" }, ...today.mind],
  });
}

/** The same rung with another verdict. What it asks stays worked out when first asked for. */
function changed(today: RungToday, verdict: Partial<Pick<RungToday, "eligible" | "out" | "mind">>): RungToday {
  return Object.create(today, {
    ...Object.fromEntries(Object.entries(verdict).map(([key, value]) => [key, { value, enumerable: true }])),
  });
}
