import type { PlanAnswer } from "../../contract/plan-answer.ts";
import { ask } from "../computing/ask.ts";
import { createCell } from "../state/cell.ts";
import { database, type KeptPerson, type KeptPlan } from "./database.ts";
import { newId, now } from "./identifiers.ts";
import { enqueue } from "./outbox.ts";

export interface PlanState {
  readonly kept: KeptPlan | null;
  /** True while a newer plan is computed; the kept one is shown meanwhile. */
  readonly computing: boolean;
  readonly trouble: string | null;
}

const NOTHING: PlanState = { kept: null, computing: true, trouble: null };
export const plans = createCell<ReadonlyMap<string, PlanState>>(new Map());

function show(person: string, state: PlanState): void {
  plans.set(new Map(plans.get()).set(person, state));
}
export function planOf(states: ReadonlyMap<string, PlanState>, person: string): PlanState {
  return states.get(person) ?? NOTHING;
}

/** All that a plan rests on, as text. */
export function basisOf(person: KeptPerson, knowledge: string): string {
  return JSON.stringify([knowledge, person.minutes, person.wishes, person.case]);
}

const asked = new Map<string, string>();

/** Shows the last plan at once and computes a new one where the findings, the minutes or the wishes have changed. */
export async function refreshPlan(person: KeptPerson): Promise<void> {
  const db = await database();
  const before = plans.get().get(person.id)?.kept ?? (await db.get("plans", person.id)) ?? null;
  if (before !== null && plans.get().get(person.id)?.kept !== before)
    show(person.id, { kept: before, computing: true, trouble: null });
  try {
    const { knowledge } = await ask("version");
    const from = basisOf(person, knowledge);
    if (before?.from === from) return show(person.id, { kept: before, computing: false, trouble: null });
    if (asked.get(person.id) === from) return;
    asked.set(person.id, from);
    show(person.id, { kept: before, computing: true, trouble: null });
    const plan = await ask("plan", person.case, person.minutes, person.wishes);
    if (asked.get(person.id) !== from) return;
    asked.delete(person.id);
    const kept: KeptPlan = { person: person.id, id: newId(), from, at: now(), plan };
    await db.put("plans", kept);
    show(person.id, { kept, computing: false, trouble: null });
  } catch (error) {
    asked.delete(person.id);
    show(person.id, { kept: before, computing: false, trouble: error instanceof Error ? error.message : "unknown" });
  }
}

/** Keeps the plan a session starts with, here and in the record. */
export async function keepSessionPlan(kept: KeptPlan, caseVersion: string): Promise<void> {
  const db = await database();
  await db.put("sessionPlans", kept);
  await enqueue({
    method: "PUT",
    path: `/api/people/${kept.person}/plans/${kept.id}`,
    body: { at: kept.at, caseVersion, plan: kept.plan },
  });
}

/** The plan a session was started with. */
export async function readSessionPlan(id: string): Promise<PlanAnswer | null> {
  const db = await database();
  return (await db.get("sessionPlans", id))?.plan ?? null;
}
