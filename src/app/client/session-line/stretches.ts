import type { PlanAnswer, PlanItemAnswer } from "../../contract/plan-answer.ts";

/** One piece of the session: arriving, an item with the ways that lead to it, or the way back. */
export interface Stretch {
  readonly kind: "arrive" | "item" | "back";
  readonly fromMinute: number;
  readonly toMinute: number;
  /** Number of the item in the plan; null for arriving and the way back. */
  readonly item: number | null;
  readonly position: string;
  readonly pieces: readonly Piece[];
  /** The changes of position that lead to the item, or the way back. */
  readonly ways: readonly PlanAnswer["transitions"][number][];
}

/** One entry of the plan's time line: a rest, a way to another position, or the work itself. */
export interface Piece {
  readonly kind: "rest" | "way" | "work";
  readonly fromMinute: number;
  readonly toMinute: number;
  readonly height: number;
  readonly dose: PlanItemAnswer["dose"] | null;
}

/**
 * Takes the plan's time line apart: every entry is a change of position when its position is new, else the next item.
 * @returns arriving, the items in order and the way back; empty for a plan without items.
 */
export function stretchesOf(plan: PlanAnswer): readonly Stretch[] {
  const [first, ...rest] = plan.timeline;
  if (first === undefined || plan.items.length === 0) return [];
  const stretches: Stretch[] = [
    {
      kind: "arrive",
      fromMinute: first.fromMinute,
      toMinute: first.toMinute,
      item: null,
      position: first.position,
      pieces: [{ kind: "rest", ...times(first), dose: null }],
      ways: [],
    },
  ];
  let open: Piece[] = [];
  let ways: PlanAnswer["transitions"][number][] = [];
  let position = first.position;
  let item = 0;
  let way = 0;
  for (const entry of rest) {
    const planned = plan.items[item];
    const moves = entry.position !== position;
    position = entry.position;
    if (moves) {
      open.push({ kind: "way", ...times(entry), dose: null });
      const taken = plan.transitions[way];
      if (taken !== undefined) ways.push(taken);
      way += 1;
      continue;
    }
    if (planned === undefined) {
      open.push({ kind: "rest", ...times(entry), dose: null });
      continue;
    }
    open.push({ kind: "work", ...times(entry), dose: planned.dose });
    stretches.push({
      kind: "item",
      fromMinute: open[0]?.fromMinute ?? entry.fromMinute,
      toMinute: entry.toMinute,
      item,
      position: entry.position,
      pieces: open,
      ways,
    });
    open = [];
    ways = [];
    item += 1;
  }
  const [start, end] = [open[0], open.at(-1)];
  if (start !== undefined && end !== undefined)
    stretches.push({
      kind: "back",
      fromMinute: start.fromMinute,
      toMinute: end.toMinute,
      item: null,
      position,
      pieces: open,
      ways,
    });
  return stretches;
}

const times = ({ fromMinute, toMinute, centreHeightMetres }: PlanAnswer["timeline"][number]) => ({
  fromMinute,
  toMinute,
  height: centreHeightMetres,
});
