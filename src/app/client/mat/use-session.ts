import { useEffect, useMemo, useState } from "react";
import { boundsOf } from "../../../session/bounds.ts";
import type { PlannedItem, SessionEvent } from "../../../session/events.ts";
import { foldSession } from "../../../session/fold-session.ts";
import type { SessionState } from "../../../session/state.ts";
import type { PlanAnswer, PlanItemAnswer } from "../../contract/plan-answer.ts";
import type { KeptPerson, KeptPlan } from "../record/database.ts";
import { newId } from "../record/identifiers.ts";
import { changePerson, writeVersion } from "../record/people.ts";
import { keepSessionPlan, readSessionPlan } from "../record/plans.ts";
import { addEvents, type NewEvent, openSession, sessions } from "../record/sessions.ts";
import { bringTogether, findStoredSession, type StoredElsewhere } from "../record/stored-session.ts";
import { useCell } from "../state/cell.ts";

export interface OpenSession {
  readonly id: string;
  readonly events: readonly SessionEvent[];
  readonly state: SessionState;
  /** The plan it was started with; null where this device does not hold it. */
  readonly plan: PlanAnswer | null;
  readonly add: (events: readonly NewEvent[]) => Promise<readonly string[]>;
}

/** The person's open session, brought back after a reload; null where none was started, undefined while it is looked for. */
export function useSession(person: KeptPerson): OpenSession | null | undefined {
  const id = person.session;
  const events = useCell(sessions).get(id ?? "");
  const [plan, setPlan] = useState<{ readonly session: string; readonly plan: PlanAnswer | null } | null>(null);
  useEffect(() => {
    if (id !== null) void openSession(id);
  }, [id]);
  const state = useMemo(() => (events === undefined ? null : foldSession(events)), [events]);
  const planId = state?.plan ?? null;
  useEffect(() => {
    let current = true;
    if (id !== null && planId !== null)
      void readSessionPlan(planId).then((found) => current && setPlan({ session: id, plan: found }));
    return () => {
      current = false;
    };
  }, [id, planId]);
  if (id === null) return null;
  if (events === undefined || state === null || plan === null || plan.session !== id) return undefined;
  if (state.phase === "notStarted") return null;
  return {
    id,
    events,
    state,
    plan: plan.plan,
    add: (added) => addEvents(person.id, id, state.knowledge ?? plan.plan?.version.knowledge ?? "unknown", added),
  };
}

/** Keeps an open session up with what other devices write to it, whenever this page is looked at again. */
export function useOthersEvents(person: KeptPerson): void {
  const { id, session } = person;
  useEffect(() => {
    if (session === null) return;
    const look = () => {
      if (document.visibilityState === "visible") void bringTogether(id, session);
    };
    look();
    document.addEventListener("visibilitychange", look);
    return () => document.removeEventListener("visibilitychange", look);
  }, [id, session]);
}

/** A session begun on another device that can be gone on with here; null where there is none or the record is out of reach. */
export function useStoredElsewhere(person: KeptPerson): StoredElsewhere | null {
  const [found, setFound] = useState<StoredElsewhere | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked again when another session is open here
  useEffect(() => {
    let current = true;
    void findStoredSession(person).then((stored) => current && setFound(stored));
    return () => {
      current = false;
    };
  }, [person.id, person.session]);
  return found;
}

/** Starts a session of today's plan: findings, plan and start are written down in this order. */
export async function startSession(person: KeptPerson, kept: KeptPlan): Promise<void> {
  const version = await writeVersion(person.id);
  if (version === null) return;
  await keepSessionPlan(kept, version);
  const session = newId();
  const reasons = person.putIn.filter(({ activity, rung }) =>
    kept.plan.items.some((item) => item.activity === activity && item.rung === rung),
  );
  await addEvents(person.id, session, kept.plan.version.knowledge, [
    {
      kind: "sessionStarted",
      person: person.id,
      plan: kept.id,
      items: kept.plan.items.map((item) => plannedItem(item, person)),
    },
    ...reasons.map(
      ({ activity, rung, why }): NewEvent => ({
        kind: "judgement",
        words: `Put in by hand, ${activity.replaceAll("-", " ")} (${rung.replaceAll("-", " ")}): ${why}`,
      }),
    ),
  ]);
  await changePerson(person.id, { session });
}

function plannedItem({ activity, rung, dose, help }: PlanItemAnswer, person: KeptPerson): PlannedItem {
  const bounds = boundsOf(person.case.bounds ?? [], activity);
  const { sets, repetitions, holdSeconds } = dose;
  return {
    activity,
    rung,
    sets: Math.max(1, sets),
    ...(repetitions === undefined ? {} : { repetitions }),
    ...(holdSeconds === undefined ? {} : { holdSeconds }),
    ...(help === null ? {} : { help: help.words }),
    ...(bounds === null ? {} : { bounds }),
  };
}
