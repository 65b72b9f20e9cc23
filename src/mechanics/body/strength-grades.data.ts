/**
 * What a manual grade says of strength. s: fraction of the healthy norm; g: moment of holding the limb up in its test
 * position over the norm, worked out in this body. From grade 3 up, s = g + (1 - g) u with u at 5, 50, 95 % as below;
 * under 3, shares of g. Seen: derived ("herbison1996" for the steps at the elbow, "bohannon2005" and "tyler2005" for what a
 * 5 can hide; widths judgement). No percentage scale of the trade is used: measured figures refute it ("dvir1997").
 */
export const GRADE_OF_RESERVE = {
  "3": [0.0, 0.015, 0.08],
  "3+": [0.04, 0.2, 0.42],
  "4-": [0.12, 0.33, 0.56],
  "4": [0.2, 0.47, 0.76],
  "4+": [0.42, 0.7, 0.94],
  "5-": [0.52, 0.8, 1.05],
  "5": [0.6, 0.95, 1.3],
} as const;
export const GRADE_OF_GRAVITY = {
  "1+": [0.0, 0.06, 0.2],
  "2-": [0.04, 0.22, 0.5],
  "2": [0.15, 0.45, 0.75],
  "2+": [0.3, 0.65, 0.92],
  "3-": [0.5, 0.8, 1.0],
} as const;
/** No moment at all, and a flicker: fractions of normal. */
export const GRADE_NONE = { "0": [0, 0.005, 0.02], "1": [0, 0.01, 0.03] } as const;

/**
 * Groups whose test does not lift the limb's weight (or hardly): hand and wrist, forearm, foot, hip rotators, trunk. Their
 * grades are shares of normal: 3 near 0.27 and 4 near 0.70 from small muscles after nerve grafting ("nerve-graft-1995"),
 * the others between (judgement).
 */
export const GRADE_WITHOUT_GRAVITY = {
  "0": [0, 0.005, 0.02],
  "1": [0, 0.01, 0.03],
  "1+": [0.005, 0.03, 0.07],
  "2-": [0.02, 0.07, 0.14],
  "2": [0.05, 0.12, 0.2],
  "2+": [0.09, 0.18, 0.28],
  "3-": [0.13, 0.23, 0.35],
  "3": [0.17, 0.27, 0.42],
  "3+": [0.28, 0.42, 0.58],
  "4-": [0.4, 0.57, 0.72],
  "4": [0.5, 0.7, 0.87],
  "4+": [0.6, 0.8, 0.98],
  "5-": [0.65, 0.87, 1.08],
  "5": [0.7, 0.97, 1.28],
} as const;
