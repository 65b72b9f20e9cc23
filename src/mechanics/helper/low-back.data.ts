/**
 * Joint between the fifth lumbar vertebra and the sacrum: above the line of the hips, as a share of the height of the shoulders over
 * the hips (textbook figure, from memory: a fifth); in the pelvis' middle plane.
 */
export const L5_S1_OF_HIP_TO_SHOULDER = 0.2;
/** Lever of the back's muscles [m]: 0.05, the usual one in static lifting models ("lifting-lab": 250.3 N.m becomes 5006 N). Quoted; short, so cautious. */
export const BACK_MUSCLE_LEVER = 0.05;
/** Of the sideways and turning moments: 0.08 and 0.05 (judgement, short). */
export const SIDE_MUSCLE_LEVER = 0.08;
export const TURN_MUSCLE_LEVER = 0.05;
/** Slope of the joint's plate against the pelvis' cross section [degrees], standing: 34 (judgement, about a third of a right angle). */
export const PLATE_SLOPE_DEG = 34;

/** Limits [N]: "arjmand2015" (read), "niosh1981" (quoted). */
export const COMPRESSION_LIMIT = 3400;
export const COMPRESSION_MOST = 6400;
export const SHEAR_LIMIT = 1000;

/** Terms of the lifting equation read in print ("waters1994"): 23 kg, lengths in cm. */
export const LIFTING = { constantKg: 23, reachCm: 25, furthestCm: 63, heightCm: 75, heightLoss: 0.003 } as const;
/** What trained kneelers take on over what they do standing or stooping: 0.81 to 0.94 of it in three works ("gallagher1992"); the least is taken. */
export const KNEELING_SHARE = 0.81;
