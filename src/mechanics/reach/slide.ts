import { add, compose, norm, rotationAbout, unit, type Vector } from "../../quantity/vectors.ts";
import type { Body } from "../body/body.ts";
import type { AngleId } from "../body/names.ts";
import type { ClosedPose } from "../pose/close.ts";
import { type Configuration, type Frames, placeFrames, pointInRoom, ROOT_FREEDOMS } from "../pose/kinematics.ts";
import { constrainedStep } from "../pose/constrained-step.ts";
import { readyContacts, type Row } from "../pose/rows.ts";
import type { Limits } from "../pose/targets.ts";
import { centreRows } from "./centre-rows.ts";
import { type Pin, pinRows } from "./pins.ts";
import { poseAt } from "./ride-along.ts";

/** A stop on the way out: the pose with its centre of mass taken there, or the joint range that ends the way before it. */
export interface Slide {
  readonly station: ClosedPose | null;
  readonly rangeEnd: { readonly metres: number; readonly angle: AngleId } | null;
}

/** Small joints that go along and end nothing. */
const NEVER_NAMED = /^(toe|radial|pronation|neck)/;
const LONGEST_STEP = 0.1;
const SHORTEST_STEP = 0.02;
const MOST_STEPS = 6;
/** Contacts and centre within this [m] count as kept. */
const KEPT = 0.003;
/** Between two stations it is enough to be this near. */
const NEARLY_KEPT = 0.02;

/**
 * Takes the centre of mass outward step by step, hands, knees and feet staying put, as near the pose's own angles as can be.
 * @param reached how far out the body already is [m], in the given configuration
 * @param metres where it is to go [m], from the pose's own centre
 */
export function slideCentre(
  body: Body,
  pose: ClosedPose,
  direction: readonly [number, number],
  reached: number,
  from: Configuration,
  metres: number,
  limits: Limits,
): Slide {
  const ready = readyContacts(body, pose.specification);
  if ("missing" in ready) return { station: null, rangeEnd: null };
  // What only rests, and what lies on the body itself, goes along.
  const pins = ready
    .filter(
      (each) => each.specification.role !== "bears" && each.specification.effort !== "rest" && each.other === null,
    )
    .map(({ patch }): Pin => {
      const segment = body.segmentIndex[patch.segment];
      const points = patch.balls.map((ball) => ball.centre);
      return { segment, points, places: points.map((point) => pointInRoom(body, pose.frames, segment, point)) };
    });
  let now = from;
  let at = reached;
  let longest = LONGEST_STEP;
  for (;;) {
    const goal = Math.min(at + longest, metres);
    const tried = stepTo(
      body,
      pose,
      now,
      pins,
      [pose.centre[0] + direction[0] * goal, pose.centre[1] + direction[1] * goal],
      limits,
      goal === metres,
    );
    if ("stuckAt" in tried) {
      longest = Math.min(longest, goal - at) / 2.5;
      if (longest < SHORTEST_STEP) return { station: null, rangeEnd: { metres: at, angle: tried.stuckAt } };
      continue;
    }
    now = tried.next;
    at = goal;
    if (goal === metres) return { station: poseAt(body, pose, now, tried.frames), rangeEnd: null };
  }
}

/** Moves the centre to a goal, or names the joint that does not let it. */
function stepTo(
  body: Body,
  pose: ClosedPose,
  from: Configuration,
  pins: readonly Pin[],
  goal: readonly [number, number],
  limits: Limits,
  exactly: boolean,
): { next: Configuration; frames: Frames } | { stuckAt: AngleId } {
  const mobility = Float64Array.from(mobilityOf(body));
  const frozen: AngleId[] = [];
  let next = from;
  let frames = placeFrames(body, next);
  let residual = Number.MAX_VALUE;
  for (let step = 0; step < MOST_STEPS; step++) {
    const rows = rowsAt(body, frames, pins, goal);
    const before = residual;
    residual = 0;
    for (const row of rows) residual = Math.max(residual, Math.abs(row.error));
    if (residual < (exactly ? KEPT : NEARLY_KEPT)) return { next, frames };
    // No longer getting anywhere.
    if (step > 1 && residual > 0.6 * before) break;
    next = stepWithin(body, next, pose.configuration, rows, limits, mobility, frozen);
    frames = placeFrames(body, next);
  }
  return { stuckAt: frozen[0] ?? nearestEnd(body, next, limits) };
}

