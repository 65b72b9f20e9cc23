import type { ContactSpecification, LimbAngles, PoseSpecification, SurfaceSpecification } from "../../mechanics/pose/specification.ts";

/** Poses standing and stepping in the parallel bars. Angles: "judgement", adjusted until they closed. */

/** Bars at the height of the hip joint, so that the elbows are bent 20 to 30 degrees (common practice). */
export const BARS: SurfaceSpecification = { id: "bars", kind: "bars", height: { of: "hipStanding", plusCm: 3 } };

export const FOOT_WEAK: ContactSpecification = { patch: "foot.weak", on: "floor", role: "both" };
export const FOOT_STRONG: ContactSpecification = { patch: "foot.strong", on: "floor", role: "both" };
export const GRIP_STRONG: ContactSpecification = { patch: "grip.strong", on: "bars", role: "both", grips: true };
export const GRIP_WEAK: ContactSpecification = { patch: "grip.weak", on: "bars", role: "both", effort: "rest" };

export const LEG_STANDING = { hipFlexion: 2, hipAbduction: 3, kneeFlexion: 4, ankleDorsiflexion: 2 } as const satisfies LimbAngles;
/** The hand on the bar beside and a little ahead of the hip. */
export const ARM_ON_BAR = { shoulderFlexion: 12, shoulderAbduction: 14, elbowFlexion: 28, pronation: 90, wristExtension: 25 } as const satisfies LimbAngles;
export const ARM_DOWN = { shoulderAbduction: 6, elbowFlexion: 8, pronation: 90 } as const satisfies LimbAngles;

/** Standing in the bars, a hand on each bar; the weak hand only rests there. */
export const STANDING_IN_BARS: PoseSpecification = {
  pelvis: { pitchDeg: 2 },
  bothDeg: { ...LEG_STANDING, ...ARM_ON_BAR },
  surfaces: [BARS],
  contacts: [FOOT_WEAK, FOOT_STRONG, GRIP_STRONG, GRIP_WEAK],
  sharing: "standing",
  notCounted: ["toes.weak", "toes.strong", "hand.weak"],
};
/** Standing in the bars with the strong hand only; the weak arm hangs or lies in a support. */
export const STANDING_ONE_HAND: PoseSpecification = {
  ...STANDING_IN_BARS,
  weakDeg: ARM_DOWN,
  contacts: [FOOT_WEAK, FOOT_STRONG, GRIP_STRONG],
};
