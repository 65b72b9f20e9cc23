import { POSITIONS } from "../../practice/catalogue.ts";
import type { PositionId } from "../../practice/codes.ts";
import type { Argument, ArgumentAnswer } from "../contract/argument.ts";
import type { PlanAnswer } from "../contract/plan-answer.ts";
import { mayOverrule } from "./answer-absence.ts";
import { answerPlan } from "./answer-plan.ts";
import { comparePlans } from "./compare-plans.ts";
import type { RungName, Wishes } from "./engine.ts";
import { thingWords } from "./narrow-person.ts";
import type { PersonToday } from "./person-today.ts";
import { planSession, type SolvedSession } from "./plan-session.ts";
import { whyShort } from "./why-short.ts";
import { lowerFirst } from "./words.ts";

/** A solved session as the contract says it. */
export function answerSolved(solved: SolvedSession, minutes: number, wishes: Wishes): PlanAnswer {
  const { person, session, ...rest } = solved;
  return answerPlan(person, session, { ...rest, whyShort: whyShort(solved, minutes, wishes) });
}

type Verdict = Pick<ArgumentAnswer, "verdict" | "because">;
const FOLLOWS: Verdict = { verdict: "follows", because: [] };

/**
 * One thing said against a plan, answered: what changes and what it costs. What keeps a rung out is never overruled in
 * silence: a stop rule refuses, anything else asks for a reason first, which then stands in the plan.
 */
export function answerArgument(
  person: PersonToday,
  minutes: number,
  wishes: Wishes,
  argument: Argument,
): ArgumentAnswer {
  const before = planSession(person, minutes, wishes);
  const judged = judge(person, before, argument);
  const then = judged.verdict === "follows" && argument.say === "minutes" ? argument.minutes : minutes;
  const asked = judged.verdict === "follows" ? wishesAfter(wishes, argument) : wishes;
  const after = planSession(person, then, asked);
  return {
    asked: sayArgument(person, argument),
    ...judged,
    minutes: then,
    wishes: asked,
    plan: answerSolved(after, then, asked),
    comparison: comparePlans(before, after),
  };
}

/** Whether a wish may simply be followed. */
function judge(person: PersonToday, before: SolvedSession, argument: Argument): Verdict {
  const refuse = (rule: string, detail: string): Verdict => ({
    verdict: "refused",
    because: [{ rule, detail, source: "judgement" }],
  });
  if (person.hold !== null)
    return {
      verdict: "refused",
      because: person.hold.because.map(({ rule, measured, limit, source }) => ({
        rule: `hold:${rule}`,
        detail: `${measured}; limit ${limit}`,
        source,
      })),
    };
  if (argument.say === "keep" || argument.say === "putIn") {
    // As the person stands with the other wishes: what is not at hand today keeps a rung out too.
    const today = before.person.rung(argument.of);
    if (today === undefined) return refuse("unknown", "No such rung is known.");
    if (today.out.length === 0) return FOLLOWS;
    const because = today.out.map((reason) => ({ ...reason }));
    if (!today.out.every(mayOverrule)) return { verdict: "refused", because };
    const why = argument.say === "putIn" ? (argument.why ?? "").trim() : "";
    return why === "" ? { verdict: "needsReason", because } : { verdict: "follows", because };
  }
  if (argument.say === "leave" && before.person.rung(argument.of) === undefined)
    return refuse("unknown", "No such rung is known.");
  if (argument.say === "helpers" && argument.count > person.findings.helpers.count)
    return refuse(
      "helpers",
      `The findings know of ${person.findings.helpers.count}: write a further person down there, then what they make possible is planned.`,
    );
  if (argument.say === "startIn" && !POSITIONS.some(({ id }) => id === argument.position))
    return refuse("unknown", "No such position is in the catalogue.");
  if (argument.say === "startIn" && before.built.problem.locks.barPositions.includes(argument.position))
    return refuse("barred-position", `${positionName(argument.position)} is kept out of the session by another wish.`);
  return FOLLOWS;
}

const same = (a: RungName, b: RungName): boolean => a.activity === b.activity && a.rung === b.rung;

/** The wishes with one more of them; what it stands against is let go. */
export function wishesAfter(wishes: Wishes, argument: Argument): Wishes {
  switch (argument.say) {
    case "keep":
    case "putIn": {
      const { of } = argument;
      const other = (name: RungName) => !same(name, of);
      const why = argument.say === "putIn" ? (argument.why ?? "").trim() : "";
      const leaveOut = (wishes.leaveOut ?? []).filter(other);
      const overrides = (wishes.overrides ?? []).filter(other);
      const mustHave = (wishes.mustHave ?? []).filter(other);
      return why === ""
        ? { ...wishes, leaveOut, overrides, mustHave: [...mustHave, of] }
        : { ...wishes, leaveOut, mustHave, overrides: [...overrides, { ...of, why }] };
    }
    case "leave": {
      const other = (name: RungName) => !same(name, argument.of);
      return {
        ...wishes,
        mustHave: (wishes.mustHave ?? []).filter(other),
        overrides: (wishes.overrides ?? []).filter(other),
        leaveOut: [...(wishes.leaveOut ?? []).filter(other), argument.of],
      };
    }
    case "startIn":
      return { ...wishes, startIn: argument.position };
    case "noFloor":
      return { ...wishes, noFloor: true };
    case "minutes":
      return wishes;
    case "helpers":
      return { ...wishes, helpers: argument.count };
    case "without":
      return { ...wishes, without: [...new Set([...(wishes.without ?? []), argument.thing])] };
  }
}

function sayArgument(person: PersonToday, argument: Argument): string {
  const nameOf = (of: RungName): string => {
    const today = person.rung(of);
    return today === undefined ? of.rung : `${lowerFirst(today.activity.name)}, ${lowerFirst(today.rung.name)}`;
  };
  switch (argument.say) {
    case "keep":
      return `Keep ${nameOf(argument.of)}.`;
    case "putIn":
      return `Put in ${nameOf(argument.of)}.`;
    case "leave":
      return `Leave out ${nameOf(argument.of)}.`;
    case "startIn":
      return `Start in ${lowerFirst(positionName(argument.position))}.`;
    case "noFloor":
      return "No floor today.";
    case "minutes":
      return `${argument.minutes} minutes only.`;
    case "helpers":
      return argument.count === 0
        ? "Nobody to help."
        : argument.count === 1
          ? "One helper."
          : `${argument.count} helpers.`;
    case "without":
      return `No ${thingWords(argument.thing)} at hand.`;
  }
}
const positionName = (id: PositionId): string => POSITIONS.find((row) => row.id === id)?.name ?? id;
