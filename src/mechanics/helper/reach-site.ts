import { add, compose, norm, rotationAbout, unit, type Vector } from "../../quantity/vectors.ts";
import type { Body } from "../body/body.ts";
import { type ClosedPose, closePose } from "../pose/close.ts";
import { constrainedStep } from "../pose/constrained-step.ts";
import { type Configuration, type Frames, placeFrames, pointInRoom, ROOT_FREEDOMS } from "../pose/kinematics.ts";
import { readyContacts, type Row } from "../pose/rows.ts";
import { GRAVITY } from "../body/strength-norms.ts";
import { type Limits, limitsOf } from "../pose/targets.ts";
import { centreRows } from "../reach/centre-rows.ts";
import { type Pin, pinRows } from "../reach/pins.ts";
import { hullOf, outsideHull, type Point } from "../reach/polygon.ts";
import { poseAt } from "../reach/ride-along.ts";
import { HANDS_APART, HELPER_STANCES, PALM_MM, type Stance } from "./stances.data.ts";

/** Where the hands go, from the middle of what the helper stands on [m]: forward, to the left, up from the floor. */
export interface Site {
  readonly forward: number;
  readonly left: number;
  readonly up: number;
  readonly hands: 1 | 2;
}
export interface HelperReach {
  readonly reached: true;
  readonly pose: ClosedPose;
  /** Palms, in the room [m]. */
  readonly palms: readonly { readonly segment: number; readonly at: Vector }[];
  /** Furthest palm from where it should be [m]. */
  readonly miss: number;
  /** Middle of what bears, in the room [m]. */
  readonly base: Point;
}
export interface NoReach {
  readonly reached: false;
  readonly because: string;
}

/** A palm this near its place [m] has reached it. */
const REACHED = 0.015;
const STEPS = 60;

/**
 * Poses a helper: feet, knees or seat where the stance puts them, palms on the site, the body over its base with the
 * force on the hands counted in, joints in their range, otherwise as near the stance as can be.
 * @param onHands what the person gives back on both hands together [N, room]
 * @param lean how far the push on the ground moves from the middle of the base toward the site, 0 not, 1 nearly to its edge
 * @returns the pose; or why the hands do not get there
 */
export function reachSite(
  body: Body,
  stance: Stance,
  site: Site,
  onHands: Vector = [0, 0, 0],
  lean = 0,
): HelperReach | NoReach {
  const specification = HELPER_STANCES[stance];
  const closed = closePose(body, specification);
  if (!closed.closed) return { reached: false, because: closed.because };
  const ready = readyContacts(body, specification);
  if ("missing" in ready) return { reached: false, because: ready.because };
  const pins = ready.map(({ patch }): Pin => {
    const segment = body.segmentIndex[patch.segment];
    const points = patch.balls.map((ball) => ball.centre);
    return { segment, points, places: points.map((point) => pointInRoom(body, closed.frames, segment, point)) };
  });
  const { middle: base, wished } = baseOf(closed, site, lean);
  const place: Vector = [base[0] + site.forward, base[1] + site.left, site.up];
  const palms = palmPins(body, place, site.hands);
  const goal = balancedCentre(body, wished, place, onHands);
  const limits = limitsOf(body);
  let now = closed.configuration;
  let frames = closed.frames;
  for (let step = 0; step < STEPS; step++) {
    const rows: Row[] = [...pins, ...palms].flatMap((pin) => pinRows(body, frames, pin));
    const centre = centreRows(body, frames);
    const all = Int32Array.from(centre.jacobian[0].keys());
    for (const k of [0, 1] as const)
      rows.push({ error: centre.at[k] - goal[k], gradient: centre.jacobian[k], reach: all });
    const worst = rows.reduce((most, row) => Math.max(most, Math.abs(row.error)), 0);
    if (worst < 1e-4) break;
    now = stepped(body, now, closed.configuration, rows, limits, step < STEPS / 2 ? 0.1 : 0.02);
    frames = placeFrames(body, now);
  }
  const pose = poseAt(body, closed, now, frames);
  const miss = Math.max(...palms.map((pin) => missOf(body, frames, pin)));
  const slid = Math.max(...pins.map((pin) => missOf(body, frames, pin)));
  if (!(miss <= REACHED && slid <= REACHED))
    return { reached: false, because: `the hands stay ${Math.round(Math.max(miss, slid) * 100)} cm short of the site` };
  return {
    reached: true,
    pose,
    palms: palms.map(({ segment, points }) => ({
      segment,
      at: pointInRoom(body, frames, segment, points[0] ?? [0, 0, 0]),
    })),
    miss,
    base,
  };
}

