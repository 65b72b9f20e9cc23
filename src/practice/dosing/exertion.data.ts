import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";

interface ExertionRow {
  readonly what: string;
  readonly scale: "6-20" | "0-10";
  readonly from: number;
  readonly to: number;
  readonly source: SourceId;
  readonly seen: Seen;
}

/** How hard it should feel. The two scales are not exchangeable: what was asked is stored with the answer. */
export const EXERTION = {
  training: { what: "training after a stroke", scale: "6-20", from: 11, to: 14, source: "billinger-2014", seen: "read" },
  early: { what: "first days in hospital", scale: "6-20", from: 6, to: 11, source: "aha-early-phase", seen: "memory" },
  trainingZeroToTen: { what: "training, asked on the short scale", scale: "0-10", from: 3, to: 5, source: "judgement", seen: "judgement" },
  tooHardZeroToTen: { what: "too hard, asked on the short scale", scale: "0-10", from: 7, to: 10, source: "judgement", seen: "judgement" },
} as const satisfies Record<string, ExertionRow>;

/** Walking and cycling for the heart. The figures are printed; a target is always an estimate. */
export const AEROBIC = {
  heartRateReserve: { from: 0.4, to: 0.7, source: "billinger-2014", seen: "read" },
  daysPerWeek: { from: 3, to: 5, source: "billinger-2014", seen: "read" },
  minutes: { from: 20, to: 60, source: "billinger-2014", seen: "read" },
  boutMinutes: { from: 10, to: 10, source: "billinger-2014", seen: "read" },
} as const satisfies Record<string, { readonly from: number; readonly to: number; readonly source: SourceId; readonly seen: Seen }>;
