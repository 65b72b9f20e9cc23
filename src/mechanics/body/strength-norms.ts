import { degreesOf, radiansOf } from "../../quantity/angles.ts";
import type { BodySize } from "./body.ts";
import type { LimbStrengthKey, TrunkStrengthKey } from "./strength-keys.ts";
import {
  ELBOW_CURVES,
  GRIP_MEDIAN_KG,
  LATE_LOSS_PER_DECADE,
  LEAST_ANGLE_SHARE,
  LEG_CURVE_AGES,
  LEG_CURVES,
  PLANTARFLEXION_KNEE_BENT,
  SHOULDER_FLEXION_LOSS_PER_RADIAN,
  SIZED_NORM_AGES,
  SIZED_NORM_BUILD,
  SIZED_NORMS,
  TOE_FLEXION,
  TRUNK_AGE,
  TRUNK_BUILD,
  TRUNK_EXTENSION_GAIN,
  TRUNK_LATERAL_OF_EXTENSION,
  TRUNK_WOMEN_OVER_MEN,
  TRUNK_YOUNG,
} from "./strength-norms.data.ts";

export const GRAVITY = 9.81;

type LegKey = keyof (typeof LEG_CURVES)["male"];
type SizedKey = keyof (typeof SIZED_NORMS)["male"];

function isLegKey(key: string): key is LegKey {
  return key in LEG_CURVES.male;
}
function isSizedKey(key: string): key is SizedKey {
  return key in SIZED_NORMS.male;
}

/** Value on a broken line through (x, y) points in ascending order, level beyond the ends. */
function along(points: readonly (readonly [number, number])[], x: number): number {
  let before = points[0];
  if (before === undefined) return 0;
  for (const point of points) {
    if (x <= point[0]) {
      const gap = point[0] - before[0];
      return gap === 0 ? point[1] : before[1] + ((point[1] - before[1]) * (x - before[0])) / gap;
    }
    before = point;
  }
  return before[1];
}

/** Coefficients of a leg curve at an age: peak share, sharpness, best angle. */
function legCurve(size: BodySize, age: number, key: LegKey): readonly [number, number, number] {
  const rows = LEG_CURVES[size.sex][key];
  const at = (k: 0 | 1 | 2): number =>
    along(
      rows.map((row, i) => [LEG_CURVE_AGES[i] ?? 0, row[k]] as const),
      age,
    );
  // The six oldest people were not stronger than the group before them for having grown older.
  const peak = age > LEG_CURVE_AGES[1] ? Math.min(at(0), rows[1][0]) : at(0);
  return [peak * lateShare(age, LEG_CURVE_AGES[2]), at(1), at(2)];
}

const curves = new WeakMap<
  BodySize,
  Map<LegKey, { readonly age: number; readonly curve: readonly [number, number, number] }>
>();
function curveOf(size: BodySize, age: number, key: LegKey): readonly [number, number, number] {
  const known =
    curves.get(size) ?? new Map<LegKey, { readonly age: number; readonly curve: readonly [number, number, number] }>();
  curves.set(size, known);
  const kept = known.get(key);
  if (kept?.age === age) return kept.curve;
  const curve = legCurve(size, age, key);
  known.set(key, { age, curve });
  return curve;
}

const lateShare = (age: number, from: number): number =>
  Math.max(0.3, (1 - LATE_LOSS_PER_DECADE) ** (Math.max(0, age - from) / 10));

/**
 * Greatest moment of a limb's muscle group at its best angle in a healthy person of this sex, age and size.
 * @param age [years]
 * @returns [N.m]; for the grip, force [N]
 * @source anderson2007, harbo2012 and others, see strength-norms.data.ts
 */
export function peakNorm(size: BodySize, age: number, key: LimbStrengthKey): number {
  if (key === "grip") return along(GRIP_MEDIAN_KG[size.sex], age) * GRAVITY;
  if (isLegKey(key)) return legCurve(size, age, key)[0] * size.mass * GRAVITY * size.height;
  if (!isSizedKey(key)) return 0;
  const [at60, at70, at80] = SIZED_NORMS[size.sex][key];
  // Before sixty the same slope backwards, level below forty.
  const points: readonly (readonly [number, number])[] = [
    [40, at60 + 2 * (at60 - at70)],
    [SIZED_NORM_AGES[0], at60],
    [SIZED_NORM_AGES[1], at70],
    [SIZED_NORM_AGES[2], at80],
    [95, at80 - 1.5 * (at70 - at80)],
  ];
  return (along(points, age) * size.mass * size.height) / SIZED_NORM_BUILD[size.sex];
}

/** The same for the trunk [N.m]. @source trunk-three-planes-2021, sinaki2001 */
export function trunkNorm(size: BodySize, age: number, key: TrunkStrengthKey): number {
  const young = key === "lateralFlexion" ? TRUNK_YOUNG.extension * TRUNK_LATERAL_OF_EXTENSION : TRUNK_YOUNG[key];
  const men = (2 * young) / (1 + TRUNK_WOMEN_OVER_MEN);
  const sex = size.sex === "male" ? men : men * TRUNK_WOMEN_OVER_MEN;
  const { from, shareAt85 } = TRUNK_AGE[size.sex];
  const share = along(
    [
      [from, 1],
      [85, shareAt85],
    ],
    age,
  );
  return (sex * share * size.mass * size.height) / TRUNK_BUILD;
}

/** Extension of the trunk bent forward over extension upright. @param bend flexion of the trunk on the pelvis [rad] */
export function trunkExtensionGain(bend: number): number {
  const { perRadian, most, least } = TRUNK_EXTENSION_GAIN;
  return Math.min(most, Math.max(least, 1 + perRadian * bend));
}

/** All toe flexors about the first toe joint [N.m]. @source endo2002 */
export function toeFlexionNorm(size: BodySize, age: number): number {
  const [young, old] = TOE_FLEXION[size.sex];
  return along(
    [
      [TOE_FLEXION.ages[0], young],
      [TOE_FLEXION.ages[1], old],
    ],
    age,
  );
}

/** What is left of pointing the foot when the knee is bent. @param knee its bend [rad] @source calf-knee-bent */
export function kneeBentShare(knee: number): number {
  const { share, atDeg } = PLANTARFLEXION_KNEE_BENT;
  return 1 - (1 - share) * Math.min(1, Math.max(0, knee / radiansOf(atDeg)));
}

/**
 * Share of the peak there is at this angle of the group's own joint, never below half.
 * @param angle of the joint in the tree's sense (flexion, dorsiflexion positive) [rad]
 */
export function angleShare(size: BodySize, age: number, key: LimbStrengthKey, angle: number): number {
  if (key === "shoulderFlexion")
    return Math.max(LEAST_ANGLE_SHARE, Math.min(1, 1 - SHOULDER_FLEXION_LOSS_PER_RADIAN * Math.max(0, angle)));
  if (key === "elbowFlexion" || key === "elbowExtension")
    return Math.max(LEAST_ANGLE_SHARE, along(ELBOW_CURVES[key], degreesOf(angle)));
  if (!isLegKey(key)) return 1;
  const [, sharpness, best] = curveOf(size, age, key);
  return Math.max(LEAST_ANGLE_SHARE, Math.cos(Math.min(Math.abs(sharpness * (angle - best)), Math.PI / 2)));
}
