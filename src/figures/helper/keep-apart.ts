import { add, dot, norm, scale, subtract, type Vector } from "../../quantity/vectors.ts";
import { SIDES } from "../../quantity/sides.ts";
import type { Body } from "../../mechanics/body/body.ts";
import type { SegmentId } from "../../mechanics/body/names.ts";
import { type Frames, pointInRoom, pointJacobian } from "../../mechanics/pose/kinematics.ts";
import type { Block } from "../props/solid.ts";
import type { SoftRow } from "./least-squares.ts";
import { HELPER_BALLS, PERSON_LIMB_RODS, PERSON_RODS } from "./stances.data.ts";

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
      const along = subtract(rod.to, rod.from);
      const t = Math.min(1, Math.max(0, dot(subtract(at, rod.from), along) / Math.max(1e-9, dot(along, along))));
      const apart = subtract(at, add(rod.from, scale(along, t)));
      const distance = norm(apart);
      const overlap = ball.radius + rod.radius - distance;
      if (overlap <= 0 || distance < 1e-6) continue;
      const direction = scale(apart, 1 / distance);
      const jacobian = pointJacobian(body, frames, segment, at);
      const gradient = new Float64Array(jacobian[0].length);
      for (let i = 0; i < gradient.length; i++)
        gradient[i] =
          direction[0] * (jacobian[0][i] ?? 0) +
          direction[1] * (jacobian[1][i] ?? 0) +
          direction[2] * (jacobian[2][i] ?? 0);
      rows.push({ error: -overlap, gradient, weight: 0.9 * firmness });
    }
  }
  return rows;
}
