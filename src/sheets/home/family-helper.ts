import type { Rung } from "../../practice/activities/activity.ts";
import type { PlannedRung } from "../planned-rung.ts";

/** Who helps at home, as far as it is known. Lengths and masses as they are typed. */
export interface FamilyHelper {
  readonly heightCm?: number | undefined;
  readonly massKg?: number | undefined;
  readonly ageYears?: number | undefined;
  readonly backTrouble?: boolean | undefined;
}

/** Limits of a helper at home: a proposal of this project, to be edited by the site ("judgement"). */
export const FAMILY_LIMITS = {
  /** Younger than this nobody holds or guards [year]. */
  childUnder: 16,
  /** From this age nobody is asked to kneel on the floor for it [year]. */
  kneelsUntil: 70,
  /** A helper so much shorter does not steady somebody who stands [cm]. */
  shorterBy: 20,
  /** A helper lighter than this share of the person does not steady somebody who stands. */
  lightestShare: 0.6,
} as const;

const KNEELS: readonly string[] = ["kneeling", "halfKneeling"];
const STANDS: readonly string[] = ["standing", "strideStanding"];

/** Whether this helper can be drawn as the rung shows its helper: nobody is drawn on knees they should not go down on. */
export function mayBeDrawn({ ageYears, backTrouble }: FamilyHelper, rung: Rung): boolean {
  const spares = backTrouble === true || (ageYears !== undefined && ageYears >= FAMILY_LIMITS.kneelsUntil);
  return !(spares && KNEELS.includes(rung.helper.pose));
}

/**
 * Why this helper cannot be asked for a rung that needs somebody there; null where they can. What is not known of the
 * helper bars nothing: the two show-backs are what decides then.
 */
export function refuseForFamily(
  family: FamilyHelper,
  person: { readonly heightCm: number; readonly massKg: number },
  planned: PlannedRung,
  rung: Rung,
): string | null {
  const { heightCm, massKg, ageYears, backTrouble } = family;
  const guards = planned.guard !== null;
  const holds = planned.help !== null && planned.help.words !== "standBy";
  const kneels = KNEELS.includes(rung.helper.pose) && (holds || guards);
  if (ageYears !== undefined && ageYears < FAMILY_LIMITS.childUnder && (holds || guards))
    return "A child neither holds nor guards.";
  if (backTrouble === true && rung.helper.always === true) return "It takes the helper's back, which is troubled.";
  if (backTrouble === true && holds && rung.helper.hands.some(({ does }) => does === "lifts" || does === "blocks"))
    return "The helper's back is troubled: nothing is lifted or blocked.";
  if (backTrouble === true && kneels) return "The helper's back is troubled: nothing low down on the knees.";
  if (ageYears !== undefined && ageYears >= FAMILY_LIMITS.kneelsUntil && kneels)
    return "The helper would have to kneel on the floor.";
  if (!guards || !STANDS.includes(planned.guard?.helperPose ?? "")) return null;
  if (heightCm !== undefined && person.heightCm - heightCm >= FAMILY_LIMITS.shorterBy)
    return "The helper is much shorter and cannot steady standing.";
  if (massKg !== undefined && massKg < FAMILY_LIMITS.lightestShare * person.massKg)
    return "The helper is too light to steady standing.";
  return null;
}
