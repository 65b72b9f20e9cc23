import type { SourcedText } from "./precaution.ts";

export const MEDICINE_IDS = [
  "anticoagulant",
  "antiplatelet",
  "betaBlocker",
  "antihypertensive",
  "insulin",
  "sulfonylurea",
  "sedative",
  "baclofen",
  "opioid",
  "diuretic",
] as const;

export interface MedicineRow {
  readonly title: string;
  /** False where the heart does not show the effort. */
  readonly heartRateGuides: boolean;
  readonly cautions: readonly SourcedText[];
}

/** What a medicine changes at the mat. The prescriber decides; nothing here changes a dose. */
export const MEDICINES = {
  anticoagulant: {
    title: "Blood thinner",
    heartRateGuides: true,
    cautions: [
      { text: "Bruises and bleeds easily: pads under the knees, firm wide hands; any knock to the head is reported at once.", source: "common-practice", seen: "common-practice" },
      { text: "INR above the ordered range: ask the team; above 5 nothing but essential moving until cleared.", source: "inr-activity-page", seen: "read" },
    ],
  },
  antiplatelet: {
    title: "Antiplatelet medicine",
    heartRateGuides: true,
    cautions: [{ text: "Bruises more easily: firm wide hands, look at the skin after kneeling.", source: "common-practice", seen: "common-practice" }],
  },
  betaBlocker: {
    title: "Beta blocker",
    heartRateGuides: false,
    cautions: [
      { text: "Heart rate does not show the effort: go by exertion, talk and signs.", source: "common-practice", seen: "common-practice" },
    ],
  },
  antihypertensive: {
    title: "Blood pressure medicine",
    heartRateGuides: true,
    cautions: [{ text: "Pressure may fall on coming up: in stages, and measure.", source: "common-practice", seen: "common-practice" }],
  },
  insulin: {
    title: "Insulin",
    heartRateGuides: true,
    cautions: [
      { text: "Ask for the last meal, dose and glucose; below 90 mg/dL fast sugar comes first.", source: "colberg-2016", seen: "read" },
      { text: "Very low glucose, or help needed for a low one, in the last 24 hours: no exercise.", source: "turner-2019", seen: "read" },
    ],
  },
  sulfonylurea: {
    title: "Sulfonylurea",
    heartRateGuides: true,
    cautions: [{ text: "Sugar can fall late: ask for the last meal; sweat, tremor or confusion means measure glucose.", source: "common-practice", seen: "common-practice" }],
  },
  sedative: {
    title: "Sedative",
    heartRateGuides: true,
    cautions: [{ text: "Slow and unsteady after a dose: ask when it was taken; helper in contact for every rise.", source: "common-practice", seen: "common-practice" }],
  },
  baclofen: {
    title: "Medicine against spasms",
    heartRateGuides: true,
    cautions: [{ text: "Drowsy and looser after a dose: a leg that stood on its stiffness may give.", source: "common-practice", seen: "common-practice" }],
  },
  opioid: {
    title: "Opioid",
    heartRateGuides: true,
    cautions: [{ text: "Drowsy, dizzy on rising, and pain is hidden: ask when it was taken and stop by quality.", source: "common-practice", seen: "common-practice" }],
  },
  diuretic: {
    title: "Water tablet",
    heartRateGuides: true,
    cautions: [{ text: "Toilet first; pressure may fall on coming up.", source: "common-practice", seen: "common-practice" }],
  },
} as const satisfies Record<(typeof MEDICINE_IDS)[number], MedicineRow>;
