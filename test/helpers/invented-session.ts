import type { CaseFile } from "../../src/app/contract/case-file.ts";
import type { PlanAnswer } from "../../src/app/contract/plan-answer.ts";
import type { SessionEvent } from "../../src/session/events.ts";

export const INVENTED_CASE: CaseFile = {
  label: "Case 9, woman, 71",
  person: { sex: "female", ageYears: 71, heightCm: 162, massKg: 68 },
  weakSide: "left",
  daysSinceOnset: 12,
};

export const EMPTY_PLAN: PlanAnswer = {
  version: { product: "0", knowledge: "k1" },
  hold: null,
  items: [],
  transitions: [],
  wayBack: null,
  helperMoves: [],
  available: [],
  excluded: [],
  minutes: 0,
  workingMinutes: 0,
  timeline: [],
  solver: { status: "optimal", gap: 0 },
  changesSinceLast: [],
  takeNext: [],
  contradictions: [],
  assumed: [],
  cautions: [],
};

/** A session of so many sets after its start. */
export function inventedSession(session: string, person: string, sets: number): SessionEvent[] {
  const head = (sequence: number) => ({
    id: `${session}-${sequence}`,
    session,
    sequence,
    at: "2026-03-16T09:00:00Z",
    knowledge: "k1",
  });
  return [
    {
      ...head(1),
      kind: "sessionStarted",
      person,
      plan: "plan-1",
      items: [{ activity: "bridge", rung: "both-feet", sets: 2, repetitions: 8 }],
    },
    ...Array.from(
      { length: sets },
      (_, index): SessionEvent => ({
        ...head(index + 2),
        kind: "setDone",
        activity: "bridge",
        rung: "both-feet",
        asPlanned: true,
      }),
    ),
  ];
}
