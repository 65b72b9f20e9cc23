import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";

interface HandlingRule {
  readonly id: string;
  readonly text: string;
  readonly source: SourceId;
  readonly seen: Seen;
}

/** What holds for every hand on every person. */
export const HANDLING_RULES = [
  { id: "noPull", text: "Never pull on the weak arm.", source: "canadian-stroke-shoulder-2019", seen: "read" },
  { id: "noArmpit", text: "No hand, knee or thigh in the armpit: support the front of the shoulder, the blade, the chest or the pelvis.", source: "common-practice", seen: "common-practice" },
  { id: "noNeck", text: "The person does not hang on the helper's neck.", source: "common-practice", seen: "common-practice" },
  { id: "oneHandStays", text: "When you change place, one hand stays on the person.", source: "common-practice", seen: "common-practice" },
  { id: "thereFirst", text: "Be in the new place before the person moves; cross behind, never over the head.", source: "common-practice", seen: "common-practice" },
  { id: "weakSide", text: "Guard from the weak side unless a sign or a seen fall says otherwise.", source: "common-practice", seen: "common-practice" },
  { id: "neverForced", text: "A joint is blocked where it is, never forced past straight.", source: "common-practice", seen: "common-practice" },
  { id: "ownBack", text: "Bend your own knees, keep close, no twist; above 35 lb use a second helper or a device.", source: "waters-2007", seen: "read" },
] as const satisfies readonly HandlingRule[];

/** Looked at after every change of position. */
export const COMFORT_CHECKS = [
  { id: "arm", text: "Weak arm free, not trapped under the body.", source: "common-practice", seen: "common-practice" },
  { id: "pressure", text: "Nothing presses: buckle, belt, tube, fold in the cloth.", source: "common-practice", seen: "common-practice" },
  { id: "breath", text: "Breathing easy, face free.", source: "common-practice", seen: "common-practice" },
  { id: "dizzy", text: "Dizzy or not? Ask, and look at the colour.", source: "common-practice", seen: "common-practice" },
  { id: "lines", text: "Lines and catheter free, with slack.", source: "common-practice", seen: "common-practice" },
] as const satisfies readonly HandlingRule[];

/** Before the first move. */
export const OPENING_CHECKS = [
  { id: "who", text: "Say who you are, check the person's name and what they want to be called.", source: "common-practice", seen: "common-practice" },
  { id: "leave", text: "Say what is planned, and ask leave to touch.", source: "common-practice", seen: "common-practice" },
  { id: "today", text: "Ask for pain, sleep, last toilet, last meal or feed, time of the pain medicine.", source: "common-practice", seen: "common-practice" },
  { id: "measure", text: "Measure blood pressure, heart rate and oxygen against the limits and the orders.", source: "avert-criteria-2014", seen: "read" },
  { id: "baseline", text: "Note face, speech, arm and leg as they are now: any step down from this counts.", source: "be-fast", seen: "read" },
  { id: "wear", text: "Glasses, hearing aid, shoes and brace as the position asks; pockets empty, nothing that slides.", source: "common-practice", seen: "common-practice" },
  { id: "lines", text: "Count the lines; catheter slack, bag below the bladder.", source: "common-practice", seen: "common-practice" },
  { id: "place", text: "Brakes on, mat height set, way clear, belt on, call bell and seat in reach.", source: "common-practice", seen: "common-practice" },
  { id: "stopWord", text: "Agree on the sign that means stop.", source: "common-practice", seen: "common-practice" },
] as const satisfies readonly HandlingRule[];

/** Before the helper goes. */
export const CLOSING_CHECKS = [
  { id: "position", text: "Safe position, weak arm supported, weak side in view where it is neglected.", source: "common-practice", seen: "common-practice" },
  { id: "bell", text: "Call bell or a helper in reach of the strong hand.", source: "common-practice", seen: "common-practice" },
  { id: "brakes", text: "Brakes on, rails and bed height as ordered.", source: "common-practice", seen: "common-practice" },
  { id: "lines", text: "Count the lines again; nothing kinked.", source: "common-practice", seen: "common-practice" },
  { id: "skin", text: "Look at skin that was leaned on.", source: "common-practice", seen: "common-practice" },
  { id: "measure", text: "Measure again where a limit was near; note pain and exertion.", source: "common-practice", seen: "common-practice" },
  { id: "tell", text: "Tell nurse or family what is safe until next time.", source: "common-practice", seen: "common-practice" },
] as const satisfies readonly HandlingRule[];
