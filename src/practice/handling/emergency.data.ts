import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";

interface EmergencyCard {
  readonly title: string;
  /** How it shows. */
  readonly looksLike: string;
  readonly steps: readonly string[];
  /** When the emergency team or number is called. */
  readonly callWhen: string;
  readonly note: string;
  readonly source: SourceId;
  readonly seen: Seen;
}

/** One card each, readable at arm's length. The local emergency protocol comes first. */
export const EMERGENCY_CARDS = {
  slides: {
    title: "Slides off",
    looksLike: "The seat or a foot slides and the person goes down slowly.",
    steps: [
      "Do not lift and do not pull the weak arm.",
      "Stay close, hold the pelvis or belt, guide the slide down along your thigh.",
      "Protect the head and the weak arm.",
      "Once down, let the person lie and breathe; ask and look for pain, head knock, breath and colour.",
      "Nothing hurt and signs steady: up again in steps, or with a lift and a second helper.",
    ],
    callWhen: "Head knock, thinned blood, pain in hip or neck, a limb out of shape, or not as before.",
    note: "Write the incident down, whether or not anything is hurt.",
    source: "common-practice",
    seen: "common-practice",
  },
  collapses: {
    title: "Collapses or faints",
    looksLike: "Goes limp, pale, blank, no answer.",
    steps: [
      "Lower to the nearest flat place: mat, floor, back to lying.",
      "Call out for help; look for breath and answer.",
      "Not breathing normally: call, start resuscitation, send for the defibrillator.",
      "Breathing: measure pressure, pulse, oxygen, and glucose where sugar is treated.",
      "Raise the legs only if the pressure is low.",
      "Awake and steady: stay lying, then up in stages on another day or when the physician agrees.",
    ],
    callWhen: "No breath, no answer within a minute, a new sign, chest pain, or pressure that stays low.",
    note: "Write down the time, what was being done and the measurements.",
    source: "common-practice",
    seen: "common-practice",
  },
  seizure: {
    title: "Seizure",
    looksLike: "Staring, stiff, jerking, no answer.",
    steps: [
      "Stop and lower to the mat.",
      "Clear the space, cushion the head, loosen what is tight.",
      "Nothing in the mouth; do not hold the limbs down.",
      "Note the time.",
      "Onto the side as soon as it can be done; keep the weak arm free.",
      "Stay until fully awake.",
    ],
    callWhen: "Longer than 5 minutes, a second one, the first ever, hurt, or not waking. A new seizure after a stroke: call at once.",
    note: "Nothing more today; the physician decides about tomorrow.",
    source: "seizure-first-aid",
    seen: "read",
  },
  newSign: {
    title: "New sign of a stroke",
    looksLike: "Sudden loss of balance, sight or double sight, face droop, arm or leg weaker, speech trouble, confusion, worst headache, less alert.",
    steps: [
      "Stop and lay the person down safely on the side or back, head as ordered.",
      "Call now and say: new stroke sign.",
      "Note the time it began, or the time the person was last as at the start.",
      "Nothing to eat or drink.",
      "Measure pressure, pulse, oxygen, glucose; stay with the person.",
    ],
    callWhen: "At once. Any step down from the state at the start of the session counts, also in someone who had a stroke before.",
    note: "Do not wait to see whether it passes.",
    source: "be-fast",
    seen: "read",
  },
  chestPain: {
    title: "Chest pain or sudden short breath",
    looksLike: "Pressure or pain in chest, arm, jaw or back; sudden short breath; coughing blood.",
    steps: [
      "Stop; sit the person up, supported, clothes loose.",
      "Call; do not leave the person.",
      "Measure pressure, pulse, oxygen; oxygen as ordered.",
      "Think of a clot in the lung: keep a swollen leg still.",
      "No answer or no breath: start resuscitation.",
    ],
    callWhen: "At once.",
    note: "The session is over.",
    source: "vte-update-2022",
    seen: "read",
  },
} as const satisfies Record<string, EmergencyCard>;
