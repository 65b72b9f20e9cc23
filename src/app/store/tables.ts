import type { Generated } from "kysely";

/** What is stored. Rows are only ever added; triggers refuse to change or delete one. */
export interface Tables {
  readonly store_format: { readonly version: number; readonly at: string };
  readonly case_version: CaseVersionRow;
  readonly plan: PlanRow;
  readonly session_event: SessionEventRow;
}

interface CaseVersionRow {
  readonly row: Generated<number>;
  readonly id: string;
  readonly person: string;
  readonly at: string;
  readonly knowledge: string;
  readonly body: string;
}

interface PlanRow {
  readonly row: Generated<number>;
  readonly id: string;
  readonly person: string;
  readonly case_version: string;
  readonly at: string;
  readonly knowledge: string;
  readonly body: string;
}

interface SessionEventRow {
  readonly row: Generated<number>;
  readonly id: string;
  readonly session: string;
  readonly person: string;
  readonly sequence: number;
  readonly kind: string;
  readonly at: string;
  readonly knowledge: string;
  readonly body: string;
}
