import { add, dot, norm, scale, subtract, type Vector } from "../../quantity/vectors.ts";
import { SIDES } from "../../quantity/sides.ts";
import type { Body } from "../../mechanics/body/body.ts";
import type { SegmentId } from "../../mechanics/body/names.ts";
import { type Frames, pointInRoom, pointJacobian } from "../../mechanics/pose/kinematics.ts";
import type { Block } from "../props/solid.ts";
import type { SoftRow } from "./least-squares.ts";
import { HELPER_BALLS, OWN_ARM_BALLS, OWN_RODS, PERSON_LIMB_RODS, PERSON_RODS } from "./stances.data.ts";

/** A thick rod that the helper's limbs keep clear of. */
export interface Rod {
  readonly from: Vector;
  readonly to: Vector;
  readonly radius: number;
}

/** The person as thick rods. */
export function rodsOf(body: Body, frames: Frames): Rod[] {
  const mm = body.stature / 1000;
  const flesh = mm * body.girth;
  const rods: Rod[] = [];
  for (const row of PERSON_RODS) {
    for (const out of row.out === 0 ? [0] : [1, -1]) {
      const place = (up: number): Vector => pointInRoom(body, frames, row.segment, [0, row.out * out * mm, up * mm]);
      rods.push({
        from: place(row.from),
        to: place(row.to),
        radius: row.radius * (row.segment === "head" ? mm : flesh),
      });
    }
  }
  for (const row of PERSON_LIMB_RODS) {
    for (const side of SIDES) {
      const id: SegmentId = `${row.segment}.${side}`;
      const length = body.segments[body.segmentIndex[id]]?.length ?? 0;
      rods.push({
        from: pointInRoom(body, frames, id, [0, 0, 0]),
        to: pointInRoom(body, frames, id, [0, 0, -length]),
        radius: row.radius * mm * body.girth ** 0.85,
      });
    }
  }
  for (const side of SIDES) {
    rods.push({
      from: pointInRoom(body, frames, `foot.${side}`, [0, 0, -0.03]),
      to: pointInRoom(body, frames, `foot.${side}`, [0.14, 0, -0.05]),
      radius: 0.045,
    });
  }
  return rods;
}

/** A thing's near edges as rods, so that the helper does not stand in it. */
export function rodsOfBlock(block: Block): Rod[] {
  const half = Math.min(block.toX - block.fromX, block.toY - block.fromY) / 2;
  const rods: Rod[] = [];
  const alongX = block.toX - block.fromX > block.toY - block.fromY;
  for (let z = block.bottom + 0.1; z < block.top; z += 0.15) {
    rods.push(
      alongX
        ? {
            from: [block.fromX + half, (block.fromY + block.toY) / 2, z],
            to: [block.toX - half, (block.fromY + block.toY) / 2, z],
            radius: half,
          }
        : {
            from: [(block.fromX + block.toX) / 2, block.fromY + half, z],
            to: [(block.fromX + block.toX) / 2, block.toY - half, z],
            radius: half,
          },
    );
  }
  return rods;
}

interface Ball {
  readonly segment: SegmentId;
  readonly centre: Vector;
  readonly radius: number;
}

function ballsOf(body: Body): Ball[] {
  const mm = body.stature / 1000;
  return HELPER_BALLS.flatMap((row): Ball[] => {
    const centre: Vector = [row.front * mm, 0, row.up * mm];
    const radius = row.radius * mm;
    if (row.segment === "head" || row.segment === "thorax" || row.segment === "abdomen" || row.segment === "pelvis")
      return [{ segment: row.segment, centre, radius }];
    const name = row.segment;
    return SIDES.map((side): Ball => ({ segment: `${name}.${side}`, centre, radius }));
  });
}

interface PlacedBall {
  readonly segment: number;
  readonly at: Vector;
  readonly radius: number;
}

