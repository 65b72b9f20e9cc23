import { ProgrammingError } from "../../quantity/programming-error.ts";
import {
  add,
  compose,
  IDENTITY,
  norm,
  rotate,
  rotationAbout,
  scale,
  subtract,
  unit,
  type Vector,
} from "../../quantity/vectors.ts";
import type { Body } from "../body/body.ts";
import type { PatchId } from "../body/patches.ts";
import { constrainedStep } from "./constrained-step.ts";
import { type FirmBall, firmBalls, firmRow, heightOf, sunkBalls } from "./firm-skin.ts";
import {
  centreJacobian,
  centreOfMass,
  type Configuration,
  type Frames,
  placeFrames,
  pointInRoom,
  ROOT_FREEDOMS,
} from "./kinematics.ts";
import { contactRows, pinnedRows, type ReadyContact, readyContacts, type Row } from "./rows.ts";
import type { ContactSpecification, PoseSpecification } from "./specification.ts";
import { type Limits, limitsOf, notANumber, targetsOf } from "./targets.ts";

/** A contact as it stands in the solved pose. */
export interface ClosedContact {
  readonly specification: ContactSpecification;
  readonly patch: PatchId;
  /** Number of the segment that carries it. */
  readonly segment: number;
  /** Where the skin touches [m], one point a ball, and its gap to what it should touch [m] (negative: sinks in). */
  readonly points: readonly { readonly at: Vector; readonly gap: number }[];
  /** Direction in which the surface pushes the body. */
  readonly normal: Vector;
  /** The other part of the same body it rests on. */
  readonly other: { readonly segment: number; readonly at: Vector } | null;
  /** Touching within 12 mm: it may carry load. */
  readonly touches: boolean;
}

export interface ClosedPose {
  readonly closed: true;
  readonly specification: PoseSpecification;
  readonly configuration: Configuration;
  readonly frames: Frames;
  readonly contacts: readonly ClosedContact[];
  readonly centre: Vector;
  /** Largest error of any contact, and of the stated shift [m]. */
  readonly residual: number;
  /** Deepest part of the skin below height zero [m], zero when nothing sinks. */
  readonly sinks: number;
  /** Furthest any joint had to leave its aim [rad], and which. */
  readonly furthest: { readonly angle: string; readonly by: number };
  readonly steps: number;
}
export interface OpenPose {
  readonly closed: false;
  readonly because: string;
  readonly residual: number;
}
export type PoseResult = ClosedPose | OpenPose;

/** Closer than this [m] a contact counts as touching for the load. */
const BEARING_GAP = 0.012;
/** A pose whose contacts miss by more than this [m] is not drawn or computed. */
const CLOSED_WITHIN = 0.001;
const MOST_STEPS = 120;

/**
 * Sets a body up in a pose: places the pelvis and adjusts the angles as little as it can until everything that should
 * touch touches and nothing sinks below height zero, then takes the weight where the pose says, contacts staying put.
 * @returns the pose with its residual [m]; or why it cannot be closed on this body
 */
export function closePose(body: Body, pose: PoseSpecification, limits: Limits = limitsOf(body)): PoseResult {
  const ready = readyContacts(body, pose);
  if ("missing" in ready) return { closed: false, because: ready.because, residual: Number.MAX_VALUE };
  const targets = targetsOf(body, pose);
  const wrong = notANumber(body, pose, targets);
  if (wrong !== null)
    return { closed: false, because: `${wrong} is not a number in this pose`, residual: Number.MAX_VALUE };
  const closing = ready.filter((each) => each.specification.role !== "bears");
  const start: Configuration = {
    rootPosition: [0, 0, 0],
    rootRotation: targets.rotation,
    angles: targets.angles.map((angle, i) =>
      Math.min(Math.max(angle, limits.least[i] ?? angle), limits.most[i] ?? angle),
    ),
  };
  const lifted = { ...start, rootPosition: [0, 0, liftOff(body, start, closing)] as Vector };
  const square = relax(body, lifted, lifted, limits, (frames) =>
    closing.flatMap((each) => contactRows(body, frames, each)),
  );
  if (!(square.residual <= CLOSED_WITHIN)) return failure(body, square, closing);
  const settled =
    pose.shift === undefined ? square : shifted(body, square.configuration, closing, limits, shiftIn(body, pose));
  if (!(settled.residual <= CLOSED_WITHIN)) {
    return {
      closed: false,
      because: "the weight cannot be taken where the pose says with the contacts staying put",
      residual: settled.residual,
    };
  }
  return describe(body, pose, ready, settled, targets.angles);
}