function rowsAt(body: Body, frames: Frames, pins: readonly Pin[], goal: readonly [number, number]): Row[] {
  const { at, jacobian } = centreRows(body, frames);
  const rows = pins.flatMap((pin) => pinRows(body, frames, pin));
  const reach = Int32Array.from(jacobian[0].keys());
  rows.push(
    { error: at[0] - goal[0], gradient: jacobian[0], reach },
    { error: at[1] - goal[1], gradient: jacobian[1], reach },
  );
  return rows;
}

/** One step toward the rows, angles kept in range: one that reaches its end stays there until the goal. Angles that get there are listed. */
function stepWithin(
  body: Body,
  now: Configuration,
  aim: Configuration,
  rows: readonly Row[],
  limits: Limits,
  mobility: Float64Array,
  frozen: AngleId[],
): Configuration {
  const size = ROOT_FREEDOMS + body.angles.length;
  const wish = new Float64Array(size);
  for (let i = 0; i < body.angles.length; i++)
    wish[ROOT_FREEDOMS + i] =
      mobility[ROOT_FREEDOMS + i] === 0 ? 0 : ((aim.angles[i] ?? 0) - (now.angles[i] ?? 0)) * 0.3;
  let { step } = constrainedStep(rows, wish, mobility);
  for (let round = 0; round < 2; round++) {
    let again = false;
    for (let i = 0; i < body.angles.length; i++) {
      const k = ROOT_FREEDOMS + i;
      if (mobility[k] === 0) continue;
      const at = now.angles[i] ?? 0;
      const to = at + (step[k] ?? 0);
      const end = Math.min(Math.max(to, limits.least[i] ?? to), limits.most[i] ?? to);
      if (Math.abs(end - to) < 1e-6) continue;
      mobility[k] = 0;
      wish[k] = end - at;
      const id = body.angles[i];
      if (id !== undefined && !NEVER_NAMED.test(id)) frozen.push(id);
      again = true;
    }
    if (!again) break;
    ({ step } = constrainedStep(rows, wish, mobility));
  }
  const turn: Vector = [step[3] ?? 0, step[4] ?? 0, step[5] ?? 0];
  const angle = norm(turn);
  return {
    rootPosition: add(now.rootPosition, [step[0] ?? 0, step[1] ?? 0, step[2] ?? 0]),
    rootRotation: angle < 1e-15 ? now.rootRotation : compose(rotationAbout(unit(turn), angle), now.rootRotation),
    angles: now.angles.map((value, i) =>
      Math.min(Math.max(value + (step[ROOT_FREEDOMS + i] ?? 0), limits.least[i] ?? value), limits.most[i] ?? value),
    ),
  };
}

const mobilities = new WeakMap<Body, Float64Array>();
function mobilityOf(body: Body): Float64Array {
  let known = mobilities.get(body);
  if (known === undefined) {
    known = new Float64Array(ROOT_FREEDOMS + body.angles.length).fill(1);
    for (let i = 0; i < 3; i++) known[i] = 4;
    for (let i = 3; i < 6; i++) known[i] = 0.5;
    for (const [i, id] of body.angles.entries()) {
      const slow =
        id.startsWith("lumbar") || id.startsWith("thorax")
          ? 0.25
          : id.startsWith("neck")
            ? 0.05
            : id.startsWith("girdle")
              ? 0.15
              : id.startsWith("kneeExternal") || id.startsWith("inversion")
                ? 0.3
                : 1;
      known[ROOT_FREEDOMS + i] = slow;
    }
    mobilities.set(body, known);
  }
  return known;
}

/** The angle closest to an end of its range. */
function nearestEnd(body: Body, now: Configuration, limits: Limits): AngleId {
  let best = 0;
  let least = Number.MAX_VALUE;
  now.angles.forEach((value, i) => {
    if (NEVER_NAMED.test(body.angles[i] ?? "")) return;
    const short = Math.min(value - (limits.least[i] ?? 0), (limits.most[i] ?? 0) - value);
    if (short < least) {
      least = short;
      best = i;
    }
  });
  return body.angles[best] ?? "lumbarFlexion";
}
