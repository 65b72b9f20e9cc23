import { HELP_LEVELS, helpRank } from "../practice/dosing/judge-ladder.ts";
import { WORSENING_CALL, WORSENING_FIGURES, WORSENING_RULES } from "../practice/dosing/worsening.data.ts";
import { LADDER_FIGURES } from "../practice/dosing/ladder-rules.data.ts";
import { ACTIVITIES } from "../practice/catalogue.ts";
import type { Hold, HoldReason } from "../practice/precautions/holds.ts";
import type { Findings, PreviousItem, PreviousSession } from "./findings.ts";

/**
 * Whether the person was suddenly worse at the last session than at the one before: then nothing starts until somebody
 * has looked. A person already looked at (`checkedBy`) goes on.
 * @returns the hold with whom to call; null where nothing speaks for it
 */
export function judgeWorsening({ previous }: Pick<Findings, "previous">): Hold | null {
  const last = previous[previous.length - 1];
  if (last === undefined || last.checkedBy !== undefined) return null;
  const because: HoldReason[] = [];
  if (last.stopped?.because === "newSign")
    because.push(reason("newSign", `The last session was stopped for a new sign${on(last)}.`));
  const worse = worseLadders(previous.slice(0, -1), last);
  if (worse.length >= WORSENING_FIGURES.ladders)
    because.push(reason("severalLadders", `Worse than the time before${on(last)}: ${worse.join("; ")}.`));
  return because.length === 0 ? null : { because, whatToDo: WORSENING_CALL };
}

function reason(id: keyof typeof WORSENING_RULES, measured: string): HoldReason {
  const { rule, limit, source } = WORSENING_RULES[id];
  return { rule, measured, limit, source };
}

const on = ({ date }: PreviousSession): string => (date === null ? "" : ` (${date})`);

/** Ladders that stood by themselves the time before and needed clearly more help, or gave way, on no higher a rung. */
function worseLadders(before: readonly PreviousSession[], last: PreviousSession): string[] {
  return last.items.flatMap((item) => {
    const earlier = before.flatMap(({ items }) => items).findLast((each) => sameLadder(each, item));
    if (earlier === undefined || earlier.gaveWay !== null || isHigher(item, earlier)) return [];
    const free = rankOf(earlier);
    if (free === null || free >= helpRank(LADDER_FIGURES.handsOnFrom)) return [];
    const name = ACTIVITIES.find(({ id }) => id === item.activity)?.name.toLowerCase() ?? item.activity;
    if (item.gaveWay !== null)
      return [
        `${name}: the ${item.gaveWay.side === null ? "" : `${item.gaveWay.side} `}${item.gaveWay.joint} gave way`,
      ];
    const now = rankOf(item);
    if (item.done === "notDone" || now === null || now < helpRank(LADDER_FIGURES.handsOnFrom)) return [];
    return now - free < WORSENING_FIGURES.helpSteps ? [] : [`${name}: ${item.help} help, before ${earlier.help}`];
  });
}

const sameLadder = (earlier: PreviousItem, item: PreviousItem): boolean =>
  earlier.activity === item.activity && earlier.done !== "notDone";

/** A rung higher up asks more: needing help there is no worsening. */
function isHigher(item: PreviousItem, earlier: PreviousItem): boolean {
  const rungs = ACTIVITIES.find(({ id }) => id === item.activity)?.rungs ?? [];
  const place = (rung: string): number => rungs.findIndex(({ id }) => id === rung);
  return place(item.rung) > place(earlier.rung);
}

function rankOf({ help }: PreviousItem): number | null {
  const level = HELP_LEVELS.find((each) => each === help);
  return level === undefined ? null : helpRank(level);
}
