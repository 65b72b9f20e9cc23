/**
 * Greatest moment of one side in healthy adults. Three kinds of row: regressions over an angle, values for a reference
 * size at three ages, and single values. Nothing here is fitted to a check.
 */

/**
 * Leg: peak = peakShare x body weight [N] x stature [m]; over the angle it falls as cos(sharpness x (angle - best)),
 * angles in radians. Source "anderson2007", Table 3, in the order 18-25, 55-65, over 65 years. Seen: read (second-hand
 * transcription). The oldest group had six people.
 */
export const LEG_CURVES = {
  male: {
    hipExtension: [[0.161, 0.958, 0.932], [0.171, 0.922, 1.176], [0.144, 0.896, 1.125]],
    hipFlexion: [[0.113, 0.738, -0.214], [0.107, 0.712, -0.192], [0.101, 0.762, -0.269]],
    kneeExtension: [[0.163, 1.258, 1.133], [0.156, 1.225, 1.173], [0.137, 1.31, 1.067]],
    kneeFlexion: [[0.087, 0.869, 0.522], [0.081, 0.986, 0.523], [0.069, 0.838, 0.437]],
    anklePlantarflexion: [[0.095, 1.391, 0.408], [0.114, 1.444, 0.551], [0.106, 1.465, 0.498]],
    ankleDorsiflexion: [[0.033, 1.51, -0.187], [0.028, 1.293, -0.284], [0.029, 1.419, -0.174]],
  },
  female: {
    hipExtension: [[0.181, 0.697, 1.242], [0.14, 0.83, 1.241], [0.138, 0.707, 1.542]],
    hipFlexion: [[0.127, 0.65, -0.35], [0.091, 0.812, -0.196], [0.081, 0.625, -0.422]],
    kneeExtension: [[0.159, 1.187, 1.274], [0.128, 1.286, 1.141], [0.124, 1.347, 1.14]],
    kneeFlexion: [[0.08, 0.873, 0.635], [0.06, 0.967, 0.402], [0.06, 0.897, 0.445]],
    anklePlantarflexion: [[0.104, 1.399, 0.424], [0.093, 1.504, 0.381], [0.125, 1.299, 0.58]],
    ankleDorsiflexion: [[0.027, 1.079, -0.302], [0.024, 1.308, -0.254], [0.022, 1.096, -0.369]],
  },
} as const;
/** Ages [years] at which the three groups are taken to stand (judgement: near the middle of each). */
export const LEG_CURVE_AGES = [22, 60, 70] as const;
/** Share lost per decade after the last group: 12-15 % in "hurley1995". Seen: read. */
export const LATE_LOSS_PER_DECADE = 0.13;

/**
 * Arm and the hip's other directions [N.m] at 60, 70, 80 years, for a man of 1.75 m and 80 kg and a woman of 1.62 m and
 * 68 kg; scaled with mass x stature. Seen: derived, from "harbo2012" (shoulder abduction, wrist), "hunter2004" (elbow),
 * "shklar1995" and "ivey1985" (order and ratios at the shoulder), "allison2016", "johnson2004" and "cahalan1989" (hip).
 */
export const SIZED_NORMS = {
  male: {
    shoulderFlexion: [65, 62, 59],
    shoulderExtension: [85, 82, 78],
    shoulderAbduction: [57, 55, 52],
    shoulderAdduction: [80, 79, 76],
    shoulderInternalRotation: [40, 38, 36],
    shoulderExternalRotation: [28, 27, 25],
    elbowFlexion: [55, 52, 48],
    elbowExtension: [39, 36, 34],
    wristFlexion: [23, 22, 22],
    wristExtension: [12, 11.5, 11],
    hipAbduction: [94, 83, 72],
    hipAdduction: [110, 100, 88],
    hipInternalRotation: [62, 55, 47],
    hipExternalRotation: [56, 50, 43],
  },
  female: {
    shoulderFlexion: [41, 38, 36],
    shoulderExtension: [46, 44, 42],
    shoulderAbduction: [36, 34, 31],
    shoulderAdduction: [44, 42, 40],
    shoulderInternalRotation: [25, 24, 22],
    shoulderExternalRotation: [17, 16, 15],
    elbowFlexion: [30, 28, 26],
    elbowExtension: [21, 20, 18],
    wristFlexion: [12.7, 12.3, 11.9],
    wristExtension: [6.1, 6, 5.9],
    hipAbduction: [70, 61, 53],
    hipAdduction: [80, 73, 65],
    hipInternalRotation: [46, 40, 35],
    hipExternalRotation: [42, 37, 32],
  },
} as const;
export const SIZED_NORM_AGES = [60, 70, 80] as const;
/** Mass [kg] x stature [m] of the people those values stand for. */
export const SIZED_NORM_BUILD = { male: 80 * 1.75, female: 68 * 1.62 } as const;

