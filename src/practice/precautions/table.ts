import { ARM } from "./arm.data.ts";
import { CIRCULATION } from "./circulation.data.ts";
import { HEAD_AND_SENSES } from "./head-and-senses.data.ts";
import { PRECAUTION_IDS } from "./identifiers.data.ts";
import { LEG_AND_SPINE } from "./leg-and-spine.data.ts";
import type { PrecautionFinding, PrecautionId, PrecautionRow } from "./precaution.ts";
import { TUBES_AND_SKIN } from "./tubes-and-skin.data.ts";

export type PrecautionTable = Readonly<Record<PrecautionId, PrecautionRow>>;

/** Every coded condition and what it changes; an identifier without a row does not compile. */
export const PRECAUTIONS: PrecautionTable = {
  ...ARM,
  ...LEG_AND_SPINE,
  ...CIRCULATION,
  ...HEAD_AND_SENSES,
  ...TUBES_AND_SKIN,
};

/** The findings in the order of the table, one for each condition, so that no answer depends on how a file was typed. */
export function orderFindings(findings: readonly PrecautionFinding[]): readonly PrecautionFinding[] {
  return PRECAUTION_IDS.flatMap((code) => findings.filter((finding) => finding.code === code));
}
