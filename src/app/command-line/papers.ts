import type { CaseFile } from "../contract/case-file.ts";
import type { PlanAnswer } from "../contract/plan-answer.ts";
import type { Engine } from "../engine/engine.ts";
import type { Sheet, SheetRequest } from "../server/parts.ts";

/** The therapist's sheet of a plan. */
export async function planSheet(_engine: Engine, _file: CaseFile, _plan: PlanAnswer, _form: "html" | "pdf"): Promise<string | Uint8Array> {
  throw new Error("papers are not wired");
}

/** Any paper the page asks for; null where there is no such sheet. */
export async function makeSheet(_engine: Engine, _request: SheetRequest): Promise<Sheet | null> {
  return null;
}
