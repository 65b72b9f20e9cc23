/**
 * Segment lengths [mm] of the reference subjects, mass as a share of body mass, centre of mass as a share of the length
 * from the first end, radii of gyration as shares of the length (about the forward, sideways and long axis).
 * Source "deleva1996", Table 4; numbered rows of the table are named by their end points.
 */
export const REFERENCE_STATURE_MM = { male: 1741, female: 1735 } as const;

export const SEGMENT_TABLE = {
  male: {
    headFromVertexToCervicale: { lengthMm: 242.9, mass: 0.0694, centre: 0.5002, gyration: [0.303, 0.315, 0.261] },
    upperTrunk: { lengthMm: 170.7, mass: 0.1596, centre: 0.2999, gyration: [0.716, 0.454, 0.659] },
    middleTrunk: { lengthMm: 215.5, mass: 0.1633, centre: 0.4502, gyration: [0.482, 0.383, 0.468] },
    lowerTrunk: { lengthMm: 145.7, mass: 0.1117, centre: 0.6115, gyration: [0.615, 0.551, 0.587] },
    upperArm: { lengthMm: 281.7, mass: 0.0271, centre: 0.5772, gyration: [0.285, 0.269, 0.158] },
    forearm: { lengthMm: 268.9, mass: 0.0162, centre: 0.4574, gyration: [0.276, 0.265, 0.121] },
    hand: { lengthMm: 86.2, mass: 0.0061, centre: 0.79, gyration: [0.628, 0.513, 0.401] },
    thigh: { lengthMm: 422.2, mass: 0.1416, centre: 0.4095, gyration: [0.329, 0.329, 0.149] },
    shank: { lengthMm: 440.3, mass: 0.0433, centre: 0.4395, gyration: [0.251, 0.246, 0.102] },
    foot: { lengthMm: 258.1, mass: 0.0137, centre: 0.4415, gyration: [0.257, 0.245, 0.124] },
    shoulderAboveHipMm: 515.5,
    handToFingertipMm: 187.9,
    hipSpacingMm: 190.0,
  },
  female: {
    headFromVertexToCervicale: { lengthMm: 243.7, mass: 0.0668, centre: 0.4841, gyration: [0.271, 0.295, 0.261] },
    upperTrunk: { lengthMm: 142.5, mass: 0.1545, centre: 0.2077, gyration: [0.746, 0.502, 0.718] },
    middleTrunk: { lengthMm: 205.3, mass: 0.1465, centre: 0.4512, gyration: [0.433, 0.354, 0.415] },
    lowerTrunk: { lengthMm: 181.5, mass: 0.1247, centre: 0.492, gyration: [0.433, 0.402, 0.444] },
    upperArm: { lengthMm: 275.1, mass: 0.0255, centre: 0.5754, gyration: [0.278, 0.26, 0.148] },
    forearm: { lengthMm: 264.3, mass: 0.0138, centre: 0.4559, gyration: [0.261, 0.257, 0.094] },
    hand: { lengthMm: 78.0, mass: 0.0056, centre: 0.7474, gyration: [0.531, 0.454, 0.335] },
    thigh: { lengthMm: 368.5, mass: 0.1478, centre: 0.3612, gyration: [0.369, 0.364, 0.162] },
    shank: { lengthMm: 438.6, mass: 0.0481, centre: 0.4352, gyration: [0.267, 0.263, 0.092] },
    foot: { lengthMm: 228.3, mass: 0.0129, centre: 0.4014, gyration: [0.299, 0.279, 0.139] },
    shoulderAboveHipMm: 497.9,
    handToFingertipMm: 170.1,
    hipSpacingMm: 183.1,
  },
} as const;

/** Ankle joint above the sole, share of stature: Winter's figure after Drillis and Contini ("drillis1966"). */
export const ANKLE_HEIGHT_OF_STATURE = 0.039;

/** Half the spacing of the shoulder joints [mm] at reference stature: half the biacromial breadth less 33 (28) mm; derived from "pheasant1996". */
export const SHOULDER_HALF_SPACING_MM = { male: 167, female: 161 } as const;

/** Share of body mass moved from the upper trunk to each shoulder girdle so that it can be a moving part (judgement). */
export const GIRDLE_MASS = 0.008;
/** Share of the foot's mass that lies in the toes (judgement). */
export const TOE_SHARE_OF_FOOT = 0.12;
