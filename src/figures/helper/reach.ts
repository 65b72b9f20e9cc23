import { radiansOf } from "../../quantity/angles.ts";
import {
  add,
  compose,
  dot,
  IDENTITY,
  norm,
  rotate,
  rotationAbout,
  scale,
  subtract,
  unit,
  type Vector,
} from "../../quantity/vectors.ts";
import type { Side } from "../../quantity/sides.ts";
import type { Body } from "../../mechanics/body/body.ts";
import type { AngleId, SegmentId } from "../../mechanics/body/names.ts";
import { type PatchId, patchOn } from "../../mechanics/body/patches.ts";
import {
  centreJacobian,
  centreOfMass,
  type Configuration,
  type Frames,
  placeFrames,
  pointInRoom,
  pointJacobian,
  ROOT_FREEDOMS,
} from "../../mechanics/pose/kinematics.ts";
import { limitsOf } from "../../mechanics/pose/targets.ts";
import type { HelperStance } from "./drawing.ts";
import { dampedStep, type SoftRow } from "./least-squares.ts";
import { keepApartRows, keepOwnArmsApartRows, type Rod } from "./keep-apart.ts";
import type { SkinPlace } from "./site-place.ts";
import { type Support, supportRows } from "./support.ts";
import { STANCES, type Stance } from "./stances.data.ts";

/** What one hand of the helper goes to. */
export interface HandGoal {
  readonly side: Side;
  /** Where the palm's skin should be, and out of the person's body there. */
  readonly at: Vector;
  readonly outward: Vector;
  /** The limb the fingers go round, a direction; null where the hand lies flat. */
  readonly around: Vector | null;
}

/** What one leg of the helper does for the person. */
export interface LegGoal {
  readonly support: Support;
  readonly side: Side;
  readonly place: SkinPlace;
  /** Further out than the limb is thick [m]. */
  readonly extra: number;
}

export interface Reach {
  readonly configuration: Configuration;
  readonly frames: Frames;
  /** How far each palm is from where it should be [m]. */
  readonly misses: readonly number[];
  /** Deepest overlap of the helper's limbs with the person [m]. */
  readonly overlap: number;
  readonly cost: number;
}

const STEPS = 45;
/** The palm's skin in the hand's frame [mm at reference stature]. */
const PALM = { front: 17, down: -62 } as const;

export const palmOf = (body: Body): Vector => {
  const mm = body.stature / 1000;
  return [PALM.front * mm * body.girth ** 0.35, 0, PALM.down * mm];
};

/** Where the helper starts: the stance's angles, the hips over the stated ground, facing the person. */
export function startOf(
  body: Body,
  stance: HelperStance,
  lead: Side,
  at: Vector,
  toward: Vector,
  ground: number,
): Configuration {
  const row = STANCES[stance];
  const angles = body.angles.map((id) => radiansOf(angleOf(row, id, lead)));
  const facing = rotationAbout([0, 0, 1], Math.atan2(toward[1], toward[0]));
  const rotation = compose(facing, rotationAbout([0, 1, 0], radiansOf(row.pitchDeg)));
  const raw: Configuration = { rootPosition: [at[0], at[1], 0], rootRotation: rotation, angles };
  const frames = placeFrames(body, raw);
  let lowest = Number.MAX_VALUE;
  for (const id of standing(row, lead)) {
    const patch = patchOn(body, id);
    for (const ball of patch.balls)
      lowest = Math.min(lowest, pointInRoom(body, frames, patch.segment, ball.centre)[2] - ball.radius);
  }
  return { ...raw, rootPosition: [at[0], at[1], ground - lowest] };
}

function angleOf(row: Stance, id: AngleId, lead: Side): number {
  const [name = "", side] = id.split(".");
  const trunk: Degrees = row.trunkDeg;
  if (side === undefined) return trunk[name] ?? 0;
  const own: Degrees = side === lead ? row.leadDeg : row.otherDeg;
  const both: Degrees = row.bothDeg;
  return own[name] ?? both[name] ?? 0;
}
type Degrees = Readonly<Partial<Record<string, number>>>;

