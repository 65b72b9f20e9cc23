import { wasAway } from "../../practice/dosing/judge-ladder.ts";
import { WEEK_FIGURES, WEEK_REST } from "../../practice/dosing/week.data.ts";
import type { RungToday } from "../../plan/assess/rung-today.ts";
import { lookAgain } from "../../plan/person/look-again.ts";
import { absenceFrom, stepOnLadder } from "../../plan/session/ladder-step.ts";
import { PURPOSE_WORDS } from "../../plan/session/needs.ts";
import type { PlannedItem } from "../../plan/session/session-plan.ts";
import { LOOK_AGAIN } from "../../plan/week/look-again.data.ts";
import { type LadderWeek, planWeek, type Week } from "../../plan/week/plan-week.ts";
import type { WeekAnswer } from "../contract/week-answer.ts";
import type { PersonToday } from "./person-today.ts";
import type { SolvedSession } from "./plan-session.ts";
import { takeNextOf } from "./take-next.ts";
import { VERSION } from "./version.ts";
import { expectOf } from "./week-expect.ts";
import { lowerFirst } from "./words.ts";

const DAYS = [1, 2, 3, 4, 5, 6, 7] as const;
const DAY_MILLISECONDS = 86_400_000;

/**
 * The week from today's plan, the goals and the log: which days, which ladders alternate, what rests, what is expected to
 * change and what is looked at again. The same case gives the same week; nothing in it is promised.
 */
export function answerWeek({ person, session }: SolvedSession): WeekAnswer {
  const items = session?.items ?? [];
  const { hold } = person;
  const partners = partnersOf(person, items);
  const week = planWeek(
    person.findings,
    items.map(({ today, purpose }) => ({
      activity: today.activity.id,
      purpose,
      position: today.activity.position,
      effort: today.asks?.cautious ?? null,
      partner: partners.get(today.activity.id)?.activity.id ?? null,
    })),
  );
  const empty = items.length === 0;
  const { days, rule, source, seen } = week.sessions;
  return {
    version: VERSION,
    hold: hold === null ? null : { because: hold.because.map((each) => ({ ...each })), whatToDo: hold.whatToDo },
    sentence: sentenceOf(person, items, week),
    sessionDays: { days: empty ? [] : [...days], because: empty ? "No session is planned." : rule, source, seen },
    days: DAYS.map((day) => ({
      day,
      date: dateOf(person, day),
      sessions: !empty && days.includes(day) ? week.sessions.sessionsADay : 0,
      ladders: empty ? [] : laddersOn(day, items, week, partners),
    })),
    ladders: items.map((item, k) => {
      const own = week.ladders[k];
      const on = own?.days ?? [];
      const dose = own?.dose;
      return {
        activity: item.today.activity.id,
        rung: item.today.rung.id,
        words: wordsOf(item.today),
        hard: own?.hard ?? false,
        days: [...on],
        dose: {
          daysPerWeek: [dose?.daysPerWeek[0] ?? 0, dose?.daysPerWeek[1] ?? 0],
          words: dose?.what ?? "",
          population: dose?.population ?? "",
          source: dose?.source ?? "judgement",
          seen: dose?.seen ?? "judgement",
        },
        expect: expectOf(person, item, on),
      };
    }),
    log: logOf(person, items),
    rest: empty ? [] : WEEK_REST.map((each) => ({ ...each })),
    lookAgain: lookAgainOf(person, session, week, empty),
  };
}

const wordsOf = ({ activity, rung }: RungToday): string => `${activity.name}: ${lowerFirst(rung.name)}`;

function dateOf({ findings: { date } }: PersonToday, day: number): string | null {
  if (date === null) return null;
  const at = Date.parse(date);
  return Number.isNaN(at) ? null : new Date(at + (day - 1) * DAY_MILLISECONDS).toISOString().slice(0, 10);
}

function sentenceOf({ findings, hold }: PersonToday, items: readonly PlannedItem[], week: Week): string {
  if (hold !== null) return "No week is planned while the session is on hold.";
  if (items.length === 0) return "No week is planned: today's plan is empty.";
  const hard = week.ladders.filter((ladder) => ladder.hard).length;
  const purposes = [...new Set(items.map(({ purpose }) => PURPOSE_WORDS[purpose]))].slice(0, 3);
  const toward = findings.goals[0] === undefined ? "" : `, toward "${findings.goals[0]}"`;
  return `${week.sessions.days.length} days with a session, for ${purposes.join(", ")}${toward}; ${hard === 0 ? "nothing has to rest between days" : `${hard === 1 ? "one ladder is" : `${hard} ladders are`} near the limit and done only every other day`}.`;
}

