import type { LimbAngle, MidAngle } from "../body/names.ts";

/**
 * Ends of a joint's range that can carry a moment without muscle: which end, within how much of it [degrees], and the
 * most it is trusted with [N.m]. Wrist: 1.2 N.m at 90 degrees back, "delp1996". Hip: 20
 * N.m relaxed at 18 degrees of extension, "riener1999". The others are judgement, set low.
 */
export interface StopRow {
  readonly end: "least" | "most";
  readonly withinDeg: number;
  readonly most: number;
  readonly words: string;
}
export const LIMB_STOPS: Readonly<Partial<Record<LimbAngle, readonly StopRow[]>>> = {
  kneeFlexion: [{ end: "least", withinDeg: 2.5, most: 60, words: "knee straight, resting on its end" }],
  elbowFlexion: [{ end: "least", withinDeg: 2.5, most: 20, words: "elbow straight, resting on its end" }],
  hipFlexion: [{ end: "least", withinDeg: 4, most: 20, words: "hip at the end of its extension" }],
  wristExtension: [{ end: "most", withinDeg: 8, most: 1.2, words: "wrist bent back to its end" }],
  ankleDorsiflexion: [{ end: "most", withinDeg: 3, most: 25, words: "ankle at the end of its bend" }, { end: "least", withinDeg: 4, most: 10, words: "foot pointed to its end" }],
  girdleElevation: [{ end: "least", withinDeg: 14, most: 15, words: "shoulder girdle hanging" }, { end: "most", withinDeg: 2, most: 25, words: "hanging in the shoulder girdle" }],
  girdleProtraction: [{ end: "least", withinDeg: 2, most: 20, words: "sagging between the shoulder blades" }, { end: "most", withinDeg: 2, most: 20, words: "shoulder blade drawn fully forward" }],
  toeExtension: [{ end: "most", withinDeg: 5, most: 8, words: "toes bent back to their end" }],
};
export const MID_STOPS: Readonly<Partial<Record<MidAngle, readonly StopRow[]>>> = {
  lumbarFlexion: [{ end: "least", withinDeg: 4, most: 40, words: "low back at the end of its hollow" }, { end: "most", withinDeg: 4, most: 40, words: "low back at the end of its bend" }],
  thoraxFlexion: [{ end: "least", withinDeg: 3, most: 25, words: "upper back at the end of its extension" }, { end: "most", withinDeg: 3, most: 25, words: "upper back at the end of its bend" }],
  neckFlexion: [{ end: "least", withinDeg: 4, most: 8, words: "neck at the end of its extension" }, { end: "most", withinDeg: 4, most: 8, words: "neck at the end of its bend" }],
};
