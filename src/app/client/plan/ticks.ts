import { useSyncExternalStore } from "react";
import type { RungName } from "../../engine/engine.ts";
import { createCell } from "../state/cell.ts";

/** Faults seen while the plan is open; at the mat they stand ready to be written down. */
const cell = createCell<ReadonlyMap<string, readonly string[]>>(new Map());
const NONE: readonly string[] = [];

function keyOf(person: string, { activity, rung }: RungName): string {
  return `${person} ${activity} ${rung}`;
}

export function useTicks(
  person: string,
  of: RungName,
): readonly [readonly string[], (ticks: readonly string[]) => void] {
  const key = keyOf(person, of);
  const all = useSyncExternalStore(cell.subscribe, cell.get);
  return [all.get(key) ?? NONE, (ticks) => cell.set(new Map(cell.get()).set(key, ticks))];
}
