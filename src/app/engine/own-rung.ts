import { type Limits, limitsOf } from "../../mechanics/pose/targets.ts";
import type { Body } from "../../mechanics/body/body.ts";
import type { AngleId, LimbAngle, MidAngle } from "../../mechanics/body/names.ts";
import { ownRanges } from "../../plan/assess/own-ranges.ts";
import { poseOf } from "../../plan/assess/posed.ts";
import { degreesOf } from "../../quantity/angles.ts";
import { SIDES, type Side } from "../../quantity/sides.ts";
import { OWN_LIMB_ANGLES, OWN_TRUNK_ANGLES } from "../contract/case-own-rung.ts";
import type { Picture, RungName } from "./engine.ts";
import type { PersonToday } from "./person-today.ts";
import { isLimb, type OwnRung, ownActivity } from "./own-activities.ts";
import { sayPart } from "./part-words.ts";
import { drawRung } from "./pictures.ts";
import { type WeighedRung, weighRung } from "./what-if.ts";

/** What a rung looks like before it is made one's own: its angles, what it rests on, how far each joint goes. */
export interface OwnStart {
  readonly angles: readonly {
    readonly joint: NonNullable<OwnRung["angles"]>[number]["joint"];
    readonly side: Side | null;
    readonly name: string;
    readonly degrees: number;
    readonly least: number;
    readonly most: number;
  }[];
  readonly supports: readonly {
    readonly part: string;
    readonly name: string;
    readonly how: "press" | "rest" | "light";
  }[];
  readonly weightToWeakCm: number;
  readonly dose: { readonly sets: number; readonly repetitions: number | null; readonly holdSeconds: number | null };
}

/** An own rung posed and weighed on this body, or why it cannot be, with the joint or contact named. */
export type OwnTrial =
  | { readonly posed: true; readonly weighed: WeighedRung; readonly picture: Picture; readonly mind: readonly string[] }
  | { readonly posed: false; readonly because: string };

/** An asked angle and the one found may lie this far apart before it is said [degrees]. */
const APART = 10;
/** Further apart than this it is another pose than the one asked for [degrees]. */
const TOO_FAR = 30;

/** What there is to change in a rung, on this body. */
export function ownStart(person: PersonToday, of: RungName): OwnStart | null {
  const today = person.rung(of);
  if (today === undefined) return null;
  const prepared = person.keeper.prepare(poseOf(today.rung));
  const limits = limitsFor(person);
  const angle = (joint: OwnStart["angles"][number]["joint"], side: Side | null) => {
    const at = indexOf(person.body, side === null ? joint : `${joint}.${side}`);
    const found = prepared.possible ? (prepared.pose.configuration.angles[at] ?? 0) : 0;
    return {
      ...{ joint, side, name: sayJoint(joint, side), degrees: Math.round(degreesOf(found)) },
      ...{ least: Math.ceil(degreesOf(limits.least[at] ?? 0)), most: Math.floor(degreesOf(limits.most[at] ?? 0)) },
    };
  };
  const { dose, pose } = today.rung;
  return {
    angles: [
      ...SIDES.flatMap((side) => OWN_LIMB_ANGLES.map((joint) => angle(joint, side))),
      ...OWN_TRUNK_ANGLES.map((joint) => angle(joint, null)),
    ],
    supports: pose.contacts.map(({ patch, effort = "press" }) => ({ part: patch, name: sayPart(patch), how: effort })),
    weightToWeakCm: pose.shift?.toWeakCm ?? 0,
    dose: { sets: dose.sets, repetitions: dose.repetitions ?? null, holdSeconds: dose.holdSeconds ?? null },
  };
}

