import type { CaseFile } from "../../contract/case-file.ts";
import type { Fault } from "../../contract/faults.ts";
import type { PlanAnswer } from "../../contract/plan-answer.ts";
import type { Engine } from "../../engine/engine.ts";
import type { SessionEvent } from "../../../session/events.ts";
import type { PreviousEntry } from "../../../session/previous-entry.ts";
import type { Note } from "../../../sheets/note/note.ts";

/** A case read from text: whole, or every fault of it at once. */
export type ReadCase =
  | { readonly ok: true; readonly value: CaseFile; readonly warnings: readonly Fault[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** What to do in one kind of emergency. */
export interface EmergencyCard {
  readonly id: string;
  readonly title: string;
  readonly looksLike: string;
  readonly steps: readonly string[];
  readonly callWhen: string;
  readonly note: string;
}

/** Codes of the findings with the words the trade has for them. */
export interface FindingWords {
  readonly precautions: readonly { readonly id: string; readonly title: string }[];
  readonly medicines: readonly { readonly id: string; readonly title: string }[];
}

export interface NoteQuestion {
  readonly caseFile: CaseFile;
  readonly events: readonly SessionEvent[];
  readonly changes: readonly { readonly change: string; readonly because: string }[];
  readonly previous: PreviousEntry | null;
  readonly lastDay: string | null;
}

export interface WrittenNote {
  readonly note: Note;
  readonly text: string;
  readonly refusal: string | null;
}

/** Questions about words and files, answered beside the page like those to the computing side. */
export interface Desk {
  readCase(text: string): ReadCase;
  emergencyCards(): readonly EmergencyCard[];
  findingWords(): FindingWords;
  writeNote(question: NoteQuestion): WrittenNote;
}

/** One paper made ready to show and print. */
export interface MadePaper {
  readonly title: string;
  readonly fragment: string;
}

export interface Papers {
  /** @param shown rungs shown back twice; null where none are kept yet */
  homeSheet(
    caseFile: CaseFile,
    plan: PlanAnswer,
    form: "plain" | "aphasia",
    shown: readonly string[] | null,
  ): MadePaper | { readonly because: string };
  therapistSheet(caseFile: CaseFile, plan: PlanAnswer): MadePaper;
}

export interface Answerer extends Omit<Engine, "version">, Desk, Papers {
  version(): Engine["version"];
}
export type Method = keyof Answerer;
export interface Call<K extends Method = Method> {
  readonly id: number;
  readonly method: K;
  readonly args: Parameters<Answerer[K]>;
  /** A later question of this kind takes its place while it waits. */
  readonly newestOnly?: boolean;
}
/** One of the calls, its arguments fitting its method. */
export type AnyCall = { [K in Method]: Call<K> }[Method];
export type Reply =
  | { readonly id: number; readonly ok: true; readonly value: unknown; readonly milliseconds: number }
  | { readonly id: number; readonly ok: true; readonly overtaken: true }
  | { readonly id: number; readonly ok: false; readonly because: string };