/**
 * Takes the centre of mass of a closed pose elsewhere, hands, knees and feet staying put.
 * @param by how far [m], forward and toward the person's left
 */
export function movePose(
  body: Body,
  pose: ClosedPose,
  by: readonly [number, number],
  limits: Limits = limitsOf(body),
): PoseResult {
  const ready = readyContacts(body, pose.specification);
  if ("missing" in ready) throw new ProgrammingError("a closed pose lost its surface");
  const closing = ready.filter((each) => each.specification.role !== "bears");
  const settled = shifted(body, pose.configuration, closing, limits, by);
  if (settled.residual > CLOSED_WITHIN) {
    return { closed: false, because: "a joint's range or a contact ends the movement", residual: settled.residual };
  }
  return describe(body, pose.specification, ready, settled, pose.configuration.angles);
}

interface Relaxed {
  readonly configuration: Configuration;
  readonly residual: number;
  readonly steps: number;
}

function shiftIn(body: Body, pose: PoseSpecification): readonly [number, number] {
  return [(pose.shift?.forwardCm ?? 0) / 100, ((pose.shift?.toWeakCm ?? 0) / 100) * body.weakAt];
}

function shifted(
  body: Body,
  from: Configuration,
  closing: readonly ReadyContact[],
  limits: Limits,
  by: readonly [number, number],
): Relaxed {
  const frames = placeFrames(body, from);
  const pins = closing.map((each) =>
    each.patch.balls.map((ball) => pointInRoom(body, frames, body.segmentIndex[each.patch.segment], ball.centre)),
  );
  const centre = centreOfMass(body, frames);
  const goal = [centre[0] + by[0], centre[1] + by[1]] as const;
  return relax(body, from, from, limits, (now) => {
    const at = centreOfMass(body, now);
    const jacobian = centreJacobian(body, now);
    const reach = Int32Array.from(jacobian[0].keys());
    return [
      ...closing.flatMap((each, k) => pinnedRows(body, now, each, pins[k] ?? [])),
      { error: at[0] - goal[0], gradient: jacobian[0], reach },
      { error: at[1] - goal[1], gradient: jacobian[1], reach },
    ];
  });
}

/** How high the pelvis has to start so that the lowest closing ball stands on its surface. */
function liftOff(body: Body, start: Configuration, closing: readonly ReadyContact[]): number {
  const frames = placeFrames(body, start);
  let lift = Number.NEGATIVE_INFINITY;
  for (const each of closing) {
    if (each.height === null) continue;
    for (const ball of each.patch.balls) {
      const at = pointInRoom(body, frames, body.segmentIndex[each.patch.segment], ball.centre);
      lift = Math.max(lift, each.height - (at[2] - ball.radius));
    }
  }
  return lift === Number.NEGATIVE_INFINITY ? 1 : lift;
}

/** Unknowns that move freely, hardly, or not: position is free, the pelvis turns less readily than a joint. */
function mobilityOf(body: Body): Float64Array {
  const mobility = new Float64Array(ROOT_FREEDOMS + body.angles.length).fill(1);
  for (let i = 0; i < 3; i++) mobility[i] = 4;
  for (let i = 3; i < 6; i++) mobility[i] = 0.5;
  body.angles.forEach((id, i) => {
    if (id.startsWith("lumbar") || id.startsWith("thorax")) mobility[ROOT_FREEDOMS + i] = 0.25;
    if (id.startsWith("neck")) mobility[ROOT_FREEDOMS + i] = 0.1;
    if (id.startsWith("girdle")) mobility[ROOT_FREEDOMS + i] = 0.15;
    if (id.startsWith("kneeExternalRotation") || id.startsWith("inversion")) mobility[ROOT_FREEDOMS + i] = 0.3;
  });
  return mobility;
}

