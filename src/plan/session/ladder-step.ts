import type { Activity } from "../../practice/activities/activity.ts";
import { judgeLadderStep, type LoggedDay } from "../../practice/dosing/progression.ts";
import type { SourceId } from "../../sources/bibliography.ts";
import type { Findings, PreviousItem } from "../findings.ts";

/** Where a ladder goes today by what was logged on it. */
export interface LadderStepToday {
  readonly step: "up" | "stay" | "down";
  /** Rung of the last time, and of today, by number. */
  readonly last: number;
  readonly today: number;
  readonly because: string;
  readonly source: SourceId;
}

/** The step of one ladder from its log; null where it was never logged. */
export function stepOnLadder(findings: Findings, activity: Activity): LadderStepToday | null {
  const logged = findings.previous.flatMap((session) => session.items.filter((item) => item.activity === activity.id));
  const lastItem = logged[logged.length - 1];
  if (lastItem === undefined) return null;
  const last = activity.rungs.findIndex((rung) => rung.id === lastItem.rung);
  const rung = activity.rungs[last];
  if (rung === undefined) return null;
  const days = logged.filter((item) => item.rung === rung.id).map((item) => readDay(item, activity));
  const { step, because, source } = judgeLadderStep(days, {
    sets: rung.dose.sets,
    ...(rung.dose.repetitions === undefined ? {} : { repetitions: rung.dose.repetitions }),
  });
  const today =
    step === "up" ? Math.min(last + 1, activity.rungs.length - 1) : step === "down" ? Math.max(last - 1, 0) : last;
  return { step, last, today, because, source };
}

function readDay(item: PreviousItem, activity: Activity): LoggedDay {
  const rung = activity.rungs.find((each) => each.id === item.rung);
  return {
    done: item.done,
    ...(item.sets === null ? {} : { sets: item.sets }),
    ...(item.repetitions === null ? {} : { repetitions: item.repetitions }),
    faults: item.faults.map((id) => ({ stepDown: rung?.faults.find((fault) => fault.id === id)?.stepDown ?? false })),
    ...(item.pain === null ? {} : { pain: item.pain }),
    ...(item.exertion === null ? {} : { exertion: item.exertion }),
    gaveWay: item.gaveWay !== null,
  };
}
