import { type Body } from "./body.ts";
import { GRADE_NONE, GRADE_OF_GRAVITY, GRADE_OF_RESERVE, GRADE_WITHOUT_GRAVITY } from "./strength-grades.data.ts";
import type { LimbStrengthKey, TrunkStrengthKey } from "./strength-keys.ts";
import { GRAVITY, peakNorm, trunkNorm } from "./strength-norms.ts";

export type Grade = keyof typeof GRADE_WITHOUT_GRAVITY;
export const GRADES: readonly Grade[] = ["0", "1", "1+", "2-", "2", "2+", "3-", "3", "3+", "4-", "4", "4+", "5-", "5"];

export type GradedKey = LimbStrengthKey | `trunk.${TrunkStrengthKey}`;

/** What a finding says of a muscle group: fraction of the healthy norm at 5, 50 and 95 %. */
export interface StrengthInterval {
  readonly low: number;
  readonly median: number;
  readonly high: number;
  /** Spread of the natural logarithm that fits the interval; for grades without any moment, of a floor of 0.01. */
  readonly spreadOfLn: number;
}

/** Whole limb or its far part, held level: what a grade 3 has to hold up. */
type Held = "arm" | "forearm" | "forearmTurned" | "leg" | "thighWithHangingShank" | "shank";
const TEST_POSITION: Readonly<Partial<Record<LimbStrengthKey, Held>>> = {
  shoulderFlexion: "arm",
  shoulderExtension: "arm",
  shoulderAbduction: "arm",
  shoulderAdduction: "arm",
  shoulderExternalRotation: "forearmTurned",
  shoulderInternalRotation: "forearmTurned",
  elbowFlexion: "forearm",
  elbowExtension: "forearm",
  hipFlexion: "thighWithHangingShank",
  hipExtension: "leg",
  hipAbduction: "leg",
  hipAdduction: "leg",
  kneeFlexion: "shank",
  kneeExtension: "shank",
};

/**
 * Moment of holding the limb up against gravity in the muscle group's usual test position, in this body: arm or leg straight
 * and level, forearm level, shank level, thigh level with the shank hanging.
 * @returns [N.m]; null for groups whose test does not lift the limb
 */
export function gravityMoment(body: Body, key: LimbStrengthKey): number | null {
  const held = TEST_POSITION[key];
  if (held === undefined) return null;
  const part = (name: "upperArm" | "forearm" | "hand" | "thigh" | "shank" | "foot" | "toes"): { mass: number; centre: number; length: number } => {
    const segment = body.segments[body.segmentIndex[`${name}.weak`]];
    return { mass: segment?.mass ?? 0, centre: -(segment?.centre[2] ?? 0), length: segment?.length ?? 0 };
  };
  const upperArm = part("upperArm");
  const forearm = part("forearm");
  const hand = part("hand");
  const thigh = part("thigh");
  const shank = part("shank");
  const foot = part("foot").mass + part("toes").mass;
  const forearmAndHand = forearm.mass * forearm.centre + hand.mass * (forearm.length + hand.centre);
  // The foot's centre taken at the ankle and a little beyond, as it hangs.
  const shankAndFoot = shank.mass * shank.centre + foot * (shank.length + 0.04);
  switch (held) {
    case "forearm":
    case "forearmTurned":
      return GRAVITY * forearmAndHand;
    case "arm":
      return GRAVITY * (upperArm.mass * upperArm.centre + forearmAndHand + (forearm.mass + hand.mass) * upperArm.length);
    case "shank":
      return GRAVITY * shankAndFoot;
    case "leg":
      return GRAVITY * (thigh.mass * thigh.centre + shankAndFoot + (shank.mass + foot) * thigh.length);
    case "thighWithHangingShank":
      return GRAVITY * (thigh.mass * thigh.centre + (shank.mass + foot) * thigh.length);
  }
}

/**
 * A manual grade as an interval of strength by the grade's own definition: a 3 just holds the limb against gravity in its
 * test position in this body, below that a part of it, a 4 between that and normal, a 5 about normal for age.
 * @param age [years]
 * @source herbison1996, dvir1997, nerve-graft-1995; decision record 0003
 */
export function gradeInterval(body: Body, age: number, key: GradedKey, grade: Grade): StrengthInterval {
  const gravity = isTrunk(key) ? null : gravityMoment(body, key);
  if (gravity === null || isTrunk(key)) return intervalOf(GRADE_WITHOUT_GRAVITY[grade]);
  const share = Math.min(0.8, gravity / peakNorm(body.size, age, key));
  if (grade === "0" || grade === "1") return intervalOf(GRADE_NONE[grade]);
  if (grade in GRADE_OF_GRAVITY) {
    const rows = GRADE_OF_GRAVITY[grade as keyof typeof GRADE_OF_GRAVITY];
    return intervalOf([share * rows[0], share * rows[1], share * rows[2]]);
  }
  const rows = GRADE_OF_RESERVE[grade as keyof typeof GRADE_OF_RESERVE];
  const at = (u: number): number => share + (1 - share) * u;
  return intervalOf([at(rows[0]), at(rows[1]), at(rows[2])]);
}

const isTrunk = (key: GradedKey): key is `trunk.${TrunkStrengthKey}` => key.startsWith("trunk.");

function intervalOf([low, median, high]: readonly [number, number, number]): StrengthInterval {
  const floor = 0.01;
  const spread = (Math.log(Math.max(high, floor) + floor) - Math.log(Math.max(low, floor) + floor)) / (2 * 1.645);
  return { low, median, high, spreadOfLn: Math.max(spread, 0.05) };
}

/** A dynamometer reading: a moment, or a force on a lever arm; for the grip a force. */
export type Reading = { readonly newtonMetres: number } | { readonly newtons: number; readonly lever?: number };

/** Between-test error of hand-held dynamometry, as a spread of the logarithm: 8-28 % in "baschung2018"; 0.15 (judgement). */
const READING_SPREAD = 0.15;
/** Lever arm where none was given: this share of the segment's length to the usual place of the pad (judgement). */
const USUAL_LEVER = 0.85;

/**
 * A dynamometer reading as a fraction of the healthy norm.
 * @param reading [N.m], or [N] with its lever arm [m]; without one, at the usual place near the segment's far end
 */
export function readingInterval(body: Body, age: number, key: GradedKey, reading: Reading): StrengthInterval {
  const norm = isTrunk(key) ? trunkNorm(body.size, age, key.slice("trunk.".length) as TrunkStrengthKey) : peakNorm(body.size, age, key);
  const amount = "newtonMetres" in reading ? reading.newtonMetres : key === "grip" ? reading.newtons : reading.newtons * (reading.lever ?? usualLever(body, key));
  const median = Math.max(0, amount / norm);
  const wide = "newtons" in reading && reading.lever === undefined && key !== "grip" ? 0.25 : READING_SPREAD;
  return { low: median * Math.exp(-1.645 * wide), median, high: median * Math.exp(1.645 * wide), spreadOfLn: wide };
}

function usualLever(body: Body, key: GradedKey): number {
  const name = key.startsWith("shoulder") ? "upperArm" : key.startsWith("elbow") ? "forearm" : key.startsWith("wrist") ? "hand" : key.startsWith("hip") ? "thigh" : key.startsWith("knee") ? "shank" : key.startsWith("ankle") ? "foot" : null;
  if (name === null) return 0.35;
  return (body.segments[body.segmentIndex[`${name}.weak`]]?.length ?? 0.3) * USUAL_LEVER;
}
