import type { Laterality } from "../../quantity/sides.ts";
import type { RungHelper } from "../../practice/activities/activity.ts";
import { upperFirst } from "../note/rung-words.ts";
import type { PlannedRung } from "../planned-rung.ts";
import { fillSides } from "../words/body-sides.ts";
import type { HomeRung } from "./choose-home-rungs.ts";

/** Words of the home sheet that do not come from the catalogue. At or below sixth grade, like the rest. */
export const HOME_WORDS = {
  title: "At home this week",
  shortTitle: "At home",
  shortAfterShowing: "First show it here, 2 times.",
  stripes: "They have stripes:",
  afterShowing: "Show these here two times before you do them at home.",
  stopAll: "Stop and rest if you feel dizzy or sick, or if you are short of breath.",
  shortStopAll: "Dizzy or sick? Stop and rest.",
  callLead: "Call an ambulance:",
  call: "a new face droop, strange speech, a bad headache, a new weak arm or leg, or pain in the chest.",
  shortCall: "face droops, speech is strange, bad headache, new weak arm or leg, chest pain.",
  ticksTitle: "Days you did it",
  ticks: "Tick one box for each day.",
  hard: "What was hard? Write it here and bring this sheet back.",
  phone: "Who to phone:",
} as const;

/** How many, in plain words: "8 times, rest, 8 times." */
export function sayHowMany({ planned, rung }: HomeRung, short: boolean): string {
  const { sets, repetitions, holdSeconds } = planned.dose;
  const hold =
    holdSeconds === undefined || holdSeconds === 0
      ? null
      : `${holdSeconds} ${holdSeconds === 1 ? "second" : "seconds"}`;
  const unit = rung.dose.kind === "steps" ? "steps" : "times";
  const count = repetitions === undefined ? null : `${repetitions} ${repetitions === 1 ? unit.slice(0, -1) : unit}`;
  if (count === null)
    return hold === null ? `${countOf(sets)}.` : short ? `${hold} × ${sets}` : `Hold ${hold}, ${countOf(sets)}.`;
  if (short) return sets === 1 ? count : `${count} × ${sets}`;
  const held = hold === null ? "" : ` Hold ${hold}.`;
  if (sets === 1) return `${count}.${held}`;
  return sets === 2 ? `${count}, rest, ${count}.${held}` : `${count}. Rest. Do this ${countOf(sets)}.${held}`;
}

const countOf = (sets: number): string => (sets === 1 ? "one time" : `${sets} times`);

/** The sentences of a rung, said to this person, with their own helper's name in them. */
export function sayHome(
  home: { readonly sentences: string },
  person: Laterality,
  helper: string | null,
): readonly string[] {
  const named =
    helper === null
      ? home.sentences
      : home.sentences.replace(/\b(a|your|the) helper\b/gi, (all: string) =>
          /^[A-Z]/.test(all) ? upperFirst(helper) : helper,
        );
  return fillSides(named, person).split(/(?<=[.!?])\s+/);
}

/** Where the helper is, unless the sentences already say so: "With your partner on your left side." */
export function sayHelper(
  { rung, home, planned, withHelper }: HomeRung,
  person: Laterality,
  helper: string | null,
): string | null {
  if (!withHelper || helper === null || /\bhelper\b/i.test(home.sentences)) return null;
  return `${upperFirst(helper)} ${verbOf(planned)} ${fillSides(placeOf(rung.helper.at.beside), person)}.`;
}

function verbOf({ guard }: PlannedRung): string {
  if (guard === null) return "stays";
  if (guard.helperPose === "sitting") return "sits";
  return guard.helperPose === "standing" || guard.helperPose === "strideStanding" ? "stands" : "stays";
}

function placeOf(beside: RungHelper["at"]["beside"]): string {
  if (beside === "weak" || beside === "strong") return `at your {${beside}} side`;
  if (beside === "front") return "in front of you";
  if (beside === "behind") return "behind you";
  return beside === "foot" ? "at your feet" : "at your head";
}

/** What a helper at home is called, by whom the person lives with; null for nobody. */
export function nameHelperAtHome(livesWith: "alone" | "partner" | "family" | "facility" | null): string | null {
  if (livesWith === "partner") return "your partner";
  if (livesWith === "family") return "your family";
  return livesWith === "facility" ? "a nurse" : null;
}
