import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";

interface HeartRateEquation {
  /** Highest rate = atBirth - perYear x age [1/min]. */
  readonly atBirth: number;
  readonly perYear: number;
  readonly population: string;
  readonly source: SourceId;
  readonly seen: Seen;
}

export const HEART_RATE_EQUATIONS = {
  tanaka: { atBirth: 208, perYear: 0.7, population: "healthy adults", source: "tanaka-2001", seen: "read" },
  onBetaBlocker: { atBirth: 164, perYear: 0.7, population: "coronary disease on a beta blocker, 40 to 80 years; standard error 18", source: "brawner-2004", seen: "read" },
} as const satisfies Record<string, HeartRateEquation>;
