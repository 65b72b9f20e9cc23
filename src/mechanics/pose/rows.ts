import { dot, norm, subtract, type Vector } from "../../quantity/vectors.ts";
import type { Body } from "../body/body.ts";
import { hasPatch, type Patch, type PatchId, patchOn } from "../body/patches.ts";
import { type Frames, pointGradient, pointInRoom, pointJacobian, reachOf } from "./kinematics.ts";
import type { ContactSpecification, PoseSpecification } from "./specification.ts";
import { surfaceHeight } from "./targets.ts";

/** Half the distance between the parallel bars [m]: 60 cm apart (common practice, set by the site). */
export const BAR_HALF_SPACING = 0.3;

/** One thing the pose must fulfil: its error, how each unknown moves it, and the numbers of those that do, ascending. */
export interface Row {
  readonly error: number;
  readonly gradient: Float64Array;
  readonly reach: Int32Array;
}

/** A contact made ready for one body: its skin balls and what they meet. */
export interface ReadyContact {
  readonly specification: ContactSpecification;
  readonly patch: Patch;
  readonly other: Patch | null;
  /** Top of the surface [m]; null for a wall and for skin on skin. */
  readonly height: number | null;
}

/** @returns the contacts made ready, or the surface that the pose does not list or the part that this body has not got, and why. */
export function readyContacts(
  body: Body,
  pose: PoseSpecification,
): readonly ReadyContact[] | { readonly missing: string; readonly because: string } {
  const ready: ReadyContact[] = [];
  for (const specification of pose.contacts) {
    const asked: PatchId[] = [specification.patch];
    if (typeof specification.on === "object") asked.push(specification.on.body);
    const gone = asked.find((id) => !hasPatch(body, id));
    if (gone !== undefined) return { missing: gone, because: `this body has no ${gone.replace(".", ", ")} side` };
    const patch = patchOn(body, specification.patch);
    if (typeof specification.on === "object") {
      ready.push({ specification, patch, other: patchOn(body, specification.on.body), height: null });
      continue;
    }
    const height = specification.on === "wall" ? null : surfaceHeight(body, pose, specification.on);
    if (height === null && specification.on !== "wall")
      return { missing: specification.on, because: `no surface "${specification.on}" in this pose` };
    ready.push({ specification, patch, other: null, height });
  }
  return ready;
}

export const UP: Vector = [0, 0, 1];
const ACROSS: Vector = [0, 1, 0];

/** Rows that hold a contact's balls on what they meet. A wall stands where it is touched and asks nothing. */
export function contactRows(body: Body, frames: Frames, contact: ReadyContact): Row[] {
  const segment = body.segmentIndex[contact.patch.segment];
  const reach = reachOf(body, segment);
  const rows: Row[] = [];
  for (const ball of contact.patch.balls) {
    const at = pointInRoom(body, frames, segment, ball.centre);
    if (contact.other !== null) {
      rows.push(bodyRow(body, frames, contact, at, segment, ball.radius));
      break;
    }
    if (contact.height === null) continue;
    const gradient = pointGradient(body, frames, segment, at, UP);
    rows.push({ error: at[2] - ball.radius - contact.height, gradient, reach });
    if (contact.specification.on === "bars") {
      const lateral = contact.patch.side === "weak" ? body.weakAt : -body.weakAt;
      const across = pointGradient(body, frames, segment, at, ACROSS);
      rows.push({ error: at[1] - lateral * BAR_HALF_SPACING, gradient: across, reach });
    }
  }
  return rows;
}

function bodyRow(body: Body, frames: Frames, contact: ReadyContact, at: Vector, segment: number, radius: number): Row {
  const other = contact.other;
  const ball = other?.balls[0];
  const otherSegment = other === null ? 0 : body.segmentIndex[other.segment];
  const otherAt = pointInRoom(body, frames, otherSegment, ball?.centre ?? [0, 0, 0]);
  const apart = subtract(at, otherAt);
  const distance = Math.max(norm(apart), 1e-9);
  const direction: Vector = [apart[0] / distance, apart[1] / distance, apart[2] / distance];
  const own = pointJacobian(body, frames, segment, at);
  const others = pointJacobian(body, frames, otherSegment, otherAt);
  const gradient = new Float64Array(own[0].length);
  for (let i = 0; i < gradient.length; i++) {
    gradient[i] = dot(direction, [
      (own[0][i] ?? 0) - (others[0][i] ?? 0),
      (own[1][i] ?? 0) - (others[1][i] ?? 0),
      (own[2][i] ?? 0) - (others[2][i] ?? 0),
    ]);
  }
  const reach = Int32Array.from(new Set([...reachOf(body, segment), ...reachOf(body, otherSegment)])).sort();
  return { error: distance - radius - (ball?.radius ?? 0), gradient, reach };
}

/** Rows that keep a contact where it is in the room. */
export function pinnedRows(body: Body, frames: Frames, contact: ReadyContact, pins: readonly Vector[]): Row[] {
  if (contact.other !== null) return contactRows(body, frames, contact);
  const segment = body.segmentIndex[contact.patch.segment];
  const reach = reachOf(body, segment);
  return contact.patch.balls.flatMap((ball, k) => {
    const at = pointInRoom(body, frames, segment, ball.centre);
    const pin = pins[k] ?? at;
    const jacobian = pointJacobian(body, frames, segment, at);
    return [0, 1, 2].map(
      (axis): Row => ({
        error: (at[axis] ?? 0) - (pin[axis] ?? 0),
        gradient: jacobian[axis] ?? new Float64Array(0),
        reach,
      }),
    );
  });
}
