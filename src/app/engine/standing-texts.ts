import type { SourceId } from "../../sources/bibliography.ts";

/** Said once on every plan. */
export const EMERGENCY: readonly { readonly text: string; readonly source: SourceId }[] = [
  {
    text: "New face droop, weakness, speech or sight change, or sudden headache: stop and call at once.",
    source: "common-practice",
  },
  {
    text: "Decision support only: a licensed clinician decides, local protocol and orders prevail.",
    source: "common-practice",
  },
];
