import { outlineOf } from "../../plan/session/session-plan.ts";
import { effortSentence, figureOf, loadSentence, partName, upper } from "../../plan/session/sentences.ts";
import { LOOK_PLACES } from "../../plan/eligibility/look-places.data.ts";
import { LOOK_TASKS } from "../../plan/findings.ts";
import { wordsOf } from "../../plan/guard.ts";
import { LIMB_KEYS, type Slot, TRUNK_KEYS } from "../../plan/person/slots.ts";
import type { RungToday } from "../../plan/assess/rung-today.ts";
import { type BodySide, otherBodySide } from "../../quantity/sides.ts";
import { GRADES, LOOK_RESULTS } from "../contract/case-codes.ts";
import type { CaseFile } from "../contract/case-file.ts";
import { nameOf } from "./learned.ts";
import type { PersonToday } from "./person-today.ts";
import { filingOf } from "./read-findings.ts";
import { helpSentence } from "./rung-sheet.ts";
import { round2 } from "./sides.ts";

/** One finding that bears on a rung and can be moved to see what follows. */
export interface WhatIfChoice {
  readonly id: string;
  readonly name: string;
  /** Its values in order, from the least to the most. */
  readonly values: readonly { readonly id: string; readonly words: string }[];
  /** The value found; null where it is not known, or measured by another means. */
  readonly found: string | null;
  readonly foundWords: string;
}

/** A finding set to another value. */
export interface MovedFinding {
  readonly finding: string;
  readonly value: string;
}

/** What a rung comes to with the findings as given. */
export interface WeighedRung {
  readonly eligible: boolean;
  /** Whether it may be done, as a sentence, with why not. */
  readonly verdict: string;
  readonly effort: {
    readonly sentence: string;
    readonly figure: string;
    readonly peak: { readonly low: number; readonly middle: number; readonly high: number };
  } | null;
  readonly load: { readonly sentence: string; readonly figure: string } | null;
  readonly help: string;
  readonly helpFigure: string | null;
  /** How far the weight can go, held still: forward and to the person's left [m]. */
  readonly outline: readonly { readonly forward: number; readonly left: number }[];
  readonly least: string | null;
  /** Said where the moved finding stands against what was seen and is set aside, so that nothing follows from it. */
  readonly setAside: string | null;
}

/** So many muscle groups are offered, those that work hardest in the rung first. */
const MOST_GROUPS = 6;
const RESULT_WORDS = {
  cannot: "cannot",
  withHelp: "with help",
  withTouch: "with a touch",
  alone: "alone",
  aloneWell: "alone and well",
} as const;

/** The findings that bear on a rung: the grades of the muscles that work in it, and the tasks of the look on its ladder. */
export function whatIfChoices(today: RungToday, file: CaseFile): readonly WhatIfChoice[] {
  const slots: Slot[] = [];
  const efforts = (today.asks?.efforts ?? [])
    .filter(({ counted }) => counted)
    .sort((a, b) => b.effort.middle - a.effort.middle);
  for (const { joint, direction, side } of efforts) {
    const slot = slotOf(joint, direction, side);
    if (slot !== null && !slots.some((each) => each.side === slot.side && each.key === slot.key)) slots.push(slot);
  }
  const graded = slots.slice(0, MOST_GROUPS).map((slot): WhatIfChoice => {
    const value = readGrade(file, slot);
    const found = typeof value === "string" ? value : null;
    return {
      id: `grade.${slot.side ?? "trunk"}.${slot.key}`,
      name: upper(nameOf(slot)),
      values: GRADES.map((grade) => ({ id: grade, words: `grade ${grade}` })),
      found,
      foundWords: found !== null ? `found: grade ${found}` : value === undefined ? "not graded yet" : "measured",
    };
  });
  const looked = LOOK_TASKS.filter((task) => LOOK_PLACES[task].activity === today.activity.id).map(
    (task): WhatIfChoice => {
      const result = file.look?.find((entry) => entry.task === task)?.result;
      const found = result === undefined || result === "notTried" ? null : result;
      return {
        id: `look.${task}`,
        name: `In the look: ${LOOK_PLACES[task].words}`,
        values: LOOK_RESULTS.flatMap((id) => (id === "notTried" ? [] : [{ id, words: RESULT_WORDS[id] }])),
        found,
        foundWords: found === null ? "not tried yet" : `seen: ${RESULT_WORDS[found]}`,
      };
    },
  );
  return [...graded, ...looked];
}

