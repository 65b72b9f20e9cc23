import type { Vector } from "../../quantity/vectors.ts";
import type { Body } from "../../mechanics/body/body.ts";
import { type PatchId, patchOn } from "../../mechanics/body/patches.ts";
import { type Frames, pointInRoom } from "../../mechanics/pose/kinematics.ts";
import type { PoseSpecification, SurfaceSpecification } from "../../mechanics/pose/specification.ts";
import { surfaceHeight } from "../../mechanics/pose/targets.ts";
import type { Support } from "../skin/posed.ts";
import { caneUnder, railAt, riseOf } from "./hand-holds.ts";
import {
  type Block,
  makeBars,
  makeBlock,
  makePillow,
  makeRods,
  makeRoll,
  makeTable,
  makeWedge,
  type Thing,
  type Tube,
} from "./solid.ts";
import { edgeOfStep } from "./step-edge.ts";

export interface PlacedThings {
  readonly things: readonly Thing[];
  readonly supports: readonly Support[];
  /** Height of what the person and the helper are on [m]: the mat, and the floor below or at it. */
  readonly matTop: number;
  readonly floor: number;
  /** An upright wall behind the person, and the blocks' outlines from above. */
  readonly wallX: number | null;
  readonly footprints: readonly Block[];
  readonly rails: readonly Tube[];
  /** Things by the surface's name, for finding what a contact rests on. */
  readonly tops: Readonly<Partial<Record<string, number>>>;
}

const MAT_DEPTH = 0.4;
/** How far a wall goes up above the head's joint [m]: enough to be seen as a wall. */
const WALL_ABOVE_HEAD = 0.45;
/** Skin this far inside a thing is brought out to its top [m]. */
const SINKS = 0.07;

/** Puts what the pose rests on where the body needs it: under the parts it carries, its near edge toward the person. */
export function placeThings(body: Body, frames: Frames, pose: PoseSpecification | null): PlacedThings {
  const surfaces = pose?.surfaces ?? [];
  const things: Thing[] = [];
  const supports: Support[] = [{ top: 0, footprint: null, depth: MAT_DEPTH }];
  const footprints: Block[] = [];
  const rails: Tube[] = [];
  const tops: Partial<Record<string, number>> = { mat: 0, floor: 0 };
  let floor = 0;
  let matTop = 0;
  let wallX: number | null = null;
  if (pose !== null) {
    const low = surfaceHeight(body, pose, "floor");
    if (low !== null) floor = Math.min(low, 0);
    matTop = surfaceHeight(body, pose, "mat") ?? 0;
    supports[0] = { top: Math.min(floor, matTop), footprint: null, depth: MAT_DEPTH };
    tops.floor = floor;
    tops.mat = matTop;
  }
  let climb = 0;
  // What is stood on comes first: a rail follows the steps and a cane may stand on a kerb.
  for (const surface of [...surfaces].sort((a, b) => lateness(a) - lateness(b))) {
    if (pose === null || surface.id === "floor" || (surface.id === "mat" && matTop <= floor)) continue;
    const points = restingPoints(body, frames, pose, surface);
    if (surface.kind === "wall") {
      wallX = wallBehind(body, frames, pose, surface);
      const middle = frames.positions[0]?.[1] ?? 0;
      things.push(
        makeBlock({
          fromX: wallX - 0.03,
          toX: wallX,
          fromY: middle - 0.75,
          toY: middle + 0.75,
          bottom: floor,
          top: Math.max(...frames.positions.map((p) => p[2])) + WALL_ABOVE_HEAD,
        }),
      );
      continue;
    }
    if (points.length === 0) continue;
    const top = surfaceHeight(body, pose, surface.id) ?? 0;
    tops[surface.id] = top;
    if (surface.kind === "bars") {
      const bars = barsAt(points, top, floor);
      things.push(bars);
      rails.push(...bars.tubes.filter((tube) => Math.abs(tube.to[2] - tube.from[2]) < 0.01));
      continue;
    }
    if (surface.kind === "cane" || surface.kind === "rail") {
      const hand = points[0] ?? [0, 0, 0];
      const rods =
        surface.kind === "cane" ? caneUnder(hand, floorUnder(footprints, hand, floor)) : railAt(hand, floor, climb);
      things.push(makeRods(rods));
      if (surface.kind === "rail") rails.push(...rods);
      continue;
    }
    const set = blockFor(body, frames, surface, points, top, floor);
    const { block, climbs } =
      surface.id === "step" ? edgeOfStep(body, frames, pose, set) : { block: set, climbs: 1 as const };
    footprints.push(block);
    if (surface.kind === "step") climb = climbs * riseOf(block, top - floor);
    if (surface.kind === "wedge") {
      const wedge = wedgeUnder(body, frames, block, mean(points.map((p) => p[0])));
      things.push(wedge.thing);
      supports.push(wedge.support);
    } else if (surface.kind === "bolster") {
      const roll = rollUnder(surface, block);
      things.push(roll.thing);
      supports.push(roll.support);
    } else {
      things.push(shapeOf(surface, block));
      supports.push({ top, footprint: block, depth: surface.kind === "pillow" ? 0.03 : SINKS });
    }
  }
  return { things, supports, matTop, floor, wallX, footprints, rails, tops };
}

