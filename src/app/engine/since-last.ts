import type { Session } from "../../plan/session/session-plan.ts";
import { seenOn } from "../../plan/eligibility/placed.ts";
import type { PersonToday } from "./person-today.ts";
import { lowerFirst } from "./words.ts";

/** "Same as last time, and these changes, because": what is new, moved or dropped against the last session, each with its reason. */
export function changesSince(person: PersonToday, session: Session): { change: string; because: string }[] {
  const last = person.findings.previous[person.findings.previous.length - 1];
  if (last === undefined) return [];
  const changes: { change: string; because: string }[] = [];
  const nameOf = (activityId: string, rungId: string): string => {
    const activity = person.activities.find((each) => each.id === activityId);
    const rung = activity?.rungs.find((each) => each.id === rungId);
    return activity === undefined || rung === undefined ? activityId : `${activity.name}: ${lowerFirst(rung.name)}`;
  };
  for (const item of session.items) {
    const { activity, rung, index } = item.today;
    const before = last.items.filter((each) => each.activity === activity.id);
    if (before.some((each) => each.rung === rung.id)) continue;
    const same = before[0];
    if (same === undefined) {
      changes.push({
        change: `New: ${nameOf(activity.id, rung.id)}.`,
        because: item.because[0] ?? "It serves a purpose nothing else serves today.",
      });
      continue;
    }
    const from = activity.rungs.findIndex((each) => each.id === same.rung);
    const up = index > from;
    const because =
      item.step !== null && item.step.today === index
        ? `${item.step.because} ${item.step.whatToDo}`
        : (seenOn(person.findings, activity)?.words ?? "It fits today's minutes and strength better.");
    changes.push({
      change: `${up ? "One up" : "One down"}: ${nameOf(activity.id, rung.id)}, last time ${lowerFirst(activity.rungs[from]?.name ?? same.rung)}.`,
      because,
    });
  }
  for (const each of last.items) {
    if (each.done === "notDone" || session.items.some((item) => item.today.activity.id === each.activity)) continue;
    const today = person.rungs.find((rung) => rung.activity.id === each.activity && rung.rung.id === each.rung);
    const because =
      today === undefined
        ? "It is no longer in the catalogue."
        : (today.out[0]?.detail ?? "The minutes and the strength go further elsewhere today.");
    changes.push({ change: `Not today: ${nameOf(each.activity, each.rung)}.`, because });
  }
  return changes;
}