/** Handgrip, median [kg] by five-year band: "grip-norms-2025". Seen: read (second-hand transcription). */
export const GRIP_MEDIAN_KG = {
  male: [[22, 48.0], [32, 49.7], [42, 48.8], [52, 46.2], [57, 44.4], [62, 42.4], [67, 40.1], [72, 37.7], [77, 35.1], [82, 32.3], [87, 29.4], [92, 26.3]],
  female: [[22, 28.6], [32, 29.7], [42, 29.4], [52, 28.2], [57, 27.3], [62, 26.2], [67, 25.0], [72, 23.6], [77, 22.1], [82, 20.4], [87, 18.6], [92, 16.7]],
} as const;

/**
 * Trunk at 20-40 years, both sexes together [N.m]. Two works disagree on the level of extension upright: 118.1 N.m
 * ("trunk-three-planes-2021"), and 504 N standing ("kocjan2014") which at a lever of 0.33 m (judgement) is 166 N.m; their
 * geometric mean is taken, 140, and the first work's ratios between the planes (flexion 0.54, rotation 0.35). Women over
 * men 0.65: middle of the range of "sinaki2001". Side bending: no figure was found; a share of extension, wide (judgement).
 */
export const TRUNK_YOUNG = { extension: 140, flexion: 75.6, rotation: 49 } as const;
/** Extension is stronger bent forward: 68 % more at 36 degrees than upright ("trunk-posture", read); in a line, no further, and no less than 0.6 bent back (judgement). */
export const TRUNK_EXTENSION_GAIN = { perRadian: 0.68 / 0.6283, most: 1.68, least: 0.6 } as const;
export const TRUNK_LATERAL_OF_EXTENSION = 0.75;
export const TRUNK_WOMEN_OVER_MEN = 0.65;
/** Mass x stature [kg m] the trunk's values are taken to stand for (judgement: 66 kg, 1.66 m). */
export const TRUNK_BUILD = 66 * 1.66;
/** Share of the young trunk's strength still there at 85 years, falling in a line from the given age: "sinaki2001". */
export const TRUNK_AGE = { male: { from: 35, shareAt85: 0.36 }, female: { from: 45, shareAt85: 0.5 } } as const;

/** Neck of men [N.m]: "neck2014"; women 0.72 of it ("jordan1999", "garces2002": men stronger by 20-40 %). Seen: read. */
export const NECK_MEN = { flexion: 30, extension: 51, lateral: 32, rotation: 13 } as const;
export const NECK_WOMEN_OVER_MEN = 0.72;

/** Forearm [N.m]: "askew1987", seen: memory. Side bending of the wrist, men: "delp1996", seen: read; women 0.55 of it (judgement). */
export const FOREARM = { male: { pronation: 7.2, supination: 8.9 }, female: { pronation: 3.5, supination: 4.3 } } as const;
export const WRIST_SIDE_MEN = { radial: 11.0, ulnar: 9.5 } as const;
export const WRIST_SIDE_WOMEN_OVER_MEN = 0.55;

/**
 * Toe flexors about the first toe joint, all toes [N.m]: "endo2002", young (22.8 years) 19.0, older (73.2) 13.5, men 20.2, women
 * 12.3, each over both other groups; here split evenly. Seen: read. Level outside those ages.
 */
export const TOE_FLEXION = { ages: [22.8, 73.2], male: [23.6, 16.8], female: [14.4, 10.2] } as const;

/**
 * Elbow over its own angle: [degrees of bend, share of the peak]. Muscles of a public arm model at full activation (derived;
 * "myosim-arm"); no curve of measured people was readable. Level outside.
 */
export const ELBOW_CURVES = {
  elbowFlexion: [[10, 0.39], [30, 0.54], [60, 0.89], [90, 1], [110, 0.8], [125, 0.59]],
  elbowExtension: [[10, 0.81], [30, 1], [60, 1], [90, 0.89], [110, 0.81], [125, 0.72]],
} as const;

/**
 * Pointing the foot with the knee bent over doing so with it straight: 0.60, 0.85 and 0.94 in three works ("calf-knee-bent",
 * read), their mean 0.8; reached at 90 degrees, in a line (judgement).
 */
export const PLANTARFLEXION_KNEE_BENT = { share: 0.8, atDeg: 90 } as const;

/**
 * Where no norm was found, a share of another group's (judgement, wide): the shoulder girdle against the shoulder, the
 * foot's inner side against the ankle, lifting the toes, and the turn of the bent knee against its flexors.
 */
export const TIED_SHARES = {
  girdleElevation: 1.3,
  girdleDepression: 1,
  girdleProtraction: 1.1,
  girdleRetraction: 1,
  inversion: 0.22,
  /** Measured beside dorsiflexion in the same 30 adults: 20.6 and 23.7 N.m ("morin2023", quoted). */
  eversion: 0.87,
  toeExtension: 0.15,
  kneeTurn: 0.3,
} as const;

/** Nowhere in its range does a joint fall below this share of its peak (decision record 0004; knee reviews show 0.56 or more). */
export const LEAST_ANGLE_SHARE = 0.5;
/** Shoulder flexion falls from 89.9 N.m hanging to 68.6 at 45 degrees: "shoulder-flexion-men". Seen: read. */
export const SHOULDER_FLEXION_LOSS_PER_RADIAN = (1 - 68.6 / 89.9) / (Math.PI / 4);