function relax(
  body: Body,
  from: Configuration,
  aim: Configuration,
  limits: Limits,
  rowsOf: (frames: Frames) => Row[],
): Relaxed {
  const general = mobilityOf(body);
  let configuration = from;
  let residual = Number.MAX_VALUE;
  let steps = 0;
  const below = new Set<FirmBall>();
  for (; steps < MOST_STEPS; steps++) {
    const frames = placeFrames(body, configuration);
    const rows = rowsOf(frames);
    residual = rows.reduce((most, row) => Math.max(most, Math.abs(row.error)), 0);
    const wanted = rows.length;
    const held = sunkBalls(body, frames, below);
    for (const ball of held) rows.push(firmRow(body, frames, ball));
    // Skin on skin bends so sharply that the full wish can swing about for ever: late steps wish less, the last ones only close.
    const patience = steps < 18 ? 1 : steps < 50 ? 0.2 : 0;
    const wish = wishFor(body, configuration, aim, (residual < 0.02 ? 1 : 0.5) * patience);
    const { step, multipliers } = stepWithinLimits(body, configuration, rows, wish, general, limits);
    // Skin that has to be pulled down to stay on the mat is let go.
    held.forEach((ball, k) => {
      if ((multipliers[wanted + k] ?? 0) < 0) below.delete(ball);
    });
    let largest = 0;
    for (let i = 3; i < step.length; i++) largest = Math.max(largest, Math.abs(step[i] ?? 0));
    const share = Math.min(1, 0.35 / Math.max(largest, 1e-12));
    configuration = moved(configuration, step, share, limits);
    const sunk = rows.slice(wanted).reduce((most, row) => Math.max(most, -row.error), 0);
    if (share === 1 && largest < 1e-4 && residual < 1e-6 && sunk < 1e-5) break;
  }
  const frames = placeFrames(body, configuration);
  residual = rowsOf(frames).reduce((most, row) => Math.max(most, Math.abs(row.error)), 0);
  return { configuration, residual, steps };
}

/** Toward the aim: full steps in the angles, the pelvis turned back toward its wished orientation. */
function wishFor(body: Body, now: Configuration, aim: Configuration, share: number): Float64Array {
  const wish = new Float64Array(ROOT_FREEDOMS + body.angles.length);
  const turn = rotationVector(now, aim);
  for (let k = 0; k < 3; k++) wish[3 + k] = (turn[k] ?? 0) * share;
  for (let i = 0; i < body.angles.length; i++)
    wish[ROOT_FREEDOMS + i] = ((aim.angles[i] ?? 0) - (now.angles[i] ?? 0)) * share;
  return wish;
}

/** Turn about room axes that brings the pelvis from where it is to where it should be [rad]. */
function rotationVector(now: Configuration, aim: Configuration): Vector {
  const r = now.rootRotation;
  const back = [r[0], r[3], r[6], r[1], r[4], r[7], r[2], r[5], r[8]] as const;
  const turn = compose(aim.rootRotation, back);
  const axis: Vector = [turn[7] - turn[5], turn[2] - turn[6], turn[3] - turn[1]];
  const sine = norm(axis) / 2;
  const cosine = (turn[0] + turn[4] + turn[8] - 1) / 2;
  return scale(unit(axis), Math.atan2(sine, cosine));
}

/** A step that ends with every angle inside its range: an angle that would leave it goes to the end of its range and stays. */
function stepWithinLimits(
  body: Body,
  now: Configuration,
  rows: readonly Row[],
  wished: Float64Array,
  general: Float64Array,
  limits: Limits,
): { step: Float64Array; multipliers: Float64Array } {
  const mobility = Float64Array.from(general);
  const wish = Float64Array.from(wished);
  let result = constrainedStep(rows, wish, mobility);
  for (let round = 0; round < 8; round++) {
    let again = false;
    for (let i = 0; i < body.angles.length; i++) {
      const k = ROOT_FREEDOMS + i;
      if (mobility[k] === 0) continue;
      const at = now.angles[i] ?? 0;
      const to = at + (result.step[k] ?? 0);
      const end = Math.min(Math.max(to, limits.least[i] ?? to), limits.most[i] ?? to);
      if (Math.abs(end - to) < 1e-12) continue;
      mobility[k] = 0;
      wish[k] = end - at;
      again = true;
    }
    if (!again) break;
    result = constrainedStep(rows, wish, mobility);
  }
  return result;
}

