import type { LimbAngle, MidAngle } from "../body/names.ts";

/**
 * How far each joint goes [degrees], least and most, for posing. Rounded from passive norms of "soucie2011" (hip, knee,
 * ankle, shoulder, elbow, forearm), "aaos" handbook figures where that study has none (common practice), "knee1983" for
 * the turn of the bent knee; shoulder girdle, toes and the share of the trunk's parts are judgement. With the wrist bent
 * back under load a little more than the free range is seen: 95 is allowed. The foot is one part: kneeling asks its
 * midfoot to bend as well, so pointing goes to 72.
 */
export const LIMB_LIMITS_DEG: Readonly<Record<LimbAngle, readonly [number, number]>> = {
  girdleElevation: [-12, 40],
  girdleProtraction: [-25, 30],
  shoulderFlexion: [-60, 175],
  shoulderAbduction: [-45, 175],
  shoulderExternalRotation: [-95, 100],
  elbowFlexion: [0, 148],
  pronation: [0, 178],
  wristExtension: [-80, 95],
  radialDeviation: [-36, 22],
  hipFlexion: [-18, 132],
  hipAbduction: [-30, 48],
  hipExternalRotation: [-45, 60],
  kneeFlexion: [-1, 152],
  kneeExternalRotation: [-25, 40],
  ankleDorsiflexion: [-72, 25],
  inversion: [-20, 35],
  toeExtension: [-35, 75],
};

export const MID_LIMITS_DEG: Readonly<Record<MidAngle, readonly [number, number]>> = {
  lumbarFlexion: [-30, 55],
  lumbarSideBend: [-28, 28],
  lumbarTurn: [-15, 15],
  thoraxFlexion: [-20, 35],
  thoraxSideBend: [-25, 25],
  thoraxTurn: [-35, 35],
  neckFlexion: [-60, 60],
  neckSideBend: [-40, 40],
  neckTurn: [-80, 80],
};
