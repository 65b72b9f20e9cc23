import { expect, it } from "vitest";
import { EMPTY_PLAN, INVENTED_CASE } from "../../../test/helpers/invented-session.ts";
import type { PlanAnswer } from "../contract/plan-answer.ts";
import { sayPlan } from "./say.ts";

const plan: PlanAnswer = {
  ...EMPTY_PLAN,
  items: [
    {
      activity: "bridge",
      rung: "both-feet",
      position: "hook-lying",
      limbFree: null,
      workingSide: "both",
      effort: {
        peak: { low: 0.3, middle: 0.4, high: 0.5 },
        limiting: { joint: "hip", direction: "extension", side: "left" },
      },
      margin: { least: { metres: 0.1, towards: "left" } },
      guard: null,
      help: null,
      dose: { sets: 2, repetitions: 8, restSeconds: 60 },
      minutes: 4,
      purpose: "lifting the seat",
      because: ["For lifting the seat."],
      sources: [],
    },
  ],
};

const back: PlanAnswer["wayBack"] = {
  from: "short-sitting",
  to: "short-sitting",
  minutes: 0,
  planned: ["Sit back against the rest."],
  hurry: [],
};

it("says that no way back is needed where the session ends at rest, and its minutes where one is", () => {
  const at = (minutes: number) => sayPlan(INVENTED_CASE, { ...plan, wayBack: { ...back, minutes } });
  expect(at(0)).toMatch(/No way back: the session ends at rest in short sitting\. To get up from there: Sit back/);
  expect(at(0)).not.toMatch(/Way back, 0/);
  expect(at(1)).toMatch(/Way back, 1 minute: Sit back/);
});

it("says why nothing is planned and what serves instead", () => {
  const whyShort = {
    because: ["No time is given."],
    instead: [{ text: "Position well.", source: "common-practice" }],
  };
  const said = sayPlan(INVENTED_CASE, { ...plan, items: [], whyShort });
  expect(said).toMatch(/Nothing is planned\.\nNo time is given\.\nInstead: Position well\./);
});
