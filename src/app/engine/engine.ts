import type { CatalogueAnswer } from "../contract/catalogue-answer.ts";
import type { Argument, ArgumentAnswer, Comparison, Wishes } from "../contract/argument.ts";
import type { CaseFile } from "../contract/case-file.ts";
import type { CheckAnswer } from "../contract/check-answer.ts";
import type { RungEffort } from "../contract/effort-answer.ts";
import type { PlanAnswer } from "../contract/plan-answer.ts";
import type { WeekAnswer } from "../contract/week-answer.ts";
import type { LearnedAnswer } from "./learned.ts";
import type { OwnRung } from "./own-activities.ts";
import type { OwnStart, OwnTrial } from "./own-rung.ts";
import type { MovedFinding, WeighedRung, WhatIfChoice } from "./what-if.ts";

/** A plan as it is asked for. */
export interface PlanQuestion {
  readonly case: CaseFile;
  readonly minutes: number;
  readonly wishes?: Wishes;
}
export interface RungName {
  readonly activity: string;
  readonly rung: string;
}

/** Why a rung is not in today's plan, what would change it, what serves instead, and what putting it in would cost. */
export interface AbsenceAnswer {
  readonly activity: string;
  readonly rung: string;
  readonly name: string;
  /** A plain sentence first. */
  readonly sentence: string;
  readonly because: readonly { readonly rule: string; readonly detail: string; readonly source: string }[];
  /** The number behind the sentence, with unit words; null where no number decides. */
  readonly figure: string | null;
  readonly wouldChange: readonly string[];
  readonly instead: readonly (RungName & {
    readonly name: string;
    readonly position: string;
    readonly eligible: boolean;
  })[];
  /** May be put in by hand anyway; a stop rule refuses. */
  readonly mayForce: boolean;
  /** What leaves if it is put in, in words; null where it cannot be. */
  readonly cost: string | null;
}

/** Everything the page shows of one rung for one person, besides the plan's own item. */
export interface RungSheet {
  readonly activity: string;
  readonly rung: string;
  readonly name: string;
  readonly plainName: string;
  readonly position: string;
  readonly positionName: string;
  readonly purpose: string;
  readonly changes: string;
  readonly movesFirst: string;
  readonly yourPlace: string;
  readonly yourHands: readonly string[];
  readonly yourKnee: string | null;
  readonly say: string;
  readonly cue: string;
  readonly good: string;
  readonly faults: readonly { readonly id: string; readonly fault: string; readonly do: string }[];
  readonly stopSigns: readonly string[];
  readonly wayOut: { readonly planned: readonly string[]; readonly hurry: readonly string[] };
  readonly notAtHome: string | null;
  readonly rungDown: (RungName & { readonly name: string }) | null;
  readonly rungUp: (RungName & { readonly name: string }) | null;
  readonly substitutes: readonly (RungName & { readonly name: string; readonly position: string })[];
  /** "What it asks": a sentence, then its line of figures, then the basis to open. */
  readonly asks: readonly Ask[];
}
export interface Ask {
  readonly sentence: string;
  readonly figure: string;
  readonly basis: Basis;
}
/** A number opened: formula, what goes in with its value and how it is known, sources, and what it does not know. */
export interface Basis {
  readonly formula: string;
  readonly inputs: readonly { readonly name: string; readonly value: string; readonly known: string }[];
  readonly sources: readonly { readonly id: string; readonly title: string; readonly seen: string }[];
  readonly wouldChangeMost: string | null;
  readonly doesNotKnow: readonly string[];
}

export interface PictureRequest extends RungName {
  /** The item with helper and marks; the mat from above; the hands close up; the body alone; the body level from the weak side, for the session line. */
  readonly kind: "item" | "above" | "hands" | "body" | "line";
  readonly theme: "screen" | "paper";
  readonly width: number;
  /** Fits the drawing into this height too, so that its lines and words keep their size. */
  readonly height?: number;
}
/** A drawing with its text alternative, made from the same data. */
export interface Picture {
  readonly svg: string;
  readonly text: string;
  /** Where the seven joints are, in the drawing's own units; for the look. */
  readonly joints?: readonly { readonly joint: string; readonly x: number; readonly y: number }[];
  /** Where the helper's marks are on the mat from above, in the drawing's own units, to be pressed. */
  readonly marks?: readonly { readonly id: string; readonly x: number; readonly y: number }[];
  /** Scale and centre of mass of the body alone, in the drawing's own units, so that its centre can ride on the session line. */
  readonly scale?: {
    readonly perMetre: number;
    readonly centreX: number;
    readonly centreY: number;
    readonly groundY: number;
  };
}

/** The computing side of the product, without store or network: the same in the command, the server and the page's worker. */
export interface Engine {
  readonly version: { readonly product: string; readonly knowledge: string };
  check(caseFile: CaseFile): CheckAnswer;
  plan(caseFile: CaseFile, minutes: number, wishes?: Wishes): PlanAnswer;
  /** The week from today's plan: days, ladders that alternate, rest, what is expected, what is looked at again; and the log of every ladder. */
  week(caseFile: CaseFile, minutes: number, wishes?: Wishes): WeekAnswer;
  effort(caseFile: CaseFile, activity: string, rung?: string): readonly RungEffort[];
  /** With a case, that person's own rungs stand behind it. */
  catalogue(caseFile?: CaseFile | null): CatalogueAnswer;
  /** One thing said against a plan: what changes, what it costs, or why not. Nothing is taken over by asking. */
  argue(caseFile: CaseFile, minutes: number, wishes: Wishes, argument: Argument): ArgumentAnswer;
  /** Two plans side by side: what is in one and not in the other, why, and what the second costs. */
  compare(first: PlanQuestion, second: PlanQuestion): Comparison;
  absence(caseFile: CaseFile, minutes: number, wishes: Wishes, of: RungName): AbsenceAnswer;
  sheet(caseFile: CaseFile, of: RungName): RungSheet;
  picture(caseFile: CaseFile, request: PictureRequest): Picture;
  /** The findings that bear on a rung and can be moved to see what follows. */
  whatIfChoices(caseFile: CaseFile, of: RungName): readonly WhatIfChoice[];
  /** A rung weighed with one finding moved, or as found; the case itself stays as it is. */
  weigh(caseFile: CaseFile, of: RungName, moved: MovedFinding | null): WeighedRung;
  /** The case with a moved finding taken over. */
  moveFinding(caseFile: CaseFile, moved: MovedFinding): CaseFile;
  /** What there is to change in a rung, on this body; null for an unknown one. */
  ownStart(caseFile: CaseFile, of: RungName): OwnStart | null;
  /** A rung of the therapist's own, posed and weighed on this body before it is kept. */
  tryOwnRung(caseFile: CaseFile, own: OwnRung, width: number): OwnTrial;
  /** What the evidence in the second case did to the strengths believed from the first. */
  learned(before: CaseFile, after: CaseFile): LearnedAnswer;
  /** The twelve figures of the look, in task order; drawn on this body. */
  lookPicture(caseFile: CaseFile, task: string, width: number): Picture;
}

export type { CaseFile, PlanAnswer, Wishes };
