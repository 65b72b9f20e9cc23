import type { LimbAngle } from "../../mechanics/body/names.ts";
import type {
  ContactSpecification,
  LimbAngles,
  LimpEnd,
  PoseSpecification,
} from "../../mechanics/pose/specification.ts";
import type { Activity, Rung } from "../../practice/activities/activity.ts";
import { ACTIVITIES } from "../../practice/catalogue.ts";
import type { Side } from "../../quantity/sides.ts";
import type { CaseFile } from "../contract/case-file.ts";
import { OWN_LIMB_ANGLES } from "../contract/case-own-rung.ts";
import { sayPart } from "./part-words.ts";

export type OwnRung = NonNullable<CaseFile["ownRungs"]>[number];

const NOT_HOME = "Written for this person: shown and judged in treatment first.";
const MOST_WORDS = 6;

/** The catalogue with a person's own rungs behind it, each a ladder of its own. One that does not fit its origin is passed over. */
export function activitiesOf(file: CaseFile): readonly Activity[] {
  const own = (file.ownRungs ?? []).flatMap((each) => {
    const made = ownActivity(each);
    return "because" in made ? [] : [made.activity];
  });
  return own.length === 0 ? ACTIVITIES : [...ACTIVITIES, ...own];
}

const made = new Map<string, { readonly activity: Activity } | { readonly because: string }>();
const KEPT = 200;

/** An own rung as a ladder of one rung. The same words give the same object, so that its pose is worked out once. */
export function ownActivity(own: OwnRung): { readonly activity: Activity } | { readonly because: string } {
  const key = JSON.stringify(own);
  let known = made.get(key);
  if (known === undefined) {
    known = makeActivity(own);
    if (made.size >= KEPT) made.clear();
    made.set(key, known);
  }
  return known;
}

function makeActivity(own: OwnRung): { readonly activity: Activity } | { readonly because: string } {
  const origin = ACTIVITIES.find(({ id }) => id === own.from.activity);
  const base = origin?.rungs.find(({ id }) => id === own.from.rung);
  if (origin === undefined || base === undefined) return { because: "The rung it comes from is not in the catalogue." };
  if (own.words.trim().split(/\s+/).length > MOST_WORDS) return { because: "The words to say are at most six." };
  if (/\s/.test(own.cue.trim())) return { because: "The cue is one word." };
  const unknown = (own.support ?? []).find(({ part }) => !base.pose.contacts.some(({ patch }) => patch === part));
  if (unknown !== undefined) return { because: `The ${sayPart(unknown.part)} rests on nothing in that rung.` };
  const rung: Rung = {
    ...base,
    id: own.id,
    name: own.name,
    plainName: own.name,
    changes: own.changes ?? `Made from ${base.name.charAt(0).toLowerCase()}${base.name.slice(1)}.`,
    pose: ownPose(base.pose, own),
    limbFree: own.limbFree ?? base.limbFree,
    words: own.words,
    cue: own.cue,
    dose: {
      ...base.dose,
      ...(own.sets === undefined ? {} : { sets: own.sets }),
      ...(own.repetitions === undefined ? {} : { repetitions: own.repetitions }),
      ...(own.holdSeconds === undefined ? {} : { holdSeconds: own.holdSeconds }),
    },
    substitutes: [{ activity: own.from.activity, rung: own.from.rung }],
    notAtHome: NOT_HOME,
    home: null,
    sources: ["judgement"],
  };
  return { activity: { ...origin, id: own.id, name: `${origin.name}, own`, rungs: [rung] } };
}

const ARM = /^(hand|fist|grip|wrist|forearm|elbow)\./;
const LEG = /^(foot|forefoot|heel|toes|shin|knee|kneeHollow|instep|calf|ankleSide)\./;

function ownPose(pose: PoseSpecification, own: OwnRung): PoseSpecification {
  const angles = (side: Side): LimbAngles =>
    Object.fromEntries(
      (own.angles ?? [])
        .filter(({ joint, side: its }) => isLimb(joint) && (its === undefined || its === side))
        .map(({ joint, degrees }) => [joint, degrees]),
    );
  const trunk = Object.fromEntries(
    (own.angles ?? []).filter(({ joint }) => !isLimb(joint)).map(({ joint, degrees }) => [joint, degrees]),
  );
  const free = own.limbFree;
  const contacts = pose.contacts.flatMap((contact): ContactSpecification[] => {
    const how = own.support?.find(({ part }) => part === contact.patch)?.how;
    if (how === "away" || (free !== undefined && touches(contact, free))) return [];
    return [how === undefined ? contact : { ...contact, effort: how }];
  });
  const shift = own.weightToWeakCm;
  return {
    ...pose,
    trunkDeg: { ...pose.trunkDeg, ...trunk },
    weakDeg: { ...pose.weakDeg, ...angles("weak") },
    strongDeg: { ...pose.strongDeg, ...angles("strong") },
    contacts,
    ...(shift === undefined ? {} : { shift: { ...pose.shift, toWeakCm: shift } }),
    notCounted: [...new Set([...(pose.notCounted ?? []), ...(free === undefined ? [] : endsOf(free))])],
  };
}

export const isLimb = (joint: string): joint is LimbAngle => OWN_LIMB_ANGLES.some((each) => each === joint);

function touches({ patch, on }: ContactSpecification, limb: string): boolean {
  const [part, side = ""] = limb.split(".");
  const own = part === "arm" ? ARM : LEG;
  const is = (id: string) => own.test(id) && id.endsWith(`.${side}`);
  return is(patch) || (typeof on === "object" && is(on.body));
}

function endsOf(limb: NonNullable<OwnRung["limbFree"]>): readonly LimpEnd[] {
  const side: Side = limb.endsWith("weak") ? "weak" : "strong";
  return limb.startsWith("arm") ? [`hand.${side}`] : [`foot.${side}`, `toes.${side}`];
}
