import type { Caution } from "../../practice/precautions/cautions.ts";
import { FAMILY_LIMITS } from "../../sheets/home/family-helper.ts";
import type { CaseFile } from "../contract/case-file.ts";

/** Why the helper from the family is no second pair of hands at the mat; null where they are, or nobody is named. */
export function notASecondHelper(file: CaseFile): string | null {
  const family = file.helpers?.family;
  if (family === undefined || (file.helpers?.count ?? 1) < 2) return null;
  if (family.backTrouble === true) return "has a troubled back";
  if (family.ageYears !== undefined && family.ageYears < FAMILY_LIMITS.childUnder) return "is a child";
  return null;
}

/** Said once at the head of the plan. */
export function cautionsOfFamily(file: CaseFile): readonly Caution[] {
  const because = notASecondHelper(file);
  return because === null
    ? []
    : [
        {
          text: `The helper from the family ${because} and is not counted as a second pair of hands today.`,
          source: "judgement",
          seen: "judgement",
          from: "orders",
        },
      ];
}
