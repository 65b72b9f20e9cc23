import type { SourceRow } from "./source.ts";

/** Works behind precautions, vital signs, dosing, training and papers. */
export const PRACTICE_SOURCES = {} as const satisfies Record<string, SourceRow>;
