import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";
import type { LimbAngle, MidAngle } from "./names.ts";

/** A published joint range [degrees]: how far the joint goes in that direction, women and men, and by which age. */
export interface RangeRow {
  readonly angle: LimbAngle | MidAngle;
  /** Toward the angle's positive or negative end. */
  readonly end: "most" | "least";
  readonly women: number;
  readonly men: number;
  readonly ages: readonly [number, number];
  readonly how: "passive" | "active";
  readonly source: SourceId;
  readonly seen: Seen;
}

/** Ends of the pose's own sense: a negative figure lies on the other side of zero. Spreads are seldom printed; 8 degrees is usual (judgement). */
export const RANGE_SPREAD_DEG = 8;
export const RANGE_NORMS: readonly RangeRow[] = [
  { angle: "hipFlexion", end: "least", women: -18.1, men: -17.4, ages: [20, 44], how: "passive", source: "soucie2011", seen: "read" },
  { angle: "hipFlexion", end: "least", women: -16.7, men: -13.5, ages: [45, 69], how: "passive", source: "soucie2011", seen: "read" },
  { angle: "hipFlexion", end: "most", women: 133.8, men: 130.4, ages: [20, 44], how: "passive", source: "soucie2011", seen: "read" },
  { angle: "hipFlexion", end: "most", women: 130.8, men: 127.2, ages: [45, 69], how: "passive", source: "soucie2011", seen: "memory" },
  { angle: "kneeFlexion", end: "most", women: 141.9, men: 137.7, ages: [20, 44], how: "passive", source: "soucie2011", seen: "read" },
  { angle: "kneeFlexion", end: "most", women: 137.8, men: 132.9, ages: [45, 69], how: "passive", source: "soucie2011", seen: "memory" },
  { angle: "kneeFlexion", end: "least", women: -1.6, men: -1, ages: [20, 44], how: "passive", source: "soucie2011", seen: "read" },
  { angle: "kneeFlexion", end: "least", women: -1.2, men: -0.5, ages: [45, 69], how: "passive", source: "soucie2011", seen: "memory" },
  { angle: "ankleDorsiflexion", end: "most", women: 13.8, men: 12.7, ages: [20, 44], how: "passive", source: "soucie2011", seen: "read" },
  { angle: "ankleDorsiflexion", end: "most", women: 11.6, men: 11.9, ages: [45, 69], how: "passive", source: "soucie2011", seen: "read" },
  { angle: "ankleDorsiflexion", end: "least", women: -62.1, men: -54.6, ages: [20, 44], how: "passive", source: "soucie2011", seen: "read" },
  { angle: "ankleDorsiflexion", end: "least", women: -56.5, men: -49.4, ages: [45, 69], how: "passive", source: "soucie2011", seen: "memory" },
  { angle: "shoulderFlexion", end: "most", women: 172, men: 168.8, ages: [20, 44], how: "passive", source: "soucie2011", seen: "read" },
  { angle: "shoulderFlexion", end: "most", women: 168.1, men: 164, ages: [45, 69], how: "passive", source: "soucie2011", seen: "memory" },
  { angle: "shoulderFlexion", end: "most", women: 158.2, men: 158.2, ages: [70, 95], how: "active", source: "kalscheur", seen: "read" },
  { angle: "shoulderFlexion", end: "least", women: -44, men: -44, ages: [60, 84], how: "active", source: "walker1984", seen: "read" },
  { angle: "shoulderAbduction", end: "most", women: 154.6, men: 154.6, ages: [70, 95], how: "active", source: "kalscheur", seen: "read" },
  { angle: "shoulderExternalRotation", end: "most", women: 76.1, men: 76.1, ages: [70, 95], how: "active", source: "kalscheur", seen: "read" },
  { angle: "shoulderExternalRotation", end: "most", women: 104, men: 104, ages: [1, 54], how: "active", source: "boone1979", seen: "read" },
  { angle: "shoulderExternalRotation", end: "least", women: -52.9, men: -52.9, ages: [70, 95], how: "active", source: "kalscheur", seen: "read" },
  { angle: "elbowFlexion", end: "most", women: 150, men: 144.6, ages: [20, 44], how: "passive", source: "soucie2011", seen: "read" },
  { angle: "elbowFlexion", end: "most", women: 143, men: 143, ages: [60, 84], how: "active", source: "walker1984", seen: "read" },
  { angle: "elbowFlexion", end: "least", women: -4.7, men: -0.8, ages: [20, 44], how: "passive", source: "soucie2011", seen: "read" },
  { angle: "elbowFlexion", end: "least", women: 4, men: 4, ages: [60, 84], how: "active", source: "walker1984", seen: "read" },
  { angle: "wristExtension", end: "most", women: 75, men: 75, ages: [1, 54], how: "active", source: "boone1979", seen: "read" },
  { angle: "wristExtension", end: "most", women: 63, men: 63, ages: [60, 84], how: "active", source: "walker1984", seen: "read" },
  { angle: "wristExtension", end: "least", women: -64, men: -64, ages: [60, 84], how: "active", source: "walker1984", seen: "read" },
  { angle: "radialDeviation", end: "most", women: 19, men: 19, ages: [60, 84], how: "active", source: "walker1984", seen: "read" },
  { angle: "radialDeviation", end: "least", women: -26, men: -26, ages: [60, 84], how: "active", source: "walker1984", seen: "read" },
  { angle: "hipExternalRotation", end: "most", women: 41.8, men: 41.8, ages: [20, 60], how: "passive", source: "kouyoumdjian2012", seen: "read" },
  { angle: "hipExternalRotation", end: "least", women: -37.9, men: -37.9, ages: [20, 60], how: "passive", source: "kouyoumdjian2012", seen: "read" },
  { angle: "hipAbduction", end: "most", women: 45, men: 45, ages: [20, 95], how: "passive", source: "aaos", seen: "common-practice" },
  { angle: "hipAbduction", end: "least", women: -30, men: -30, ages: [20, 95], how: "passive", source: "aaos", seen: "common-practice" },
  { angle: "kneeExternalRotation", end: "most", women: 45, men: 45, ages: [20, 95], how: "passive", source: "knee1983", seen: "read" },
  { angle: "kneeExternalRotation", end: "least", women: -25, men: -25, ages: [20, 95], how: "passive", source: "knee1983", seen: "read" },
  { angle: "neckFlexion", end: "most", women: 53, men: 53, ages: [70, 90], how: "active", source: "neck-elderly-1993", seen: "derived" },
  { angle: "neckFlexion", end: "least", women: -41, men: -41, ages: [70, 90], how: "active", source: "neck-elderly-1993", seen: "derived" },
  { angle: "neckTurn", end: "most", women: 64, men: 64, ages: [70, 90], how: "active", source: "neck-elderly-1993", seen: "derived" },
  { angle: "neckSideBend", end: "most", women: 26, men: 26, ages: [70, 95], how: "active", source: "kalscheur", seen: "read" },
];

/** Low back by age, youngest to oldest of 405 people of 16 to 90 years, standing [degrees]: "troke2001". Seen: read. */
export const LOW_BACK_RANGE = { flexion: [72, 40], extension: [29, 6], sideBend: [29, 15], turn: [7, 7], ages: [20, 85] } as const;

/** Floor kneeling on the heels needs these of young and of older adults [degrees]: "kneeling-needs-2012". Seen: read. */
export const HEEL_KNEELING_NEEDS = { kneeFlexion: [139.6, 140.9], pointing: [35.7, 37.6], hipFlexion: [67.5, 100.5] } as const;
