import { EMERGENCY_CARDS } from "../../../practice/handling/emergency.data.ts";
import { PRECAUTION_IDS } from "../../../practice/precautions/identifiers.data.ts";
import { MEDICINE_IDS, MEDICINES } from "../../../practice/precautions/medicines.data.ts";
import { PRECAUTIONS } from "../../../practice/precautions/table.ts";
import { foldSession } from "../../../session/fold-session.ts";
import { refuseSigning, writeNote } from "../../../sheets/note/note.ts";
import { noteText } from "../../../sheets/note/note-forms.ts";
import { parseCase } from "../../contract/parse-case.ts";
import { activitiesOf } from "../../engine/own-activities.ts";
import type { Desk, EmergencyCard, NoteQuestion, WrittenNote } from "./questions.ts";

/** Answers from the tables of practice and the sheets, which the page itself does not load. */
export const DESK: Desk = {
  readCase: parseCase,
  emergencyCards,
  findingWords: () => ({
    precautions: PRECAUTION_IDS.map((id) => ({ id, title: PRECAUTIONS[id].title })),
    medicines: MEDICINE_IDS.map((id) => ({ id, title: MEDICINES[id].title })),
  }),
  writeNote: answerNote,
};

function emergencyCards(): readonly EmergencyCard[] {
  return Object.entries(EMERGENCY_CARDS).map(([id, { title, looksLike, steps, callWhen, note }]) => ({
    id,
    title,
    looksLike,
    steps,
    callWhen,
    note,
  }));
}

function answerNote({ caseFile, events, changes, previous, lastDay }: NoteQuestion): WrittenNote {
  const { weakSide } = caseFile;
  const note = writeNote({
    label: caseFile.label ?? null,
    person: { weak: weakSide === "left" || weakSide === "right" ? weakSide : null },
    state: foldSession(events),
    changes,
    catalogue: activitiesOf(caseFile),
    previous,
    lastDay,
  });
  return { note, text: noteText(note), refusal: refuseSigning(note) };
}