function standing(row: Stance, lead: Side): PatchId[] {
  const other: Side = lead === "weak" ? "strong" : "weak";
  return [
    ...row.stands.map((name): PatchId => `${name}.${lead}`),
    ...row.otherStands.map((name): PatchId => `${name}.${other}`),
  ];
}

/**
 * Leans and reaches until the palms lie where they should, what stands keeps standing, and nothing passes through the person.
 * The whole helper shifts over the ground as far as needed.
 * @param gaze what the helper looks at
 * @param firmness how much more than usual the helper keeps out of the person
 */
export function reachFor(
  body: Body,
  stance: HelperStance,
  lead: Side,
  start: Configuration,
  goals: readonly HandGoal[],
  rods: readonly Rod[],
  ground: number,
  gaze: Vector,
  firmness = 1,
  leg: LegGoal | null = null,
): Reach {
  const row = STANCES[stance];
  const limits = limitsOf(body);
  const n = ROOT_FREEDOMS + body.angles.length;
  const pull = pullOf(body, goals);
  const contacts = standing(row, lead).map((id) => patchOn(body, id));
  const palm = palmOf(body);
  let now = start;
  for (let step = 0; step < STEPS; step++) {
    const frames = placeFrames(body, now);
    const rows: SoftRow[] = [];
    for (const patch of contacts) {
      const segment = body.segmentIndex[patch.segment];
      for (const ball of patch.balls) {
        const at = pointInRoom(body, frames, segment, ball.centre);
        rows.push({
          error: at[2] - ball.radius - ground,
          gradient: pointJacobian(body, frames, segment, at)[2],
          weight: 3,
        });
      }
    }
    if (row.seat > 0) {
      for (const side of ["weak", "strong"] as const) {
        const patch = patchOn(body, `buttock.${side}`);
        const ball = patch.balls[0];
        if (ball === undefined) continue;
        const at = pointInRoom(body, frames, "pelvis", ball.centre);
        rows.push({
          error: at[2] - ball.radius - ground - row.seat,
          gradient: pointJacobian(body, frames, 0, at)[2],
          weight: 3,
        });
      }
    }
    for (const goal of goals) rows.push(...handRows(body, frames, goal, palm));
    rows.push(
      ...balanceRows(
        body,
        frames,
        contacts.map((patch) => patch.segment),
      ),
    );
    rows.push(...gazeRows(body, frames, gaze));
    rows.push(...keepApartRows(body, frames, rods, ground, firmness));
    rows.push(...keepOwnArmsApartRows(body, frames));
    if (leg !== null) rows.push(...supportRows(body, frames, leg.support, leg.side, leg.place, leg.extra));
    const wish = new Float64Array(n);
    for (let i = 0; i < body.angles.length; i++)
      wish[ROOT_FREEDOMS + i] = (start.angles[i] ?? 0) - (now.angles[i] ?? 0);
    wish[0] = start.rootPosition[0] - now.rootPosition[0];
    wish[1] = start.rootPosition[1] - now.rootPosition[1];
    const back = turnBetween(now, start);
    for (let k = 0; k < 3; k++) wish[3 + k] = back[k] ?? 0;
    const free = Float64Array.from(pull);
    const move = stepInside(body, now, rows, free, wish, limits);
    if (move === null) break;
    let largest = 0;
    for (let i = 0; i < n; i++) largest = Math.max(largest, Math.abs(move[i] ?? 0));
    now = moved(body, now, move, Math.min(1, 0.3 / Math.max(1e-9, largest)), limits);
    if (largest < 1e-4) break;
  }
  const frames = placeFrames(body, now);
  const misses = goals.map((goal) => norm(subtract(pointInRoom(body, frames, `hand.${goal.side}`, palm), goal.at)));
  const overlap = keepApartRows(body, frames, rods, ground).reduce((most, each) => Math.max(most, -each.error), 0);
  let strain = 0;
  body.angles.forEach((_, i) => {
    strain += (pull[ROOT_FREEDOMS + i] ?? 0) * ((now.angles[i] ?? 0) - (start.angles[i] ?? 0)) ** 2;
  });
  return {
    configuration: now,
    frames,
    misses,
    overlap,
    cost:
      misses.reduce((sum, miss) => sum + 40 * Math.max(0, miss - 0.006), 0) +
      15 * Math.max(0, overlap - 0.01) +
      strain * 40,
  };
}

