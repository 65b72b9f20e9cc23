import type { WeekAnswer } from "../contract/week-answer.ts";

/** The week as a section for page or paper: a title, then blocks of lines, every line a plain sentence. */
export interface WeekSection {
  readonly title: string;
  readonly lead: string;
  readonly blocks: readonly { readonly head: string; readonly lines: readonly string[] }[];
}

/** "Day 1 (2026-03-16)". */
const dayWords = (day: number, date: string | null): string => `Day ${day}${date === null ? "" : ` (${date})`}`;

/** The week in words. Blocks with nothing to say are left out; figures carry their source in brackets. */
export function weekSection(week: WeekAnswer): WeekSection {
  const { sessionDays } = week;
  const named = (activity: string): string =>
    week.ladders.find((ladder) => ladder.activity === activity)?.words ?? activity;
  const days = week.days.map(({ day, date, sessions, ladders }) =>
    sessions === 0
      ? `${dayWords(day, date)}: no session.`
      : `${dayWords(day, date)}${sessions === 2 ? ", twice and short" : ""}: ${ladders
          .map(({ words, inPlaceOf }) => (inPlaceOf === null ? words : `${words} (instead of ${named(inPlaceOf)})`))
          .join("; ")}.`,
  );
  const blocks = [
    { head: "Which days", lines: week.ladders.length === 0 ? [] : [cited(sessionDays.because, sessionDays), ...days] },
    {
      head: "How often, and from where",
      lines: week.ladders.map(({ words, dose, hard }) =>
        cited(
          `${words}: ${dose.words}, ${dose.population}.${hard ? " Near the limit today, so not two days running." : ""}`,
          dose,
        ),
      ),
    },
    {
      head: "What the log says",
      lines: week.log
        .filter(({ inPlan, step, trend }) => inPlan || step !== "stay" || trend !== null)
        .flatMap(({ name, step, because, whatToDo, trend, ...rule }) => [
          cited(`${name}, ${STEP_WORDS[step]}. ${because} ${whatToDo}`, rule),
          ...(trend === null ? [] : [cited(`${name}. ${trend.words} ${trend.tryThis}`, trend)]),
        ]),
    },
    { head: "What may change, if it goes well", lines: week.ladders.map(({ words, expect }) => `${words}. ${expect}`) },
    { head: "Rest", lines: week.rest.map((each) => cited(each.text, each)) },
    {
      head: "Look again",
      lines: week.lookAgain.map((each) => cited(`${dayWords(each.day, each.date)}: ${each.text}`, each)),
    },
  ];
  return {
    title: "This week",
    lead: week.hold === null ? week.sentence : `${week.sentence} ${week.hold.whatToDo}`,
    blocks: blocks.filter(({ lines }) => lines.length > 0),
  };
}

const STEP_WORDS = { up: "one rung up", stay: "the same rung", down: "one rung down" } as const;

/** What is no publication says so in its own word. */
function cited(text: string, { source, seen }: { readonly source: string; readonly seen: string }): string {
  if (seen === "common-practice") return `${text} (common practice)`;
  return seen === "judgement" ? `${text} (a proposal)` : `${text} (${source})`;
}
