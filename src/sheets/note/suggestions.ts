import type { ItemRecord } from "../../session/state.ts";
import { fromEvents, type NoteInput, type NoteSentence } from "./note.ts";
import { findFault, findRung, lowerFirst, nameActivity } from "./rung-words.ts";
import { sayOfPerson } from "../words/body-sides.ts";

/**
 * Sentences a therapist may want in the judgement, each from what was logged. They stay outside the note until
 * somebody puts them in.
 */
export function suggestJudgement(input: NoteInput): readonly NoteSentence[] {
  const unsettled = input.state.stops.filter(({ settledBy }) => settledBy === null);
  return [
    ...unsettled.map(({ event }) => ({
      text: "The session ended at a stop: say what it means and who was told.",
      from: fromEvents(event),
    })),
    ...input.state.items.flatMap((item) => suggestForItem(input, item)),
  ];
}

function suggestForItem(input: NoteInput, item: ItemRecord): readonly NoteSentence[] {
  const name = nameActivity(input.catalogue, item.activity, input.person);
  const bad = item.exceptions.filter(
    ({ what, which, next }) =>
      what === "gaveWay" ||
      next === "rungDown" ||
      (what === "fault" && which !== null && findFault(input.catalogue, item, which)?.stepDown === true),
  );
  if (bad.length > 0)
    return [
      {
        text: `${name}: this rung asked too much today; one rung down next time.`,
        from: fromEvents(...bad.map(({ event }) => event)),
      },
    ];
  const full =
    item.planned !== null &&
    item.sets.length >= item.planned.sets &&
    item.sets.every(({ asPlanned }) => asPlanned) &&
    item.exceptions.length === 0;
  const next = nextRung(input, item);
  if (!full || next === null) return [];
  return [
    {
      text: `${name}: every set as planned; ready to try ${next}.`,
      from: fromEvents(...item.sets.map(({ event }) => event)),
    },
  ];
}

function nextRung({ catalogue, person }: NoteInput, item: ItemRecord): string | null {
  const found = findRung(catalogue, item);
  if (found === null) return null;
  const next = found.activity.rungs[found.activity.rungs.indexOf(found.rung) + 1];
  return next === undefined ? null : sayOfPerson(lowerFirst(next.name), person);
}
