import type { Activity, Rung } from "../../practice/activities/activity.ts";
import { type FamilyHelper, mayBeDrawn, refuseForFamily } from "./family-helper.ts";
import { findRung } from "../note/rung-words.ts";
import { type PlannedRung, rungKey } from "../planned-rung.ts";

export interface HomeQuestion {
  readonly items: readonly PlannedRung[];
  readonly catalogue: readonly Activity[];
  readonly neglect: "none" | "mild" | "marked";
  /** Who is there: "your partner"; null where nobody is. */
  readonly helper: string | null;
  /** Rungs ("activity/rung") that were shown back twice; null where nothing was shown yet. */
  readonly shown: readonly string[] | null;
  /** What is known of the one who helps at home, and of the person they would hold. */
  readonly family?: FamilyAtHome | null | undefined;
  readonly most: number;
}

export interface FamilyAtHome {
  readonly helper: FamilyHelper;
  readonly person: { readonly heightCm: number; readonly massKg: number };
}

export interface HomeRung {
  readonly planned: PlannedRung;
  readonly rung: Rung;
  readonly home: NonNullable<Rung["home"]>;
  /** The helper has to be there. */
  readonly withHelper: boolean;
  /** The helper is in the picture. */
  readonly drawHelper: boolean;
}

export interface LeftOff {
  readonly activity: string;
  readonly rung: string;
  readonly plainName: string;
  readonly because: string;
}

/** Help at home is at most a hand that steadies; more than that is a trained hand. */
const HELP_AT_HOME: readonly string[] = ["standBy", "touching"];

/**
 * Which of today's rungs may go home, in the plan's order, and why the others may not. Nothing goes home that the
 * catalogue keeps back, that takes a trained hand, or that was not shown back twice where show-backs are kept. With
 * neglect nothing goes home that stands on one leg, and nothing at all without a helper.
 */
export function chooseHomeRungs(question: HomeQuestion): {
  readonly chosen: readonly HomeRung[];
  readonly leftOff: readonly LeftOff[];
} {
  const chosen: HomeRung[] = [];
  const leftOff: LeftOff[] = [];
  for (const planned of question.items) {
    const found = findRung(question.catalogue, planned);
    if (found === null) continue;
    const { rung } = found;
    const because =
      keptBack(question, planned, rung) ?? (chosen.length >= question.most ? `A sheet holds ${question.most}.` : null);
    if (because === null && rung.home !== null) {
      const withHelper = needsHelper(question, planned, rung);
      const drawHelper = withHelper && mayBeDrawn(question.family?.helper ?? {}, rung);
      chosen.push({ planned, rung, home: rung.home, withHelper, drawHelper });
    } else
      leftOff.push({
        activity: planned.activity,
        rung: planned.rung,
        plainName: rung.plainName,
        because: because ?? "It has no words for home.",
      });
  }
  return { chosen, leftOff };
}

function keptBack(question: HomeQuestion, planned: PlannedRung, rung: Rung): string | null {
  if (rung.notAtHome !== null) return rung.notAtHome;
  if (rung.home === null) return "It has no words for home.";
  if (planned.help !== null && !HELP_AT_HOME.includes(planned.help.words)) return "It takes a trained hand today.";
  if (question.neglect !== "none" && standsOnOneLeg(rung)) return "With neglect nothing on one leg goes home.";
  if (question.helper === null && needsHelper(question, planned, rung))
    return "Somebody has to be there, and no helper is named.";
  const { family } = question;
  if (family !== undefined && family !== null && needsHelper(question, planned, rung)) {
    const refused = refuseForFamily(family.helper, family.person, planned, rung);
    if (refused !== null) return refused;
  }
  if (question.shown !== null && !question.shown.includes(rungKey(planned))) return "Not shown back twice yet.";
  return null;
}

/** A leg is off while the other carries. */
export function standsOnOneLeg({ limbFree, demands }: Rung): boolean {
  return limbFree?.startsWith("leg") === true && demands.some((demand) => CARRYING.includes(demand));
}

const CARRYING: readonly string[] = ["standing", "footPressure", "kneePressure"];

function needsHelper({ neglect }: HomeQuestion, planned: PlannedRung, rung: Rung): boolean {
  return (
    neglect !== "none" ||
    planned.help !== null ||
    planned.guard !== null ||
    /\bhelper\b/.test(rung.home?.sentences ?? "")
  );
}
