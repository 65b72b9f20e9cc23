import type { Side } from "../../quantity/sides.ts";
import type { LimbAngle, MidAngle } from "../body/names.ts";
import type { PatchId } from "../body/patches.ts";

/**
 * A pose as it would be set up with a person: the angles aimed at, what touches what, and where the weight is taken.
 * Written for both sides at once; degrees and centimetres because it is a table a therapist edits.
 */
export interface PoseSpecification {
  /**
   * How the pelvis lies. Pitch is about the person's sideways axis (0 upright, 90 face down, -90 on the back), then roll
   * about the trunk's front-back axis (positive tips the body toward the strong side: strong side down), turn about the vertical
   * (positive toward the weak side), taken in the order turn, pitch, roll.
   */
  readonly pelvis: { readonly pitchDeg: number; readonly rollToStrongDeg?: number; readonly turnToWeakDeg?: number };
  readonly trunkDeg?: Readonly<Partial<Record<MidAngle, number>>>;
  /** Angles for both limbs; `weak` and `strong` override them. */
  readonly bothDeg?: LimbAngles;
  readonly weakDeg?: LimbAngles;
  readonly strongDeg?: LimbAngles;
  /** What there is to rest on besides the mat or floor at height zero. */
  readonly surfaces?: readonly SurfaceSpecification[];
  readonly contacts: readonly ContactSpecification[];
  /** Where the centre of mass is taken once the contacts stand, measured from the square pose; contacts stay put. */
  readonly shift?: { readonly forwardCm?: number; readonly toWeakCm?: number };
  /** The load sharing between the sides that is the person's own and not computed; none where the pose decides. */
  readonly sharing?: "standing" | "kneeling" | "halfKneeling" | "sitting";
  /** Limp or lifted ends that must not set the verdict: they hang, rest or are held. */
  readonly notCounted?: readonly LimpEnd[];
}

export type LimbAngles = Readonly<Partial<Record<LimbAngle, number>>>;
export type LimpEnd = `${"hand" | "foot" | "toes" | "forearm" | "upperArm" | "girdle"}.${Side}` | "head";

/** A level top, an upright wall, a bar to grip, or a rounded top. */
export interface SurfaceSpecification {
  readonly id: SurfaceId;
  /** What it is, for the drawing. */
  readonly kind:
    | "seat"
    | "bench"
    | "table"
    | "stool"
    | "bolster"
    | "wedge"
    | "block"
    | "step"
    | "pillow"
    | "floor"
    | "wall"
    | "bars"
    | "rail"
    | "cane"
    | "edge";
  /** Height of its top above the mat: in centimetres, or in terms of this body. */
  readonly height: HeightSpecification;
  /** Which part it stands under or in front of, for placing it in the drawing. */
  readonly under?: readonly PatchId[];
  readonly depthCm?: number;
  readonly widthCm?: number;
}
export type SurfaceId =
  | "mat"
  | "seat"
  | "bench"
  | "table"
  | "stool"
  | "bolster"
  | "wedge"
  | "block"
  | "step"
  | "pillow"
  | "floor"
  | "wall"
  | "bars"
  | "rail"
  | "cane"
  | "bed";
export type HeightSpecification =
  | { readonly cm: number }
  /** A height of this body times a factor, plus centimetres: hollow of the knee, elbow when standing, elbow when kneeling upright, hip joint (trochanter) when standing, wrist crease of the hanging arm when standing. */
  | {
      readonly of: "kneeHollow" | "elbowStanding" | "elbowKneeling" | "elbowSitting" | "hipStanding" | "wristStanding";
      readonly times?: number;
      readonly plusCm?: number;
    };

export interface ContactSpecification {
  readonly patch: PatchId;
  /** A surface, or another part of the same body. */
  readonly on: SurfaceId | { readonly body: PatchId };
  /**
   * `closes`: the pose is solved so that it touches. `bears`: it may carry load where it is found touching (within
   * 12 mm) but does not shape the pose. `both`: both.
   */
  readonly role: "closes" | "bears" | "both";
  /**
   * `press` may push as hard as it can; `rest` carries no more than the limb's own weight; `light` only touches: no more
   * than a quarter of it. Default press.
   */
  readonly effort?: "press" | "rest" | "light";
  /** A gripping hand can pull as well as push. */
  readonly grips?: boolean;
}
