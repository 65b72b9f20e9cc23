import type { SourceId } from "../../sources/bibliography.ts";

/** Why a rung is out, or what has to be minded: the rule, what it found here, where it comes from. */
export interface Reason {
  readonly rule: string;
  readonly detail: string;
  readonly source: SourceId;
}
