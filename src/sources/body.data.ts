import type { SourceRow } from "./source.ts";

/** Works behind the body, its strength and its loads. */
export const BODY_SOURCES = {} as const satisfies Record<string, SourceRow>;
