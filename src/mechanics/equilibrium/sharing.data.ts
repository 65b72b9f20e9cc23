/**
 * Share of the load a weak side is given where nothing was seen: standing, 100 less 60.3 (spread 7.1) per cent on the other
 * leg in 53 people who walked after a stroke, "standing-asymmetry-stroke". Kneeling, half kneeling and sitting take the
 * same figure for want of any (judgement).
 */
export const WEAK_SHARE_DEFAULT = { standing: 0.397, kneeling: 0.397, halfKneeling: 0.397, sitting: 0.45 } as const;
