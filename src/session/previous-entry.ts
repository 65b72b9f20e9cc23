import type { StopReason } from "./codes.ts";
import type { HelpWord } from "./events.ts";
import type { GaveWaySeen, ItemRecord, SessionState } from "./state.ts";
import { type WorseSeen, worseSeen } from "./worse-seen.ts";

/** One earlier session as the next case file carries it. */
export interface PreviousEntry {
  date?: string;
  items: PreviousEntryItem[];
  stopped?: { because: StopReason };
  nextDay?: { activity?: string; pain?: number; tired?: "no" | "sleptOff" | "stillThere" };
}

export interface PreviousEntryItem {
  activity: string;
  rung: string;
  done: "asPlanned" | "changed" | "notDone";
  sets?: number;
  repetitions?: number;
  help?: HelpWord;
  faults?: string[];
  pain?: number;
  exertion?: number;
  gaveWay?: GaveWaySeen;
  worse?: WorseSeen;
}

/**
 * The session as an entry of `previous[]`: what was done with each item, the faults ticked, the worst pain, the most
 * help. What was not logged is absent. A stop that settled does not count as a stopped session.
 */
export function previousEntry(state: SessionState): PreviousEntry {
  const stop = state.stops.at(-1);
  const { activity, pain, tired } = state.nextDay ?? {};
  return {
    ...(state.startedAt === null ? {} : { date: state.startedAt.slice(0, 10) }),
    items: state.items.map((item) => previousItem(item)),
    ...(stop === undefined || stop.settledBy !== null ? {} : { stopped: { because: stop.because } }),
    ...(state.nextDay === null
      ? {}
      : {
          nextDay: {
            ...(activity === undefined ? {} : { activity }),
            ...(pain === undefined ? {} : { pain }),
            ...(tired === undefined ? {} : { tired }),
          },
        }),
  };
}

function previousItem(item: ItemRecord): PreviousEntryItem {
  const { activity, rung, sets, exceptions } = item;
  const done = howDone(item);
  if (done === "notDone") return { activity, rung, done };
  const faults = [
    ...new Set(exceptions.flatMap(({ what, which }) => (what === "fault" && which !== null ? [which] : []))),
  ];
  const repetitions = fewestRepetitions(item);
  const help = mostHelp(item);
  const pain = worst(item, "pain");
  const exertion = worst(item, "exertion");
  const gaveWay = exceptions.findLast((one) => one.gaveWay !== null)?.gaveWay ?? null;
  const worse = worseSeen(item);
  return {
    activity,
    rung,
    done,
    sets: sets.length,
    ...(repetitions === null ? {} : { repetitions }),
    ...(help === null ? {} : { help }),
    ...(faults.length === 0 ? {} : { faults }),
    ...(pain === null ? {} : { pain }),
    ...(exertion === null ? {} : { exertion }),
    ...(gaveWay === null ? {} : { gaveWay }),
    ...(worse === null ? {} : { worse }),
  };
}

/** As planned: every planned set, and nothing about it was other than planned. */
function howDone({ planned, sets, exceptions, skipped }: ItemRecord): PreviousEntryItem["done"] {
  if (sets.length === 0 && (skipped !== null || exceptions.length === 0)) return "notDone";
  const changing = exceptions.some(
    ({ what, next }) =>
      (what !== "fault" && what !== "pain" && what !== "exertion") || next === "rungDown" || next === "leaveItem",
  );
  const full = planned !== null && sets.length >= planned.sets && sets.every(({ asPlanned }) => asPlanned);
  return full && !changing && skipped === null ? "asPlanned" : "changed";
}

/** Repetitions of the weakest set, as logged; the planned ones where the set went as planned. */
function fewestRepetitions({ planned, sets, exceptions }: ItemRecord): number | null {
  const ofSets = sets.flatMap(
    ({ asPlanned, repetitions }) => repetitions ?? (asPlanned ? (planned?.repetitions ?? []) : []),
  );
  const said = exceptions.flatMap(({ what, value }) =>
    (what === "fewer" || what === "more") && value !== null ? [value] : [],
  );
  const known = [...ofSets, ...said];
  return known.length === 0 ? null : Math.min(...known);
}

const HELP_ORDER: readonly HelpWord[] = [
  "alone",
  "setUp",
  "standBy",
  "touching",
  "minimal",
  "moderate",
  "maximal",
  "dependent",
];

/** The most help any set took; the planned help where all went as planned. */
function mostHelp({ planned, sets, exceptions }: ItemRecord): HelpWord | null {
  const logged = [
    ...sets.flatMap(({ help }) => help ?? []),
    ...exceptions.flatMap(({ what, which }) => (what === "help" ? HELP_ORDER.filter((word) => word === which) : [])),
  ];
  const known = logged.length > 0 ? logged : sets.length > 0 && planned?.help !== undefined ? [planned.help] : [];
  return known.reduce<HelpWord | null>(
    (most, word) => (most === null || HELP_ORDER.indexOf(word) > HELP_ORDER.indexOf(most) ? word : most),
    null,
  );
}

function worst({ sets, exceptions }: ItemRecord, of: "pain" | "exertion"): number | null {
  const values = [
    ...sets.flatMap((set) => set[of] ?? []),
    ...exceptions.flatMap(({ what, value }) => (what === of && value !== null ? [Math.min(10, value)] : [])),
  ];
  return values.length === 0 ? null : Math.max(...values);
}