/** Poses and weighs an own rung on this body. The person's rungs must already hold it. */
export function tryOwnRung(person: PersonToday, own: OwnRung, width: number): OwnTrial {
  const fits = ownActivity(own);
  if ("because" in fits) return { posed: false, because: fits.because };
  const tooFar = beyondRange(person, own);
  if (tooFar !== null) return { posed: false, because: tooFar };
  const today = person.rung({ activity: own.id, rung: own.id });
  if (today === undefined) return { posed: false, because: "It is not among this person's rungs." };
  const prepared = person.keeper.prepare(poseOf(today.rung));
  if (!prepared.possible) return { posed: false, because: sayMiss(prepared.because) };
  if (today.asks === null)
    return {
      posed: false,
      because: `It cannot be held still with what it rests on: ${sayMiss(today.out.find(({ rule }) => rule === "holdStill")?.detail ?? "nothing bears the weight")}`,
    };
  const apart = (own.angles ?? []).flatMap(({ joint, side, degrees }) =>
    (isLimb(joint) ? (side === undefined ? SIDES : [side]) : [null]).flatMap((each) => {
      const at = indexOf(person.body, each === null ? joint : `${joint}.${each}`);
      const found = Math.round(degreesOf(prepared.pose.configuration.angles[at] ?? 0));
      return Math.abs(found - degrees) <= APART
        ? []
        : [
            {
              by: Math.abs(found - degrees),
              words: `${sayJoint(joint, each)} comes out at ${found} degrees, not ${degrees}`,
            },
          ];
    }),
  );
  const far = apart.find(({ by }) => by > TOO_FAR);
  if (far !== undefined) return { posed: false, because: `${far.words}: what it rests on does not let it go there.` };
  const mind = apart.map(({ words }) => `${words}: what it rests on decides.`);
  const request = { activity: own.id, rung: own.id, kind: "item", theme: "screen", width } as const;
  return { posed: true, weighed: weighRung(person, today), picture: drawRung(person, today, request), mind };
}

function beyondRange(person: PersonToday, own: OwnRung): string | null {
  const limits = limitsFor(person);
  for (const { joint, side, degrees } of own.angles ?? [])
    for (const each of isLimb(joint) ? (side === undefined ? SIDES : [side]) : [null]) {
      const at = indexOf(person.body, each === null ? joint : `${joint}.${each}`);
      const [least, most] = [degreesOf(limits.least[at] ?? 0), degreesOf(limits.most[at] ?? 0)];
      if (degrees < least - 0.5 || degrees > most + 0.5)
        return `${sayJoint(joint, each)} goes from ${Math.round(least)} to ${Math.round(most)} degrees here; ${degrees} cannot be posed.`;
    }
  return null;
}

const limitsFor = (person: PersonToday): Limits =>
  limitsOf(person.body, ownRanges(person.findings) as Partial<Record<AngleId, readonly [number, number]>>);

function indexOf(body: Body, id: string): number {
  return body.angles.findIndex((each) => each === id);
}

const JOINT_WORDS: Readonly<Record<(typeof OWN_LIMB_ANGLES)[number] | (typeof OWN_TRUNK_ANGLES)[number], string>> = {
  shoulderFlexion: "shoulder, arm forward",
  shoulderAbduction: "shoulder, arm out",
  shoulderExternalRotation: "shoulder, turned outward",
  elbowFlexion: "elbow, bent",
  wristExtension: "wrist, bent back",
  hipFlexion: "hip, bent",
  hipAbduction: "hip, leg out",
  hipExternalRotation: "hip, turned outward",
  kneeFlexion: "knee, bent",
  ankleDorsiflexion: "ankle, foot up",
  lumbarFlexion: "low back, bent",
  lumbarSideBend: "low back, toward the weak side",
  thoraxFlexion: "upper back, bent",
  thoraxTurn: "upper back, turned to the weak side",
  neckFlexion: "neck, chin down",
} satisfies Partial<Record<LimbAngle | MidAngle, string>>;

function sayJoint(joint: keyof typeof JOINT_WORDS, side: Side | null): string {
  const words = side === null ? JOINT_WORDS[joint] : `${side} ${JOINT_WORDS[joint]}`;
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

/** What the body's side says, with its parts in plain words. */
function sayMiss(because: string): string {
  const plain = because.replace(/\b([a-z][A-Za-z]*\.(?:weak|strong))\b/g, (id: string) => `the ${sayPart(id)}`);
  return `${plain.charAt(0).toUpperCase()}${plain.slice(1)}`.replace(/\.?$/, ".");
}
