import { PURPOSE_IDS, type PurposeId } from "../../practice/codes.ts";
import type { Findings } from "../findings.ts";
import { BASE_NEED, GOAL_NEED, GOAL_WORDS } from "./needs.data.ts";

/** How much each purpose is wanted today, in points of its first unit. */
export function needsOf(findings: Findings): Readonly<Record<PurposeId, number>> {
  const needs: Record<PurposeId, number> = { ...BASE_NEED };
  for (const goal of findings.goals) {
    const text = goal.toLowerCase();
    const aimed = GOAL_WORDS.find(({ words }) => words.some((word) => text.includes(word)));
    for (const purpose of aimed?.purposes ?? [])
      needs[purpose] = Math.max(needs[purpose], BASE_NEED[purpose] + GOAL_NEED);
  }
  if (findings.approach.arm !== "train") needs.armReady = Math.round(needs.armReady / 3);
  if (findings.approach.leg === "spare") needs.stanceOnWeak = Math.round(needs.stanceOnWeak / 3);
  return needs;
}

/** Whether a goal speaks of a purpose, for the "because" of an item. */
export function goalFor(findings: Findings, purposes: readonly PurposeId[]): string | null {
  for (const goal of findings.goals) {
    const text = goal.toLowerCase();
    const aimed = GOAL_WORDS.find(({ words }) => words.some((word) => text.includes(word)));
    if (aimed?.purposes.some((purpose) => purposes.includes(purpose)) === true) return goal;
  }
  return null;
}

/** In words, as a purpose is told in a sentence. */
export const PURPOSE_WORDS: Readonly<Record<PurposeId, string>> = {
  bedMobility: "moving in bed",
  liftSeat: "lifting the seat in bed",
  stanceOnWeak: "standing on the weak leg",
  swingWeakLeg: "bringing the weak leg forward",
  sittingBalance: "sitting balance",
  comeToSit: "coming up to sitting",
  standUp: "standing up",
  armReady: "readying the weak arm",
  trunkControl: "a trunk that holds",
  floorRecovery: "getting up from the floor",
  stepping: "stepping",
  deviceReady: "readying the hand for a stick",
};
export const ALL_PURPOSES: readonly PurposeId[] = PURPOSE_IDS;
