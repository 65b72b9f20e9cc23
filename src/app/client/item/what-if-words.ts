import type { WeighedRung, WhatIfChoice } from "../../engine/what-if.ts";

/** One thing a moved finding may change: what it is now, and what it was as found. */
export interface Line {
  readonly id: "verdict" | "effort" | "load" | "help" | "outline";
  readonly name: string;
  readonly now: string;
  readonly figure: string | null;
  /** As found; null where it is the same. */
  readonly before: string | null;
}

/** What a rung comes to, line by line, against what it came to as found. */
export function linesOf(found: WeighedRung, now: WeighedRung): readonly Line[] {
  const line = (id: Line["id"], name: string, say: (rung: WeighedRung) => readonly [string, string | null]): Line => {
    const [words, figure] = say(now);
    const [wordsBefore, figureBefore] = say(found);
    const same = words === wordsBefore && figure === figureBefore;
    return { id, name, now: words, figure, before: same ? null : joined(wordsBefore, figureBefore) };
  };
  return [
    line("verdict", "May it be done?", ({ verdict }) => [verdict, null]),
    line("effort", "Effort", ({ effort }) =>
      effort === null ? ["The position cannot be held still.", null] : [effort.sentence, effort.figure],
    ),
    line("load", "Load", ({ load }) => (load === null ? ["Nothing is computed of it.", null] : [load.sentence, null])),
    line("help", "Help", ({ help, helpFigure }) => [help, helpFigure]),
    line("outline", "Balance", ({ least }) => [least ?? "No outline is worked out.", null]),
  ];
}

const joined = (words: string, figure: string | null): string => (figure === null ? words : `${words} ${figure}`);

/** What a screen reader is told when the hand rests: the finding's value and all that became different. */
export function sayFollows(
  choice: WhatIfChoice,
  value: string,
  lines: readonly Line[],
  { setAside }: WeighedRung,
): string {
  const words = choice.values.find(({ id }) => id === value)?.words ?? value;
  if (setAside !== null) return `${choice.name}, ${words}. ${setAside}`;
  const changed = lines.filter(({ before }) => before !== null);
  if (changed.length === 0) return `${choice.name}, ${words}: nothing else changes.`;
  return `${choice.name}, ${words}. ${changed.map(({ name, now, figure }) => `${name.replace("?", "")}: ${joined(now, figure)}`).join(" ")}`;
}
