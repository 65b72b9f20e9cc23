import type { Side } from "../../quantity/sides.ts";
import { IDENTITY, rotate, type Vector } from "../../quantity/vectors.ts";
import type { Body } from "../body/body.ts";
import type { MidSegment, LimbSegment, SegmentId } from "../body/names.ts";
import { type Frames, pointInRoom } from "../pose/kinematics.ts";
import { SITE_TABLE, type SiteRow } from "./sites.data.ts";
import type { SiteId } from "./sites.ts";

export type SiteDirection = SiteRow["pushes"][number];

/** A helper's place on this body in this pose, and one direction it can be pushed in. */
export interface SitePush {
  readonly site: SiteId;
  readonly side: Side | null;
  readonly words: string;
  readonly segment: number;
  readonly at: Vector;
  readonly direction: SiteDirection;
  /** Unit vector, room. */
  readonly push: Vector;
}

const MIDDLE: readonly (MidSegment | LimbSegment)[] = ["pelvis", "abdomen", "thorax", "head"];

/** Every way a helper can push at a site of this body in this pose. */
export function sitePushes(body: Body, frames: Frames, site: SiteId): SitePush[] {
  const [name, of] = site.split(".") as [keyof typeof SITE_TABLE, Side | undefined];
  const row: SiteRow = SITE_TABLE[name];
  const side = of ?? null;
  const lateral = side === null ? 0 : side === "weak" ? body.weakAt : -body.weakAt;
  const id = (MIDDLE.includes(row.segment) ? row.segment : `${row.segment}.${side ?? "weak"}`) as SegmentId;
  const segment = body.segmentIndex[id];
  const length = body.segments[segment]?.length ?? 0;
  const mm = body.stature / 1000;
  const own: Vector = [
    row.frontMm * mm * body.girth,
    row.outMm * mm * lateral,
    row.upMm * mm + (row.along ?? 0) * length,
  ];
  const at = pointInRoom(body, frames, segment, own);
  const rotation = frames.rotations[segment] ?? IDENTITY;
  return row.pushes.map((direction) => ({
    site,
    side,
    words: row.words.replace("{side}", side ?? ""),
    segment,
    at,
    direction,
    push: direction === "roomUp" ? [0, 0, 1] : rotate(rotation, inSegment(direction, lateral)),
  }));
}

function inSegment(direction: SiteDirection, lateral: number): Vector {
  switch (direction) {
    case "segmentFront":
      return [1, 0, 0];
    case "segmentBack":
      return [-1, 0, 0];
    case "segmentUp":
      return [0, 0, 1];
    case "segmentDown":
      return [0, 0, -1];
    case "inward":
      return [0, -lateral, 0];
    case "outward":
      return [0, lateral, 0];
    default:
      return [0, 0, 1];
  }
}