/** The findings with one of them moved; the file itself stays as it is. An unknown finding or value moves nothing. */
export function moveFinding(file: CaseFile, { finding, value }: MovedFinding): CaseFile {
  const [kind, first, key] = finding.split(".");
  const result = LOOK_RESULTS.find((each) => each === value);
  const task = LOOK_TASKS.find((each) => each === first);
  if (kind === "look" && task !== undefined && result !== undefined) {
    const others = (file.look ?? []).filter((entry) => entry.task !== task);
    const entry = { ...file.look?.find((each) => each.task === task), task, result };
    const moved = result === "aloneWell" ? { task, result, ...seatOf(entry) } : entry;
    const look = LOOK_TASKS.flatMap((each) =>
      each === task ? [moved] : others.filter((other) => other.task === each),
    );
    return { ...file, look };
  }
  const grade = GRADES.find((each) => each === value);
  if (kind !== "grade" || grade === undefined) return file;
  const limb = LIMB_KEYS.find((each) => each === key);
  const trunk = TRUNK_KEYS.find((each) => each === key);
  if (first === "trunk" && trunk !== undefined)
    return { ...file, strength: { ...file.strength, trunk: { ...file.strength?.trunk, [trunk]: grade } } };
  if ((first !== "weak" && first !== "strong") || limb === undefined) return file;
  const side = bodySide(file, first);
  return { ...file, strength: { ...file.strength, [side]: { ...file.strength?.[side], [limb]: grade } } };
}

const seatOf = ({ seatHeightCm }: { readonly seatHeightCm?: number | undefined }) =>
  seatHeightCm === undefined ? {} : { seatHeightCm };

/** A rung weighed at the findings as given: effort, load, help, outline and whether it may be done. */
export function weighRung(person: PersonToday, today: RungToday, moved: MovedFinding | null = null): WeighedRung {
  const { asks } = today;
  const outline = outlineOf(person.keeper, today);
  const flip = person.laterality.weak === "left" ? -1 : 1;
  const reason = today.out[0];
  const help = helpSentence(today);
  return {
    eligible: today.eligible,
    verdict: reason === undefined ? "It may be done today." : `Not today. ${upper(reason.detail).replace(/\.?$/, ".")}`,
    effort:
      asks === null
        ? null
        : {
            sentence: effortSentence(asks),
            figure: `${upper(partName(asks.limiting))}: ${figureOf(asks.peak)}.`,
            peak: { low: round2(asks.peak.low), middle: round2(asks.peak.middle), high: round2(asks.peak.high) },
          },
    load: asks === null ? null : loadSentence(asks),
    help: help?.sentence ?? "No help makes it possible today.",
    helpFigure: help?.figure ?? null,
    outline:
      outline === null
        ? []
        : outline.directions.map(({ direction, metres }) => ({
            forward: round2(direction[0] * metres),
            left: round2(direction[1] * metres * flip),
          })),
    least:
      outline === null
        ? null
        : `Tips first ${wordsOf(outline.least.towards)}: ${Math.max(1, Math.round(outline.least.metres * 100))} cm there.`,
    setAside: isSetAside(person, moved)
      ? "This stands against what was seen in function, so it is set aside and nothing follows from it."
      : null,
  };
}

/** A grade is evidence by its slot; what is seen in function is believed over it. */
function isSetAside({ model }: PersonToday, moved: MovedFinding | null): boolean {
  if (moved === null || !moved.finding.startsWith("grade.")) return false;
  const id = moved.finding.replace(/^grade/, "strength");
  return model.trail.some((entry) => entry.id === id && !entry.believed);
}

function slotOf(joint: string, direction: string, side: "weak" | "strong" | null): Slot | null {
  const move = `${direction.charAt(0).toUpperCase()}${direction.slice(1)}`;
  if (side === null) {
    const trunk = TRUNK_KEYS.find((each) => joint.startsWith("trunk") && each === direction);
    return trunk === undefined ? null : { side: null, key: trunk };
  }
  const key = LIMB_KEYS.find((each) => each === `${joint}${move}`);
  return key === undefined ? null : { side, key };
}

function readGrade(file: CaseFile, slot: Slot) {
  if (slot.side === null) return file.strength?.trunk?.[slot.key];
  return file.strength?.[bodySide(file, slot.side)]?.[slot.key];
}

function bodySide(file: CaseFile, side: "weak" | "strong"): BodySide {
  const weak = filingOf(file, {
    weak: file.weakSide === "left" || file.weakSide === "right" ? file.weakSide : null,
  }).weak;
  const known = weak ?? "left";
  return side === "weak" ? known : otherBodySide(known);
}
