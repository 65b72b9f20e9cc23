import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { FONT_FILES, noteHtml, noteText, type Paper, writePaperHtml } from "../../sheets/index.ts";
import { type PaperFonts, writePaperPdf } from "../../sheets/paper/paper-pdf.ts";
import type { CaseFile } from "../contract/case-file.ts";
import type { PlanAnswer } from "../contract/plan-answer.ts";
import type { Engine } from "../engine/engine.ts";
import { homePaperOf, noteOf, therapistPaperOf } from "../engine/papers.ts";
import type { Sheet, SheetRequest } from "../server/parts.ts";

let loaded: PaperFonts | null = null;

/** The fonts embedded in papers, read once from the packages that ship them. */
function fonts(): PaperFonts {
  if (loaded === null) {
    const require = createRequire(import.meta.url);
    const read = (name: string): Uint8Array => readFileSync(require.resolve(name));
    const entries = Object.entries(FONT_FILES).map(([name, file]) => [name, read(file)]);
    loaded = Object.fromEntries(entries) as PaperFonts;
  }
  return loaded;
}

const write = async (paper: Paper, form: "html" | "pdf"): Promise<string | Uint8Array> =>
  form === "pdf" ? writePaperPdf(paper, fonts()) : writePaperHtml(paper);

/** The therapist's sheet of a plan. */
export async function planSheet(
  engine: Engine,
  file: CaseFile,
  plan: PlanAnswer,
  form: "html" | "pdf",
): Promise<string | Uint8Array> {
  return write(therapistPaperOf(engine, file, plan), form);
}

/** Any paper the page asks for; null where there is no such sheet. */
export async function makeSheet(engine: Engine, request: SheetRequest): Promise<Sheet | null> {
  const { sheet, form } = request;
  if (sheet === "note") return noteSheet(request);
  if (form !== "html" && form !== "pdf") return null;
  const plan = request.plan ?? engine.plan(request.case, 45);
  if (sheet === "therapist") return asSheet(await planSheet(engine, request.case, plan, form), form);
  if (sheet !== "home") return null;
  const made = homePaperOf(engine, request.case, plan, {
    form: request.wishes.picture === "aphasia" ? "aphasia" : "plain",
    shown: shownOf(request.wishes.shown),
  });
  if ("because" in made) return { type: "text/plain; charset=utf-8", body: `No sheet for home today. ${made.because}` };
  return asSheet(await write(made.paper, form), form);
}

/** "activity/rung" after "activity/rung", or null where nothing was said of show-backs. */
const shownOf = (text: string | undefined): readonly string[] | null =>
  text === undefined ? null : text.split(",").filter((name) => name !== "");

function noteSheet(request: SheetRequest): Sheet | null {
  const note = noteOf(request.case, request.plan, request.events);
  if (request.form === "text") return { type: "text/plain; charset=utf-8", body: noteText(note) };
  if (request.form === "html") return { type: "text/html; charset=utf-8", body: noteHtml(note) };
  return request.form === "json" ? { type: "application/json", body: JSON.stringify(note) } : null;
}

function asSheet(body: string | Uint8Array, form: "html" | "pdf"): Sheet {
  if (typeof body === "string") return { type: "text/html; charset=utf-8", body };
  return { type: form === "pdf" ? "application/pdf" : "application/octet-stream", body: Uint8Array.from(body) };
}