const lateness = (surface: SurfaceSpecification): number =>
  surface.kind === "cane" || surface.kind === "rail" ? 1 : 0;

/** Height of what a cane's foot stands on: a step under it as long as the hand is high enough above it, else the floor. */
function floorUnder(footprints: readonly Block[], hand: Vector, floor: number): number {
  const [x, y, z] = hand;
  const under = footprints.filter((b) => x > b.fromX && x < b.toX && y > b.fromY && y < b.toY && b.top < z - 0.5);
  return Math.max(floor, ...under.map((b) => b.top));
}

function patchesOn(pose: PoseSpecification, surface: SurfaceSpecification): readonly PatchId[] {
  const ids = new Set<PatchId>(surface.under ?? []);
  for (const contact of pose.contacts) if (contact.on === surface.id) ids.add(contact.patch);
  return [...ids];
}

function restingPoints(body: Body, frames: Frames, pose: PoseSpecification, surface: SurfaceSpecification): Vector[] {
  return patchesOn(pose, surface).flatMap((id) => {
    const patch = patchOn(body, id);
    return patch.balls.map((ball) => pointInRoom(body, frames, patch.segment, ball.centre));
  });
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

function barsAt(points: readonly Vector[], top: number, floor: number): Thing {
  const middle = mean(points.map((p) => p[0]));
  const spread = Math.max(0.28, ...points.map((p) => Math.abs(p[1])));
  const z = Number.isFinite(top) ? top : mean(points.map((p) => p[2]));
  return makeBars(
    [
      { y: spread, z },
      { y: -spread, z },
    ],
    middle - 0.75,
    middle + 0.75,
    floor,
    0.02,
  );
}

/** The wall touches the skin that lies furthest back of what leans on it. */
function wallBehind(body: Body, frames: Frames, pose: PoseSpecification, surface: SurfaceSpecification): number {
  const xs = patchesOn(pose, surface).flatMap((id) => {
    const patch = patchOn(body, id);
    return patch.balls.map((ball) => pointInRoom(body, frames, patch.segment, ball.centre)[0] - ball.radius);
  });
  return Math.min(...(xs.length > 0 ? xs : frames.positions.map((p) => p[0] - 0.15)));
}

function blockFor(
  body: Body,
  frames: Frames,
  surface: SurfaceSpecification,
  points: readonly Vector[],
  top: number,
  floor: number,
): Block {
  const depth = (surface.depthCm ?? 50) / 100;
  const width = (surface.widthCm ?? 60) / 100;
  const xs = points.map((p) => p[0]);
  const middleX = mean(xs);
  const middleY = mean(points.map((p) => p[1]));
  const hips = frames.positions[0] ?? [0, 0, 0];
  let fromX = middleX - depth / 2;
  if (surface.kind === "bench" || surface.kind === "table") {
    // The person leans on the near part: the edge toward the hips lies just behind what rests on it, but not in the body.
    const ahead = middleX >= hips[0] ? 1 : -1;
    const front = frontOf(body, frames, ahead, surface.kind === "bench");
    const nearest = Math.min(...xs.map((x) => x * ahead)) - 0.07;
    const furthest = Math.max(...xs.map((x) => x * ahead)) - 0.04;
    const edge = Math.min(Math.max(nearest, front), furthest);
    fromX = ahead > 0 ? edge : -edge - depth;
  } else if (surface.kind === "seat" || surface.kind === "edge") {
    const knees = [0, 1].map((k) => pointInRoom(body, frames, k === 0 ? "shank.weak" : "shank.strong", [0, 0, 0])[0]);
    const knee = mean(knees);
    const edge = hips[0] + seatDepth(body, frames, top) * (knee - hips[0]);
    const behind = behindCalves(body, frames);
    fromX = behind !== null ? behind - depth : knee >= hips[0] ? edge - depth : edge;
  }
  const bottom =
    surface.kind === "pillow" || surface.kind === "bolster" || surface.kind === "wedge" ? Math.max(0, floor) : floor;
  return {
    fromX,
    toX: fromX + depth,
    fromY: middleY - width / 2,
    toY: middleY + width / 2,
    bottom: Math.min(bottom, top - 0.01),
    top,
  };
}

/** Share of the thigh that a seat carries: 0.6 of a level one, less of one that slopes down to the knee, as on a perch. */
function seatDepth(body: Body, frames: Frames, top: number): number {
  const heights = (["thigh", "shank"] as const).map((part) =>
    mean((["weak", "strong"] as const).map((side) => frames.positions[body.segmentIndex[`${part}.${side}`]]?.[2] ?? 0)),
  );
  const [hip = 0, knee = 0] = heights;
  const falls = hip - knee;
  return falls < 0.08 ? 0.6 : Math.min(0.6, Math.max(0.16, (hip - top - 0.05 * body.stature) / falls));
}

/** Where a mat's edge stands behind the calves of somebody who stands in front of it; null for one who sits. */
function behindCalves(body: Body, frames: Frames): number | null {
  const at = (id: "thigh.weak" | "shank.weak" | "shank.strong" | "foot.weak" | "foot.strong"): Vector =>
    frames.positions[body.segmentIndex[id]] ?? [0, 0, 0];
  const thigh = Math.hypot(...[0, 1, 2].map((k) => (at("thigh.weak")[k] ?? 0) - (at("shank.weak")[k] ?? 0)));
  if (at("thigh.weak")[2] - at("shank.weak")[2] < 0.75 * thigh) return null;
  const backs = (["shank.weak", "shank.strong", "foot.weak", "foot.strong"] as const).map((id) => at(id)[0]);
  return Math.min(...backs) - 0.05 * body.stature;
}

/** How far forward the trunk reaches, and with `knees` the thighs and knees too: a solid bench has no room under it. */
function frontOf(body: Body, frames: Frames, ahead: number, knees: boolean): number {
  const belly = 0.112 * body.stature * body.girth ** 1.25 + Math.max(0, body.girth - 1) * 0.12 * body.stature;
  const places = ["pelvis", "abdomen"] as const;
  let most = Math.max(...places.map((id) => pointInRoom(body, frames, id, [0, 0, 0.05])[0] * ahead + belly));
  if (knees) {
    for (const id of ["shank.weak", "shank.strong"] as const) {
      const knee = pointInRoom(body, frames, id, [0, 0, 0]);
      most = Math.max(most, knee[0] * ahead + 0.058 * body.stature * body.girth ** 0.6);
    }
  }
  return most + 0.005;
}

function shapeOf(surface: SurfaceSpecification, block: Block): Thing {
  switch (surface.kind) {
    case "table":
      return makeTable(block, 0.035, 0.05);
    case "stool":
      return makeTable(block, 0.05, 0.035);
    case "pillow":
      return makePillow(block);
    default:
      return makeBlock(block);
  }
}

/** A roll, and what lies on it: under the chest it lies lengthwise, between the arms, its middle under the trunk's. */
function rollUnder(surface: SurfaceSpecification, block: Block): { readonly thing: Thing; readonly support: Support } {
  const radius = (block.top - block.bottom) / 2;
  const lengthwise = surface.under?.includes("chestFront") ?? false;
  const half = (block.toY - block.fromY) / 2;
  const middleX = (block.fromX + block.toX) / 2;
  const centre: Vector = [
    lengthwise ? middleX - half * 0.7 : middleX,
    (block.fromY + block.toY) / 2,
    block.bottom + radius,
  ];
  const long = lengthwise ? half : radius;
  const wide = lengthwise ? radius : half;
  return {
    thing: makeRoll(centre, half, radius, lengthwise),
    support: {
      top: block.top,
      footprint: { fromX: centre[0] - long, toX: centre[0] + long, fromY: centre[1] - wide, toY: centre[1] + wide },
      depth: SINKS,
      topAt: (x, y) => {
        const away = lengthwise ? y - centre[1] : x - centre[0];
        return centre[2] + Math.sqrt(Math.max(0, radius * radius - away * away));
      },
    },
  };
}

/** Where along a wedge, from its thin end, the body rests on it; how thick that end is [m]. */
const RESTS_AT = 0.62;
const THIN_END = 0.02;

/** A wedge whose slope has the stated height under what rests on it; the thin end toward the feet. */
function wedgeUnder(
  body: Body,
  frames: Frames,
  block: Block,
  restsAtX: number,
): { readonly thing: Thing; readonly support: Support } {
  const at = (id: "shank.weak" | "shank.strong" | "pelvis"): number =>
    frames.positions[body.segmentIndex[id]]?.[0] ?? 0;
  const rises = (at("shank.weak") + at("shank.strong")) / 2 < at("pelvis") ? 1 : -1;
  const depth = block.toX - block.fromX;
  const thinX = restsAtX - rises * depth * RESTS_AT;
  const steepness = (block.top - block.bottom - THIN_END) / (depth * RESTS_AT);
  const topAt = (x: number): number => block.bottom + THIN_END + steepness * (x - thinX) * rises;
  const thickX = thinX + rises * depth;
  const wedge = { ...block, fromX: Math.min(thinX, thickX), toX: Math.max(thinX, thickX), top: topAt(thickX) };
  return { thing: makeWedge(wedge, rises > 0), support: { top: wedge.top, footprint: wedge, depth: SINKS, topAt } };
}
