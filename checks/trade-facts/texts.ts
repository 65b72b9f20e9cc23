import type { Rung } from "../../src/practice/activities/activity.ts";
import { ACTIVITIES, POSITIONS, TRANSITIONS } from "../../src/practice/catalogue.ts";
import type { Position } from "../../src/practice/positions/position.ts";
import type { Transition } from "../../src/practice/transitions/transition.ts";
import { findRung } from "./people.ts";

export function transition(id: string): Transition {
  const found = TRANSITIONS.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no transition ${id}`);
  return found;
}
export function position(id: string): Position {
  const found = POSITIONS.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no position ${id}`);
  return found;
}
export const setUpOf = (activity: string): string => ACTIVITIES.find(({ id }) => id === activity)?.setUp ?? "";
export const stepText = (step: Transition["steps"][number]): string =>
  [step.moves, step.helper, step.words ?? ""].join(" ");
export const transitionText = (id: string): string => transition(id).steps.map(stepText).join(" ");
/** Number of the first step that says it; -1 where none does. */
export const stepThatSays = (id: string, pattern: RegExp): number =>
  transition(id).steps.findIndex((step) => pattern.test(stepText(step)));
export function handsText({ helper }: Rung): string {
  return [
    helper.place,
    helper.knee ?? "",
    ...helper.hands.map((hand) => `${hand.site} ${hand.does} ${hand.words}`),
  ].join(" ");
}
export function rungText(name: string): string {
  const { rung } = findRung(name);
  return [
    rung.changes,
    rung.movesFirst,
    rung.words,
    rung.good,
    handsText(rung),
    ...rung.faults.map((each) => `${each.fault} ${each.do}`),
  ].join(" ");
}
export const handsOf = (name: string): readonly string[] =>
  findRung(name).rung.helper.hands.map(({ site, does }) => `${site} ${does}`);
