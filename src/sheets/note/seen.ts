import { bodySideOf, type Laterality } from "../../quantity/sides.ts";
import type { NextStep, StopReason } from "../../session/codes.ts";
import type { GaveWaySeen, ItemRecord, SeenException, Stop } from "../../session/state.ts";
import { fromEvents, type NoteInput, type NoteSentence } from "./note.ts";
import { findFault, lowerFirst, nameActivity, nameRung, spaced, times, withStop } from "./rung-words.ts";
import { writeVitals } from "./said-and-before.ts";
import { sayOfPerson } from "../words/body-sides.ts";

/** What was seen: faults, joints that gave way, pain and exertion, stops, incidents, and what was measured meanwhile. */
export function writeSeen(input: NoteInput): readonly NoteSentence[] {
  const { state } = input;
  return [
    ...state.items.flatMap((item) => [
      ...item.exceptions.flatMap((exception) => sayException(input, item, exception)),
      ...sayFelt(input, item),
    ]),
    ...writeVitals(state, "during"),
    ...state.stops.map((stop) => sayStop(input, stop)),
    ...state.calls.map(({ id, activity, about, allowed, said }) => ({
      text: withStop(
        `Therapist called${activity === undefined ? "" : ` at ${lowerFirst(nameActivity(input.catalogue, activity, input.person))}`}: ${about}${allowed ? "; may go on" : "; not gone on with"}${said === undefined ? "" : ` (${said})`}`,
      ),
      from: fromEvents(id),
    })),
    ...state.incidents.map(({ id, what, done }) => ({
      text: withStop(`Incident: ${what}${done === undefined ? "" : `; done: ${done}`}`),
      from: fromEvents(id),
    })),
    ...writeVitals(state, "after"),
  ];
}

function sayException(input: NoteInput, item: ItemRecord, exception: SeenException): readonly NoteSentence[] {
  const name = nameActivity(input.catalogue, item.activity, input.person);
  const then = exception.next === null ? "" : `; ${NEXT_WORDS[exception.next]}`;
  return [
    { text: withStop(`${name}: ${whatWasSeen(input, item, exception)}${then}`), from: fromEvents(exception.event) },
  ];
}

function whatWasSeen({ catalogue, person }: NoteInput, item: ItemRecord, exception: SeenException): string {
  const { what, which, howOften, value, gaveWay } = exception;
  const number = value === null ? "" : ` ${value}`;
  switch (what) {
    case "fault": {
      const fault = which === null ? null : (findFault(catalogue, item, which)?.fault ?? spaced(which));
      return `${sayOfPerson(lowerFirst(fault ?? "a fault").replace(/\.$/, ""), person)}, ${times(howOften)}`;
    }
    case "gaveWay":
      return gaveWay === null
        ? `a joint gave way, ${times(howOften)}`
        : `${sayGaveWay(gaveWay, person)}, ${times(howOften)}`;
    case "help":
      return `more help than planned${which === null ? "" : `: ${spaced(which)}`}`;
    case "fewer":
      return value === null ? "fewer repetitions than planned" : `fewer repetitions than planned:${number}`;
    case "more":
      return value === null ? "more repetitions than planned" : `more repetitions than planned:${number}`;
    case "pain":
      return `pain${value === null ? "" : `${number} of 10`}${which === null ? "" : `, ${which}`}`;
    case "exertion":
      return `exertion${value === null ? " high" : `${number} of 10`}`;
    case "refused":
      return `refused${which === null ? "" : `, ${which}`}`;
    case "other":
      return which ?? "something other than planned";
  }
}

/** "The left knee folded". */
export function sayGaveWay({ joint, side, how }: GaveWaySeen, person: Laterality): string {
  const body = side === undefined || joint === "trunk" ? null : bodySideOf(side, person);
  const name = body === null ? joint : `${body === "either" ? side : body} ${joint}`;
  return `the ${name} ${how === undefined ? "gave way" : HOW_WORDS[how]}`;
}

/** Pain and exertion as asked after the sets, the worst of each. */
function sayFelt({ catalogue, person }: NoteInput, item: ItemRecord): readonly NoteSentence[] {
  return (["pain", "exertion"] as const).flatMap((kind) => {
    const told = item.sets.flatMap((set) => (set[kind] === null ? [] : [{ value: set[kind], event: set.event }]));
    if (told.length === 0) return [];
    const worst = Math.max(...told.map(({ value }) => value));
    return [
      {
        text: `${nameActivity(catalogue, item.activity, person)}: ${kind} ${worst} of 10.`,
        from: fromEvents(...told.filter(({ value }) => value === worst).map(({ event }) => event)),
      },
    ];
  });
}

function sayStop({ catalogue, person }: NoteInput, stop: Stop): NoteSentence {
  const at =
    stop.activity === null
      ? ""
      : ` at ${stop.rung === null ? lowerFirst(nameActivity(catalogue, stop.activity, person)) : lowerFirst(nameRung(catalogue, { activity: stop.activity, rung: stop.rung }, person))}`;
  const words = stop.words === null ? "" : `, ${stop.words}`;
  return {
    text: withStop(
      `Stopped${at}: ${STOP_WORDS[stop.because]}${words}${stop.settledBy === null ? "; did not settle" : "; settled, went on"}`,
    ),
    from: fromEvents(stop.event, ...(stop.settledBy === null ? [] : [stop.settledBy])),
  };
}

const HOW_WORDS = { folds: "folded", snapsBack: "snapped back", turns: "turned", drops: "dropped" } as const;
const NEXT_WORDS: Readonly<Record<NextStep, string>> = {
  goOn: "went on",
  rest: "rested",
  rungDown: "one rung down",
  rungUp: "one rung up",
  leaveItem: "the item was not gone on with",
  callTherapist: "the therapist was called",
};
const STOP_WORDS: Readonly<Record<StopReason, string>> = {
  dizziness: "dizzy",
  pain: "pain",
  breath: "short of breath",
  tired: "tired",
  tone: "tone rose",
  fear: "afraid",
  understanding: "did not follow",
  other: "another reason",
  newSign: "a new sign",
};
