import type { SourceId } from "../../sources/bibliography.ts";
import { PROGRESSION_FIGURES as FIGURES, PROGRESSION_RULES } from "./progression.data.ts";

/** One day's log of one rung. What is absent was not entered. */
export interface LoggedDay {
  readonly done: "asPlanned" | "changed" | "notDone";
  readonly sets?: number;
  readonly repetitions?: number;
  /** Faults ticked; those that ask for a step down are marked. */
  readonly faults: readonly { readonly stepDown: boolean }[];
  readonly poorInARow?: number;
  /** 0 to 10. */
  readonly pain?: number;
  /** 0 to 10. */
  readonly exertion?: number;
  readonly gaveWay?: boolean;
}

/** The dose the days were planned with; a smaller planned dose is judged by itself. */
export interface PlannedDose {
  readonly sets: number;
  readonly repetitions?: number;
}

export interface LadderStep {
  readonly step: "up" | "stay" | "down";
  readonly because: string;
  readonly source: SourceId;
}

/**
 * One rung up, the same, or one rung down, from how the last days went. Down looks at the last day; up needs two good
 * days running; everything else stays.
 *
 * @param days the days this rung was done, oldest first.
 * @param planned the dose of the rung; two sets of about eight where it is not given.
 */
export function judgeLadderStep(days: readonly LoggedDay[], planned: PlannedDose = { sets: FIGURES.sets }): LadderStep {
  const last = days[days.length - 1];
  if (last === undefined) return stay("Not done before.");
  const down = reasonDown(last);
  if (down !== null)
    return { step: "down", because: PROGRESSION_RULES[down].rule, source: PROGRESSION_RULES[down].source };
  const latest = days.slice(-FIGURES.daysRunning);
  if (latest.length === FIGURES.daysRunning && latest.every((day) => isGoodDay(day, planned)))
    return { step: "up", because: PROGRESSION_RULES.upTwoDays.rule, source: PROGRESSION_RULES.upTwoDays.source };
  return isGoodDay(last, planned)
    ? stay("One good day; one more before the next rung.")
    : stay("Not yet two sets of about eight with at most one fault.");
}

function stay(because: string): LadderStep {
  return { step: "stay", because, source: "common-practice" };
}

/** What on one day asks for a rung down; null where nothing does. */
export function reasonDown(day: LoggedDay): "downGaveWay" | "downPoorInARow" | "downPain" | "downTooHard" | null {
  if (day.gaveWay === true) return "downGaveWay";
  if ((day.pain ?? 0) >= FIGURES.painAtLeast) return "downPain";
  const steppingDown = day.faults.filter(({ stepDown }) => stepDown).length;
  if ((day.poorInARow ?? 0) >= FIGURES.poorInARow || steppingDown >= FIGURES.poorInARow) return "downPoorInARow";
  return (day.exertion ?? 0) >= FIGURES.exertionTooHard ? "downTooHard" : null;
}

/** "As planned" counts as the full dose where no number was entered. */
function isGoodDay(day: LoggedDay, planned: PlannedDose): boolean {
  const full =
    day.done === "asPlanned" || (day.done === "changed" && day.sets !== undefined && day.repetitions !== undefined);
  return (
    full &&
    (day.sets ?? FIGURES.sets) >= Math.min(FIGURES.sets, planned.sets) &&
    (day.repetitions ?? FIGURES.aboutRepetitions) >=
      Math.min(FIGURES.aboutRepetitions, planned.repetitions ?? FIGURES.aboutRepetitions) &&
    day.faults.length <= FIGURES.faultsAtMost &&
    (day.pain ?? 0) < FIGURES.painAtLeast &&
    (day.exertion ?? 0) <= FIGURES.exertionForUp
  );
}
