import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";

export type DoseForm = "repetitions" | "hold" | "steps";

/** The dose of one kind of work: ranges as printed or proposed, and where in them a first day starts. */
export interface DoseRow {
  /** What kind of work it is, in the trade's words. */
  readonly title: string;
  readonly form: DoseForm;
  readonly sets: readonly [number, number];
  /** Repetitions or steps a set; null for a hold. */
  readonly repetitions: readonly [number, number] | null;
  /** Length of a hold [second]: of each repetition where both are given; null where nothing is held. */
  readonly holdSeconds: readonly [number, number] | null;
  readonly restSeconds: number;
  readonly eachSide: boolean;
  readonly source: SourceId;
  readonly seen: Seen;
  readonly editable: boolean;
  readonly note: string;
}

/** A dose as it is planned. */
export interface Dose {
  readonly kind: DoseForm;
  readonly sets: number;
  readonly repetitions?: number;
  readonly holdSeconds?: number;
  readonly restSeconds: number;
}
