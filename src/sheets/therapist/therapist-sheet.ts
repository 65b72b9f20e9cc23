import { bodySideOf, type Laterality } from "../../quantity/sides.ts";
import type { Activity } from "../../practice/activities/activity.ts";
import { type AssistantBounds, sayBounds } from "../../session/bounds.ts";
import type { Position } from "../../practice/positions/position.ts";
import { findRung, lowerFirst, spaced, upperFirst, withStop } from "../note/rung-words.ts";
import type { Picture, PlannedRung } from "../planned-rung.ts";
import { sayOfPerson } from "../words/body-sides.ts";

export interface TherapistItem extends PlannedRung {
  /** How hard it is, as a sentence: "Hard for the weak hip, but inside what it has." Null where it is not said. */
  readonly effortWords: string | null;
  /** Other than last time: the line is marked. */
  readonly changed: boolean;
  /** How far an assistant may go alone; null where the therapist set no bounds. */
  readonly bounds?: AssistantBounds | null;
}

export interface TherapistSheetInput {
  readonly person: Laterality;
  readonly label: string | null;
  readonly date: string | null;
  readonly dayAfterOnset: number | null;
  /** How the session before is called: "Friday"; null where there is none. */
  readonly lastDay: string | null;
  readonly changes: readonly { readonly change: string; readonly because: string }[];
  /** Why there is no session today, as the plan says it; null where there is one. */
  readonly hold: {
    readonly because: readonly { readonly rule: string; readonly measured: string; readonly limit: string }[];
    readonly whatToDo: string;
  } | null;
  /** The session line for paper, with its words. */
  readonly line: Picture | null;
  readonly items: readonly TherapistItem[];
  readonly catalogue: readonly Activity[];
  readonly positions: readonly Position[];
  readonly picture: (planned: PlannedRung) => Picture | null;
  /** What a therapist would look for and not find, each with why and what serves instead. */
  readonly out: readonly { readonly name: string; readonly because: string; readonly instead: string | null }[];
  /** Limits of today by order or by table: "Pressure over 180 over 100: rest, measure again." */
  readonly limits: readonly string[];
}

export interface TherapistRow {
  readonly picture: Picture | null;
  readonly name: string;
  readonly changed: boolean;
  readonly say: string;
  readonly effort: string | null;
  readonly you: string;
  /** "2 × 8": a box a set. */
  readonly sets: number;
  readonly dose: string;
  /** A box each: "knee falls out". */
  readonly faults: readonly string[];
  /** "From half lift to full lift; at most a touch." */
  readonly bounds: string | null;
}

export interface TherapistSheet {
  readonly title: string;
  readonly label: string;
  readonly date: string | null;
  readonly changes: readonly string[];
  readonly line: Picture | null;
  /** Why not today and what to do, a sentence each; empty where there is a session. */
  readonly hold: readonly string[];
  readonly rows: readonly TherapistRow[];
  readonly stop: string;
  readonly waysOut: readonly string[];
  readonly out: string | null;
  readonly support: string;
}

const SUPPORT = "Decision support: local protocol and the clinician who is licensed decide.";
const STOP =
  "Chest pain, grey or dizzy, short of breath, a new sign of a stroke, a joint that gives way, the weak arm bends up hard and does not let go.";

/** Today on one page for the one who treats: what changed, item by item where to be and what to say, when to stop, the ways out. */
export function makeTherapistSheet(input: TherapistSheetInput): TherapistSheet {
  const { person } = input;
  const say = (text: string): string => sayOfPerson(text, person);
  return {
    title: sayTitle(input),
    label: sayLabel(input),
    date: input.date,
    changes: input.changes.map(({ change, because }) =>
      withStop(`${upperFirst(change).replace(/\.$/, "")} (${lowerFirst(because).replace(/\.$/, "")})`),
    ),
    line: input.line,
    hold: input.hold === null ? [] : sayHold(input.hold),
    rows: input.items.flatMap((item) => makeRow(input, item)),
    stop: say([STOP, ...input.limits].join(" ")),
    waysOut: waysOut(input).map(say),
    out:
      input.out.length === 0
        ? null
        : `Out today: ${input.out.map(({ name, because, instead }) => `${lowerFirst(name)} (${lowerFirst(because).replace(/\.$/, "")}${instead === null ? "" : `; instead ${lowerFirst(instead)}`})`).join(", ")}.`,
    support: SUPPORT,
  };
}

function sayHold({ because, whatToDo }: NonNullable<TherapistSheetInput["hold"]>): readonly string[] {
  return [
    ...because.map(({ rule, measured, limit }) => `${upperFirst(rule)}: ${measured}; limit ${limit}.`),
    withStop(whatToDo),
  ];
}

function sayTitle({ lastDay, changes, hold, items }: TherapistSheetInput): string {
  if (hold !== null) return "Not today";
  if (items.length === 0) return "Nothing to do today";
  if (lastDay === null) return "First session";
  if (changes.length === 0) return `Same as ${lastDay}`;
  return `Same as ${lastDay}, and ${changes.length === 1 ? "one change" : `${NUMBERS[changes.length] ?? changes.length} changes`}`;
}

const NUMBERS = ["no", "one", "two", "three", "four", "five", "six"];

function sayLabel({ label, person, dayAfterOnset }: TherapistSheetInput): string {
  const side = bodySideOf("weak", person);
  return [label, side === "either" ? null : `${side} side weak`, dayAfterOnset === null ? null : `day ${dayAfterOnset}`]
    .filter((part) => part !== null)
    .join(", ");
}

function makeRow({ catalogue, person, picture }: TherapistSheetInput, item: TherapistItem): readonly TherapistRow[] {
  const found = findRung(catalogue, item);
  if (found === null) return [];
  const { activity, rung } = found;
  const say = (text: string): string => sayOfPerson(text, person);
  const hands = rung.helper.hands.map(({ words }) => say(words)).join(" ");
  return [
    {
      picture: picture(item),
      name: say(`${activity.name}: ${lowerFirst(rung.name)}`),
      changed: item.changed,
      say: `“${say(rung.words)}”`,
      effort: item.effortWords === null ? null : withStop(item.effortWords),
      you: `${withStop(say(rung.helper.place))} ${hands}`.trim(),
      sets: item.dose.sets,
      dose: sayDose(item),
      faults: rung.faults.map(({ id }) => say(spaced(id))),
      bounds: item.bounds === undefined || item.bounds === null ? null : say(sayBounds(item.bounds, nameIn(activity))),
    },
  ];
}

const nameIn =
  ({ rungs }: Activity) =>
  (id: string): string =>
    lowerFirst(rungs.find((rung) => rung.id === id)?.name ?? spaced(id));

function sayDose({ dose }: PlannedRung): string {
  const held = dose.holdSeconds === undefined || dose.holdSeconds === 0 ? null : `${dose.holdSeconds} s`;
  if (dose.repetitions === undefined) return held === null ? `${dose.sets} sets` : `${dose.sets} × ${held}`;
  return `${dose.sets} × ${dose.repetitions}${held === null ? "" : `, hold ${held}`}`;
}

/** For every position of the day, once, the first move of the way out in a hurry. */
function waysOut({ items, catalogue, positions }: TherapistSheetInput): readonly string[] {
  const used = new Set(items.map((item) => findRung(catalogue, item)?.activity.position));
  return positions.flatMap(({ id, name, wayOut }) => {
    const first = wayOut.hurry[0];
    return used.has(id) && first !== undefined ? [`${name}: ${withStop(lowerFirst(first))}`] : [];
  });
}
