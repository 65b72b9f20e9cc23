import type { FatigueRates } from "./rates.ts";

/** One item as a muscle group feels it: so many holds at a share of its fresh maximum, rests between, and a rest after. */
export interface Bout {
  /** Moment over fresh greatest moment. */
  readonly share: number;
  readonly repetitions: number;
  /** Each hold, and the rest after it [s]. */
  readonly hold: number;
  readonly rest: number;
  /** Rest after the whole item, more than `rest` [s]. */
  readonly restAfter: number;
}

/** A repetition at its end. */
export interface RepetitionEnd {
  readonly bout: number;
  readonly repetition: number;
  /** Part of the muscle that is tired. */
  readonly tired: number;
  /** What the hold asks of the part that is not: 1 means that it gives way. */
  readonly effort: number;
}
export interface Tiring {
  readonly repetitions: readonly RepetitionEnd[];
  /** The first that cannot be held to its end; null where all can. */
  readonly givesWay: RepetitionEnd | null;
  /** The hardest moment of all, wherever it comes: the last repetition of the last item counts as much as the first. */
  readonly hardest: RepetitionEnd | null;
  /** Tired part after the last rest. */
  readonly left: number;
}

/**
 * How tired a muscle group becomes over the items of a session, hold by hold. A group that other items spare rests
 * meanwhile: give that time as `restAfter`.
 * @returns every repetition's end; stops at the first that gives way
 */
export function tireOver(rates: FatigueRates, bouts: readonly Bout[], start = 0): Tiring {
  const repetitions: RepetitionEnd[] = [];
  let hardest: RepetitionEnd | null = null;
  let tired = start;
  for (const [bout, { share, repetitions: count, hold, rest, restAfter }] of bouts.entries()) {
    for (let repetition = 1; repetition <= count; repetition++) {
      tired = whileHolding(rates, share, tired, hold);
      const fresh = 1 - tired;
      const end = { bout, repetition, tired, effort: fresh > 0 ? share / fresh : Number.MAX_VALUE };
      repetitions.push(end);
      if (hardest === null || end.effort > hardest.effort) hardest = end;
      if (end.effort >= 1) return { repetitions, givesWay: end, hardest, left: tired };
      tired = whileResting(rates, tired, rest);
    }
    tired = whileResting(rates, tired, restAfter);
  }
  return { repetitions, givesWay: null, hardest, left: tired };
}

/**
 * Shortest rest between repetitions after which the last one still asks no more than allowed of what is not tired [s].
 * @returns null where no rest up to ten minutes does it
 */
export function leastRest(rates: FatigueRates, bout: Omit<Bout, "rest" | "restAfter">, allowed: number): number | null {
  const worst = (rest: number): number => tireOver(rates, [{ ...bout, rest, restAfter: 0 }]).hardest?.effort ?? 0;
  if (worst(0) <= allowed) return 0;
  if (worst(LONGEST_REST) > allowed) return null;
  let short = 0;
  let long = LONGEST_REST;
  for (let k = 0; k < 40; k++) {
    const middle = (short + long) / 2;
    if (worst(middle) <= allowed) long = middle;
    else short = middle;
  }
  return long;
}
const LONGEST_REST = 600;

/** Most repetitions before one asks more than allowed of what is not tired; at most a hundred. */
export function mostRepetitions(
  rates: FatigueRates,
  bout: Omit<Bout, "repetitions" | "restAfter">,
  allowed: number,
): number {
  const { repetitions } = tireOver(rates, [{ ...bout, repetitions: 100, restAfter: 0 }]);
  const over = repetitions.findIndex((each) => each.effort > allowed);
  return over === -1 ? repetitions.length : over;
}

function whileHolding({ fatigue, recovery }: FatigueRates, share: number, tired: number, seconds: number): number {
  const level = (fatigue * share) / recovery;
  return level + (tired - level) * Math.exp(-recovery * seconds);
}
function whileResting({ recovery, restTimes }: FatigueRates, tired: number, seconds: number): number {
  return tired * Math.exp(-recovery * restTimes * seconds);
}
