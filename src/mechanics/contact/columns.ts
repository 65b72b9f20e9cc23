import type { Side } from "../../quantity/sides.ts";
import { add, cross, norm, rotate, scale, unit, type Vector } from "../../quantity/vectors.ts";
import type { Body } from "../body/body.ts";
import type { ClosedContact, ClosedPose } from "../pose/close.ts";
import type { Frames } from "../pose/kinematics.ts";
import { frictionOf } from "./friction.ts";

/** One way a contact can push: its unknown is a number of newtons, never negative. */
export interface Column {
  /** Number of the contact in the pose. */
  readonly contact: number;
  readonly segment: number;
  readonly at: Vector;
  /** Force on the segment for each unit of the unknown; the part along the surface's normal is 1, 0 or -1. */
  readonly force: Vector;
  /** Newtons along the surface's normal for each unit. */
  readonly load: number;
  /** The other part of the same body, which feels the opposite. */
  readonly other: { readonly segment: number; readonly at: Vector } | null;
  /** Most it may reach [N]; `grip` is bounded by that hand's grip. */
  readonly most: number | { readonly grip: Side };
}

export interface ContactOptions {
  /** Sideways grip of a contact; default the low end of what was published. */
  readonly friction?: (contact: ClosedContact) => number;
  /** Feet bear on the part people can really lean over, not back to the heel's edge (default false). */
  readonly functionalFeet?: boolean;
  /** Most of the body's weight that a leg's contacts may carry together, by side: 0 not loaded at all; default no limit. */
  readonly legLoad?: Readonly<Partial<Record<Side, number>>>;
  /** How far a contact stands from where the pose puts it [m, room]: a hand is seldom set down to the centimetre. */
  readonly off?: (contact: ClosedContact) => Vector;
}

/** Share of the grip force that a closed hand holds sideways or in pull on a bar: judgement, cautious. */
const GRIP_PULL_SHARE = 0.5;
export const gripPull = (grip: number): number => grip * GRIP_PULL_SHARE;

/** Level direction the person faces, or toward the head when lying; friction's facets follow it so that turning the room changes nothing. */
export function headingOf(frames: Frames): Vector {
  const r = frames.rotations[0];
  if (r === undefined) return [1, 0, 0];
  const front = rotate(r, [1, 0, 0]);
  const up = rotate(r, [0, 0, 1]);
  const level: Vector = Math.hypot(front[0], front[1]) > 0.5 ? [front[0], front[1], 0] : [up[0], up[1], 0];
  return norm(level) < 1e-6 ? [1, 0, 0] : unit(level);
}

const limbMasses = new WeakMap<Body, readonly number[]>();

/** Mass of the limb a segment belongs to: an arm, a leg, the head; on the trunk the segment's own [kg]. */
export function limbMass(body: Body, segment: number): number {
  const known = limbMasses.get(body) ?? body.segments.map(({ index }) => weighLimb(body, index));
  limbMasses.set(body, known);
  return known[segment] ?? 0;
}

function weighLimb(body: Body, segment: number): number {
  const own = limbKey(body, segment);
  const side = body.segments[segment]?.side ?? null;
  if (side === null) return body.segments[segment]?.mass ?? 0;
  // The shoulder girdle belongs to the trunk and lies down with it.
  return body.segments.reduce((sum, each) => {
    const part = each.side === side && !each.id.startsWith("girdle") && limbKey(body, each.index) === own;
    return part ? sum + each.mass : sum;
  }, 0);
}

/**
 * The ways in which a pose's touching contacts can push: four edges of a friction pyramid for each point of skin; six
 * directions for a gripping hand; for a limb that only rests, a bounded push along the normal, so that all its resting
 * points together carry no more than the limb weighs.
 */
