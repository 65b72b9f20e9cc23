import { ProgrammingError } from "../../../quantity/programming-error.ts";
import type { Activity } from "../activity.ts";
import type { EquipmentId } from "../../codes.ts";
import { FLOOR_TEACHING } from "./floor.data.ts";
import { LYING_TEACHING } from "./lying.data.ts";
import { MEASURES } from "./measures.data.ts";
import { ORDINARY_INSTEAD } from "./ordinary.data.ts";
import { PRONE_TEACHING } from "./prone.data.ts";
import { SIDE_LYING_TEACHING } from "./side-lying.data.ts";
import { SITTING_TEACHING } from "./sitting.data.ts";
import { STANDING_TEACHING } from "./standing.data.ts";
import type { Measure, OrdinaryPiece, Teaching } from "./teaching.ts";
import { WALKING_TEACHING } from "./walking.data.ts";

/** What is taught around every activity, by its identifier. */
export const TEACHING: Readonly<Record<string, Teaching>> = {
  ...LYING_TEACHING,
  ...SIDE_LYING_TEACHING,
  ...PRONE_TEACHING,
  ...SITTING_TEACHING,
  ...FLOOR_TEACHING,
  ...STANDING_TEACHING,
  ...WALKING_TEACHING,
};

/** What is taught around an activity. An activity without a row is a programmer's error. */
export function teachingOf(activity: Pick<Activity, "id">): Teaching {
  const found = TEACHING[activity.id];
  if (found === undefined) throw new ProgrammingError(`no teaching for ${activity.id}`);
  return found;
}

/** The measure that would show an activity's effect. */
export function measureOf(teaching: Teaching): Measure {
  return MEASURES[teaching.measure.id];
}

/** Every piece of equipment the rungs of an activity use. */
export function equipmentOf({ rungs }: Activity): readonly EquipmentId[] {
  return [...new Set(rungs.flatMap(({ equipment }) => equipment))];
}

/** What does instead of one piece in this activity: its own answer, or for pieces found in every house the common one; null where none is known. */
export function insteadOf(activity: Activity, piece: EquipmentId): string | null {
  return isOrdinary(piece) ? ORDINARY_INSTEAD[piece] : (teachingOf(activity).instead[piece] ?? null);
}

export function isOrdinary(piece: EquipmentId): piece is OrdinaryPiece {
  return piece in ORDINARY_INSTEAD;
}
