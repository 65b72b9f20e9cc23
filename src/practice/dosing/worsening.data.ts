import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";

/** When a person is suddenly worse from one session to the next, and what is then done. */
export interface WorseningRule {
  readonly rule: string;
  readonly limit: string;
  readonly source: SourceId;
  readonly seen: Seen;
}

/** Common practice; local protocol and licensed practice decide. */
export const WORSENING_RULES = {
  newSign: { rule: "suddenWorsening:newSign", limit: "A session stopped for a new sign: nothing starts until somebody has looked.", source: "be-fast", seen: "read" },
  severalLadders: { rule: "suddenWorsening:severalLadders", limit: "Two ladders or more that went alone, or with a touch, and at the next session needed two steps more help or gave way.", source: "common-practice", seen: "common-practice" },
} as const satisfies Record<string, WorseningRule>;

/** Figures of the second rule (judgement): one ladder is a bad day, two are a person who is worse. */
export const WORSENING_FIGURES = { ladders: 2, helpSteps: 2, source: "judgement", seen: "judgement" } as const;

/** Whom to call, in the order it is done. */
export const WORSENING_CALL =
  "Stop: no session today. Look at once at face, arm, speech, sight, balance and alertness; measure pressure, pulse, oxygen, temperature and glucose. Any new sign: the ward's stroke call, at home the emergency number, now. None: the physician today, and the therapist before the next session. Write down who looked; then it goes on.";