function moved(now: Configuration, step: Float64Array, share: number, limits: Limits): Configuration {
  const turn: Vector = [(step[3] ?? 0) * share, (step[4] ?? 0) * share, (step[5] ?? 0) * share];
  const angle = norm(turn);
  const rotation = angle < 1e-15 ? IDENTITY : rotationAbout(unit(turn), angle);
  return {
    rootPosition: add(now.rootPosition, [(step[0] ?? 0) * share, (step[1] ?? 0) * share, (step[2] ?? 0) * share]),
    rootRotation: compose(rotation, now.rootRotation),
    angles: now.angles.map((value, i) => {
      const to = value + (step[ROOT_FREEDOMS + i] ?? 0) * share;
      return Math.min(Math.max(to, limits.least[i] ?? to), limits.most[i] ?? to);
    }),
  };
}

function failure(body: Body, relaxed: Relaxed, closing: readonly ReadyContact[]): OpenPose {
  const frames = placeFrames(body, relaxed.configuration);
  let worst = { patch: "", error: 0 };
  for (const each of closing) {
    for (const row of contactRows(body, frames, each)) {
      if (Math.abs(row.error) > Math.abs(worst.error)) worst = { patch: each.patch.id, error: row.error };
    }
  }
  return {
    closed: false,
    because: `${worst.patch} misses its support by ${Math.round(Math.abs(worst.error) * 1000)} mm`,
    residual: relaxed.residual,
  };
}

function describe(
  body: Body,
  pose: PoseSpecification,
  ready: readonly ReadyContact[],
  relaxed: Relaxed,
  aims: readonly number[],
): ClosedPose {
  const { configuration } = relaxed;
  const frames = placeFrames(body, configuration);
  const contacts = ready.map((each) => describeContact(body, frames, each));
  let furthest = { angle: "", by: 0 };
  body.angles.forEach((id, i) => {
    const by = Math.abs((configuration.angles[i] ?? 0) - (aims[i] ?? 0));
    if (by > furthest.by) furthest = { angle: id, by };
  });
  let sinks = 0;
  for (const ball of firmBalls(body)) sinks = Math.max(sinks, -heightOf(body, frames, ball));
  return {
    closed: true,
    specification: pose,
    configuration,
    frames,
    contacts,
    centre: centreOfMass(body, frames),
    residual: relaxed.residual,
    sinks,
    furthest,
    steps: relaxed.steps,
  };
}

function describeContact(body: Body, frames: Frames, each: ReadyContact): ClosedContact {
  const segment = body.segmentIndex[each.patch.segment];
  if (each.other !== null) {
    const ball = each.patch.balls[0];
    const otherBall = each.other.balls[0];
    const otherSegment = body.segmentIndex[each.other.segment];
    const at = pointInRoom(body, frames, segment, ball?.centre ?? [0, 0, 0]);
    const otherAt = pointInRoom(body, frames, otherSegment, otherBall?.centre ?? [0, 0, 0]);
    const normal = unit(subtract(at, otherAt));
    const gap = norm(subtract(at, otherAt)) - (ball?.radius ?? 0) - (otherBall?.radius ?? 0);
    return {
      specification: each.specification,
      patch: each.patch.id,
      segment,
      points: [{ at: subtract(at, scale(normal, ball?.radius ?? 0)), gap }],
      normal,
      other: { segment: otherSegment, at: add(otherAt, scale(normal, otherBall?.radius ?? 0)) },
      touches: gap < BEARING_GAP,
    };
  }
  // A wall stands behind the person: it pushes along the front of the segment, level.
  const front = rotate(frames.rotations[segment] ?? IDENTITY, [1, 0, 0]);
  const normal: Vector = each.height === null ? unit([front[0], front[1], 0]) : [0, 0, 1];
  const points = each.patch.balls.map((ball) => {
    const at = pointInRoom(body, frames, segment, ball.centre);
    const gap = each.height === null ? 0 : at[2] - ball.radius - each.height;
    return { at: subtract(at, scale(normal, ball.radius)), gap };
  });
  return {
    specification: each.specification,
    patch: each.patch.id,
    segment,
    points,
    normal,
    other: null,
    touches: points.some((point) => point.gap < BEARING_GAP),
  };
}
