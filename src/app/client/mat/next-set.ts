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
 * The next open set. An item that was taken one rung down or up goes on there with the sets that are still due, and comes
 * back where that was taken back.
 * @returns null where nothing is open any more.
 */
export function nextSetOf(state: SessionState, catalogue: CatalogueAnswer | null): NextSet | null {
  for (const { activity, rung, planned, sets, skipped, exceptions } of state.items) {
    if (planned === null || skipped !== null || exceptions.some(({ next }) => next === "leaveItem")) continue;
    const here = (done: number): NextSet => ({
      ...{ activity, rung, planned, plannedRung: rung },
      ...{ set: done + 1, of: planned.sets },
    });
    const step = exceptions.findLast(({ next }) => next === "rungDown" || next === "rungUp")?.next;
    const other = step === undefined ? null : neighbour(catalogue, activity, rung, step === "rungUp" ? 1 : -1);
    if (step === undefined || (other === null && step === "rungUp")) {
      if (sets.length < planned.sets) return here(sets.length);
      continue;
    }
    if (other === null) continue;
    const there = state.items.find((item) => item.activity === activity && item.rung === other);
    const next = there?.exceptions.findLast((each) => each.next === "rungDown" || each.next === "rungUp")?.next;
    if (there?.skipped != null || there?.exceptions.some((each) => each.next === "leaveItem") === true) continue;
    // Down again from the rung below leaves the item; the opposite step leads back to the planned rung.
    if (next === "rungDown" && step === "rungDown") continue;
    const due = planned.sets - sets.length;
    const done = there?.planned === null ? there.sets.length : 0;
    if (done >= due) continue;
    if (next !== undefined && next !== step) return here(sets.length + done);
    return { activity, rung: other, set: done + 1, of: due, planned: { ...planned, rung: other }, plannedRung: rung };
  }
  return null;
}

/** The rungs of a ladder, the easiest first; empty until the catalogue is there. */
export function ladderOf(catalogue: CatalogueAnswer | null, activity: string): readonly string[] {
  return catalogue?.activities.find(({ id }) => id === activity)?.rungs.map(({ id }) => id) ?? [];
}

export function neighbour(
  catalogue: CatalogueAnswer | null,
  activity: string,
  rung: string,
  step: 1 | -1,
): string | null {
  const ladder = ladderOf(catalogue, activity);
  const at = ladder.indexOf(rung);
  return at < 0 ? null : (ladder[at + step] ?? null);
}
