import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";

/** What a direction's normal moment rests on. Spread: between healthy people of one sex, age and size, as a part of the middle. */
export interface EvidenceRow {
  readonly sources: readonly SourceId[];
  readonly seen: Seen;
  readonly spread: number;
  /** No measured figure for this direction was found; what stands there is borrowed. */
  readonly missing?: true;
  readonly words: string;
}

/**
 * Spreads: leg, standard deviation over mean of "anderson2007" at 55-65 years, both sexes; elsewhere 0.35, the residual of
 * "harbo2012" (its lines explain a quarter to a third of the variance); rotations and elbow extension 0.4 to 0.45 (judgement). Where
 * a figure is missing, 0.6 (judgement): the middle half then runs from two thirds to one and a half of what stands there.
 */
export const MISSING_SPREAD = 0.6;
export const STRENGTH_EVIDENCE = {
  hipExtension: { sources: ["anderson2007", "hurley1995"], seen: "quoted", spread: 0.24, words: "regression over the angle by sex and age group" },
  hipFlexion: { sources: ["anderson2007", "hurley1995"], seen: "quoted", spread: 0.18, words: "regression over the angle by sex and age group" },
  kneeExtension: { sources: ["anderson2007", "hurley1995", "sarabon2021"], seen: "quoted", spread: 0.16, words: "regression over the angle by sex and age group" },
  kneeFlexion: { sources: ["anderson2007", "hurley1995"], seen: "quoted", spread: 0.23, words: "regression over the angle by sex and age group" },
  anklePlantarflexion: { sources: ["anderson2007", "hurley1995", "calf-knee-bent"], seen: "quoted", spread: 0.27, words: "regression over the angle by sex and age group; less with the knee bent" },
  ankleDorsiflexion: { sources: ["anderson2007", "hurley1995"], seen: "quoted", spread: 0.13, words: "regression over the angle by sex and age group" },
  hipAbduction: { sources: ["allison2016", "johnson2004", "cahalan1989"], seen: "derived", spread: 0.35, words: "mid-life mean with the published loss of older women; no fall over the angle taken, the two sources disagree" },
  hipAdduction: { sources: ["cahalan1989", "johnson2004"], seen: "derived", spread: 0.35, words: "ratio to abduction" },
  hipExternalRotation: { sources: ["cahalan1989"], seen: "memory", spread: 0.45, missing: true, words: "ratio to abduction from memory; no moment of older adults was found" },
  hipInternalRotation: { sources: ["cahalan1989"], seen: "memory", spread: 0.45, missing: true, words: "ratio to abduction from memory; no moment of older adults was found" },
  shoulderFlexion: { sources: ["harbo2012", "ivey1985", "shoulder-flexion-men"], seen: "derived", spread: 0.35, words: "ratio to abduction, falling as the arm rises" },
  shoulderExtension: { sources: ["shklar1995", "harbo2012"], seen: "derived", spread: 0.35, words: "order of the directions at the shoulder" },
  shoulderAbduction: { sources: ["harbo2012"], seen: "quoted", spread: 0.35, words: "regression on age, height and mass" },
  shoulderAdduction: { sources: ["harbo2012"], seen: "quoted", spread: 0.35, words: "regression on age, height and mass" },
  shoulderExternalRotation: { sources: ["ivey1985"], seen: "derived", spread: 0.4, missing: true, words: "ratio to abduction in young athletes; no moment of older adults was found" },
  shoulderInternalRotation: { sources: ["ivey1985"], seen: "derived", spread: 0.4, missing: true, words: "ratio to abduction in young athletes; no moment of older adults was found" },
  elbowFlexion: { sources: ["harbo2012", "hunter2004", "myosim-arm"], seen: "derived", spread: 0.35, words: "between two works; over the angle as muscles of a model" },
  elbowExtension: { sources: ["harbo2012", "myosim-arm"], seen: "derived", spread: 0.4, words: "0.7 of flexion, between two works that disagree; over the angle as muscles of a model" },
  wristFlexion: { sources: ["harbo2012", "delp1996"], seen: "quoted", spread: 0.35, words: "regression on age, height and mass" },
  wristExtension: { sources: ["harbo2012", "delp1996"], seen: "quoted", spread: 0.35, words: "regression, slow movement brought to a hold" },
  grip: { sources: ["grip-norms-2025"], seen: "quoted", spread: 0.22, words: "median by age and sex of 2.4 million people" },
  "trunk.flexion": { sources: ["trunk-three-planes-2021", "kocjan2014", "sinaki2001", "danneskiold2009"], seen: "derived", spread: 0.45, words: "share of extension; a third work measured about half as much again" },
  "trunk.extension": { sources: ["trunk-three-planes-2021", "kocjan2014", "sinaki2001", "danneskiold2009"], seen: "derived", spread: 0.45, words: "between two works; a third measured about twice as much" },
  "trunk.lateralFlexion": { sources: ["sinaki2001"], seen: "judgement", spread: MISSING_SPREAD, missing: true, words: "no figure was found: three quarters of extension stand in" },
  "trunk.rotation": { sources: ["trunk-three-planes-2021", "sinaki2001"], seen: "derived", spread: MISSING_SPREAD, missing: true, words: "measured at 20 to 40 years only; loss with age borrowed from extension" },
  neck: { sources: ["neck2014", "jordan1999", "garces2002"], seen: "read", spread: 0.35, words: "nine men; women by ratio; taken as unaffected" },
  pronation: { sources: ["askew1987", "koykka2025"], seen: "memory", spread: 0.35, words: "means of both sexes from memory; a newer work measured more" },
  radialDeviation: { sources: ["delp1996"], seen: "read", spread: 0.3, words: "ten men; women by judgement" },
  toeFlexion: { sources: ["endo2002"], seen: "read", spread: 0.38, words: "young and older, men and women" },
  toeExtension: { sources: [], seen: "judgement", spread: MISSING_SPREAD, missing: true, words: "no figure was found: a share of dorsiflexion stands in" },
  inversion: { sources: [], seen: "judgement", spread: MISSING_SPREAD, missing: true, words: "no figure was found: a share of plantarflexion stands in" },
  eversion: { sources: ["morin2023"], seen: "quoted", spread: 0.35, words: "ratio to dorsiflexion in the same thirty adults" },
  kneeTurn: { sources: [], seen: "judgement", spread: MISSING_SPREAD, missing: true, words: "no figure was found: a share of knee flexion stands in" },
  girdle: { sources: ["garner-shim"], seen: "derived", spread: MISSING_SPREAD, missing: true, words: "forces of young adults only: a share of the shoulder stands in, within a third of them" },
} as const satisfies Readonly<Record<string, EvidenceRow>>;
export type EvidenceKey = keyof typeof STRENGTH_EVIDENCE;

/** Less affected side after a stroke over healthy controls. */
export const LESS_AFFECTED = {
  /** Twelve groups of the leg, people who walk 1 to 6 years after; from memory. */
  leg: { middle: 0.66, low: 0.44, high: 0.91, source: "dorsch2016", seen: "memory" },
  /** Knee extension of 238 inpatients over a norm for their age: men 0.57-0.71, women 0.76-0.89; rough, other dynamometers. */
  kneeExtension: { middle: 0.73, low: 0.57, high: 0.89, source: "watanabe2015", seen: "derived" },
} as const;
