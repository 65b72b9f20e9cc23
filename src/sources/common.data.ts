import type { SourceRow } from "./source.ts";

/** Entries that stand for no publication: what the trade teaches, and what this project proposes. */
export const COMMON_SOURCES = {
  "common-practice": {
    authors: "the trade",
    year: null,
    title: "Common practice, no published source",
    where: "taught at the mat",
    seen: "common-practice",
  },
  judgement: {
    authors: "this project",
    year: null,
    title: "A proposal of this project, to be edited by the site",
    where: "decision records",
    seen: "judgement",
  },
} as const satisfies Record<string, SourceRow>;
