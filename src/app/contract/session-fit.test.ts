import { expect, it } from "vitest";
import type { LookEntry, StrengthReading } from "../../plan/findings.ts";
import { foldSession } from "../../session/fold-session.ts";
import { type PreviousEntry, previousEntry } from "../../session/previous-entry.ts";
import { inventedSession } from "../../../test/helpers/invented-session.ts";
import { GRADES } from "./case-codes.ts";
import type { CaseFile } from "./case-file.ts";
import { validateCase } from "./parse-case.ts";

type Previous = NonNullable<CaseFile["previous"]>[number];
type Look = NonNullable<CaseFile["look"]>[number];

it("takes a finished session back as an earlier one", () => {
  const entry: PreviousEntry = previousEntry(foldSession(inventedSession("s1", "p1", 2)));
  const previous: Previous = entry;
  const file = {
    person: { sex: "male", ageYears: 60, heightCm: 175, massKg: 80 },
    weakSide: "left",
    daysSinceOnset: 3,
    previous: [previous],
  };
  expect(validateCase(file)).toMatchObject({
    ok: true,
    value: { previous: [{ date: "2026-03-16", items: [{ done: "asPlanned", sets: 2 }] }] },
  });
});

it("speaks the codes of the person model", () => {
  const task: LookEntry["task"] = ((entry: Look) => entry.task)({ task: "bridge", result: "alone" });
  const result: LookEntry["result"] = ((entry: Look) => entry.result)({ task: "bridge", result: "aloneWell" });
  const grades: readonly Extract<StrengthReading, { grade: unknown }>["grade"][] = GRADES;
  expect([task, result, grades.length]).toEqual(["bridge", "aloneWell", 14]);
});
