import { stepOnLadder } from "../../plan/session/ladder-step.ts";
import type { PlannedItem } from "../../plan/session/session-plan.ts";
import { PROGRESSION_FIGURES } from "../../practice/dosing/progression.data.ts";
import type { PersonToday } from "./person-today.ts";
import { lowerFirst } from "./words.ts";

/**
 * What is expected of one ladder this week if its days go well: the day it can first go up, and what the next rung asks.
 * @param days its days of the week, the first being today
 */
export function expectOf(person: PersonToday, { today }: PlannedItem, days: readonly number[]): string {
  const { activity, index } = today;
  const step = stepOnLadder(person.findings, activity);
  const next = activity.rungs[index + 1];
  if (next === undefined) return "The last rung of its ladder: less help, then other places and surfaces.";
  if (step?.rule === "stayLessHelp" && step.today === index)
    return "One step less help on this rung before the next one.";
  const good = step !== null && step.today === index && step.rule === "stayOneGood" ? 1 : 0;
  // Good days still to come, then the next of its days.
  const at = days[PROGRESSION_FIGURES.daysRunning - good];
  const name = lowerFirst(next.name);
  const up = person.rung({ activity: activity.id, rung: next.id });
  const out = up === undefined || up.eligible ? null : (up.out[0]?.detail ?? null);
  if (out !== null) return `The next rung, ${name}, stays closed: ${lowerFirst(out)}`;
  return at === undefined
    ? `The next rung, ${name}, is not before next week: two good days come first.`
    : `If day ${days.slice(0, PROGRESSION_FIGURES.daysRunning - good).join(" and day ")} ${good === 1 ? "goes" : "go"} well, one rung up on day ${at}: ${name}. If not, it stays.`;
}
