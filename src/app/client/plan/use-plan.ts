import { useEffect } from "react";
import type { CatalogueAnswer } from "../../contract/catalogue-answer.ts";
import { shown, useAnswer } from "../computing/use-answer.ts";
import type { KeptPerson } from "../record/database.ts";
import { type PlanState, planOf, plans, refreshPlan } from "../record/plans.ts";
import { useCell } from "../state/cell.ts";

/** Today's plan of this person, the last one at once. */
export function usePlan(person: KeptPerson): PlanState {
  useEffect(() => void refreshPlan(person), [person]);
  return planOf(useCell(plans), person.id);
}

/** The catalogue, with this person's own rungs behind it. */
export function useCatalogue(person: KeptPerson): CatalogueAnswer | null {
  const own = person.case.ownRungs ?? [];
  return shown(useAnswer(own.length === 0 ? null : person.case, "catalogue", own.length === 0 ? [] : [person.case]));
}
