/**
 * How fast working muscle tires and tired muscle comes back (three-compartment model): fatigue and recovery [1/s], and by how
 * many times recovery is quicker at rest. Women, men. "rakshit2021" as entered in public code (quoted); `knee` and `elbowBend`
 * only by sex, their pooled rows being out of line with both. Not carried over: a shoulder row that was a copy of the knee's.
 */
export const RATES_BY_SEX = {
  ankleUp: { female: [0.00746, 0.00081, 4.97], male: [0.00725, 0.00096, 10.36] },
  elbowStraighten: { female: [0.01874, 0.00206, 21.22], male: [0.01269, 0.00085, 30.21] },
  elbowBend: { female: [0.00965, 0.00197, 6.22], male: [0.01302, 0.00188, 8.99] },
  gripAndWrist: { female: [0.01159, 0.00217, 7.39], male: [0.01238, 0.00178, 8.0] },
  kneeStraighten: { female: [0.01407, 0.00185, 6.32], male: [0.0142, 0.00153, 10.96] },
  /** No figure for rest was printed: the slowest of the others is taken (judgement, cautious). */
  ankleDown: { female: [0.00702, 0.00098, 4.97], male: [0.00683, 0.00093, 4.97] },
} as const;

/**
 * The same for both sexes together. Shoulder: the abstract of "freylaw2012" (read; it prints the four extremes with two of the
 * labels changed round); trunk: the same work, from memory, and it gives back its power curve at 30 and 50 %; both with the
 * general rest. General: "looft2018" (quoted), for every group without a row of its own: hip, knee bending, neck, girdle.
 */
export const RATES_OF_ALL = {
  shoulder: [0.0182, 0.00168, 15],
  trunk: [0.00755, 0.00075, 15],
  general: [0.0097, 0.00091, 15],
} as const;

/**
 * What a figure measured on a steady force in the young does not hold for, as [low, high] factors on the time. Holding a
 * weight in place fails sooner than pushing as hard: 10.6 against 22.8 minutes in older people ("older-weight-hold", read: 0.46);
 * 0.7 its cautious middle (judgement). Older people hold small shares longer ("hunter2004", read: 1.0 to 1.6 at 20 to 30 %). The
 * paretic side gives out sooner at its own share ("hip-endurance-stroke", read, no seconds printed: 0.6 to 0.9, judgement).
 */
export const TIME_FACTORS = {
  holdingPlace: [0.46, 1],
  olderSmallShare: [1, 1.6],
  paretic: [0.6, 0.9],
} as const;
/** From this age [years], and below this share, the older people's factor stands. */
export const OLDER_FROM = 60;
export const SMALL_SHARE = 0.4;