function handRows(body: Body, frames: Frames, goal: HandGoal, palm: Vector): SoftRow[] {
  const id: SegmentId = `hand.${goal.side}`;
  const segment = body.segmentIndex[id];
  const rotation = frames.rotations[segment] ?? IDENTITY;
  const at = pointInRoom(body, frames, segment, palm);
  const jacobian = pointJacobian(body, frames, segment, at);
  const rows: SoftRow[] = [0, 1, 2].map((k) => ({
    error: (at[k] ?? 0) - (goal.at[k] ?? 0),
    gradient: jacobian[k] ?? new Float64Array(0),
    weight: 2,
  }));
  const facing = rotate(rotation, [1, 0, 0]);
  // The palm faces into the body: its direction should be against the outward one.
  const turning = turnRows(body, frames, segment, facing);
  for (let k = 0; k < 3; k++)
    rows.push({
      error: (facing[k] ?? 0) + (goal.outward[k] ?? 0),
      gradient: turning[k] ?? new Float64Array(0),
      weight: 0.09,
    });
  if (goal.around !== null) {
    const fingers = rotate(rotation, [0, 0, -1]);
    const fingerTurn = turnRows(body, frames, segment, fingers);
    const gradient = new Float64Array(turning[0].length);
    for (let i = 0; i < gradient.length; i++)
      gradient[i] = dot(goal.around, [fingerTurn[0][i] ?? 0, fingerTurn[1][i] ?? 0, fingerTurn[2][i] ?? 0]);
    rows.push({ error: dot(fingers, goal.around), gradient, weight: 0.05 });
  }
  return rows;
}

/** How a direction fixed in a segment turns with the unknowns. */
function turnRows(
  body: Body,
  frames: Frames,
  segment: number,
  direction: Vector,
): readonly [Float64Array, Float64Array, Float64Array] {
  const origin = frames.positions[segment] ?? [0, 0, 0];
  const tip = pointJacobian(body, frames, segment, add(origin, direction));
  const root = pointJacobian(body, frames, segment, origin);
  const minus = (a: Float64Array, b: Float64Array): Float64Array => a.map((value, i) => value - (b[i] ?? 0));
  return [minus(tip[0], root[0]), minus(tip[1], root[1]), minus(tip[2], root[2])];
}

/** The centre of mass stays over the middle of what stands, softly. */
function balanceRows(body: Body, frames: Frames, segments: readonly SegmentId[]): SoftRow[] {
  const centre = centreOfMass(body, frames);
  const motion = centreJacobian(body, frames);
  const unique = [...new Set(segments)];
  let middle: Vector = [0, 0, 0];
  const gradients = [new Float64Array(motion[0].length), new Float64Array(motion[0].length)];
  for (const id of unique) {
    const segment = body.segmentIndex[id];
    const at = pointInRoom(body, frames, segment, id.startsWith("foot") ? [0.05, 0, 0] : [0, 0, 0]);
    middle = add(middle, scale(at, 1 / unique.length));
    const jacobian = pointJacobian(body, frames, segment, at);
    for (let k = 0; k < 2; k++)
      for (let i = 0; i < motion[0].length; i++)
        (gradients[k] ?? new Float64Array(0))[i] = (gradients[k]?.[i] ?? 0) + (jacobian[k]?.[i] ?? 0) / unique.length;
  }
  return [0, 1].map((k) => ({
    error: (centre[k] ?? 0) - (middle[k] ?? 0),
    gradient: (motion[k] ?? new Float64Array(0)).map((value, i) => value - (gradients[k]?.[i] ?? 0)),
    weight: 0.12,
  }));
}

/** The helper looks at the hands. */
function gazeRows(body: Body, frames: Frames, at: Vector): SoftRow[] {
  const segment = body.segmentIndex.head;
  const eyes = pointInRoom(body, frames, segment, [0.09, 0, 0.128]);
  const wanted = unit(subtract(at, eyes));
  const looks = rotate(frames.rotations[segment] ?? IDENTITY, [1, 0, 0]);
  const turn = turnRows(body, frames, segment, looks);
  return [0, 1, 2].map((k) => ({
    error: (looks[k] ?? 0) - (wanted[k] ?? 0),
    gradient: turn[k] ?? new Float64Array(0),
    weight: 0.03,
  }));
}

