import type { DoseRow } from "./dose.ts";

/**
 * Sets, repetitions and holds. No published repetition dose exists for most mat positions: those rows are proposals of
 * this project inside the published envelope, for the site to change.
 */
export const DOSES = {
  lift: { title: "Lifting the seat", form: "repetitions", sets: [2, 3], repetitions: [5, 10], holdSeconds: [3, 5], restSeconds: 60, eachSide: false, source: "judgement", seen: "judgement", editable: true, note: "holds short, for the sake of the blood pressure" },
  roll: { title: "Rolling", form: "repetitions", sets: [2, 3], repetitions: [5, 8], holdSeconds: null, restSeconds: 60, eachSide: true, source: "judgement", seen: "judgement", editable: true, note: "no trial with a repetition dose was found" },
  prop: { title: "Holding on the forearms", form: "hold", sets: [2, 3], repetitions: null, holdSeconds: [10, 30], restSeconds: 60, eachSide: false, source: "judgement", seen: "judgement", editable: true, note: "no trial with a dose was found" },
  sitHold: { title: "Holding in sitting", form: "hold", sets: [2, 2], repetitions: null, holdSeconds: [10, 30], restSeconds: 60, eachSide: false, source: "judgement", seen: "judgement", editable: true, note: "no trial with a dose was found" },
  shift: { title: "Shifting weight in lying or sitting", form: "repetitions", sets: [2, 2], repetitions: [5, 10], holdSeconds: null, restSeconds: 60, eachSide: false, source: "judgement", seen: "judgement", editable: true, note: "a trial in sitting used 30 a day" },
  handsAndKnees: { title: "Rocking on hands and knees", form: "repetitions", sets: [2, 2], repetitions: [5, 10], holdSeconds: [3, 5], restSeconds: 90, eachSide: false, source: "judgement", seen: "judgement", editable: true, note: "no trial with a dose was found" },
  kneelHold: { title: "Holding in kneeling", form: "hold", sets: [2, 2], repetitions: null, holdSeconds: [5, 10], restSeconds: 90, eachSide: false, source: "judgement", seen: "judgement", editable: true, note: "a trial trained kneeling 30 minutes a day without naming sets" },
  kneelShift: { title: "Shifting weight in kneeling", form: "repetitions", sets: [2, 2], repetitions: [5, 10], holdSeconds: null, restSeconds: 90, eachSide: false, source: "judgement", seen: "judgement", editable: true, note: "a trial trained kneeling 30 minutes a day without naming sets" },
  halfKneel: { title: "Half kneeling", form: "repetitions", sets: [2, 2], repetitions: [3, 5], holdSeconds: [5, 10], restSeconds: 90, eachSide: false, source: "judgement", seen: "judgement", editable: true, note: "no trial with a dose was found" },
  standUp: { title: "Sit to stand", form: "repetitions", sets: [3, 3], repetitions: [5, 5], holdSeconds: null, restSeconds: 60, eachSide: false, source: "barreca-2004", seen: "read", editable: false, note: "three sets of five, three times a week; the rest is a proposal of this project" },
  standShift: { title: "Shifting weight in standing", form: "repetitions", sets: [2, 3], repetitions: [10, 20], holdSeconds: null, restSeconds: 90, eachSide: false, source: "judgement", seen: "judgement", editable: true, note: "no trial with a dose was found" },
  steps: { title: "Stepping", form: "steps", sets: [2, 3], repetitions: [6, 10], holdSeconds: null, restSeconds: 90, eachSide: false, source: "judgement", seen: "judgement", editable: true, note: "no dose before standing alone was found" },
  strengthen: { title: "Strengthening", form: "repetitions", sets: [1, 3], repetitions: [10, 15], holdSeconds: null, restSeconds: 90, eachSide: false, source: "billinger-2014", seen: "read", editable: false, note: "two to three days a week, 50 to 80 percent of the most that can be lifted once; the rest is a proposal of this project" },
  stretch: { title: "Stretching", form: "hold", sets: [2, 2], repetitions: null, holdSeconds: [10, 30], restSeconds: 15, eachSide: false, source: "billinger-2014", seen: "read", editable: false, note: "the hold is printed; the sets are a proposal of this project" },
} as const satisfies Record<string, DoseRow>;

/** What a body at this share of its strength is given: the nearer to all there is, the fewer and the longer the rest. Proposal of this project. */
export const EFFORT_BANDS = [
  { upTo: 0.5, place: 1, restTimes: 1 },
  { upTo: 0.7, place: 0.6, restTimes: 1 },
  { upTo: 0.85, place: 0, restTimes: 1.5 },
  { upTo: Number.POSITIVE_INFINITY, place: 0, restTimes: 2 },
] as const;
