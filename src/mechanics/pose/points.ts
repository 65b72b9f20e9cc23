import type { Vector } from "../../quantity/vectors.ts";

/** A straight part between two points of the room: its mass in any unit, its centre as a share of the way from one end. */
export interface StraightPart {
  readonly mass: number;
  readonly from: Vector;
  readonly to: Vector;
  readonly centre: number;
}
/** A centre of mass and the mass there. */
export interface WeighedPoint {
  readonly mass: number;
  readonly centre: Vector;
}

/** Centre of mass of straight parts, for markers and any table of segments. @returns centre [unit of the points]; all zero for no mass */
export function weighPoints(parts: readonly StraightPart[]): WeighedPoint {
  let mass = 0;
  let [x, y, z] = [0, 0, 0];
  for (const part of parts) {
    const at = (k: 0 | 1 | 2): number => part.from[k] + (part.to[k] - part.from[k]) * part.centre;
    mass += part.mass;
    x += part.mass * at(0);
    y += part.mass * at(1);
    z += part.mass * at(2);
  }
  return mass === 0 ? { mass, centre: [0, 0, 0] } : { mass, centre: [x / mass, y / mass, z / mass] };
}

/** Moment of inertia of straight parts about a point, level axis across the plane [mass x length squared]. @param radii of gyration about each part's own centre, as a share of its length */
export function inertiaAbout(parts: readonly StraightPart[], radii: readonly number[], about: Vector): number {
  return parts.reduce((sum, part, k) => {
    const { centre } = weighPoints([part]);
    const length = Math.hypot(part.to[0] - part.from[0], part.to[2] - part.from[2]);
    const own = ((radii[k] ?? 0) * length) ** 2;
    return sum + part.mass * (own + (centre[0] - about[0]) ** 2 + (centre[2] - about[2]) ** 2);
  }, 0);
}