function pullOf(body: Body, goals: readonly HandGoal[]): Float64Array {
  const pull = new Float64Array(ROOT_FREEDOMS + body.angles.length);
  pull[0] = 0.004;
  pull[1] = 0.004;
  pull[2] = 0.0005;
  for (let k = 3; k < 6; k++) pull[k] = 0.004;
  pull[5] = 0.006;
  const busy = new Set<string>(goals.map((goal) => goal.side));
  body.angles.forEach((id, i) => {
    const [name = "", side] = id.split(".");
    let value = 0.002;
    if (/^(shoulder|elbow|pronation)/.test(name)) value = busy.has(side ?? "") ? 0.0004 : 0.02;
    if (name === "shoulderAbduction") value = busy.has(side ?? "") ? 0.0012 : 0.02;
    if (/^(wrist|radial)/.test(name)) value = 0.0012;
    if (/^girdle/.test(name)) value = 0.004;
    if (/^(lumbar|thorax)Flexion/.test(name)) value = 0.003;
    if (/^(lumbar|thorax)(Side|Turn)/.test(name)) value = 0.006;
    if (/^neck/.test(name)) value = 0.002;
    if (/^(hip|knee)/.test(name)) value = 0.002;
    if (/^(hipAbduction|hipExternalRotation|kneeExternalRotation|inversion)/.test(name)) value = 0.006;
    if (/^toe/.test(name)) value = 0.05;
    pull[ROOT_FREEDOMS + i] = value;
  });
  return pull;
}

interface Limits {
  readonly least: Float64Array;
  readonly most: Float64Array;
}

/** A step whose angles end inside their ranges: those that would leave are taken to the end and held. */
function stepInside(
  body: Body,
  now: Configuration,
  rows: readonly SoftRow[],
  pull: Float64Array,
  wish: Float64Array,
  limits: Limits,
): Float64Array | null {
  let move = dampedStep(rows, pull, wish, 2e-4);
  for (let round = 0; round < 3 && move !== null; round++) {
    let again = false;
    for (let i = 0; i < body.angles.length; i++) {
      const k = ROOT_FREEDOMS + i;
      const at = now.angles[i] ?? 0;
      const to = at + (move[k] ?? 0);
      const end = Math.min(Math.max(to, limits.least[i] ?? to), limits.most[i] ?? to);
      if (Math.abs(end - to) < 1e-6 || (pull[k] ?? 0) > 100) continue;
      pull[k] = 1000;
      wish[k] = end - at;
      again = true;
    }
    if (!again) break;
    move = dampedStep(rows, pull, wish, 2e-4);
  }
  return move;
}

function moved(body: Body, now: Configuration, move: Float64Array, share: number, limits: Limits): Configuration {
  const turn: Vector = [(move[3] ?? 0) * share, (move[4] ?? 0) * share, (move[5] ?? 0) * share];
  const angle = norm(turn);
  return {
    rootPosition: add(now.rootPosition, [(move[0] ?? 0) * share, (move[1] ?? 0) * share, (move[2] ?? 0) * share]),
    rootRotation:
      angle < 1e-12 ? now.rootRotation : compose(rotationAbout(scale(turn, 1 / angle), angle), now.rootRotation),
    angles: body.angles.map((_, i) => {
      const to = (now.angles[i] ?? 0) + (move[ROOT_FREEDOMS + i] ?? 0) * share;
      return Math.min(Math.max(to, limits.least[i] ?? to), limits.most[i] ?? to);
    }),
  };
}

/** Turn about room axes from one orientation of the hips to the other [rad]. */
function turnBetween(now: Configuration, to: Configuration): Vector {
  const r = now.rootRotation;
  const turn = compose(to.rootRotation, [r[0], r[3], r[6], r[1], r[4], r[7], r[2], r[5], r[8]]);
  const axis: Vector = [turn[7] - turn[5], turn[2] - turn[6], turn[3] - turn[1]];
  const angle = Math.atan2(norm(axis) / 2, (turn[0] + turn[4] + turn[8] - 1) / 2);
  return norm(axis) === 0 ? [0, 0, 0] : scale(unit(axis), angle);
}