/** Where the ground's push is wished: from the middle of what bears, so far toward the site as leaning says. */
function baseOf(pose: ClosedPose, site: Site, lean: number): { middle: Point; wished: Point } {
  const points = pose.contacts.flatMap((contact) => contact.points.map(({ at }): Point => [at[0], at[1]]));
  const hull = hullOf(points);
  const middle = centroid(hull);
  const length = Math.hypot(site.forward, site.left);
  if (lean === 0 || length < 1e-9) return { middle, wished: middle };
  const toward: Point = [site.forward / length, site.left / length];
  let far = 0;
  while (far < 1 && outsideHull(hull, [middle[0] + far * toward[0], middle[1] + far * toward[1]]) === 0) far += 0.005;
  const by = Math.max(0, far - KEPT_FROM_EDGE) * lean;
  return { middle, wished: [middle[0] + by * toward[0], middle[1] + by * toward[1]] };
}
/** The push is not led nearer to the edge of the base than this [m]. */
const KEPT_FROM_EDGE = 0.04;

/** Middle of a convex polygon's area. */
function centroid(hull: readonly Point[]): Point {
  let area = 0;
  let x = 0;
  let y = 0;
  hull.forEach((a, k) => {
    const b = hull[(k + 1) % hull.length] ?? a;
    const part = a[0] * b[1] - a[1] * b[0];
    area += part;
    x += part * (a[0] + b[0]);
    y += part * (a[1] + b[1]);
  });
  return Math.abs(area) < 1e-12 ? (hull[0] ?? [0, 0]) : [x / (3 * area), y / (3 * area)];
}

function palmPins(body: Body, place: Vector, hands: 1 | 2): Pin[] {
  const mm = body.stature / 1000;
  const palm: Vector = [PALM_MM.front * mm, 0, -PALM_MM.down * mm];
  // "strong" is in front where the sides differ: one hand is that side's.
  const sides = hands === 2 ? (["weak", "strong"] as const) : (["strong"] as const);
  return sides.map((side): Pin => {
    const lateral = side === "weak" ? body.weakAt : -body.weakAt;
    const aside = hands === 2 ? HANDS_APART * lateral : 0;
    return { segment: body.segmentIndex[`hand.${side}`], points: [palm], places: [add(place, [0, aside, 0])] };
  });
}

/** Where the centre of mass has to be so that the ground's push stays in the middle of the base while the hands carry a force. */
function balancedCentre(body: Body, base: Point, place: Vector, on: Vector): Point {
  const weight = body.segments.reduce((sum, each) => sum + each.mass, 0) * GRAVITY;
  // Moments about the floor: the ground's push in the base, the weight at the centre, the force at its place.
  const at = (k: 0 | 1): number => ((weight - on[2]) * base[k] + on[2] * place[k] - on[k] * place[2]) / weight;
  return [at(0), at(1)];
}

/** One step toward the rows; an angle that would leave its range goes to its end and stays for the step. */
function stepped(
  body: Body,
  now: Configuration,
  aim: Configuration,
  rows: readonly Row[],
  limits: Limits,
  patience: number,
): Configuration {
  const size = ROOT_FREEDOMS + body.angles.length;
  const mobility = new Float64Array(size).fill(1);
  const wish = new Float64Array(size);
  body.angles.forEach((id, i) => {
    const k = ROOT_FREEDOMS + i;
    if (/^(neck|toe|radial)/.test(id)) mobility[k] = 0.1;
    if (/^(lumbar|thorax|girdle)/.test(id)) mobility[k] = 0.3;
    wish[k] = ((aim.angles[i] ?? 0) - (now.angles[i] ?? 0)) * patience;
  });
  let { step } = constrainedStep(rows, wish, mobility);
  for (let round = 0; round < 6; round++) {
    let again = false;
    for (let i = 0; i < body.angles.length; i++) {
      const k = ROOT_FREEDOMS + i;
      if (mobility[k] === 0) continue;
      const at = now.angles[i] ?? 0;
      const to = at + (step[k] ?? 0);
      const end = Math.min(Math.max(to, limits.least[i] ?? to), limits.most[i] ?? to);
      if (Math.abs(end - to) < 1e-9) continue;
      mobility[k] = 0;
      wish[k] = end - at;
      again = true;
    }
    if (!again) break;
    ({ step } = constrainedStep(rows, wish, mobility));
  }
  let largest = 0;
  for (const value of step) largest = Math.max(largest, Math.abs(value));
  const share = Math.min(1, LARGEST_STEP / Math.max(largest, 1e-12));
  const turn: Vector = [(step[3] ?? 0) * share, (step[4] ?? 0) * share, (step[5] ?? 0) * share];
  const angle = norm(turn);
  return {
    rootPosition: add(now.rootPosition, [(step[0] ?? 0) * share, (step[1] ?? 0) * share, (step[2] ?? 0) * share]),
    rootRotation: angle < 1e-15 ? now.rootRotation : compose(rotationAbout(unit(turn), angle), now.rootRotation),
    angles: now.angles.map((value, i) => {
      const to = value + (step[ROOT_FREEDOMS + i] ?? 0) * share;
      return Math.min(Math.max(to, limits.least[i] ?? to), limits.most[i] ?? to);
    }),
  };
}
const LARGEST_STEP = 0.25;

function missOf(body: Body, frames: Frames, pin: Pin): number {
  return Math.max(
    ...pin.points.map((point, k) => {
      const at = pointInRoom(body, frames, pin.segment, point);
      const to = pin.places[k] ?? at;
      return norm([at[0] - to[0], at[1] - to[1], at[2] - to[2]]);
    }),
  );
}
