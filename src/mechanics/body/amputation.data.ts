/**
 * Prosthetic lower leg and foot over the sound one's mass: 0.391 (1.33 kg of 3.37), six people with an above-knee
 * amputation, "hale1990". Seen: read. A below-knee one is taken as heavy (judgement).
 */
export const PROSTHESIS_OF_LOWER_LEG = 0.391;
/** Of that, the foot; and the centre of the rest, as a share of the shank from the knee (judgement). */
export const PROSTHESIS_FOOT_SHARE = 0.4;
export const PROSTHESIS_SHANK_CENTRE = { transtibial: 0.65, transfemoral: 0.5 } as const;
/** Socket and knee of an above-knee prosthesis [kg], and where on the thigh (judgement). */
export const SOCKET_AND_KNEE = { mass: 1.8, centre: 0.8 } as const;
/** Share of the cut part that is left where nobody has measured it (common practice: a third to two thirds). */
export const USUAL_STUMP = { transtibial: 0.45, transfemoral: 0.6 } as const;
/** Shorter than this it is a loss of the joint above, longer than that of the joint below. */
export const STUMP_FROM = 0.15;
export const STUMP_TO = 0.95;
/** Ranges of prosthetic joints [degrees]: a foot of one piece gives a little, a knee bends freely to 120 (judgement). */
export const PROSTHESIS_RANGE_DEG = {
  ankleDorsiflexion: [-8, 8],
  inversion: [-4, 4],
  toeExtension: [-5, 35],
  kneeFlexion: [0, 120],
  kneeExternalRotation: [0, 0],
} as const;
/** What a stiff or locked prosthetic joint is trusted with [N.m]: far above what a body asks (judgement). */
export const STIFF = 400;
/** A prosthetic knee without a motor bears while it is this straight [degrees], and folds beyond. */
export const LOCKED_WITHIN_DEG = 4;
