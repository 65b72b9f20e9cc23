import { degreesOf } from "../../quantity/angles.ts";

/** Angles of one leg [rad]: hip and knee bent, ankle drawn up are positive. */
export interface LegAngles {
  readonly hip: number;
  readonly knee: number;
  readonly ankle: number;
}

/**
 * What relaxed muscles and joint tissue do at the hip, knee and ankle of one leg [N.m], positive toward bending the hip, toward
 * bending the knee, toward drawing the foot up. Ten healthy adults; nothing of a stroke's tone, no contracture. The range
 * measured was not printed: beyond hip -20 to 110, knee 0 to 130, ankle -30 to 20 degrees null is returned.
 * @source riener1999
 */
export function passiveMoments({ hip, knee, ankle }: LegAngles): {
  readonly hip: number | null;
  readonly knee: number | null;
  readonly ankle: number | null;
} {
  const [h, k, a] = [degreesOf(hip), degreesOf(knee), degreesOf(ankle)];
  const hipIn = within(h, HIP) && within(k, KNEE);
  const kneeIn = hipIn && within(a, ANKLE);
  const ankleIn = within(k, KNEE) && within(a, ANKLE);
  return {
    hip: hipIn ? Math.exp(1.4655 - 0.0034 * k - 0.075 * h) - Math.exp(1.3403 - 0.0226 * k + 0.0305 * h) + 8.072 : null,
    knee: kneeIn
      ? Math.exp(1.8 + 0.046 * a - 0.0352 * k + 0.0217 * h) -
        Math.exp(-3.971 + 0.0004 * a + 0.0495 * k - 0.0128 * h) -
        4.82 +
        Math.exp(2.22 - 0.15 * k)
      : null,
    // The paper counts pointing as positive.
    ankle: ankleIn
      ? -(Math.exp(2.1016 + 0.0843 * a - 0.0176 * k) - Math.exp(-7.9763 - 0.1949 * a + 0.0008 * k) - 1.792)
      : null,
  };
}
const HIP = [-20.001, 110.001] as const;
const KNEE = [-0.001, 130.001] as const;
const ANKLE = [-30.001, 20.001] as const;
const within = (value: number, [least, most]: readonly [number, number]): boolean => value >= least && value <= most;

/**
 * The same from another work, twenty young adults: muscles one by one, calf left out at the knee [N.m].
 * @returns null beyond hip -15 to 40, knee 0 to 75, ankle -30 to 30 degrees
 * @source silder2007
 */
export function passiveMomentsOfYoung({ hip: h, knee: k, ankle: a }: LegAngles): LegAngles | null {
  const [hd, kd, ad] = [degreesOf(h), degreesOf(k), degreesOf(a)];
  if (!within(hd, [-15.001, 40.001]) || !within(kd, [-0.001, 75.001]) || !within(ad, [-30.001, 30.001])) return null;
  const rectus = Math.exp(1.32 - 3.1 * h + 1.9 * k);
  const hamstrings = Math.exp(-2.742 + 5.1 * h - 3.9 * k);
  return {
    hip: Math.exp(1.736 - 5.1 * h) - Math.exp(-0.953 + 2 * h) + rectus - hamstrings,
    knee: Math.exp(1.296 - 5.8 * k) - Math.exp(-6.225 + 3.5 * k) - 0.613 * rectus + 0.765 * hamstrings,
    ankle: -Math.exp(0.291 + 4.9 * a),
  };
}
