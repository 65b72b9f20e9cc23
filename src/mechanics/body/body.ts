import type { Side } from "../../quantity/sides.ts";
import type { Vector } from "../../quantity/vectors.ts";
import type { AngleId, SegmentId } from "./names.ts";

/** What has to be known of a body to build it: sex for the published proportions, height [m], mass [kg]. */
export interface BodySize {
  readonly sex: "female" | "male";
  readonly height: number;
  readonly mass: number;
}

/** One joint angle: a turn about an axis fixed in the segment, taken after those listed before it. */
export interface Turn {
  readonly id: AngleId;
  /** Axis in the segment's frame, with the sign that makes the named direction positive. */
  readonly axis: Vector;
}

/**
 * A rigid part. Its frame sits in the joint to its parent and is parallel to the room when the person stands with arms
 * hanging and palms forward: x forward, y to the person's left, z up.
 */
export interface Segment {
  readonly id: SegmentId;
  readonly index: number;
  readonly parent: number | null;
  readonly side: Side | null;
  /** +1 where this limb lies at the person's left (y > 0), -1 at the right, 0 on the midline. */
  readonly lateral: 1 | -1 | 0;
  /** Joint to the parent, in the parent's frame [m]. */
  readonly joint: Vector;
  readonly turns: readonly Turn[];
  /** Mass [kg], centre of mass in the segment's frame [m], principal radii of gyration about x, y, z [m]. */
  readonly mass: number;
  readonly centre: Vector;
  readonly gyration: Vector;
  /** Distance from this joint to the next one along the segment [m]. */
  readonly length: number;
}

/** What is gone of a leg, and what stands in for it. */
export interface Loss {
  readonly side: Side;
  /** Parts that are gone altogether, and the cut one with the share of its length that is left. */
  readonly gone: readonly SegmentId[];
  readonly cut: { readonly segment: SegmentId; readonly share: number };
  readonly prosthesis: boolean;
}

/** A jointed body. Angles are numbered in the order of `angles`; the first six unknowns of any row are the root's. */
export interface Body {
  readonly size: BodySize;
  /** +1 where the weak side is the left one, -1 where it is the right one. */
  readonly weakAt: 1 | -1;
  readonly segments: readonly Segment[];
  readonly angles: readonly AngleId[];
  readonly segmentIndex: Readonly<Record<SegmentId, number>>;
  readonly angleIndex: Readonly<Record<AngleId, number>>;
  /** The segment an angle moves, by angle number. */
  readonly segmentOfAngle: readonly number[];
  /** Build of the body against the reference one: square root of mass over height, relative. 1 is the reference. */
  readonly girth: number;
  /** Height over the reference subject's stature. */
  readonly stature: number;
  /** What was amputated; none on a whole body. `size.mass` is then the mass the whole body would have. */
  readonly loss?: Loss;
}
