import type { Side } from "../../quantity/sides.ts";
import type { PatchId } from "../body/patches.ts";
import type { Capacities } from "../body/strength-capacities.ts";
import { effortProgram, type ExtraColumns } from "../equilibrium/program.ts";
import { prepareStatics, type Statics } from "../equilibrium/statics.ts";
import type { LinearSolver } from "../linear-program/linear-program.ts";
import { FURTHEST } from "./contact-reach.ts";
import { clipPolygon, type HalfPlane, hullOf, outsideHull, type Point } from "./polygon.ts";

/** Where a ray from the centre of mass leaves the region, with the line that proves it. */
export interface RayEnd {
  /** [m], at most FURTHEST. */
  readonly metres: number;
  /** No point of the region lies beyond this line; null where nothing but FURTHEST ends the ray. */
  readonly line: HalfPlane | null;
  /** Joints that work at the given effort there and hold it: none where contacts end it. */
  readonly joints: readonly { readonly joint: string; readonly side: Side | null }[];
  /** Patches that carry the weight there, hardest first. */
  readonly carriers: readonly PatchId[];
}

/** What ends a ray. */
export interface NamedEnd {
  readonly metres: number;
  readonly endedBy: "muscle" | "friction" | "contact" | "nothing near";
  /** The joints that are at their end, or the patches the weight has gone to. */
  readonly what: readonly string[];
}

/** The region a pose's centre of mass may be carried to with everything frozen, between two certified outlines. */
export interface StationRegion {
  /** Corners found by linear programs, counter-clockwise, from the pose's own centre [m, room]: the region reaches at least here. */
  readonly inner: readonly Point[];
  /** Corners of the lines that prove the ends: the region reaches at most here. */
  readonly outer: readonly Point[];
  /** Furthest the outer outline stands from the inner one [m]. */
  readonly gap: number;
  readonly programs: number;
}

/**
 * How far the weight can be carried one way in this pose before contacts, friction or muscle at the given effort end it:
 * one linear program; the program's own duals give the line that nothing passes.
 * @param level most effort of any joint; null leaves muscles out of it
 * @returns null where the pose itself cannot be held at that level
 */
export function rayEnd(
  statics: Statics,
  capacities: Capacities,
  direction: Point,
  level: number | null,
  solver: LinearSolver,
): RayEnd | null {
  const free = { ...statics, sharing: null };
  const { builder, extra, effortRow } = effortProgram(
    free,
    capacities,
    level ?? NO_LIMIT,
    shiftColumn(statics, direction),
  );
  const answer = solver.solve(builder.build());
  if (answer.status !== "best") return null;
  const metres = answer.x[extra] ?? 0;
  const found = {
    joints: statics.joints
      .filter((joint, k) =>
        joint.angles.some((_, a) => Math.abs(answer.duals[(effortRow[k] ?? 0) + (joint.ball ? 0 : a)] ?? 0) > 1e-6),
      )
      .map((joint) => ({ joint: joint.name, side: statics.body.segments[joint.segment]?.side ?? null })),
    carriers: carriersOf(statics, answer.x),
  };
  if (metres > FURTHEST - 1e-9) return { metres: FURTHEST, line: null, joints: [], carriers: found.carriers };
  // The value falls by one for each metre gained: the duals of the two tipping moments are the line's slope.
  const slope: Point = [-statics.weight * (answer.duals[4] ?? 0), statics.weight * (answer.duals[3] ?? 0)];
  const along = slope[0] * direction[0] + slope[1] * direction[1];
  if (Math.abs(along) < 1e-9) return { ...found, metres, line: null };
  return { ...found, metres, line: { normal: [slope[0] / along, slope[1] / along], offset: metres } };
}

/** Patches by the load they carry, those under a twentieth of the weight left out. */
function carriersOf(statics: Statics, x: Float64Array): PatchId[] {
  const loads = new Map<PatchId, number>();
  statics.columns.forEach((column, j) => {
    const patch = statics.pose.contacts[column.contact]?.patch;
    if (patch !== undefined) loads.set(patch, (loads.get(patch) ?? 0) + column.load * (x[j] ?? 0));
  });
  return [...loads]
    .filter(([, load]) => load > 0.05 * statics.weight)
    .sort((a, b) => b[1] - a[1])
    .map(([patch]) => patch);
}