/** For each hard ladder another one, open today and easier, with the same purpose, where possible without another position. */
function partnersOf(person: PersonToday, items: readonly PlannedItem[]): ReadonlyMap<string, RungToday> {
  const taken = new Set(items.map(({ today }) => today.activity.id));
  const positions = new Set(items.map(({ today }) => today.activity.position));
  const partners = new Map<string, RungToday>();
  for (const { today, purpose } of items) {
    if ((today.asks?.cautious ?? 0) < WEEK_FIGURES.hardFrom) continue;
    const named = new Set(today.rung.substitutes.map(({ activity, rung }) => `${activity}/${rung}`));
    const fit = person.rungs
      .filter(
        (each) =>
          each.eligible &&
          !taken.has(each.activity.id) &&
          (each.rung.trains[purpose] ?? 0) > 0 &&
          positions.has(each.activity.position) &&
          (each.asks?.cautious ?? 1) < WEEK_FIGURES.hardFrom,
      )
      .map((each) => ({ each, rank: named.has(`${each.activity.id}/${each.rung.id}`) ? 1 : 0 }))
      .sort((a, b) => b.rank - a.rank || (b.each.asks?.cautious ?? 0) - (a.each.asks?.cautious ?? 0));
    const best = fit[0]?.each;
    if (best === undefined) continue;
    partners.set(today.activity.id, best);
    taken.add(best.activity.id);
  }
  return partners;
}

function laddersOn(
  day: number,
  items: readonly PlannedItem[],
  week: Week,
  partners: ReadonlyMap<string, RungToday>,
): WeekAnswer["days"][number]["ladders"] {
  return items.flatMap(({ today }, k) => {
    const own: LadderWeek | undefined = week.ladders[k];
    const entry = (each: RungToday, inPlaceOf: string | null) => [
      { activity: each.activity.id, rung: each.rung.id, words: wordsOf(each), inPlaceOf },
    ];
    if (own?.days.includes(day) === true) return entry(today, null);
    const partner = partners.get(today.activity.id);
    return own?.partnerDays.includes(day) === true && partner !== undefined ? entry(partner, today.activity.id) : [];
  });
}

function logOf(person: PersonToday, items: readonly PlannedItem[]): WeekAnswer["log"] {
  return person.activities.flatMap((activity) => {
    const step = stepOnLadder(person.findings, activity);
    if (step === null) return [];
    const { trend } = step;
    return [
      {
        activity: activity.id,
        name: activity.name,
        lastRung: activity.rungs[step.last]?.name ?? "",
        todayRung: activity.rungs[step.today]?.name ?? "",
        step: step.step,
        rule: step.rule,
        because: step.because,
        whatToDo: step.whatToDo,
        source: step.source,
        seen: step.seen,
        inPlan: items.some(({ today }) => today.activity.id === activity.id),
        trend: trend === null ? null : { ...trend },
      },
    ];
  });
}

function lookAgainOf(
  person: PersonToday,
  session: SolvedSession["session"],
  week: Week,
  empty: boolean,
): WeekAnswer["lookAgain"] {
  const second = week.sessions.days[1] ?? 2;
  const on = (day: number, said: { readonly text: string; readonly source: string; readonly seen: string }) => ({
    ...said,
    day,
    date: dateOf(person, day),
  });
  const absence = absenceFrom(person.findings, "");
  const next = takeNextOf(person, session)[0];
  return [
    ...(wasAway(absence) ? [on(1, LOOK_AGAIN.absence)] : []),
    ...lookAgain(person.model).map(({ sentence, because }) =>
      on(1, { text: `${sentence} ${because}`, source: "judgement", seen: "judgement" }),
    ),
    ...(next === undefined
      ? []
      : [on(1, { text: `${next.finding} ${next.wouldChange}`, source: "judgement", seen: "judgement" })]),
    ...(empty ? [] : [on(2, LOOK_AGAIN.nextDay), on(second, LOOK_AGAIN.firstTries)]),
    on(WEEK_FIGURES.lookAgainDay, LOOK_AGAIN.wholeLook),
  ];
}
