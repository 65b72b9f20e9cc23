import type { PlanItemAnswer } from "../../contract/plan-answer.ts";
import { sayNumber, upper } from "./person-words.ts";

type Dose = PlanItemAnswer["dose"];

/** "Two sets of eight. Rest one minute." */
export function sayDose({ sets, repetitions, holdSeconds, restSeconds }: Dose): string {
  const what =
    repetitions !== undefined
      ? ` of ${sayNumber(repetitions)}${holdSeconds === undefined || holdSeconds === 0 ? "" : `, held ${holdSeconds} ${holdSeconds === 1 ? "second" : "seconds"}`}`
      : holdSeconds === undefined
        ? ""
        : `, held ${holdSeconds} ${holdSeconds === 1 ? "second" : "seconds"}`;
  return `${upper(sayNumber(sets))} ${sets === 1 ? "set" : "sets"}${what}. Rest ${sayRest(restSeconds)}.`;
}

export function sayRest(seconds: number): string {
  if (seconds === 60) return "one minute";
  if (seconds > 60 && seconds % 60 === 0) return `${sayNumber(seconds / 60)} minutes`;
  return `${seconds} ${seconds === 1 ? "second" : "seconds"}`;
}

const HELP = {
  alone: "nobody needed",
  setUp: "set up",
  standBy: "stand by",
  touching: "touching",
  minimal: "minimal help",
  moderate: "moderate help",
  maximal: "maximal help",
  dependent: "all of it done for the person",
} as const;
export type HelpWord = keyof typeof HELP;
export const HELP_WORDS: readonly HelpWord[] = [
  "alone",
  "setUp",
  "standBy",
  "touching",
  "minimal",
  "moderate",
  "maximal",
  "dependent",
];
export function sayHelp(word: HelpWord): string {
  return HELP[word];
}
