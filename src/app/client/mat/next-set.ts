import type { PlannedItem } from "../../../session/events.ts";
import type { SessionState } from "../../../session/state.ts";
import type { CatalogueAnswer } from "../../contract/catalogue-answer.ts";

/** The set that is to be done now. */
export interface NextSet {
  readonly activity: string;
  readonly rung: string;
  readonly set: number;
  readonly of: number;
  /** What the plan asked of the item; a rung taken down to keeps the dose of the one above. */
  readonly planned: PlannedItem | null;
  /** The planned rung it stands in for; the rung itself where nothing was taken down. */
  readonly plannedRung: string;
}

/**
 * The next open set. An item that was taken one rung down goes on there with the sets that are still due.
 * @returns null where nothing is open any more.
 */
export function nextSetOf(state: SessionState, catalogue: CatalogueAnswer | null): NextSet | null {
  for (const { activity, rung, planned, sets, skipped, exceptions } of state.items) {
    if (planned === null || skipped !== null || exceptions.some(({ next }) => next === "leaveItem")) continue;
    const steps = exceptions.filter(({ next }) => next === "rungDown").length;
    if (steps === 0) {
      if (sets.length < planned.sets)
        return { activity, rung, set: sets.length + 1, of: planned.sets, planned, plannedRung: rung };
      continue;
    }
    const lower = lowerRung(catalogue, activity, rung);
    if (lower === null) continue;
    const below = state.items.find((item) => item.activity === activity && item.rung === lower);
    const gaveUp =
      below !== undefined &&
      (below.skipped !== null || below.exceptions.some(({ next }) => next === "leaveItem" || next === "rungDown"));
    const due = planned.sets - sets.length;
    const done = below?.planned === null ? below.sets.length : 0;
    if (!gaveUp && done < due)
      return { activity, rung: lower, set: done + 1, of: due, planned: { ...planned, rung: lower }, plannedRung: rung };
  }
  return null;
}

function lowerRung(catalogue: CatalogueAnswer | null, activity: string, rung: string): string | null {
  const rungs = catalogue?.activities.find(({ id }) => id === activity)?.rungs ?? [];
  const at = rungs.findIndex(({ id }) => id === rung);
  return rungs[at - 1]?.id ?? null;
}
