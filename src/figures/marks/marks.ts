import type { Vector } from "../../quantity/vectors.ts";
import type { SegmentId } from "../../mechanics/body/names.ts";

/** What is drawn over a body without drawing the body again. Points are in the room of the drawn body [m]. */
export interface Marks {
  /** Where weight goes into mat, floor, seat or bench, with its share of body weight (0 to 1). */
  readonly discs?: readonly { readonly at: Vector; readonly share: number }[];
  /** How far the weight can go: corners on the mat in order; `short` numbers the side (from that corner on) where it tips first. */
  readonly outline?: { readonly points: readonly Vector[]; readonly short: number | null };
  /** The centre of mass; drawn on the mat below it. */
  readonly centre?: Vector;
  /** The joint that works hardest: the joint by which this segment hangs on its parent. */
  readonly effort?: { readonly segment: SegmentId; readonly level: "thin" | "thick" };
  /** What moves, from and to. */
  readonly arrow?: { readonly from: Vector; readonly to: Vector };
  /** Pushes of the helper: at the skin, toward. */
  readonly help?: readonly { readonly at: Vector; readonly direction: Vector }[];
}
