/**
 * Quantiles (5th, 50th, 95th) of what a manual grade leaves open, "mrc-prior" (derived from published ratios between
 * grades, hidden loss at grade 5 and the grade's own definition; widths are judgement). From 3 up: the share u of the
 * reserve above the limb's own weight, s = g + (1 - g) u, where g is the moment that just holds the limb in its test
 * position over the normal peak. Below 3: shares of g itself.
 */
export const RESERVE_ABOVE_GRAVITY = {
  "3": [0, 0.015, 0.08],
  "3+": [0.04, 0.2, 0.42],
  "4-": [0.12, 0.33, 0.56],
  "4": [0.2, 0.47, 0.76],
  "4+": [0.42, 0.7, 0.94],
  "5-": [0.52, 0.8, 1.05],
  "5": [0.6, 0.95, 1.3],
} as const;
export const SHARE_OF_GRAVITY = {
  "0": [0, 0.005, 0.03],
  "1": [0.005, 0.04, 0.15],
  "1+": [0.02, 0.1, 0.25],
  "2-": [0.05, 0.2, 0.45],
  "2": [0.12, 0.4, 0.75],
  "2+": [0.3, 0.65, 0.95],
  "3-": [0.5, 0.8, 1],
} as const;

/**
 * Muscle groups whose own limb weighs next to nothing in the test, or whose test is another one: g is set instead of
 * computed. Wrist and hand: a grade 3 sits near 0.27 of normal (small muscles, nerve-graft study); plantarflexors are
 * tested by rising on the toes; dorsiflexors and hip rotators lift only the foot or the hanging shank; side bending and
 * turning of the trunk have no usual lift (the trunk's extension and flexion are computed). "judgement" where no figure was found.
 */
export const SET_GRAVITY_SHARE: Readonly<Record<string, number>> = {
  wristFlexion: 0.26,
  wristExtension: 0.26,
  grip: 0.26,
  ankleDorsiflexion: 0.2,
  anklePlantarflexion: 0.35,
  hipExternalRotation: 0.15,
  hipInternalRotation: 0.15,
  "trunk.lateralFlexion": 0.45,
  "trunk.rotation": 0.4,
};
