export {
  type HomeSheet,
  type HomeSheetInput,
  type HomeStrip,
  homeSheetText,
  makeHomeSheet,
  type NoHomeSheet,
} from "./home/home-sheet.ts";
export { homePaper } from "./home/home-paper.ts";
export { nameHelperAtHome } from "./home/home-words.ts";
export {
  type Note,
  type NoteInput,
  type NoteLine,
  type NoteLineId,
  type NoteSentence,
  refuseSigning,
  type Trace,
  writeNote,
} from "./note/note.ts";
export { nameTrace, noteHtml, noteText } from "./note/note-forms.ts";
export { FONT_FILES, type FontName } from "./paper/fonts.data.ts";
export type { Paper } from "./paper/paper.ts";
export { writePaperFragment, writePaperHtml } from "./paper/paper-html.ts";
export { PAPER_STYLE } from "./paper/paper-style.ts";
export { type Picture, type PlannedRung, rungKey } from "./planned-rung.ts";
export {
  makeTherapistSheet,
  type TherapistItem,
  type TherapistSheet,
  type TherapistSheetInput,
} from "./therapist/therapist-sheet.ts";
export { therapistPaper } from "./therapist/therapist-paper.ts";
export { fillSides, sayOfPerson } from "./words/body-sides.ts";
export { countText, fleschKincaidGrade, gradeOfText, HIGHEST_GRADE } from "./words/reading-grade.ts";
