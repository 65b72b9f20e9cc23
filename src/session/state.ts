import type { ExceptionKind, NextStep, StopReason } from "./codes.ts";
import type { EventOf, HelpWord, PlannedItem } from "./events.ts";

export interface GaveWaySeen {
  readonly joint: "shoulder" | "elbow" | "wrist" | "trunk" | "hip" | "knee" | "ankle";
  readonly side?: "weak" | "strong";
  readonly how?: "folds" | "snapsBack" | "turns" | "drops";
}

/** What was other than planned, with the event it comes from. */
export interface SeenException {
  readonly event: string;
  readonly what: ExceptionKind;
  readonly which: string | null;
  readonly howOften: number;
  readonly value: number | null;
  readonly gaveWay: GaveWaySeen | null;
  readonly next: NextStep | null;
}

/** One rung of the session: what was asked, what was done. */
export interface ItemRecord {
  readonly activity: string;
  readonly rung: string;
  /** Null for a rung that was not in the plan. */
  readonly planned: PlannedItem | null;
  readonly sets: readonly {
    readonly event: string;
    readonly asPlanned: boolean;
    readonly repetitions: number | null;
    readonly help: HelpWord | null;
    readonly pain: number | null;
    readonly exertion: number | null;
  }[];
  readonly exceptions: readonly SeenException[];
  readonly skipped: { readonly event: string; readonly because: string } | null;
}

export type Phase = "notStarted" | "running" | "stopped" | "signed";

export interface Stop {
  readonly event: string;
  readonly because: StopReason;
  readonly at: string;
  readonly activity: string | null;
  readonly rung: string | null;
  readonly words: string | null;
  /** The event that says it settled; null while it has not. */
  readonly settledBy: string | null;
}

/** All that one session's events add up to; enough to go on after a reload. */
export interface SessionState {
  readonly session: string | null;
  readonly person: string | null;
  readonly plan: string | null;
  readonly startedAt: string | null;
  readonly lastAt: string | null;
  /** Knowledge the session was started with. */
  readonly knowledge: string | null;
  readonly phase: Phase;
  readonly items: readonly ItemRecord[];
  /** The item that comes next and the number of its set from 1; null where nothing is open. */
  readonly next: { readonly activity: string; readonly rung: string; readonly set: number } | null;
  readonly vitals: readonly EventOf<"vitalSigns">[];
  readonly stops: readonly Stop[];
  readonly said: readonly EventOf<"said">[];
  readonly judgements: readonly EventOf<"judgement">[];
  readonly incidents: readonly EventOf<"incident">[];
  readonly calls: readonly EventOf<"therapistCalled">[];
  /** The last report of the day after; null where none was taken. */
  readonly nextDay: EventOf<"nextDay"> | null;
  readonly signed: EventOf<"signed"> | null;
  /** Events that a later one took back. */
  readonly undone: readonly string[];
  readonly nextSequence: number;
}
