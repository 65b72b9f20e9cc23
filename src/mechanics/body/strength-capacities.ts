import type { Side } from "../../quantity/sides.ts";
import { artificialMoment, isArtificial } from "./amputation.ts";
import type { Body } from "./body.ts";
import type { LimbAngle, MidAngle } from "./names.ts";
import { LIMB_DIRECTIONS, MID_DIRECTIONS } from "./strength-directions.data.ts";
import type { LimbStrengthKey, StrengthId, Strengths } from "./strength-keys.ts";
import {
  FOREARM,
  NECK_MEN,
  NECK_WOMEN_OVER_MEN,
  WRIST_SIDE_MEN,
  WRIST_SIDE_WOMEN_OVER_MEN,
} from "./strength-norms.data.ts";
import {
  angleShare,
  kneeBentShare,
  peakNorm,
  toeFlexionNorm,
  trunkExtensionGain,
  trunkNorm,
} from "./strength-norms.ts";

/** One way a joint can be turned by muscle. */
export interface Direction {
  /** Number of the angle in the body's order. */
  readonly angle: number;
  /** +1 turns the angle up, -1 down. */
  readonly sign: 1 | -1;
  readonly words: string;
  /** The muscle group whose fraction of normal scales it; null for the neck, taken as unaffected. */
  readonly strength: StrengthId | null;
  /** Greatest moment of a healthy person of this body at the joint's best angle [N.m]. */
  readonly peak: number;
  /** No norm of its own was found. */
  readonly wide: boolean;
}

/** Normal moments of every joint direction in one pose; strengths scale them. */
export interface NormalCapacities {
  /** Two a joint angle: up at 2 i, down at 2 i + 1. */
  readonly directions: readonly Direction[];
  /** Greatest moment of a healthy person of this body in this pose [N.m], in the order of `directions`. */
  readonly moments: Float64Array;
  /** Normal grip force [N]. */
  readonly grip: number;
}

/** What each joint direction can give in one pose, for one person's strengths. */
export interface Capacities {
  /** Greatest moment turning the angle up, and down, by angle number [N.m]. */
  readonly up: Float64Array;
  readonly down: Float64Array;
  /** Grip force [N]. */
  readonly grip: Readonly<Record<Side, number>>;
}

/** No muscle group is taken below this [N.m]: keeps the arithmetic finite where a limb is limp. */
export const LEAST_MOMENT = 0.3;

/** A direction with what makes it change over its joint's angle. */
interface Template extends Direction {
  /** The group whose curve over the joint's own angle applies; null where there is none. */
  readonly curve: LimbStrengthKey | null;
  /** The joint below an amputation: no muscle moves it. */
  readonly artificial: boolean;
}
const templates = new WeakMap<Body, Map<number, readonly Template[]>>();

/** Greatest moments of a healthy person of this body, in this pose, for every joint direction. @param age [years] @param angles [rad] in the body's order */
export function normalCapacities(body: Body, age: number, angles: readonly number[]): NormalCapacities {
  const known = keptTemplates(body, age);
  const moments = new Float64Array(known.length);
  const bend = (angles[body.angleIndex.lumbarFlexion] ?? 0) + (angles[body.angleIndex.thoraxFlexion] ?? 0);
  known.forEach(({ peak, curve, angle, strength, artificial }, k) => {
    const id = body.angles[angle];
    if (artificial && id !== undefined) {
      moments[k] = artificialMoment(body, id, angles[angle] ?? 0);
      return;
    }
    const share =
      curve !== null
        ? angleShare(body.size, age, curve, angles[angle] ?? 0) *
          // The knee's bend stands two before the ankle's in the order of the angles.
          (curve === "anklePlantarflexion" ? kneeBentShare(angles[angle - 2] ?? 0) : 1)
        : strength === "trunk.extension"
          ? trunkExtensionGain(bend)
          : 1;
    moments[k] = peak * share;
  });
  return {
    directions: known,
    moments,
    grip: peakNorm(body.size, age, "grip"),
  };
}

function keptTemplates(body: Body, age: number): readonly Template[] {
  const byAge = templates.get(body) ?? new Map<number, readonly Template[]>();
  templates.set(body, byAge);
  const known = byAge.get(age) ?? templatesOf(body, age);
  byAge.set(age, known);
  return known;
}

function templatesOf(body: Body, age: number): Template[] {
  const { size } = body;
  const found: Template[] = [];
  body.angles.forEach((id, angle) => {
    const [name, side] = id.split(".") as [LimbAngle | MidAngle, Side | undefined];
    for (const k of [0, 1] as const) {
      const sign = k === 0 ? 1 : -1;
      if (side === undefined) {
        const { words, trunk, neck } = MID_DIRECTIONS[name as MidAngle][k];
        const men = NECK_MEN[neck ?? "flexion"];
        const peak =
          trunk !== undefined ? trunkNorm(size, age, trunk) : size.sex === "male" ? men : men * NECK_WOMEN_OVER_MEN;
        const strength = trunk === undefined ? null : (`trunk.${trunk}` as const);
        found.push({
          angle,
          sign,
          words,
          strength,
          peak,
          curve: null,
          artificial: false,
          wide: trunk === undefined || trunk === "lateralFlexion",
        });
        continue;
      }
      const artificial = isArtificial(body, id);
      const { words, key, share, own, measured } = LIMB_DIRECTIONS[name as LimbAngle][k];
      let peak = peakNorm(size, age, key) * (share ?? 1);
      if (own === "pronation" || own === "supination") peak = FOREARM[size.sex][own];
      else if (own === "toeFlexion") peak = toeFlexionNorm(size, age);
      else if (own !== undefined) peak = WRIST_SIDE_MEN[own] * (size.sex === "male" ? 1 : WRIST_SIDE_WOMEN_OVER_MEN);
      found.push({
        angle,
        sign,
        words,
        strength: artificial ? null : `${key}.${side}`,
        peak,
        artificial,
        curve: own === undefined && share === undefined ? key : null,
        wide: share !== undefined && measured !== true,
      });
    }
  });
  return found;
}

/** Scales the normal moments by what this person has. */
export function scaleCapacities(normal: NormalCapacities, strengths: Strengths): Capacities {
  const up = new Float64Array(normal.directions.length / 2);
  const down = new Float64Array(normal.directions.length / 2);
  normal.directions.forEach(({ angle, sign, strength }, k) => {
    const given = (normal.moments[k] ?? 0) * (strength === null ? 1 : strengths[strength]);
    // Nothing, less than nothing and what is no number all stand as none.
    const moment = Math.max(LEAST_MOMENT, Number.isNaN(given) ? 0 : given);
    (sign === 1 ? up : down)[angle] = moment;
  });
  return {
    up,
    down,
    grip: { weak: normal.grip * strengths["grip.weak"], strong: normal.grip * strengths["grip.strong"] },
  };
}

/** Both in one: what each joint direction can give. @param age [years] */
export function capacitiesOf(body: Body, age: number, angles: readonly number[], strengths: Strengths): Capacities {
  return scaleCapacities(normalCapacities(body, age, angles), strengths);
}
