import { ASSISTANCE } from "../../practice/handling/assistance.data.ts";
import type { HelpWord } from "../../session/events.ts";
import type { ItemRecord } from "../../session/state.ts";
import { fromEvents, type NoteInput, type NoteSentence } from "./note.ts";
import { nameActivity, nameRung, withStop } from "./rung-words.ts";

/** What was done, item by item: sets, repetitions, as planned or not; and what was not done, and why. */
export function writeDone({ state, catalogue, person }: NoteInput): readonly NoteSentence[] {
  return state.items.flatMap((item) => {
    const name = nameRung(catalogue, item, person);
    const sentences: NoteSentence[] = [];
    if (item.sets.length > 0)
      sentences.push({ text: `${name}: ${saySets(item)}.`, from: fromEvents(...item.sets.map(({ event }) => event)) });
    if (item.skipped !== null)
      sentences.push({
        text: withStop(`${name}: not done, ${item.skipped.because}`),
        from: fromEvents(item.skipped.event),
      });
    return sentences;
  });
}

function saySets({ sets, planned }: ItemRecord): string {
  const asked = planned?.sets ?? null;
  const count = `${sets.length}${asked === null ? "" : ` of ${asked}`} ${(asked ?? sets.length) === 1 ? "set" : "sets"}`;
  const repetitions = sets.map((set) => set.repetitions ?? (set.asPlanned ? (planned?.repetitions ?? null) : null));
  const each = repetitions.every((value) => value === repetitions[0]) ? repetitions.slice(0, 1) : repetitions;
  const dose = each.some((value) => value === null) ? "" : ` of ${each.join(" and ")}`;
  const held =
    planned?.holdSeconds === undefined || planned.holdSeconds === 0 || !sets.every(({ asPlanned }) => asPlanned)
      ? ""
      : `, held ${planned.holdSeconds} ${planned.holdSeconds === 1 ? "second" : "seconds"}`;
  return `${count}${dose}${held}, ${sets.every(({ asPlanned }) => asPlanned) ? "as planned" : "changed"}`;
}

/** The most help each item took, in the trade's words with the public code. */
export function writeHelp({ state, catalogue, person }: NoteInput): readonly NoteSentence[] {
  return state.items.flatMap((item) => {
    const given = helpGiven(item);
    const most = mostOf(given);
    if (most === null) return [];
    const { words, code } = ASSISTANCE[most];
    return [
      {
        text: `${nameActivity(catalogue, item.activity, person)}: ${words} (code ${code}).`,
        from: fromEvents(...given.filter(({ help }) => help === most).map(({ event }) => event)),
      },
    ];
  });
}

const LEAST_FIRST: readonly HelpWord[] = [
  "alone",
  "setUp",
  "standBy",
  "touching",
  "minimal",
  "moderate",
  "maximal",
  "dependent",
];

export function mostOf(given: readonly { readonly help: HelpWord }[]): HelpWord | null {
  return LEAST_FIRST.findLast((word) => given.some(({ help }) => help === word)) ?? null;
}

/** Every word of help that was logged for an item, with its event. */
export function helpGiven(item: ItemRecord): readonly { readonly help: HelpWord; readonly event: string }[] {
  const inSets = item.sets.flatMap(({ help, event }) => (help === null ? [] : [{ help, event }]));
  const inExceptions = item.exceptions.flatMap(({ what, which, event }) => {
    const help = LEAST_FIRST.find((word) => word === which);
    return what === "help" && help !== undefined ? [{ help, event }] : [];
  });
  return [...inSets, ...inExceptions];
}
