import type { Laterality } from "../../quantity/sides.ts";
import type { Activity, Rung, RungFault } from "../../practice/activities/activity.ts";
import { sayOfPerson } from "../words/body-sides.ts";

export interface NamedRung {
  readonly activity: string;
  readonly rung: string;
}

/** The rung of a catalogue; null where it is not in it, as in a record older than the catalogue. */
export function findRung(
  catalogue: readonly Activity[],
  { activity, rung }: NamedRung,
): { readonly activity: Activity; readonly rung: Rung } | null {
  const found = catalogue.find(({ id }) => id === activity);
  const row = found?.rungs.find(({ id }) => id === rung);
  return found === undefined || row === undefined ? null : { activity: found, rung: row };
}

/** "Bridge, full lift into a touch"; a rung that is not in the catalogue by its identifiers. */
export function nameRung(catalogue: readonly Activity[], named: NamedRung, person: Laterality): string {
  const found = findRung(catalogue, named);
  if (found === null) return `${spaced(named.activity)}, ${spaced(named.rung)}`;
  return sayOfPerson(`${found.activity.name}, ${lowerFirst(found.rung.name)}`, person);
}

export function nameActivity(catalogue: readonly Activity[], activity: string, person: Laterality): string {
  return sayOfPerson(catalogue.find(({ id }) => id === activity)?.name ?? spaced(activity), person);
}

export function findFault(catalogue: readonly Activity[], named: NamedRung, fault: string): RungFault | null {
  return findRung(catalogue, named)?.rung.faults.find(({ id }) => id === fault) ?? null;
}

/** Identifiers are named by their content: "weak-knee-falls-out" is read "weak knee falls out". */
export const spaced = (identifier: string): string => identifier.replaceAll("-", " ");

export const lowerFirst = (text: string): string => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;
export const upperFirst = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
export const withStop = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);
export const times = (count: number): string => (count === 1 ? "once" : count === 2 ? "twice" : `${count} times`);
