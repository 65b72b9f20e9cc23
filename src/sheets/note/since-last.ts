import { ASSISTANCE } from "../../practice/handling/assistance.data.ts";
import type { ItemRecord } from "../../session/state.ts";
import { helpGiven, mostOf } from "./done-and-help.ts";
import { fromEvents, type NoteInput, type NoteSentence, type Trace } from "./note.ts";
import { findRung, lowerFirst, nameActivity, withStop } from "./rung-words.ts";
import { sayOfPerson } from "../words/body-sides.ts";

/** What is other than in the session before: the plan's own changes, then rung, help and pain of what was done in both. */
export function writeSinceLast(input: NoteInput, last: string): readonly NoteSentence[] {
  const planned: NoteSentence[] = input.changes.map(({ change, because }, index) => ({
    text: withStop(`Changed: ${lowerFirst(change).replace(/\.$/, "")} (${lowerFirst(because).replace(/\.$/, "")})`),
    from: [{ kind: "plan", field: `changesSinceLast.${index}` }],
  }));
  return [...planned, ...input.state.items.flatMap((item) => compareItem(input, item, last))];
}

function compareItem(input: NoteInput, item: ItemRecord, last: string): readonly NoteSentence[] {
  const index = input.previous?.items.findIndex(({ activity }) => activity === item.activity) ?? -1;
  const before = input.previous?.items[index];
  if (before === undefined || before.done === "notDone" || item.sets.length === 0) return [];
  const name = nameActivity(input.catalogue, item.activity, input.person);
  const trace = (events: readonly string[]): readonly Trace[] => [
    ...fromEvents(...events),
    { kind: "previous", field: `items.${index}` },
  ];
  const sentences: NoteSentence[] = [];
  if (before.rung !== item.rung) {
    const now = rungName(input, item.activity, item.rung);
    sentences.push({
      text: `${name}: ${now}, ${last} ${rungName(input, item.activity, before.rung)}.`,
      from: trace(item.sets.map(({ event }) => event)),
    });
  }
  const given = helpGiven(item);
  const help = mostOf(given);
  if (help !== null && before.help !== undefined && help !== before.help)
    sentences.push({
      text: `${name}: ${ASSISTANCE[help].words}, ${last} ${ASSISTANCE[before.help].words}.`,
      from: trace(given.filter((one) => one.help === help).map(({ event }) => event)),
    });
  const pains = item.sets.flatMap(({ pain, event }) => (pain === null ? [] : [{ pain, event }]));
  const worst = Math.max(...pains.map(({ pain }) => pain));
  if (pains.length > 0 && before.pain !== undefined && worst !== before.pain)
    sentences.push({
      text: `${name}: pain ${worst} of 10, ${last} ${before.pain}.`,
      from: trace(pains.filter(({ pain }) => pain === worst).map(({ event }) => event)),
    });
  return sentences;
}

function rungName({ catalogue, person }: NoteInput, activity: string, rung: string): string {
  const found = findRung(catalogue, { activity, rung });
  return found === null ? rung : sayOfPerson(lowerFirst(found.rung.name), person);
}
