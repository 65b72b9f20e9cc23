import type { LimbSegment, MidSegment } from "../body/names.ts";

/**
 * Where a helper's hand, thigh or shin may act on the body. Points in the segment's frame at reference stature
 * [mm: front, out from the midline, up; `along` a share of the segment's length], on or near the skin; directions in
 * which the site can be pushed, in words of the room (up, down) or of the segment (front = toward the segment's front).
 * Common practice: pelvis from below or behind, shoulder only as flat support front and back, nothing in the armpit,
 * on the hand, or pulling the weak arm.
 */
export interface SiteRow {
  readonly segment: MidSegment | LimbSegment;
  readonly frontMm: number;
  readonly outMm: number;
  readonly upMm: number;
  readonly along?: number;
  readonly pushes: readonly ("roomUp" | "segmentFront" | "segmentBack" | "segmentUp" | "segmentDown" | "inward" | "outward")[];
  /** Paired sites exist on both sides. */
  readonly paired: boolean;
  /** Plain name, with "{side}" where weak or strong is put. */
  readonly words: string;
}

export const SITE_TABLE = {
  underButtock: { segment: "pelvis", frontMm: -70, outMm: 75, upMm: -50, pushes: ["roomUp"], paired: true, words: "under the {side} buttock" },
  hipBoneFront: { segment: "pelvis", frontMm: 75, outMm: 105, upMm: 85, pushes: ["segmentBack"], paired: true, words: "front of the {side} hip bone" },
  pelvisBack: { segment: "pelvis", frontMm: -95, outMm: 80, upMm: 60, pushes: ["segmentFront", "roomUp"], paired: true, words: "back of the pelvis, {side} side" },
  pelvisSide: { segment: "pelvis", frontMm: 0, outMm: 155, upMm: 50, pushes: ["inward"], paired: true, words: "side of the pelvis, {side} side" },
  beltBack: { segment: "pelvis", frontMm: -100, outMm: 0, upMm: 100, pushes: ["segmentFront", "segmentBack", "roomUp"], paired: false, words: "the belt at the back" },
  kneeEnd: { segment: "thigh", frontMm: 45, outMm: 0, upMm: 0, along: -0.95, pushes: ["segmentDown"], paired: true, words: "end of the {side} thigh, drawn toward the foot" },
  kneeFront: { segment: "shank", frontMm: 48, outMm: 0, upMm: 0, along: -0.03, pushes: ["segmentBack"], paired: true, words: "front of the {side} knee" },
  kneeOuter: { segment: "thigh", frontMm: 0, outMm: 55, upMm: 0, along: -0.92, pushes: ["inward"], paired: true, words: "outer side of the {side} knee" },
  kneeBack: { segment: "thigh", frontMm: -50, outMm: 0, upMm: 0, along: -0.93, pushes: ["segmentFront", "roomUp"], paired: true, words: "behind the {side} knee" },
  underThigh: { segment: "thigh", frontMm: -72, outMm: 0, upMm: 0, along: -0.6, pushes: ["roomUp"], paired: true, words: "under the {side} thigh" },
  thighFront: { segment: "thigh", frontMm: 75, outMm: 0, upMm: 0, along: -0.6, pushes: ["segmentBack"], paired: true, words: "front of the {side} thigh" },
  shinFront: { segment: "shank", frontMm: 45, outMm: 0, upMm: 0, along: -0.3, pushes: ["segmentBack"], paired: true, words: "the {side} shin" },
  underHeel: { segment: "foot", frontMm: -60, outMm: 0, upMm: -50, pushes: ["roomUp"], paired: true, words: "under the {side} heel" },
  footTop: { segment: "foot", frontMm: 80, outMm: 0, upMm: -5, pushes: ["segmentDown"], paired: true, words: "top of the {side} foot" },
  aboveElbowBack: { segment: "upperArm", frontMm: -46, outMm: 0, upMm: 0, along: -0.82, pushes: ["segmentFront"], paired: true, words: "back of the {side} upper arm, just above the elbow" },
  upperArmUnder: { segment: "upperArm", frontMm: -40, outMm: -10, upMm: 0, along: -0.6, pushes: ["roomUp"], paired: true, words: "under the {side} upper arm" },
  forearmUnder: { segment: "forearm", frontMm: -30, outMm: 0, upMm: 0, along: -0.5, pushes: ["roomUp"], paired: true, words: "under the {side} forearm" },
  shoulderFront: { segment: "thorax", frontMm: 70, outMm: 130, upMm: 100, pushes: ["segmentBack", "roomUp"], paired: true, words: "flat on the front of the {side} shoulder" },
  shoulderBack: { segment: "thorax", frontMm: -85, outMm: 110, upMm: 90, pushes: ["segmentFront"], paired: true, words: "flat on the {side} shoulder blade" },
  upperChest: { segment: "thorax", frontMm: 105, outMm: 70, upMm: 70, pushes: ["roomUp", "segmentBack"], paired: true, words: "front of the upper chest, {side} side" },
  ribSide: { segment: "thorax", frontMm: 0, outMm: 150, upMm: 0, pushes: ["inward"], paired: true, words: "{side} side of the ribs" },
  middleBack: { segment: "thorax", frontMm: -105, outMm: 0, upMm: 20, pushes: ["segmentFront", "roomUp"], paired: false, words: "middle of the back" },
  chestUnder: { segment: "thorax", frontMm: 115, outMm: 0, upMm: 30, pushes: ["roomUp"], paired: false, words: "under the breastbone" },
} as const satisfies Record<string, SiteRow>;