/** A row that moves two points apart along a direction; the second may stand still. */
function apartRow(
  body: Body,
  frames: Frames,
  ball: PlacedBall,
  rod: { readonly near: Vector; readonly radius: number; readonly segment: number | null },
  weight: number,
): SoftRow | null {
  const apart = subtract(ball.at, rod.near);
  const distance = norm(apart);
  const overlap = ball.radius + rod.radius - distance;
  if (overlap <= 0 || distance < 1e-6) return null;
  const direction = scale(apart, 1 / distance);
  const own = pointJacobian(body, frames, ball.segment, ball.at);
  const other = rod.segment === null ? null : pointJacobian(body, frames, rod.segment, rod.near);
  const gradient = new Float64Array(own[0].length);
  for (let i = 0; i < gradient.length; i++)
    for (const k of [0, 1, 2] as const)
      gradient[i] = (gradient[i] ?? 0) + direction[k] * ((own[k][i] ?? 0) - (other?.[k][i] ?? 0));
  return { error: -overlap, gradient, weight };
}

function nearestOnRod(rod: { readonly from: Vector; readonly to: Vector }, at: Vector): Vector {
  const along = subtract(rod.to, rod.from);
  const t = Math.min(1, Math.max(0, dot(subtract(at, rod.from), along) / Math.max(1e-9, dot(along, along))));
  return add(rod.from, scale(along, t));
}

/** A row for every overlap of the helper with the rods or the ground; the error is minus the depth. */
export function keepApartRows(
  body: Body,
  frames: Frames,
  rods: readonly Rod[],
  ground: number,
  firmness = 1,
): SoftRow[] {
  const rows: SoftRow[] = [];
  for (const ball of ballsOf(body)) {
    const segment = body.segmentIndex[ball.segment];
    const at = pointInRoom(body, frames, segment, ball.centre);
    if (at[2] - ball.radius * 0.7 < ground && !ball.segment.startsWith("foot") && !ball.segment.startsWith("shank")) {
      rows.push({
        error: at[2] - ball.radius * 0.7 - ground,
        gradient: pointJacobian(body, frames, segment, at)[2],
        weight: 1.2,
      });
    }
    for (const rod of rods) {
      const near = nearestOnRod(rod, at);
      const row = apartRow(
        body,
        frames,
        { segment, at, radius: ball.radius },
        { near, radius: rod.radius, segment: null },
        0.9 * firmness,
      );
      if (row !== null) rows.push(row);
    }
  }
  return rows;
}

/**
 * The same for forearms and hands and the body's own trunk, thighs and other arm.
 * @param flesh how much thicker than a middling build the body is drawn
 */
export function keepOwnArmsApartRows(body: Body, frames: Frames, flesh = 1): SoftRow[] {
  const mm = body.stature / 1000;
  const rods: (Rod & { readonly segment: SegmentId })[] = [];
  for (const row of OWN_RODS) {
    for (const out of [1, -1]) {
      const place = (up: number): Vector => pointInRoom(body, frames, row.segment, [0, row.out * out * mm, up * mm]);
      rods.push({ from: place(row.from), to: place(row.to), radius: row.radius * mm * flesh, segment: row.segment });
    }
  }
  for (const row of PERSON_LIMB_RODS) {
    for (const side of SIDES) {
      const id: SegmentId = `${row.segment}.${side}`;
      const length = body.segments[body.segmentIndex[id]]?.length ?? 0;
      rods.push({
        from: pointInRoom(body, frames, id, [0, 0, 0]),
        to: pointInRoom(body, frames, id, [0, 0, -length]),
        radius: (row.radius - 6) * mm * flesh,
        segment: id,
      });
    }
  }
  const rows: SoftRow[] = [];
  for (const row of OWN_ARM_BALLS) {
    for (const side of SIDES) {
      const segment = body.segmentIndex[`${row.segment}.${side}`];
      const at = pointInRoom(body, frames, segment, [0, 0, row.up * mm]);
      for (const rod of rods) {
        if (/^(upperArm|forearm)/.test(rod.segment) && rod.segment.endsWith(`.${side}`)) continue;
        // An upper arm lies beside the trunk by nature.
        if (row.segment === "upperArm" && !/^(thigh|shank)/.test(rod.segment)) continue;
        const near = { near: nearestOnRod(rod, at), radius: rod.radius, segment: body.segmentIndex[rod.segment] };
        const apart = apartRow(body, frames, { segment, at, radius: row.radius * mm }, near, 0.7);
        if (apart !== null) rows.push(apart);
      }
    }
  }
  return rows;
}
