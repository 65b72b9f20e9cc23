import type { CatalogueAnswer } from "../../contract/catalogue-answer.ts";
import type { PlanAnswer, PlanItemAnswer } from "../../contract/plan-answer.ts";
import type { KeptPerson } from "../record/database.ts";
import { today } from "../record/identifiers.ts";
import type { StretchWords } from "../session-line/session-line.tsx";
import type { Stretch } from "../session-line/stretches.ts";
import { sayDose } from "../words/dose-words.ts";
import { sayLastDay, sayNumber } from "../words/person-words.ts";

/** "Same as Friday, and two changes." */
export function sayToday(person: KeptPerson, plan: PlanAnswer): string {
  const last = person.case.previous?.at(-1);
  if (last === undefined) return "Nothing to repeat, so it starts low.";
  const day = sayLastDay(last.date, person.case.date ?? today());
  const changes = plan.changesSinceLast.length;
  return changes === 0
    ? `Same as ${day}.`
    : `Same as ${day}, and ${sayNumber(changes)} ${changes === 1 ? "change" : "changes"}.`;
}

export function nameOfActivity(catalogue: CatalogueAnswer | null, activity: string): string {
  return catalogue?.activities.find(({ id }) => id === activity)?.name ?? spell(activity);
}
export function nameOfRung(catalogue: CatalogueAnswer | null, activity: string, rung: string): string {
  const found = catalogue?.activities.find(({ id }) => id === activity);
  const name = found?.rungs.find(({ id }) => id === rung)?.name;
  return found === undefined || name === undefined
    ? spell(`${activity}, ${rung}`)
    : `${found.name}: ${name.charAt(0).toLowerCase()}${name.slice(1)}`;
}
/** Where an activity comes twice its rungs tell them apart. */
export function nameOfRungAlone(catalogue: CatalogueAnswer | null, activity: string, rung: string): string {
  return (
    catalogue?.activities.find(({ id }) => id === activity)?.rungs.find(({ id }) => id === rung)?.name ?? spell(rung)
  );
}
export function nameOfPosition(catalogue: CatalogueAnswer | null, position: string): string {
  return catalogue?.positions.find(({ id }) => id === position)?.name ?? spell(position);
}
function spell(id: string): string {
  return id.replaceAll("-", " ").replace(/^./, (letter) => letter.toUpperCase());
}

/** Whether one of today's changes is about this item. */
export function isChanged(plan: PlanAnswer, catalogue: CatalogueAnswer | null, { activity }: PlanItemAnswer): boolean {
  const name = nameOfActivity(catalogue, activity).toLowerCase();
  return plan.changesSinceLast.some(({ change }) => !/^not today/i.test(change) && change.toLowerCase().includes(name));
}

export function wordsOfStretches(
  stretches: readonly Stretch[],
  plan: PlanAnswer,
  catalogue: CatalogueAnswer | null,
): readonly StretchWords[] {
  return stretches.map(({ kind, item, fromMinute, toMinute, position }) => {
    const minutes = `minutes ${Math.round(fromMinute)} to ${Math.round(toMinute)}`;
    const planned = item === null ? undefined : plan.items[item];
    if (kind === "arrive" || (kind === "item" && planned === undefined))
      return {
        id: "arrive",
        name: "Arrive, belt, pressure",
        heard: `Arrive, belt, pressure, ${minutes}.`,
        changed: false,
      };
    if (planned === undefined)
      return { id: "back", name: "Way back, rest", heard: `Way back and rest, ${minutes}.`, changed: false };
    const changed = isChanged(plan, catalogue, planned);
    const twice = plan.items.filter(({ activity }) => activity === planned.activity).length > 1;
    const name = twice
      ? nameOfRungAlone(catalogue, planned.activity, planned.rung)
      : nameOfActivity(catalogue, planned.activity);
    const where = nameOfPosition(catalogue, position).toLowerCase();
    return {
      id: `${planned.activity}/${planned.rung}`,
      name,
      heard: `${name}, ${minutes}, ${where}, ${sayDose(planned.dose)
        .replace(/\. Rest.*$/, "")
        .toLowerCase()}${changed ? ", changed" : ""}.`,
      changed,
    };
  });
}

/** "Starts sitting, highest in the bars at minute 31, ends lying." */
export function sayLine(plan: PlanAnswer, catalogue: CatalogueAnswer | null): string {
  const [first, last] = [plan.timeline[0], plan.timeline.at(-1)];
  if (first === undefined || last === undefined) return "";
  const highest = plan.timeline.reduce(
    (most, entry) => (entry.centreHeightMetres > most.centreHeightMetres ? entry : most),
    first,
  );
  const name = (position: string) => nameOfPosition(catalogue, position).toLowerCase();
  return `Starts in ${name(first.position)}, highest in ${name(highest.position)} at minute ${Math.round(highest.fromMinute)}, ends in ${name(last.position)}.`;
}