export function contactColumns(body: Body, pose: ClosedPose, options: ContactOptions = {}): Column[] {
  const { friction = frictionOf, functionalFeet = false, off, legLoad = {} } = options;
  const weight = body.segments.reduce((sum, each) => sum + each.mass, 0) * 9.81;
  const heading = headingOf(pose.frames);
  const restPoints = countRestPoints(body, pose);
  const columns: Column[] = [];
  pose.contacts.forEach((contact, index) => {
    if (!contact.touches) return;
    const across = scale(unit(cross(contact.normal, heading)), body.weakAt);
    const sideways = norm(across) < 1e-6 ? ([0, body.weakAt, 0] as const) : across;
    const forward = scale(cross(sideways, contact.normal), body.weakAt);
    const base = { contact: index, segment: contact.segment, other: contact.other } as const;
    const touching = contact.points.filter((point) => point.gap < TOUCHING);
    const most = legLoadAt(body, pose, contact, legLoad, weight);
    if (most === 0) return;
    for (const point of touching) {
      const set =
        functionalFeet && contact.patch.startsWith("foot.") && contact.points.indexOf(point) === 0
          ? functionalHeel(pose, contact, point.at)
          : point.at;
      const at = off === undefined ? set : add(set, off(contact));
      if (carriesOwnAtMost(contact)) {
        const limb = limbKey(body, contact.segment);
        const part = contact.specification.effort === "light" ? LIGHT_SHARE : 1;
        columns.push({
          ...base,
          at,
          force: contact.normal,
          load: 1,
          most: (part * limbMass(body, contact.segment) * 9.81) / (restPoints.get(limb) ?? 1),
        });
        continue;
      }
      const side = body.segments[contact.segment]?.side ?? null;
      if (contact.specification.grips === true && side !== null) {
        const most = { grip: side } as const;
        columns.push({ ...base, at, force: contact.normal, load: 1, most: Number.MAX_VALUE });
        columns.push({ ...base, at, force: scale(contact.normal, -1), load: -1, most });
        for (const along of [forward, scale(forward, -1), sideways, scale(sideways, -1)])
          columns.push({ ...base, at, force: along, load: 0, most });
        continue;
      }
      const mu = friction(contact);
      for (const along of [forward, scale(forward, -1), sideways, scale(sideways, -1)]) {
        columns.push({ ...base, at, force: add(contact.normal, scale(along, mu)), load: 1, most });
      }
    }
  });
  return columns;
}

/**
 * Most newtons one edge of one point's pyramid may carry where the leg is not to be loaded fully: the leg's share split
 * evenly over all its points and edges, so that together they never carry more (cautious).
 */
function legLoadAt(
  body: Body,
  pose: ClosedPose,
  contact: ClosedContact,
  legLoad: Readonly<Partial<Record<Side, number>>>,
  weight: number,
): number {
  const key = limbKey(body, contact.segment);
  const side = body.segments[contact.segment]?.side ?? null;
  // What only lies there carries no more than the leg's own weight: that is no loading.
  const share = side !== null && !carriesOwnAtMost(contact) && key.startsWith("leg") ? legLoad[side] : undefined;
  if (share === undefined) return Number.MAX_VALUE;
  const points = pose.contacts
    .filter((each) => each.touches && limbKey(body, each.segment) === key)
    .reduce((sum, each) => sum + each.points.filter((point) => point.gap < TOUCHING).length, 0);
  return (Math.max(0, share) * weight) / (4 * Math.max(1, points));
}

/**
 * The back of the part of a foot that people stand over: under the ankle joint, not at the heel's edge. "sloot2025": rear
 * limit 0.02 of the foot's length before the ankles (older) to 0.03 behind (young), where the heel reaches 0.2 behind.
 */
function functionalHeel(pose: ClosedPose, contact: ClosedContact, at: Vector): Vector {
  const ankle = pose.frames.positions[contact.segment];
  const front = contact.points[1]?.at;
  if (ankle === undefined || front === undefined) return at;
  const along = unit([front[0] - at[0], front[1] - at[1], 0]);
  const forward = (ankle[0] - at[0]) * along[0] + (ankle[1] - at[1]) * along[1];
  return forward > 0 ? add(at, scale(along, forward)) : at;
}

/** What a limb that has been made light still lays down, as a share of its weight: judgement. */
const LIGHT_SHARE = 0.25;
const carriesOwnAtMost = (contact: ClosedContact): boolean =>
  contact.specification.effort === "rest" || contact.specification.effort === "light";

/** Points of skin further than this [m] from the surface carry nothing. */
const TOUCHING = 0.012;

const limbKey = (body: Body, segment: number): string => {
  const id = body.segments[segment]?.id ?? "pelvis";
  const [name, side] = id.split(".");
  if (side === undefined) return id;
  return `${name === "thigh" || name === "shank" || name === "foot" || name === "toes" ? "leg" : "arm"}.${side}`;
};

function countRestPoints(body: Body, pose: ClosedPose): Map<string, number> {
  const counts = new Map<string, number>();
  for (const contact of pose.contacts) {
    if (!contact.touches || !carriesOwnAtMost(contact)) continue;
    const key = limbKey(body, contact.segment);
    counts.set(key, (counts.get(key) ?? 0) + contact.points.filter((point) => point.gap < TOUCHING).length);
  }
  return counts;
}
