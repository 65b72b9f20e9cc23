import type { SessionEvent } from "../../session/events.ts";
import type { CaseFile } from "../contract/case-file.ts";
import type { PlanAnswer } from "../contract/plan-answer.ts";
import type { Store } from "../store/store.ts";

export interface PlanOptions {
  /** The whole slot [minute]. */
  readonly minutes: number;
  /** Further wishes of the page, handed through to the planner. */
  readonly wishes?: unknown;
}

/** A paper that is asked for. What is not known of it is null. */
export interface SheetRequest {
  readonly sheet: string;
  readonly form: "html" | "pdf" | "json" | "text";
  readonly case: CaseFile;
  readonly plan: PlanAnswer | null;
  readonly events: readonly SessionEvent[];
  /** Language and other wishes from the address of the request. */
  readonly wishes: Readonly<Record<string, string>>;
}

export interface Sheet {
  readonly type: string;
  readonly body: string | Uint8Array<ArrayBuffer>;
}

/** All the server is made of; it holds no rule of practice itself. */
export interface ServerParts {
  readonly store: Store;
  readonly version: { readonly product: string; readonly knowledge: string };
  readonly computePlan: (file: CaseFile, options: PlanOptions) => Promise<PlanAnswer>;
  /** Null for a sheet that does not exist. */
  readonly makeSheet: (request: SheetRequest) => Promise<Sheet | null>;
  /** Folder of the built page. */
  readonly pageFolder: string;
  /** Where a fault of our own is told; the caller of the server hears only that there was one. */
  readonly report: (error: unknown) => void;
}
