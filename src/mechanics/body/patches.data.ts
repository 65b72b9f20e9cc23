import type { LimbSegment, MidSegment } from "./names.ts";

/**
 * Where skin meets mat, floor, seat or bench: balls in the segment's frame [mm at reference stature]: front, out (away
 * from the midline), up; `along` is a share of the segment's length (downwards is negative in limbs). Radii grow with
 * girth to the given power. Breadths and depths after "pheasant1996" and set so that the drawn skin has the same surface;
 * knee centre 50 mm above the mat in kneeling ("judgement").
 */
export interface BallRow {
  readonly frontMm: number;
  readonly outMm: number;
  readonly upMm: number;
  readonly along: number;
  readonly radiusMm: number;
  readonly girthPower: number;
  /** A woman's, where the trunk's shape differs. */
  readonly female?: { readonly outMm: number; readonly radiusMm: number };
  /** The front measure follows the foot's length, not the flesh. */
  readonly alongFoot?: boolean;
}
interface Row {
  readonly segment: MidSegment | LimbSegment;
  readonly balls: readonly BallRow[];
}

export const MID_PATCH_TABLE = {
  headBack: { segment: "head", balls: [{ frontMm: -14, outMm: 0, upMm: 130, along: 0, radiusMm: 77, girthPower: 0 }] },
  headSide: { segment: "head", balls: [{ frontMm: 20, outMm: 0, upMm: 130, along: 0, radiusMm: 77, girthPower: 0 }] },
  forehead: { segment: "head", balls: [{ frontMm: 30, outMm: 0, upMm: 150, along: 0, radiusMm: 75, girthPower: 0 }] },
  chestFront: { segment: "thorax", balls: [{ frontMm: 35, outMm: 0, upMm: 30, along: 0, radiusMm: 85, girthPower: 1 }] },
  belly: { segment: "abdomen", balls: [{ frontMm: 20, outMm: 0, upMm: 40, along: 0, radiusMm: 90, girthPower: 1.2 }] },
  lowBack: { segment: "abdomen", balls: [{ frontMm: -10, outMm: 0, upMm: 60, along: 0, radiusMm: 75, girthPower: 1 }] },
} as const satisfies Record<string, Row>;

export const PAIRED_PATCH_TABLE = {
  shoulderBlade: { segment: "thorax", balls: [{ frontMm: -35, outMm: 80, upMm: 75, along: 0, radiusMm: 68, girthPower: 1 }] },
  ribSide: { segment: "thorax", balls: [{ frontMm: 0, outMm: 75, upMm: 20, along: 0, radiusMm: 95, girthPower: 1, female: { outMm: 62, radiusMm: 87 } }] },
  buttock: { segment: "pelvis", balls: [{ frontMm: -35, outMm: 75, upMm: -8, along: 0, radiusMm: 78, girthPower: 1 }] },
  pelvisFront: { segment: "pelvis", balls: [{ frontMm: 25, outMm: 90, upMm: 60, along: 0, radiusMm: 70, girthPower: 1 }] },
  hipSide: { segment: "pelvis", balls: [{ frontMm: 0, outMm: 95, upMm: -5, along: 0, radiusMm: 72, girthPower: 1 }] },
  shoulderSide: { segment: "upperArm", balls: [{ frontMm: 0, outMm: 0, upMm: 0, along: 0, radiusMm: 52, girthPower: 0.85 }] },
  elbow: { segment: "forearm", balls: [{ frontMm: 0, outMm: 0, upMm: 0, along: 0, radiusMm: 40, girthPower: 0.6 }] },
  forearm: {
    segment: "forearm",
    balls: [
      { frontMm: 0, outMm: 0, upMm: 0, along: 0, radiusMm: 40, girthPower: 0.6 },
      { frontMm: 0, outMm: 0, upMm: 0, along: -0.93, radiusMm: 28, girthPower: 0.35 },
    ],
  },
  wrist: { segment: "forearm", balls: [{ frontMm: 0, outMm: 0, upMm: 0, along: -0.86, radiusMm: 28, girthPower: 0.35 }] },
  hand: {
    segment: "hand",
    balls: [
      { frontMm: 4, outMm: 0, upMm: -18, along: 0, radiusMm: 14, girthPower: 0.35 },
      { frontMm: 6, outMm: 34, upMm: -88, along: 0, radiusMm: 10, girthPower: 0.35 },
      { frontMm: 6, outMm: -34, upMm: -88, along: 0, radiusMm: 10, girthPower: 0.35 },
    ],
  },
  grip: { segment: "hand", balls: [{ frontMm: 22, outMm: 0, upMm: -75, along: 0, radiusMm: 0, girthPower: 0 }] },
  fist: { segment: "hand", balls: [{ frontMm: 0, outMm: 0, upMm: -85, along: 0, radiusMm: 20, girthPower: 0.35 }] },
  thighBack: { segment: "thigh", balls: [{ frontMm: -6, outMm: 0, upMm: 0, along: -0.55, radiusMm: 70, girthPower: 0.85 }] },
  thighFront: { segment: "thigh", balls: [{ frontMm: 4, outMm: 0, upMm: 0, along: -0.6, radiusMm: 68, girthPower: 0.85 }] },
  kneeHollow: { segment: "thigh", balls: [{ frontMm: -10, outMm: 0, upMm: 0, along: -0.88, radiusMm: 50, girthPower: 0.85 }] },
  knee: { segment: "shank", balls: [{ frontMm: 0, outMm: 0, upMm: 0, along: 0, radiusMm: 50, girthPower: 0.6 }] },
  shin: { segment: "shank", balls: [{ frontMm: 0, outMm: 0, upMm: 0, along: -0.05, radiusMm: 50, girthPower: 0.6 }] },
  calf: { segment: "shank", balls: [{ frontMm: -12, outMm: 0, upMm: 0, along: -0.3, radiusMm: 54, girthPower: 0.85 }] },
  ankleSide: { segment: "shank", balls: [{ frontMm: 0, outMm: 0, upMm: 0, along: -0.98, radiusMm: 35, girthPower: 0.35 }] },
  heel: { segment: "foot", balls: [{ frontMm: -38, outMm: 0, upMm: -40, along: 0, radiusMm: 28, girthPower: 0, alongFoot: true }] },
  foot: {
    segment: "foot",
    balls: [
      { frontMm: -40, outMm: 0, upMm: -68, along: 0, radiusMm: 0, girthPower: 0, alongFoot: true },
      { frontMm: 118, outMm: -32, upMm: -68, along: 0, radiusMm: 0, girthPower: 0, alongFoot: true },
      { frontMm: 100, outMm: 36, upMm: -68, along: 0, radiusMm: 0, girthPower: 0, alongFoot: true },
    ],
  },
  forefoot: {
    segment: "foot",
    balls: [
      { frontMm: 118, outMm: -32, upMm: -68, along: 0, radiusMm: 0, girthPower: 0, alongFoot: true },
      { frontMm: 100, outMm: 36, upMm: -68, along: 0, radiusMm: 0, girthPower: 0, alongFoot: true },
    ],
  },
  instep: { segment: "foot", balls: [{ frontMm: 70, outMm: 0, upMm: -35, along: 0, radiusMm: 32, girthPower: 0.35, alongFoot: true }] },
  toes: { segment: "toes", balls: [{ frontMm: 40, outMm: 0, upMm: 0, along: 0, radiusMm: 13, girthPower: 0, alongFoot: true }] },
} as const satisfies Record<string, Row>;
