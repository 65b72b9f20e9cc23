import type { Side } from "../../quantity/sides.ts";
import type { Body } from "./body.ts";
import type { LimbAngle, MidAngle } from "./names.ts";
import { LIMB_DIRECTIONS, MID_DIRECTIONS } from "./strength-directions.data.ts";
import type { StrengthId, Strengths } from "./strength-keys.ts";
import { FOREARM, NECK_MEN, NECK_WOMEN_OVER_MEN, WRIST_SIDE_MEN, WRIST_SIDE_WOMEN_OVER_MEN } from "./strength-norms.data.ts";
import { angleShare, peakNorm, trunkNorm } from "./strength-norms.ts";

/** One way a joint can be turned by muscle. */
export interface Direction {
  /** Number of the angle in the body's order. */
  readonly angle: number;
  /** +1 turns the angle up, -1 down. */
  readonly sign: 1 | -1;
  readonly words: string;
  /** The muscle group whose fraction of normal scales it; null for the neck, taken as unaffected. */
  readonly strength: StrengthId | null;
  /** Greatest moment of a healthy person of this body in this pose [N.m]. */
  readonly normal: number;
  /** No norm of its own was found. */
  readonly wide: boolean;
}

/** Normal moments of every joint direction in one pose; strengths scale them. */
export interface NormalCapacities {
  /** Two a joint angle: up at 2 i, down at 2 i + 1. */
  readonly directions: readonly Direction[];
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
const LEAST_MOMENT = 0.3;

/** Greatest moments of a healthy person of this body, in this pose, for every joint direction. @param age [years] @param angles [rad] in the body's order */
export function normalCapacities(body: Body, age: number, angles: readonly number[]): NormalCapacities {
  const { size } = body;
  const directions: Direction[] = [];
  body.angles.forEach((id, angle) => {
    const [name, side] = id.split(".") as [LimbAngle | MidAngle, Side | undefined];
    for (const k of [0, 1] as const) {
      const sign = k === 0 ? 1 : -1;
      if (side === undefined) {
        const { words, trunk, neck } = MID_DIRECTIONS[name as MidAngle][k];
        if (trunk !== undefined) {
          directions.push({ angle, sign, words, strength: `trunk.${trunk}`, normal: trunkNorm(size, age, trunk), wide: trunk === "lateralFlexion" });
        } else {
          const men = NECK_MEN[neck ?? "flexion"];
          directions.push({ angle, sign, words, strength: null, normal: size.sex === "male" ? men : men * NECK_WOMEN_OVER_MEN, wide: true });
        }
        continue;
      }
      const { words, key, share, own } = LIMB_DIRECTIONS[name as LimbAngle][k];
      let normal = peakNorm(size, age, key);
      if (own === "pronation" || own === "supination") normal = FOREARM[size.sex][own];
      else if (own !== undefined) normal = WRIST_SIDE_MEN[own] * (size.sex === "male" ? 1 : WRIST_SIDE_WOMEN_OVER_MEN);
      else if (share !== undefined) normal *= share;
      else normal *= angleShare(size, age, key, angles[angle] ?? 0);
      directions.push({ angle, sign, words, strength: `${key}.${side}`, normal, wide: share !== undefined });
    }
  });
  return { directions, grip: peakNorm(size, age, "grip") };
}

/** Scales the normal moments by what this person has. */
export function scaleCapacities(normal: NormalCapacities, strengths: Strengths): Capacities {
  const up = new Float64Array(normal.directions.length / 2);
  const down = new Float64Array(normal.directions.length / 2);
  for (const each of normal.directions) {
    const moment = Math.max(LEAST_MOMENT, each.normal * (each.strength === null ? 1 : strengths[each.strength]));
    (each.sign === 1 ? up : down)[each.angle] = moment;
  }
  return { up, down, grip: { weak: normal.grip * strengths["grip.weak"], strong: normal.grip * strengths["grip.strong"] } };
}

/** Both in one: what each joint direction can give. @param age [years] */
export function capacitiesOf(body: Body, age: number, angles: readonly number[], strengths: Strengths): Capacities {
  return scaleCapacities(normalCapacities(body, age, angles), strengths);
}
