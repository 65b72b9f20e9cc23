import type { RungName, RungSheet } from "../../engine/engine.ts";
import type { OwnRung } from "../../engine/own-activities.ts";
import type { OwnStart } from "../../engine/own-rung.ts";
import { now } from "../record/identifiers.ts";

export type OwnAngle = OwnStart["angles"][number];
export type Support = "press" | "rest" | "light" | "away";

/** An own rung while it is written. */
export interface OwnDraft {
  readonly name: string;
  readonly words: string;
  readonly cue: string;
  readonly by: string;
  /** Number of the joint angle that is set; null for none. */
  readonly angle: number | null;
  readonly degrees: number;
  readonly limbFree: NonNullable<OwnRung["limbFree"]> | null;
  readonly part: string | null;
  readonly how: Support;
  readonly weightToWeakCm: number;
  readonly sets: number;
  /** Repetitions, or seconds held where the rung has none. */
  readonly count: number;
}

export function startDraft(start: OwnStart, sheet: RungSheet): OwnDraft {
  return {
    name: "",
    words: sheet.say,
    cue: sheet.cue,
    by: "",
    angle: null,
    degrees: 0,
    limbFree: null,
    part: null,
    how: "rest",
    weightToWeakCm: start.weightToWeakCm,
    sets: start.dose.sets,
    count: start.dose.repetitions ?? start.dose.holdSeconds ?? 5,
  };
}

export const LIMBS = [
  { id: "arm.weak", name: "weak arm" },
  { id: "arm.strong", name: "strong arm" },
  { id: "leg.weak", name: "weak leg" },
  { id: "leg.strong", name: "strong leg" },
] as const;
export const HOW: readonly { readonly id: Support; readonly name: string }[] = [
  { id: "press", name: "presses" },
  { id: "rest", name: "only lies there" },
  { id: "light", name: "only touches" },
  { id: "away", name: "is taken away" },
];

/** What changes against the rung it comes from, in words; empty where nothing does yet. */
export function sayChanges(draft: OwnDraft, start: OwnStart): string {
  const angle = draft.angle === null ? undefined : start.angles[draft.angle];
  const parts = [
    angle === undefined || angle.degrees === draft.degrees ? null : `${angle.name}: ${draft.degrees} degrees`,
    draft.limbFree === null ? null : `the ${LIMBS.find(({ id }) => id === draft.limbFree)?.name ?? ""} is free`,
    draft.part === null
      ? null
      : `the ${start.supports.find(({ part }) => part === draft.part)?.name ?? ""} ${HOW.find(({ id }) => id === draft.how)?.name ?? ""}`,
    draft.weightToWeakCm === start.weightToWeakCm
      ? null
      : `weight ${Math.abs(draft.weightToWeakCm)} cm toward the ${draft.weightToWeakCm < 0 ? "strong" : "weak"} side`,
  ].filter((part) => part !== null);
  if (parts.length === 0) return "";
  const text = parts.join("; ");
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

/** The draft as it is kept; what was left alone is not in it. */
export function ownRungOf(draft: OwnDraft, start: OwnStart, from: RungName, id: string): OwnRung {
  const angle = draft.angle === null ? undefined : start.angles[draft.angle];
  const moved = angle !== undefined && angle.degrees !== draft.degrees;
  const changes = sayChanges(draft, start);
  const { sets, count } = draft;
  return {
    id,
    from,
    name: draft.name.trim() === "" ? "Own variant" : draft.name.trim(),
    ...(changes === "" ? {} : { changes: changes.slice(0, 200) }),
    words: draft.words.trim() === "" ? "Now" : draft.words.trim(),
    cue: draft.cue.trim() === "" ? "now" : draft.cue.trim(),
    ...(moved
      ? {
          angles: [
            { joint: angle.joint, ...(angle.side === null ? {} : { side: angle.side }), degrees: draft.degrees },
          ],
        }
      : {}),
    ...(draft.limbFree === null ? {} : { limbFree: draft.limbFree }),
    ...(draft.part === null ? {} : { support: [{ part: draft.part, how: draft.how }] }),
    ...(draft.weightToWeakCm === start.weightToWeakCm ? {} : { weightToWeakCm: draft.weightToWeakCm }),
    sets,
    ...(start.dose.repetitions === null ? { holdSeconds: count } : { repetitions: count }),
    by: draft.by.trim() === "" ? "not signed" : draft.by.trim(),
    at: now(),
  };
}

/** What still keeps it from being written down; null where nothing does. */
export function missing(draft: OwnDraft, start: OwnStart): string | null {
  if (sayChanges(draft, start) === "") return "Nothing is changed yet.";
  if (draft.name.trim() === "") return "It needs a name.";
  if (draft.words.trim() === "" || draft.words.trim().split(/\s+/).length > 6)
    return "The words to say are one to six.";
  if (draft.cue.trim() === "" || /\s/.test(draft.cue.trim())) return "The cue is one word.";
  return draft.by.trim() === "" ? "Who writes it?" : null;
}
