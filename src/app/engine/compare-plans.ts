import type { PlannedItem } from "../../plan/session/session-plan.ts";
import { positionRow } from "../../plan/session/session-plan.ts";
import { ALL_PURPOSES, PURPOSE_WORDS } from "../../plan/session/needs.ts";
import type { PurposeId } from "../../practice/codes.ts";
import type { Comparison } from "../contract/argument.ts";
import type { SolvedSession } from "./plan-session.ts";
import { lowerFirst } from "./words.ts";

/** Two solved sessions side by side: what is in one and not in the other, why, and what the second costs and spares. */
export function comparePlans(first: SolvedSession, second: SolvedSession): Comparison {
  const one = first.session?.items ?? [];
  const two = second.session?.items ?? [];
  const has = (items: readonly PlannedItem[], item: PlannedItem) =>
    items.some((each) => each.today.rung === item.today.rung);
  const went = one.filter((item) => !has(two, item));
  const came = two.filter((item) => !has(one, item));
  const same = one.filter((item) => has(two, item));
  return {
    sentence: sentenceOf(one, two, went, came, first, second),
    same: same.map(named),
    onlyFirst: went.map((item) => ({ ...named(item), because: whyGone(item, second) })),
    onlySecond: came.map((item) => ({ ...named(item), because: whyCome(item, first) })),
    cost: costOf(first, second),
  };
}

const nameOf = ({ today }: PlannedItem): string => `${today.activity.name}, ${lowerFirst(today.rung.name)}`;
const named = (item: PlannedItem) => ({
  activity: item.today.activity.id,
  rung: item.today.rung.id,
  name: nameOf(item),
});

function sentenceOf(
  one: readonly PlannedItem[],
  two: readonly PlannedItem[],
  went: readonly PlannedItem[],
  came: readonly PlannedItem[],
  first: SolvedSession,
  second: SolvedSession,
): string {
  if (two.length === 0 && one.length === 0) return "Nothing is planned in either.";
  if (two.length === 0)
    return second.clash.length > 0
      ? `No session keeps to that: ${second.clash.join("; ")} do not go together.`
      : "No session keeps to that.";
  if (one.length === 0) return "Now a session can be planned.";
  const list = (items: readonly PlannedItem[]) => items.map(nameOf).join("; ");
  const parts = [
    ...(came.length > 0 ? [`Comes in: ${list(came)}.`] : []),
    ...(went.length > 0 ? [`Goes out: ${list(went)}.`] : []),
  ];
  if (parts.length > 0) return parts.join(" ");
  const order = (items: readonly PlannedItem[]) => items.map((item) => item.today.rung.id).join();
  const leading = two[0];
  if (leading !== undefined && order(one) !== order(two))
    return `The same items in another order; ${lowerFirst(nameOf(leading))} comes first.`;
  return first.session?.minutes === second.session?.minutes && dosesOf(one) === dosesOf(two)
    ? "Nothing changes."
    : "The same items, in other doses.";
}

const dosesOf = (items: readonly PlannedItem[]): string =>
  items.map(({ dose }) => `${dose.sets} ${dose.repetitions ?? ""} ${dose.holdSeconds ?? ""}`).join();

/** Why an item of the first is not in the second: out for the person as they then stand, unasked for, or outweighed. */
function whyGone(item: PlannedItem, second: SolvedSession): string {
  const { activity, rung } = item.today;
  const then = second.person.rung({ activity: activity.id, rung: rung.id });
  if (second.person.hold !== null) return "The session is on hold.";
  if (then !== undefined && !then.eligible) return then.out[0]?.detail ?? "It is out.";
  const { locks } = second.built.problem;
  if (locks.leaveOut.includes(`${activity.id}/${rung.id}`)) return "It was asked to be left out.";
  if (locks.barPositions.includes(activity.position))
    return `${positionRow(activity.position).name} is kept out of the session.`;
  const other = second.session?.items.find((each) => each.today.activity === activity);
  if (other !== undefined)
    return `Another rung of the same ladder takes its place: ${lowerFirst(other.today.rung.name)}.`;
  if (second.session === null) return "No session keeps to everything that was asked.";
  const position = second.session.items.some((each) => each.today.activity.position === activity.position);
  return position
    ? "The minutes and the strength go further with something else."
    : `The session does not go to ${lowerFirst(positionRow(activity.position).name)} any more.`;
}

function whyCome(item: PlannedItem, first: SolvedSession): string {
  const { activity, rung } = item.today;
  const before = first.person.rung({ activity: activity.id, rung: rung.id });
  if (before !== undefined && !before.eligible) return item.today.mind[0]?.detail ?? "It is open now.";
  return item.because[0] ?? activity.purposeWords;
}

/** What the second costs and spares against the first, in words: purposes, minutes, moves, the helper's knees and changes, changes since last time. */
function costOf(first: SolvedSession, second: SolvedSession): string[] {
  const one = first.session;
  const two = second.session;
  if (two === null) return one === null ? [] : ["The whole session."];
  if (one === null) return [];
  const lines: string[] = [];
  const served = (session: NonNullable<SolvedSession["session"]>) =>
    new Set(session.items.flatMap(({ today }) => purposesOf(today.rung.trains)));
  const words = (ids: readonly PurposeId[]) => ids.map((id) => PURPOSE_WORDS[id]).join(", ");
  const lost = [...served(one)].filter((id) => !served(two).has(id));
  const won = [...served(two)].filter((id) => !served(one).has(id));
  if (lost.length > 0) lines.push(`Nothing trains ${words(lost)} any more.`);
  if (won.length > 0) lines.push(`It now trains ${words(won)}.`);
  const measures: readonly (readonly [number, string, string])[] = [
    [two.items.length - one.items.length, "item", "items"],
    [workOf(two) - workOf(one), "minute of work", "minutes of work"],
    [two.minutes - one.minutes, "minute in all", "minutes in all"],
    [two.moves.length - one.moves.length, "move between positions", "moves between positions"],
    [kneelsOf(two) - kneelsOf(one), "kneeling down for the helper", "times kneeling down for the helper"],
    [
      two.helperMoves.length - one.helperMoves.length,
      "change of place for the helper",
      "changes of place for the helper",
    ],
  ];
  for (const [difference, single, many] of measures)
    if (difference !== 0)
      lines.push(
        `${Math.abs(difference)} ${difference > 0 ? "more" : "fewer"} ${Math.abs(difference) === 1 ? single : many}.`,
      );
  const end = two.wayBack?.from;
  if (end !== undefined && one.wayBack?.from !== end) lines.push(`It ends in ${lowerFirst(positionRow(end).name)}.`);
  return lines;
}

const purposesOf = (trains: Readonly<Partial<Record<PurposeId, number>>>): PurposeId[] =>
  ALL_PURPOSES.filter((id) => (trains[id] ?? 0) > 0);
type Unfolded = NonNullable<SolvedSession["session"]>;
const workOf = (session: Unfolded): number => session.items.reduce((sum, item) => sum + item.minutes, 0);
const kneelsOf = (session: Unfolded): number =>
  session.moves.reduce((sum, { transition }) => sum + transition.kneelDowns, 0);