/**
 * What ends a ray first: muscle, if it goes further without muscles; friction, if it goes further where nothing slips;
 * else the contacts themselves. A joint's range cannot be seen in a frozen pose: the re-posed outline names it.
 * @returns null where the pose itself cannot be held at that level
 */
export function nameRayEnd(
  statics: Statics,
  capacities: Capacities,
  direction: Point,
  level: number | null,
  solver: LinearSolver,
): NamedEnd | null {
  const end = rayEnd(statics, capacities, direction, level, solver);
  if (end === null) return null;
  const { metres } = end;
  if (metres >= FURTHEST) return { metres, endedBy: "nothing near", what: end.carriers };
  const idle = level === null ? end : rayEnd(statics, capacities, direction, null, solver);
  if (idle !== null && idle.metres > metres + 1e-4)
    return {
      metres,
      endedBy: "muscle",
      what: end.joints.map(({ joint, side }) => (side === null ? joint : `${joint}.${side}`)),
    };
  const sticky = prepareStatics(statics.body, statics.pose, { ...statics.options, friction: () => 2 });
  const held = rayEnd(sticky, capacities, direction, null, solver);
  const slips = held !== null && held.metres > metres + 0.01;
  return { metres, endedBy: slips ? "friction" : "contact", what: end.carriers };
}

/** Effort that bounds nothing. */
const NO_LIMIT = 1e6;

/** One metre of the centre of mass that way, as a change of the whole body's balance. */
function shiftColumn(statics: Statics, direction: Point): ExtraColumns {
  const { weight, angles } = statics;
  const whole = Float64Array.from([0, 0, 0, -direction[1] * weight, direction[0] * weight, 0]);
  return { count: 1, whole, muscle: new Float64Array(angles), cost: -1, most: FURTHEST };
}

/**
 * The region of one station between two certified outlines: corners reached from inside, proving lines from outside, more
 * rays toward the corner they disagree on most, until they are within the allowance (after Bretl and Lall 2008).
 * @param within allowed distance of the two outlines [m]
 * @returns null where the pose cannot be held at that level, or the outlines do not meet within 200 programs
 */
export function stationRegion(
  statics: Statics,
  capacities: Capacities,
  level: number | null,
  solver: LinearSolver,
  within = 0.002,
): StationRegion | null {
  const points: Point[] = [];
  const lines: HalfPlane[] = [];
  let programs = 0;
  const look = (direction: Point): boolean => {
    const end = rayEnd(statics, capacities, direction, level, solver);
    programs++;
    if (end === null) return false;
    points.push([direction[0] * end.metres, direction[1] * end.metres]);
    lines.push(end.line ?? { normal: direction, offset: end.metres });
    return true;
  };
  for (let k = 0; k < 8; k++) {
    const turn = (k * Math.PI) / 4;
    if (!look([Math.cos(turn), Math.sin(turn)])) return null;
  }
  while (programs < MOST_PROGRAMS) {
    const inner = hullOf(points);
    let outer: readonly Point[] = square(2 * FURTHEST);
    for (const line of lines) outer = clipPolygon(outer, line);
    let gap = 0;
    let toward: Point | null = null;
    for (const corner of outer) {
      const apart = outsideHull(inner, corner);
      if (apart <= gap) continue;
      gap = apart;
      toward = corner;
    }
    if (gap <= within || toward === null) return { inner, outer, gap, programs };
    const length = Math.hypot(toward[0], toward[1]);
    if (!look([toward[0] / length, toward[1] / length])) return null;
  }
  return null;
}

const MOST_PROGRAMS = 200;
const square = (half: number): readonly Point[] => [
  [-half, -half],
  [half, -half],
  [half, half],
  [-half, half],
];
