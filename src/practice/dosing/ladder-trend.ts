import { helpRank, helps, type LadderDay } from "./judge-ladder.ts";
import { PLATEAU, PLATEAU_KEPT_BY, type PlateauKeptBy, SETBACK } from "./ladder-rules.data.ts";
import { PROGRESSION_FIGURES } from "./progression.data.ts";
import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";

/** One day of a ladder, on whichever rung. */
export interface TrendDay extends LadderDay {
  /** Number of the rung, the easiest 0. */
  readonly rung: number;
  readonly faultIds: readonly string[];
}

/** What several sessions on one ladder show that no single one does. */
export interface LadderTrend {
  readonly what: "plateau" | "setback";
  readonly words: string;
  readonly tryThis: string;
  readonly source: SourceId;
  readonly seen: Seen;
}

/**
 * A plateau (several days on one rung without a step) or a setback (rungs lost), with what to do.
 * @param days the days the ladder was done, oldest first
 * @param stays whether today's rule keeps it on its rung
 * @returns null where there is neither
 */
export function nameTrend(days: readonly TrendDay[], stays: boolean): LadderTrend | null {
  return nameSetback(days) ?? (stays ? namePlateau(days) : null);
}

function nameSetback(days: readonly TrendDay[]): LadderTrend | null {
  const last = days[days.length - 1];
  if (last === undefined) return null;
  const best = days.reduce((most, { rung }) => Math.max(most, rung), 0);
  let downs = 0;
  for (let k = days.length - 1; k > 0 && (days[k]?.rung ?? 0) < (days[k - 1]?.rung ?? 0); k--) downs++;
  const lost = best - last.rung;
  if (lost < SETBACK.rungsLost && downs < SETBACK.downsRunning) return null;
  return {
    what: "setback",
    words: `A setback: ${lost === 1 ? "one rung" : `${lost} rungs`} below the best of before.`,
    tryThis: SETBACK.tryThis,
    source: SETBACK.source,
    seen: SETBACK.seen,
  };
}

function namePlateau(days: readonly TrendDay[]): LadderTrend | null {
  const last = days[days.length - 1];
  if (last === undefined) return null;
  let count = 0;
  for (let k = days.length - 1; k >= 0 && days[k]?.rung === last.rung; k--) count++;
  if (count < PLATEAU.days) return null;
  const latest = days.slice(-count);
  const kept = keptBy(latest);
  const row = PLATEAU_KEPT_BY[kept];
  return {
    what: "plateau",
    words: `A plateau: ${count} sessions on this rung; ${row.keeps === PLATEAU_KEPT_BY.nothing.keeps ? "nothing that was logged keeps it there" : `what keeps it there most is ${row.keeps}`}.`,
    tryThis: row.tryThis,
    source: row.source,
    seen: row.seen,
  };
}

/** What was seen on at least half of those days, the first in this order. */
function keptBy(days: readonly TrendDay[]): PlateauKeptBy {
  const often = (seen: (day: TrendDay) => boolean): boolean => days.filter(seen).length >= PLATEAU.share * days.length;
  if (often(({ pain }) => (pain ?? 0) > 0)) return "pain";
  const faults = new Set(days.flatMap(({ faultIds }) => faultIds));
  if ([...faults].some((id) => often(({ faultIds }) => faultIds.includes(id)))) return "fault";
  if (often(({ exertion }) => (exertion ?? 0) > PROGRESSION_FIGURES.exertionForUp)) return "tired";
  const least = Math.min(...days.flatMap(({ help }) => (help === undefined ? [] : [helpRank(help)])));
  if (often(({ help }) => help !== undefined && helps(help) && helpRank(help) === least)) return "help";
  return often(({ done }) => done === "changed") ? "short" : "nothing";
}
