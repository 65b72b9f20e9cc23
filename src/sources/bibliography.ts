import { BODY_SOURCES } from "./body.data.ts";
import { COMMON_SOURCES } from "./common.data.ts";
import { PRACTICE_SOURCES } from "./practice.data.ts";
import type { SourceRow } from "./source.ts";
import { TAUGHT_SOURCES } from "./teaching.data.ts";

const ALL = { ...COMMON_SOURCES, ...BODY_SOURCES, ...PRACTICE_SOURCES, ...TAUGHT_SOURCES };

/** Every work the product may cite; an unknown identifier does not compile. */
export type SourceId = keyof typeof ALL;
export const BIBLIOGRAPHY: Readonly<Record<SourceId, SourceRow>> = ALL;
