import { radiansOf } from "../../quantity/angles.ts";
import type { Body } from "../body/body.ts";
import { type Capacities, LEAST_MOMENT } from "../body/strength-capacities.ts";
import type { Statics } from "./statics.ts";

/** Below this [N.m] a hand, foot or toe is limp: it hangs, rests or is held, and does not set the verdict. */
const LIMP_BELOW = 2;
/** An arm that lies, hangs in a support or is held takes no muscle of its own [N.m]: more than any arm weighs. */
const HELD_ARM = 30;
/** A straight knee is held against turning by its ligaments, not by muscle [N.m]. */
const STRAIGHT_KNEE_TURN = 30;
const STRAIGHT_KNEE = radiansOf(20);
const DISTAL = new Set(["hand", "foot", "toes"]);
const ARM = new Set(["girdle", "upperArm", "forearm"]);

/** What each joint direction may give in one solve, and whether it counts. */
export interface Allowed {
  readonly up: Float64Array;
  readonly down: Float64Array;
  readonly counted: Uint8Array;
}

/** What an angle is taken for, whatever the strength. */
const PLAIN = 0;
const DISTAL_PLAIN = 1;
const LIMP = 2;
const LIMP_ARM = 3;
const HELD_KNEE = 4;
const kinds = new WeakMap<Uint8Array, Uint8Array>();

function kindsOf(statics: Statics): Uint8Array {
  let known = kinds.get(statics.limp);
  if (known === undefined) {
    const { body, limp } = statics;
    known = limp.map((hangs, i) => {
      if (isHeldKnee(statics, i)) return HELD_KNEE;
      const part = partOf(body, i);
      if (hangs === 1) return ARM.has(part) ? LIMP_ARM : LIMP;
      return DISTAL.has(part) ? DISTAL_PLAIN : PLAIN;
    });
    kinds.set(limp, known);
  }
  return known;
}

/** Capacities as the solve takes them: limp ends get enough to hang on and do not count. */
export function allowedMoments(statics: Statics, capacities: Capacities): Allowed {
  const { angles } = statics;
  const up = Float64Array.from(capacities.up);
  const down = Float64Array.from(capacities.down);
  const counted = new Uint8Array(angles).fill(1);
  const kind = kindsOf(statics);
  for (let i = 0; i < angles; i++) {
    const k = kind[i] ?? PLAIN;
    if (k === PLAIN) continue;
    const most = k === HELD_KNEE ? STRAIGHT_KNEE_TURN : k === LIMP_ARM ? HELD_ARM : LIMP_BELOW;
    if (k === DISTAL_PLAIN && Math.min(up[i] ?? 0, down[i] ?? 0) >= LIMP_BELOW) continue;
    counted[i] = 0;
    up[i] = k === HELD_KNEE ? most : Math.max(up[i] ?? 0, most);
    down[i] = k === HELD_KNEE ? most : Math.max(down[i] ?? 0, most);
  }
  return { up, down, counted };
}

const partOf = (body: Body, angle: number): string =>
  body.segments[body.segmentOfAngle[angle] ?? 0]?.id.split(".")[0] ?? "";

/** The turn of a straight knee; its bend stands just before it in the order of the angles. */
const isHeldKnee = (statics: Statics, turn: number): boolean =>
  statics.body.angles[turn]?.startsWith("kneeExternalRotation") === true &&
  (statics.pose.configuration.angles[turn - 1] ?? 0) < STRAIGHT_KNEE;

/** Moment below which strength no longer matters at an angle [N.m]; null where it never does. */
export function leastMoment(statics: Statics, angle: number): number | null {
  if (statics.limp[angle] === 1 || isHeldKnee(statics, angle)) return null;
  return DISTAL.has(partOf(statics.body, angle)) ? LIMP_BELOW : LEAST_MOMENT;
}

/** Muscle moment of every angle for given pushes [N.m]. */
export function muscleMoments(statics: Statics, x: Float64Array, out: Float64Array): Float64Array {
  const { angles, unknowns, muscle, muscleOwn } = statics;
  for (let i = 0; i < angles; i++) {
    let moment = muscleOwn[i] ?? 0;
    const row = i * unknowns;
    for (let j = 0; j < unknowns; j++) moment -= (muscle[row + j] ?? 0) * (x[j] ?? 0);
    out[i] = moment;
  }
  return out;
}

/** Moment over what may be given, by angle, never negative. */
export function ratios(moments: Float64Array, allowed: Allowed, out: Float64Array): Float64Array {
  for (let i = 0; i < moments.length; i++) {
    const m = moments[i] ?? 0;
    out[i] = m >= 0 ? m / (allowed.up[i] ?? 1) : -m / (allowed.down[i] ?? 1);
  }
  return out;
}
