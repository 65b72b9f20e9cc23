import type { Laterality } from "../../quantity/sides.ts";
import type { Activity } from "../../practice/activities/activity.ts";
import type { PreviousEntry } from "../../session/previous-entry.ts";
import type { SessionState } from "../../session/state.ts";
import { writeDone, writeHelp } from "./done-and-help.ts";
import { writeBefore, writeSaid } from "./said-and-before.ts";
import { writeSeen } from "./seen.ts";
import { writeSinceLast } from "./since-last.ts";
import { suggestJudgement } from "./suggestions.ts";

/** Where a sentence comes from: an event of the session, a field of the plan, or an item of the session before. */
export type Trace =
  | { readonly kind: "event"; readonly id: string }
  | { readonly kind: "plan"; readonly field: string }
  | { readonly kind: "previous"; readonly field: string };

export interface NoteSentence {
  readonly text: string;
  /** Never empty: with what it comes from, the sentence goes. */
  readonly from: readonly Trace[];
}

export const NOTE_LINES = ["said", "before", "done", "help", "seen", "sinceLast"] as const;
export type NoteLineId = (typeof NOTE_LINES)[number];

export interface NoteLine {
  readonly id: NoteLineId;
  readonly label: string;
  readonly sentences: readonly NoteSentence[];
}

export interface NoteInput {
  /** "Case 1, woman, 67"; null where the case has none. */
  readonly label: string | null;
  readonly person: Laterality;
  readonly state: SessionState;
  /** Changes of today's plan against the last session, as the plan gives them. */
  readonly changes: readonly { readonly change: string; readonly because: string }[];
  readonly catalogue: readonly Activity[];
  /** The session before; null for the first. */
  readonly previous: PreviousEntry | null;
  /** How the session before is called: "Friday"; null for "last time". */
  readonly lastDay: string | null;
}

export interface Note {
  readonly label: string | null;
  /** Day of the session, "2026-03-16". */
  readonly date: string | null;
  /** Always the six, in their order. */
  readonly lines: readonly NoteLine[];
  /** The therapist's own words; empty until written. */
  readonly judgement: readonly NoteSentence[];
  /** What may be put into the judgement by hand. It is never part of the note by itself and never signs. */
  readonly suggestions: readonly NoteSentence[];
  readonly signed: { readonly by: string; readonly event: string } | null;
}

/**
 * The treatment note, written from what happened: six lines whose every sentence names the events or fields it comes
 * from. What was not logged is not said. The judgement is the therapist's alone.
 */
export function writeNote(input: NoteInput): Note {
  const { state } = input;
  const last = input.lastDay ?? "last time";
  return {
    label: input.label,
    date: state.startedAt?.slice(0, 10) ?? null,
    lines: [
      { id: "said", label: "Said", sentences: writeSaid(state) },
      { id: "before", label: "Before", sentences: writeBefore(state) },
      { id: "done", label: "Done", sentences: writeDone(input) },
      { id: "help", label: "Help", sentences: writeHelp(input) },
      { id: "seen", label: "Seen", sentences: writeSeen(input) },
      { id: "sinceLast", label: `Since ${last}`, sentences: writeSinceLast(input, last) },
    ],
    judgement: state.judgements.map(({ id, words }) => ({ text: words, from: [{ kind: "event", id }] })),
    suggestions: suggestJudgement(input),
    signed: state.signed === null ? null : { by: state.signed.by, event: state.signed.id },
  };
}

/** Why a note cannot be signed yet; null where it can. */
export function refuseSigning(note: Note): string | null {
  if (note.signed !== null) return `Already signed by ${note.signed.by}.`;
  if (note.judgement.length === 0)
    return "Your judgement is still to be written: what changed, why it matters, what comes next.";
  return null;
}

export const fromEvents = (...ids: readonly string[]): readonly Trace[] =>
  [...new Set(ids)].map((id) => ({ kind: "event", id }));
