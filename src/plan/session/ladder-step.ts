import { type Absence, HELP_LEVELS, judgeLadder, type LadderDay } from "../../practice/dosing/judge-ladder.ts";
import type { LadderRuleId } from "../../practice/dosing/ladder-rules.data.ts";
import { type LadderTrend, nameTrend, type TrendDay } from "../../practice/dosing/ladder-trend.ts";
import type { Activity } from "../../practice/activities/activity.ts";
import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";
import type { Findings, PreviousItem, PreviousSession } from "../findings.ts";

/** Where a ladder goes today by what was logged on it. */
export interface LadderStepToday {
  readonly step: "up" | "stay" | "down";
  /** The rule that decided, and what is done then. */
  readonly rule: LadderRuleId;
  readonly whatToDo: string;
  /** Rung of the last time, and of today, by number. */
  readonly last: number;
  readonly today: number;
  readonly because: string;
  readonly source: SourceId;
  readonly seen: Seen;
  readonly trend: LadderTrend | null;
}

const DAY_MILLISECONDS = 86_400_000;

/** The step of one ladder from its log; null where it was never logged. */
export function stepOnLadder(findings: Findings, activity: Activity): LadderStepToday | null {
  const entries = findings.previous.flatMap((session) =>
    session.items.filter((item) => item.activity === activity.id).map((item) => ({ session, item })),
  );
  const lastItem = entries[entries.length - 1]?.item;
  if (lastItem === undefined) return null;
  const last = activity.rungs.findIndex((rung) => rung.id === lastItem.rung);
  const rung = activity.rungs[last];
  if (rung === undefined) return null;
  const days = entries
    .filter(({ item }) => item.rung === rung.id)
    .map(({ session, item }) => readDay(session, item, activity));
  const judged = judgeLadder(
    days,
    {
      sets: rung.dose.sets,
      ...(rung.dose.repetitions === undefined ? {} : { repetitions: rung.dose.repetitions }),
    },
    absenceFrom(findings, activity.id),
  );
  const top = activity.rungs.length - 1;
  const today = judged.step === "up" ? Math.min(last + 1, top) : judged.step === "down" ? Math.max(last - 1, 0) : last;
  const done = entries.flatMap(({ session, item }): TrendDay[] => {
    const at = activity.rungs.findIndex((each) => each.id === item.rung);
    if (at < 0 || item.done === "notDone") return [];
    return [{ ...readDay(session, item, activity), rung: at, faultIds: item.faults }];
  });
  return { ...judged, last, today, trend: nameTrend(done, judged.step === "stay" || today === last) };
}

function readDay(session: PreviousSession, item: PreviousItem, activity: Activity): LadderDay {
  const rung = activity.rungs.find((each) => each.id === item.rung);
  const help = HELP_LEVELS.find((each) => each === item.help);
  const { nextDay } = session;
  return {
    done: item.done,
    ...(item.sets === null ? {} : { sets: item.sets }),
    ...(item.repetitions === null ? {} : { repetitions: item.repetitions }),
    faults: item.faults.map((id) => ({ stepDown: rung?.faults.find((fault) => fault.id === id)?.stepDown ?? false })),
    ...(item.pain === null ? {} : { pain: item.pain }),
    ...(item.exertion === null ? {} : { exertion: item.exertion }),
    gaveWay: item.gaveWay !== null,
    ...(help === undefined ? {} : { help }),
    ...(nextDay === undefined || !concerns(session, item)
      ? {}
      : {
          nextDay: {
            ...(nextDay.pain === null ? {} : { pain: nextDay.pain }),
            stillTired: nextDay.tired === "stillThere",
          },
        }),
  };
}

/** A report of the day after that names no ladder is about those that were felt hardest, or all where nobody said. */
function concerns(session: PreviousSession, item: PreviousItem): boolean {
  if (session.nextDay?.activity !== undefined && session.nextDay.activity !== null)
    return session.nextDay.activity === item.activity;
  const felt = session.items.flatMap(({ exertion }) => exertion ?? []);
  return felt.length === 0 || item.exertion === Math.max(...felt);
}

/** How long the person, or this ladder, was missed before today. */
export function absenceFrom(findings: Findings, activity: string): Absence {
  let missedInARow = 0;
  for (const session of [...findings.previous].reverse()) {
    const own = session.items.filter((item) => item.activity === activity);
    // An empty entry says nothing, unless the session was stopped before anything was done.
    if (session.items.length === 0 && session.stopped === null) continue;
    const nothing = session.items.every(({ done }) => done === "notDone");
    if (!nothing && (own.length === 0 || own.some(({ done }) => done !== "notDone"))) break;
    missedInARow++;
  }
  return { missedInARow, daysAway: daysAway(findings) };
}

function daysAway({ date, previous }: Findings): number | null {
  const last = previous.findLast(({ items }) => items.some(({ done }) => done !== "notDone"))?.date ?? null;
  if (date === null || last === null) return null;
  const days = Math.round((Date.parse(date) - Date.parse(last)) / DAY_MILLISECONDS);
  return Number.isFinite(days) && days >= 0 ? days : null;
}
