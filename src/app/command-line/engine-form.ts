import type { CaseFile } from "../contract/case-file.ts";
import type { CatalogueAnswer } from "../contract/catalogue-answer.ts";
import type { CheckAnswer } from "../contract/check-answer.ts";
import type { EffortAnswer } from "../contract/effort-answer.ts";
import type { PlanAnswer } from "../contract/plan-answer.ts";
import type { PlanOptions, Sheet, SheetRequest } from "../server/parts.ts";

/** What computes, seen from the commands and the server. */
export interface Engine {
  readonly version: { readonly product: string; readonly knowledge: string };
  readonly makePlan: (file: CaseFile, options: PlanOptions) => Promise<PlanAnswer>;
  /** One rung, or every rung of the activity; both are known to be in the catalogue. */
  readonly effort: (file: CaseFile, activity: string, rung?: string) => Promise<EffortAnswer>;
  readonly catalogue: () => CatalogueAnswer;
  readonly checkCase: (file: CaseFile) => Promise<Pick<CheckAnswer, "contradictions" | "assumed">>;
  /** The plan as text for a terminal. */
  readonly sayPlan: (file: CaseFile, plan: PlanAnswer) => string;
  readonly sayEffort: (file: CaseFile, answer: EffortAnswer) => string;
  /** The therapist's sheet of a plan. */
  readonly planSheet: (file: CaseFile, plan: PlanAnswer, form: "html" | "pdf") => Promise<string | Uint8Array>;
  /** Any paper the page asks for; null where there is no such sheet. */
  readonly makeSheet: (request: SheetRequest) => Promise<Sheet | null>;
}
