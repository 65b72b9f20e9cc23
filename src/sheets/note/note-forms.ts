import { escapeHtml } from "../paper/escape.ts";
import type { Note, NoteLine, NoteSentence, Trace } from "./note.ts";
import { sayDate } from "../words/dates.ts";

const NOTHING = "nothing noted";
const TO_WRITE = "to be written by the therapist";

/** The note as plain text, to be copied into any record: a line each, the judgement, who signed. */
export function noteText(note: Note): string {
  return [
    headOf(note),
    ...note.lines.map(
      (line) =>
        `${line.label}: ${line.sentences.length === 0 ? `${NOTHING}.` : line.sentences.map(({ text }) => text).join(" ")}`,
    ),
    `Judgement: ${note.judgement.length === 0 ? `(${TO_WRITE})` : note.judgement.map(({ text }) => text).join(" ")}`,
    note.signed === null ? "Not signed." : `Signed: ${note.signed.by}`,
    "",
  ].join("\n");
}

/** The note as a piece of HTML; every sentence carries in `data-from` what it comes from. */
export function noteHtml(note: Note): string {
  const judgement =
    note.judgement.length === 0
      ? `<p class="note-empty">${upper(TO_WRITE)}</p>`
      : `<p>${note.judgement.map(writeSentence).join(" ")}</p>`;
  return `<article class="note"><h2>${escapeHtml(headOf(note))}</h2><dl>${note.lines.map(writeLine).join("")}<dt>Judgement</dt><dd class="note-judgement">${judgement}</dd></dl><p class="note-signed">${escapeHtml(note.signed === null ? "Not signed." : `Signed: ${note.signed.by}`)}</p></article>`;
}

function writeLine({ id, label, sentences }: NoteLine): string {
  const words =
    sentences.length === 0 ? `<span class="note-empty">${NOTHING}</span>` : sentences.map(writeSentence).join(" ");
  return `<dt>${escapeHtml(label)}</dt><dd data-line="${id}">${words}</dd>`;
}

function writeSentence({ text, from }: NoteSentence): string {
  return `<span data-from="${escapeHtml(from.map(nameTrace).join(" "))}">${escapeHtml(text)}</span>`;
}

/** "event:e4", "plan:changesSinceLast.0", "previous:items.2". */
export function nameTrace(trace: Trace): string {
  return `${trace.kind}:${trace.kind === "event" ? trace.id : trace.field}`;
}

function headOf(note: Note): string {
  return ["Treatment note", note.label, note.date === null ? null : sayDate(note.date)]
    .filter((part) => part !== null)
    .join(", ");
}

const upper = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
