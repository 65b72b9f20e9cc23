import { ASSISTANCE } from "../practice/handling/assistance.data.ts";
import type { HelpWord, PlannedItem } from "./events.ts";
import type { SessionState } from "./state.ts";

/** How far an assistant may go with one item without asking, as the therapist set it. What is absent is not bounded. */
export type AssistantBounds = NonNullable<PlannedItem["bounds"]>;

/** Bounds as they are written down: for one ladder, or for the whole plan where no ladder is named. */
export interface WrittenBounds {
  readonly activity?: string | undefined;
  readonly fromRung?: string | undefined;
  readonly toRung?: string | undefined;
  readonly mostHelp?: HelpWord | undefined;
  /** Signs at which the item is left, in the therapist's words. */
  readonly stopIf?: readonly string[] | undefined;
  readonly by?: string | undefined;
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

/** The bounds of one ladder: its own, with the whole plan's where it has none; stop signs of both. Null where nothing is bounded. */
export function boundsOf(written: readonly WrittenBounds[], activity: string): AssistantBounds | null {
  const own = written.find((each) => each.activity === activity);
  const whole = written.find((each) => each.activity === undefined);
  const mostHelp = own?.mostHelp ?? whole?.mostHelp;
  const stopIf = [...new Set([...(own?.stopIf ?? []), ...(whole?.stopIf ?? [])])];
  const bounds: AssistantBounds = {
    ...(own?.fromRung === undefined ? {} : { fromRung: own.fromRung }),
    ...(own?.toRung === undefined ? {} : { toRung: own.toRung }),
    ...(mostHelp === undefined ? {} : { mostHelp }),
    ...(stopIf.length === 0 ? {} : { stopIf }),
  };
  return Object.keys(bounds).length === 0 ? null : bounds;
}

/** Whether a rung lies below or above the bounds of its ladder. @param ladder its rungs, the easiest first */
export function rungOutOf(
  bounds: AssistantBounds | null | undefined,
  ladder: readonly string[],
  rung: string,
): "below" | "above" | null {
  if (bounds === null || bounds === undefined) return null;
  const at = ladder.indexOf(rung);
  const from = bounds.fromRung === undefined ? -1 : ladder.indexOf(bounds.fromRung);
  const to = bounds.toRung === undefined ? -1 : ladder.indexOf(bounds.toRung);
  if (at < 0) return null;
  if (from >= 0 && at < from) return "below";
  return to >= 0 && at > to ? "above" : null;
}

/** Whether so much help is more than may be given without calling. */
export function helpOutOf(bounds: AssistantBounds | null | undefined, help: HelpWord): boolean {
  const most = bounds?.mostHelp;
  return most !== undefined && LEAST_FIRST.indexOf(help) > LEAST_FIRST.indexOf(most);
}

/** Whether the therapist was called about this ladder in this session and let it go on. */
export function liftedBy(state: SessionState, activity: string): boolean {
  return state.calls.some((call) => call.activity === activity && call.allowed === true);
}

/** The bounds in one line for screen and paper: "From half lift to full lift; at most a touch; stop if the knee shakes." */
export function sayBounds(bounds: AssistantBounds, nameOfRung: (rung: string) => string): string {
  const { fromRung, toRung, mostHelp, stopIf } = bounds;
  const rungs =
    fromRung !== undefined && toRung !== undefined
      ? fromRung === toRung
        ? `only ${nameOfRung(fromRung)}`
        : `from ${nameOfRung(fromRung)} to ${nameOfRung(toRung)}`
      : fromRung !== undefined
        ? `not below ${nameOfRung(fromRung)}`
        : toRung !== undefined
          ? `not above ${nameOfRung(toRung)}`
          : null;
  const parts = [
    rungs,
    mostHelp === undefined ? null : `at most ${ASSISTANCE[mostHelp].words}`,
    stopIf === undefined ? null : `stop if ${stopIf.join(", or if ")}`,
  ].filter((part) => part !== null);
  const line = parts.join("; ");
  return `${line.charAt(0).toUpperCase()}${line.slice(1)}. Beyond that, call the therapist.`;
}
