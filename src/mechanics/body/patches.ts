import type { Side } from "../../quantity/sides.ts";
import type { Vector } from "../../quantity/vectors.ts";
import type { Body } from "./body.ts";
import type { LimbSegment, MidSegment, SegmentId } from "./names.ts";
import { type BallRow, MID_PATCH_TABLE, PAIRED_PATCH_TABLE } from "./patches.data.ts";

export type MidPatch = keyof typeof MID_PATCH_TABLE;
export type PairedPatch = keyof typeof PAIRED_PATCH_TABLE;
/** A part of the skin that can rest on something. */
export type PatchId = MidPatch | `${PairedPatch}.${Side}`;

/**
 * A ball under the skin: it touches a surface where its centre is one radius away from it. A flat part of the skin
 * (sole, palm) is balls of radius zero or of the thickness of the flesh.
 */
export interface Ball {
  /** Centre in the segment's frame [m]. */
  readonly centre: Vector;
  /** [m] */
  readonly radius: number;
}
export interface Patch {
  readonly id: PatchId;
  readonly segment: SegmentId;
  readonly side: Side | null;
  readonly balls: readonly Ball[];
}

const patches = new WeakMap<Body, Map<PatchId, Patch>>();

/** The named patch on this body: lengths follow stature, flesh follows girth. */
export function patchOn(body: Body, id: PatchId): Patch {
  const known = patches.get(body) ?? new Map<PatchId, Patch>();
  patches.set(body, known);
  const patch = known.get(id) ?? buildPatch(body, id);
  known.set(id, patch);
  return patch;
}

/** Whether this body has that patch: not where the part is gone and nothing stands in for it. */
export function hasPatch(body: Body, id: PatchId): boolean {
  const { loss } = body;
  if (loss === undefined || loss.prosthesis) return true;
  const { segment, side } = patchOn(body, id);
  if (side !== loss.side) return true;
  if (loss.gone.includes(segment)) return false;
  if (segment !== loss.cut.segment) return true;
  const row = PAIRED_PATCH_TABLE[id.split(".")[0] as PairedPatch];
  return row.balls.every((ball) => -ball.along <= loss.cut.share);
}

function buildPatch(body: Body, id: PatchId): Patch {
  const [name, side] = id.split(".") as [string, Side | undefined];
  if (side === undefined) {
    const row = MID_PATCH_TABLE[name as MidPatch];
    return {
      id,
      segment: row.segment as MidSegment,
      side: null,
      balls: row.balls.map((ball) => ballOn(body, row.segment as MidSegment, ball, 1)),
    };
  }
  const row = PAIRED_PATCH_TABLE[name as PairedPatch];
  const lateral = side === "weak" ? body.weakAt : -body.weakAt;
  const segment = (isMid(row.segment) ? row.segment : `${row.segment}.${side}`) as SegmentId;
  return { id, segment, side, balls: row.balls.map((ball) => ballOn(body, segment, ball, lateral)) };
}

function isMid(segment: MidSegment | LimbSegment): segment is MidSegment {
  return segment === "pelvis" || segment === "abdomen" || segment === "thorax" || segment === "head";
}

function ballOn(body: Body, segment: SegmentId, ball: BallRow, lateral: number): Ball {
  const length = body.segments[body.segmentIndex[segment]]?.length ?? 0;
  const mm = body.stature / 1000;
  const flesh = mm * body.girth ** ball.girthPower;
  const { outMm, radiusMm } = body.size.sex === "female" && ball.female !== undefined ? ball.female : ball;
  return {
    centre: [
      ball.frontMm * (ball.alongFoot === true ? mm : flesh),
      outMm * mm * lateral,
      ball.upMm * mm + ball.along * length,
    ],
    radius: radiusMm * flesh,
  };
}
